#include "engine/rules/registry.hpp"

namespace endbell::inline rules::rule {

namespace {

constexpr std::string_view claim =
    "the part replaces the half that failed, and a module only beside a motor proven good";
constexpr std::string_view id = rule_id::wanted_part;

// What would prove the motor half; where the diagnosis names nothing, the three readings of the proof itself.
std::vector<std::string> readings_missing(const Diagnosis& diagnosis) {
    std::vector<std::string> keys;
    for (const MissingReading& m : diagnosis.missing) keys.push_back(m.job_key);
    if (keys.empty()) keys = {"measured.windings", "measured.winding_to_shell", "measured.spins_free"};
    return keys;
}

bool motor_half_failed(Fault fault) {
    return fault == Fault::motor || fault == Fault::motor_and_module || fault == Fault::wheel_or_bearing;
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

Finding judge_motor(const Query& q, const Part& part, FindingDraft say) {
    switch (q.diagnosis.fault) {
        case Fault::motor:
        case Fault::wheel_or_bearing:
            return say.fits(Reason::motor_failed);
        case Fault::motor_and_module:
            if (part.motor->family == Family::constant_airflow) return say.caution(Reason::module_needed_too);
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
         Reason::module_needed_too, Reason::more_than_failed, Reason::not_diagnosed, Reason::not_concerned},
        {"two-piece"},
        {},
        {"plate.family", "measured.windings", "measured.winding_to_shell", "measured.spins_free"},
        {},
        {{"parts.part_number", Concerns::nobody}},
        judge};
}

}  // namespace endbell::inline rules::rule
