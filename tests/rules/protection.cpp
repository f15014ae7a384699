#include "tests/rules/world.hpp"

namespace endbell::rule_tests {

// NEC 430.32(B) (from memory): automatically started motors of 1 hp or less are protected.
BOOST_AUTO_TEST_CASE(an_unprotected_motor_does_not_fit) {
    World w = blower();
    SAYS(w("protection"), Verdict::fits, "protected");
    w.motor().protection = Protection::impedance;
    SAYS(w("protection"), Verdict::fits, "protected");
    w.motor().protection = Protection::none;
    SAYS(w("protection"), Verdict::does_not_fit, "not protected");
    w.motor().protection.reset();
    SAYS(w("protection"), Verdict::not_shown, "part does not say");
}

BOOST_AUTO_TEST_CASE(an_automatic_reset_for_a_manual_one_is_said) {
    World w = blower();
    w.job.plate.protection = known(Protection::manual);
    SAYS(w("protection"), Verdict::fits, "restarts by itself");
    BOOST_TEST(w("protection").caution);
}

BOOST_AUTO_TEST_CASE(an_electronic_motor_limits_itself) {
    World w = five_taps();
    w.motor().protection.reset();
    SAYS(w("protection"), Verdict::fits, "limited by its control");
}

}  // namespace endbell::rule_tests
