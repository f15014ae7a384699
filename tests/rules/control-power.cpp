#include "tests/rules/world.hpp"

namespace endbell::rule_tests {

// An equipment manual: a tap draws under 20 mA, so 0.48 VA at 24 V. A control-power page: plan at or below 80
// %.
BOOST_AUTO_TEST_CASE(a_retrofit_needs_a_common) {
    World w = retrofit();
    SAYS(w("control-power"), Verdict::fits, "common present");
    w.job.controls.common_present = known(false);
    SAYS(w("control-power"), Verdict::does_not_fit, "no common");
    w.job.controls.transformer = known(volt_ampere(40));  // it has one; its C still does not reach the motor
    SAYS(w("control-power"), Verdict::does_not_fit, "no common");
    w.job.controls.common_present = {};
    SAYS(w("control-power"), Verdict::not_shown, "common not stated");
}

BOOST_AUTO_TEST_CASE(a_full_transformer_minds_half_a_volt_ampere) {
    World w = retrofit();
    w.job.controls.transformer = known(volt_ampere(40));
    w.job.controls.transformer_load = known(volt_ampere(31.52));  // 32.00 VA: exactly 80 %
    SAYS(w("control-power"), Verdict::fits, "common present");
    w.job.controls.transformer_load = known(volt_ampere(31.6));
    SAYS(w("control-power"), Verdict::fits, "transformer nearly full");
    BOOST_TEST(w("control-power").caution);
    w.job.controls.transformer_load = known(volt_ampere(39.52));  // 40.00 VA: exactly full
    SAYS(w("control-power"), Verdict::fits, "transformer nearly full");
    w.job.controls.transformer_load = known(volt_ampere(39.6));
    SAYS(w("control-power"), Verdict::fits_with_changes, "transformer overloaded");
    // 40.08 VA at 80 % of its rating
    BOOST_TEST(w("control-power").remedies.at(0).power->in(volt_ampere) == 50.1,
               boost::test_tools::tolerance(1e-9));
}

BOOST_AUTO_TEST_CASE(a_24_v_motor_for_another_is_powered_already) {
    SAYS(five_taps()("control-power"), Verdict::fits, "already 24 V");
    World without = five_taps();
    without.job.controls.common_present = known(false);
    SAYS(without("control-power"), Verdict::does_not_fit, "no common");
    SAYS(blower()("control-power"), Verdict::fits, "not concerned");
}

}  // namespace endbell::rule_tests
