#include <algorithm>

#include "engine/rules/registry.hpp"

namespace endbell::inline rules::rule {

namespace {

constexpr std::string_view claim =
    "the motor makes its torque as the old one did, or its own sheet lists the retrofit";
constexpr std::string_view id = rule_id::family;

// What is lost by the change, or why it cannot be. Empty: the part's own sheet decides.
std::optional<Reason> barrier(Family was, Family now) {
    if (was == Family::communicating) return Reason::board_gets_no_reply;
    if (now == Family::communicating) return Reason::nothing_commands_it;
    if (was == Family::three_phase || now == Family::three_phase) return Reason::other_phase;
    if (was == Family::constant_airflow && is_induction(now)) return Reason::loses_constant_airflow;
    if (was == Family::constant_torque && is_induction(now)) return Reason::loses_constant_torque;
    if (now == Family::constant_airflow) return Reason::needs_its_own_program;
    if (is_induction(was) && is_induction(now) && starting_torque_class(now) < starting_torque_class(was))
        return Reason::loses_torque;
    return std::nullopt;
}

/// Of the motors with a start switch, one that starts at least as hard takes the other's place.
bool starts_as_well(Family was, Family now) {
    return has_start_switch(was) && starting_torque_class(now) >= starting_torque_class(was);
}

Finding judge_module(const Query& q, FindingDraft say) {
    const auto was = q.facts.family.value;
    if (!was) return say.ask(Reason::family_not_stated, {"plate.family"});
    if (*was != Family::constant_airflow) return say.fails(Reason::no_separable_module);
    return say.fits(Reason::same_family);
}

Finding judge(const Query& q, const Part& part) {
    if (part.module) {
        return judge_module(q, FindingDraft(id, "two-piece", wanted(q.facts.family),
                                            {std::string(word(Family::constant_airflow)), Origin::catalog}));
    }
    if (!part.motor) return not_concerned(id);
    FindingDraft say(id, "common-practice", wanted(q.facts.family), offered(part.motor->family));
    const auto was = q.facts.family.value;
    if (!was) return say.ask(Reason::family_not_stated, {"plate.family"});
    const auto now = part.motor->family;
    if (!now) return say.ask(Reason::part_does_not_say, {"motors.family"});
    if (*was == *now) return say.fits(Reason::same_family);
    if (q.job.unit.load.said() == Load::draft_inducer)
        return say.from("inducer").fails(Reason::not_the_specified_kind);
    const std::optional<Reason> lost = barrier(*was, *now);
    if (lost) return say.fails(*lost);
    if (starts_as_well(*was, *now)) return say.caution(Reason::starts_at_least_as_well);
    const std::vector<Family>& listed = part.motor->retrofit_for;
    say.from("retrofit-wiring");
    if (std::find(listed.begin(), listed.end(), *was) == listed.end())
        return say.fails(Reason::not_listed_as_retrofit);
    // Constant torque in place of constant airflow gives up the held cfm: that is said.
    const bool gives_up_airflow = *was == Family::constant_airflow;
    return say.changes(gives_up_airflow ? Reason::retrofit_without_constant_airflow : Reason::listed_retrofit,
                       {remedy(Cure::airflow_setup)}, gives_up_airflow);
}

}  // namespace

Rule family() {
    return {
        id,
        claim,
        Weight::hard,
        {Reason::board_gets_no_reply, Reason::nothing_commands_it, Reason::other_phase,
         Reason::loses_constant_airflow, Reason::loses_constant_torque, Reason::needs_its_own_program,
         Reason::loses_torque, Reason::family_not_stated, Reason::no_separable_module, Reason::same_family,
         Reason::not_concerned, Reason::part_does_not_say, Reason::not_the_specified_kind,
         Reason::not_listed_as_retrofit, Reason::retrofit_without_constant_airflow, Reason::listed_retrofit,
         Reason::starts_at_least_as_well},
        {"common-practice", "two-piece", "inducer", "retrofit-wiring"},
        {},
        {"plate.family", "unit.load"},
        {"motors.family", "motors.retrofit_for"},
        {{"motors.family"}, {"motors.retrofit_for", Concerns::nobody}},
        judge};
}

}  // namespace endbell::inline rules::rule
