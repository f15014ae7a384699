#include "tests/rules/world.hpp"

namespace endbell::rule_tests {

namespace {
World thermostat(TapRule rule) {
    World w = five_taps();
    w.job.controls.source = known(ControlSource::thermostat);
    w.motor().tap_rule = rule;
    return w;
}
}  // namespace

// One documented design runs the highest live tap; of others nothing may be assumed. A thermostat sends G
// with Y, and in defrost the outdoor unit adds W.
BOOST_AUTO_TEST_CASE(highest_tap_wins_takes_two_live_taps) {
    SAYS(thermostat(TapRule::highest_tap_wins)("tap-rule"), Verdict::fits, "highest tap wins");
}

BOOST_AUTO_TEST_CASE(one_tap_only_and_not_stated_need_relays) {
    SAYS(thermostat(TapRule::one_tap_only)("tap-rule"), Verdict::fits_with_changes,
         "one tap at a time by relay");
    SAYS(thermostat(TapRule::not_stated)("tap-rule"), Verdict::fits_with_changes,
         "one tap at a time by relay");
}

BOOST_AUTO_TEST_CASE(a_blank_tap_rule_is_not_shown) {
    World w = thermostat(TapRule::one_tap_only);
    w.motor().tap_rule.reset();
    SAYS(w("tap-rule"), Verdict::not_shown, "part does not say");
    BOOST_TEST(w("tap-rule").asks.front() == "motors.tap_rule");
}

BOOST_AUTO_TEST_CASE(one_terminal_can_make_one_tap_live) {
    World w = thermostat(TapRule::one_tap_only);
    w.job.controls.terminals = known(std::vector<Terminal>{{"G", Call::circulate}});
    SAYS(w("tap-rule"), Verdict::fits, "one output at a time");
    w.job.measured.live_taps = known(std::vector<int>{1, 4}, Origin::measured);  // seen is seen
    SAYS(w("tap-rule"), Verdict::fits_with_changes, "one tap at a time by relay");
}

// A board usually closes one output at a time; unless that is shown, relays see to it, as the wiring plan
// does.
BOOST_AUTO_TEST_CASE(a_board_is_not_taken_to_close_one_output_at_a_time) {
    for (const TapRule rule : {TapRule::one_tap_only, TapRule::not_stated}) {
        World w = thermostat(rule);
        w.job.controls.source = known(ControlSource::board_24v);
        SAYS(w("tap-rule"), Verdict::fits_with_changes, "one tap at a time by relay");
        w.job.controls.terminals =
            known(std::vector<Terminal>{{"COOL", Call::cool_high}, {"HEAT", Call::heat_high}});
        SAYS(w("tap-rule"), Verdict::fits_with_changes, "one tap at a time by relay");
        w.job.controls.terminals = known(std::vector<Terminal>{{"FAN", Call::circulate}});
        SAYS(w("tap-rule"), Verdict::fits, "one output at a time");
        BOOST_TEST(w("tap-rule").caution);
    }
}

BOOST_AUTO_TEST_CASE(unknown_controls_ask_unless_the_old_motor_was_as_strict) {
    World w = thermostat(TapRule::one_tap_only);
    w.job.controls.source = {};
    SAYS(w("tap-rule"), Verdict::not_shown, "live taps not known");
    w.job.plate.tap_rule = known(TapRule::one_tap_only);
    SAYS(w("tap-rule"), Verdict::fits, "wired for one tap");
    w.job.plate.tap_rule = known(TapRule::highest_tap_wins);
    SAYS(w("tap-rule"), Verdict::not_shown, "live taps not known");
}

BOOST_AUTO_TEST_CASE(speed_leads_have_no_tap_rule) {
    SAYS(blower()("tap-rule"), Verdict::fits, "not concerned");
}

}  // namespace endbell::rule_tests
