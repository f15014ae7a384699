#include "tests/rules/world.hpp"

namespace endbell::rule_tests {

// Common practice: clearance to the inlet ring is checked, longest of all for two-piece motors.
BOOST_AUTO_TEST_CASE(the_body_clears_the_measured_room) {
    World w = blower();
    SAYS(w("body-length"), Verdict::fits, "not stated");
    w.job.measured.body_room = known(inch(5.5), Origin::measured);
    SAYS(w("body-length"), Verdict::fits, "body clears");  // exactly
    w.job.measured.body_room = known(inch(5.4), Origin::measured);
    SAYS(w("body-length"), Verdict::does_not_fit, "body too long");
    w.motor().body_length.reset();
    SAYS(w("body-length"), Verdict::not_shown, "part does not say");
}

}  // namespace endbell::rule_tests
