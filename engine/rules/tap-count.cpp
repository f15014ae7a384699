#include "engine/rules/registry.hpp"

namespace endbell::inline rules::rule {

namespace {

constexpr std::string_view claim =
    "the motor has the speeds that are really used; leads left over are parked";
constexpr std::string_view id = rule_id::tap_count;

// A part may count its speeds without listing its taps, or the other way about.
std::optional<int> speeds_of(const Motor& motor) {
    if (motor.speeds) return motor.speeds;
    if (motor.taps.empty()) return std::nullopt;
    return static_cast<int>(motor.taps.size());
}

Finding judge(const Query& q, const Part& part) {
    if (!part.motor) return not_concerned(id);
    const auto family = part.motor->family;
    if (family == Family::constant_airflow || family == Family::communicating) return not_concerned(id);
    const auto has = speeds_of(*part.motor);
    FindingDraft say(id, "common-practice", wanted(q.job.plate.speeds), offered(has));
    const auto needs = q.job.plate.speeds.said();
    if (!needs) return say.not_stated("plate.speeds");
    if (!has) return say.ask(Reason::part_does_not_say, {"motors.speeds"});
    if (*has < *needs) return say.changes(Reason::calls_share_a_speed, {remedy(Cure::airflow_setup)}, true);
    // Unused leads of a capacitor-run motor are at line potential while it runs: each is capped.
    const bool leads = family && is_induction(*family);
    if (*has > *needs && leads) return say.changes(Reason::leads_to_park, {remedy(Cure::lead_parking)});
    return say.fits(Reason::enough_speeds);
}

}  // namespace

Rule tap_count() {
    return {id,
            claim,
            Weight::curable,
            {Reason::not_concerned, Reason::not_stated, Reason::part_does_not_say,
             Reason::calls_share_a_speed, Reason::leads_to_park, Reason::enough_speeds},
            {"common-practice"},
            {},
            {"plate.speeds"},
            {"motors.family", "motors.speeds"},
            {{"motors.speeds"}},
            judge};
}

}  // namespace endbell::inline rules::rule
