#include "engine/rules/registry.hpp"

namespace endbell::inline rules::rule {

namespace {

constexpr std::string_view claim =
    "a capacitor-run motor gets a new capacitor of its own value; any other gets none";
constexpr std::string_view id = rule_id::capacitor;

// The new motor's own value, never the old motor's; and always a new capacitor.
Finding judge(const Query& q, const Part& part) {
    if (!part.motor) return not_concerned(id);
    const Motor& motor = *part.motor;
    FindingDraft say(id, "capacitor-practice", wanted(q.facts.capacitor), offered(motor.capacitor));
    if (!motor.family) return say.ask(Reason::part_does_not_say, {"motors.family"});
    if (*motor.family == Family::capacitor_run) {
        if (specified_assembly(q.job, part) && !motor.capacitor)
            return say.caution(Reason::with_the_assembly);
        if (!motor.capacitor) return say.ask(Reason::part_does_not_say, {"motors.capacitor_uf"});
        if (!motor.capacitor_volts) return say.ask(Reason::part_does_not_say, {"motors.capacitor_v"});
        Remedy fresh = remedy(Cure::run_capacitor);
        fresh.capacitor = motor.capacitor;
        fresh.capacitor_volts = motor.capacitor_volts;
        return say.changes(Reason::new_capacitor, {fresh});
    }
    if (has_capacitor(*motor.family)) return say.fits(Reason::capacitors_on_the_motor);
    const auto was = q.facts.family.value;
    const bool had_one = q.facts.capacitor.value || was == Family::capacitor_run;
    if (had_one) return say.changes(Reason::old_capacitor_out, {remedy(Cure::capacitor_removal)});
    if (!was) return say.not_stated("plate.family");
    return say.fits(Reason::no_capacitor);
}

}  // namespace

Rule capacitor() {
    return {
        id,
        claim,
        Weight::curable,
        {Reason::not_concerned, Reason::part_does_not_say, Reason::with_the_assembly, Reason::new_capacitor,
         Reason::old_capacitor_out, Reason::not_stated, Reason::no_capacitor,
         Reason::capacitors_on_the_motor},
        {"capacitor-practice"},
        {},
        {"plate.capacitor", "plate.family"},
        {"motors.family", "motors.capacitor_uf", "motors.capacitor_v"},
        {{"motors.capacitor_uf", Concerns::capacitor_run}, {"motors.capacitor_v", Concerns::capacitor_run}},
        judge};
}

}  // namespace endbell::inline rules::rule
