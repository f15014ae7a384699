#include "tests/rules/world.hpp"

namespace endbell::rule_tests {

// Common practice: air-over fan motors are 1.0 unless marked; a reserve must not have been spent.
BOOST_AUTO_TEST_CASE(a_smaller_reserve_is_said_and_never_ends_it) {
    World w = blower();
    SAYS(w("service-factor"), Verdict::fits, "not stated");
    w.job.plate.service_factor = known(1.35);
    SAYS(w("service-factor"), Verdict::fits, "less reserve");  // an unmarked part counts as 1.0
    BOOST_TEST(w("service-factor").caution);
    w.motor().service_factor = 1.35;
    SAYS(w("service-factor"), Verdict::fits, "same reserve");
    w.motor().service_factor = 1.15;
    SAYS(w("service-factor"), Verdict::fits, "less reserve");
}

}  // namespace endbell::rule_tests
