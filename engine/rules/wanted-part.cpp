#include <algorithm>

#include "engine/facts/rating.hpp"
#include "engine/rules/registry.hpp"

namespace endbell::inline rules::rule {

namespace {

constexpr std::string_view claim =
    "the part replaces the half that failed, a module only beside a motor proven good and a motor half never "
    "without a module";
constexpr std::string_view id = rule_id::wanted_part;

// What would prove the motor half; where the diagnosis names nothing, the three readings of the proof itself.
std::vector<std::string> readings_missing(const Diagnosis& diagnosis) {
    std::vector<std::string> keys;
    for (const MissingReading& m : diagnosis.missing) keys.push_back(m.job_key);
    if (keys.empty()) keys = {"measured.windings", "measured.winding_to_shell", "measured.spins_free"};
    return keys;
}

bool motor_half_failed(Fault fault) {
    return fault == Fault::motor || fault == Fault::motor_and_module;
}

// A module alone only when the windings, the ground reading and the shaft are proven good.
Finding judge_module(const Query& q, FindingDraft say) {
    const auto family = q.facts.family.value;
    if (!family) return say.ask(Reason::family_not_stated, {"plate.family"});
    if (*family != Family::constant_airflow) return say.fails(Reason::no_separable_module);
    if (motor_half_failed(q.diagnosis.fault)) return say.fails(Reason::motor_half_failed);
    if (q.diagnosis.replace_nothing()) return say.caution(Reason::fault_elsewhere);
    if (!q.diagnosis.motor_half_proven_good || q.diagnosis.fault != Fault::module) {
        return say.ask(Reason::motor_half_not_proven, readings_missing(q.diagnosis));
    }
    return say.fits(Reason::module_failed);
}

// The module at the unit stays only where somebody has shown it to be good, nothing speaks against it, and it was made for
// a motor half of this power.
bool old_module_stays(const Query& q, const Motor& half) {
    const Fault fault = q.diagnosis.fault;
    const bool old_half_alone = fault == Fault::motor;
    const bool good = q.job.measured.module_good && *q.job.measured.module_good;
    const bool two_piece = q.facts.family && is_two_piece(*q.facts.family);
    if (!old_half_alone || !good || !two_piece || !q.facts.power || half.ratings.empty()) return false;
    return std::all_of(half.ratings.begin(), half.ratings.end(),
                       [&](const Rating& r) { return r.power && q.facts.power.is(*r.power); });
}

Finding judge_half(const Query& q, const Motor& half, FindingDraft say) {
    if (old_module_stays(q, half)) return say.caution(Reason::old_module_stays);
    Remedy module = remedy(Cure::control_module);
    module.program = q.job.plate.program.said();
    return say.changes(Reason::module_needed_too, {module}, true);
}

Finding judge_motor(const Query& q, const Part& part, FindingDraft say) {
    const DerivedFact<bool> whole = includes_module(*part.motor);
    if (!whole) return say.ask(Reason::part_does_not_say, {"motors.includes_module"});
    if (whole.is(false)) return judge_half(q, *part.motor, std::move(say));
    switch (q.diagnosis.fault) {
        case Fault::motor:
        case Fault::motor_and_module:
            return say.fits(Reason::motor_failed);
        case Fault::module:
            return say.caution(Reason::more_than_failed);
        case Fault::not_shown:
            return say.caution(Reason::not_diagnosed);
        default:
            return say.caution(Reason::fault_elsewhere);
    }
}

Finding judge(const Query& q, const Part& part) {
    FindingDraft say(id, "two-piece", {std::string(word(q.diagnosis.fault)), Origin::job},
                     {std::string(word(part.kind)), Origin::catalog});
    if (part.module) return judge_module(q, say);
    if (part.motor) return judge_motor(q, part, say);
    return not_concerned(id);
}

}  // namespace

Rule wanted_part() {
    return {
        id,
        claim,
        Weight::hard,
        {Reason::family_not_stated, Reason::no_separable_module, Reason::motor_half_failed,
         Reason::fault_elsewhere, Reason::motor_half_not_proven, Reason::module_failed, Reason::motor_failed,
         Reason::part_does_not_say, Reason::module_needed_too, Reason::old_module_stays,
         Reason::more_than_failed, Reason::not_diagnosed, Reason::not_concerned},
        {"two-piece"},
        {},
        {"plate.family", "plate.power", "plate.program", "measured.windings", "measured.winding_to_shell",
         "measured.spins_free", "measured.module_good"},
        {"motors.family", "motors.includes_module", "motor_ratings.power_hp"},
        {{"motors.includes_module", Concerns::two_piece}},
        judge};
}

}  // namespace endbell::inline rules::rule
