#include "tests/rules/world.hpp"

namespace endbell::rule_tests {

// Common practice: what is left of a discontinued part may still be the right one.
BOOST_AUTO_TEST_CASE(a_part_no_longer_made_is_said_and_never_ends_it) {
    World w = blower();
    SAYS(w("part-status"), Verdict::fits, "active");
    w.part.status = PartStatus::superseded;
    SAYS(w("part-status"), Verdict::fits, "superseded");
    BOOST_TEST(w("part-status").caution);
    w.part.status = PartStatus::discontinued;
    SAYS(w("part-status"), Verdict::fits, "discontinued");
    BOOST_TEST(w("part-status").caution);
}

}  // namespace endbell::rule_tests
