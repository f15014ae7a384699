#include "engine/rules/registry.hpp"

namespace endbell::inline rules::rule {

namespace {

constexpr std::string_view claim =
    "where two taps can be live together, the motor's sheet says what it does, or a relay prevents it";
constexpr std::string_view id = rule_id::tap_rule;

// A thermostat sends G with Y, and a defrost board back-feeds W. A board usually closes one blower output at
// a time (common practice), which its sheet would have to show. Terminals that are not listed may be many.
// Empty: not known.
std::optional<bool> two_taps_live(const FailedUnit& job) {
    if (const auto seen = job.measured.live_taps.said(); seen && seen->size() > 1) return true;
    if (!job.controls.source.said()) return std::nullopt;
    const auto terminals = job.controls.terminals.said();
    return !terminals || terminals->size() > 1;
}

Finding judge(const Query& q, const Part& part) {
    if (!part.motor || part.motor->family != Family::constant_torque) return not_concerned(id);
    const auto rule = part.motor->tap_rule;
    const auto old = q.job.plate.tap_rule.said();
    FindingDraft say(id, "tap-rule", wanted(q.job.plate.tap_rule), offered(rule));
    if (rule == TapRule::highest_tap_wins) return say.fits(Reason::highest_tap_wins);
    const auto two = two_taps_live(q.job);
    if (two == false) return say.caution(Reason::one_output_at_a_time);
    if (!rule) return say.ask(Reason::part_does_not_say, {"motors.tap_rule"});
    if (q.facts.family.value == Family::constant_torque && old == TapRule::one_tap_only) {
        return say.fits(Reason::wired_for_one_tap);
    }
    if (!two) return say.ask(Reason::live_taps_not_known, {"controls.source", "measured.live_taps"});
    // How many relays, with how many contacts, the wiring plan works out and proves.
    return say.changes(Reason::one_tap_at_a_time_by_relay, {});
}

}  // namespace

Rule tap_rule() {
    return {id,
            claim,
            Weight::hard,
            {Reason::not_concerned, Reason::highest_tap_wins, Reason::one_output_at_a_time,
             Reason::part_does_not_say, Reason::wired_for_one_tap, Reason::live_taps_not_known,
             Reason::one_tap_at_a_time_by_relay},
            {"tap-rule"},
            {},
            {"plate.tap_rule", "plate.family", "controls.source", "controls.terminals", "measured.live_taps"},
            {"motors.family", "motors.tap_rule"},
            {{"motors.tap_rule", Concerns::constant_torque}},
            judge};
}

}  // namespace endbell::inline rules::rule
