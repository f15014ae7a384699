#include "engine/match/rules/rules.hpp"

namespace endbell::rule {

namespace of_wanted_part {

constexpr std::string_view id = "wanted-part";

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
Finding judge_module(const Question& q, Answer say) {
    const auto family = said(q.job.plate.family);
    if (!family) return say.ask("family not stated", {"plate.family"});
    if (*family != Family::constant_airflow) return say.fails("no separable module");
    if (motor_half_failed(q.diagnosis.fault)) return say.fails("motor half failed");
    if (q.diagnosis.replace_nothing()) return say.caution("fault elsewhere");
    if (!q.diagnosis.motor_half_proven_good || q.diagnosis.fault != Fault::module) {
        return say.ask("motor half not proven", readings_missing(q.diagnosis));
    }
    return say.fits("module failed");
}

Finding judge_motor(const Question& q, const Part& part, Answer say) {
    switch (q.diagnosis.fault) {
        case Fault::motor:
        case Fault::wheel_or_bearing:
            return say.fits("motor failed");
        case Fault::motor_and_module:
            if (part.motor->family == Family::constant_airflow) return say.caution("module needed too");
            return say.fits("motor failed");
        case Fault::module:
            return say.caution("more than failed");
        case Fault::not_shown:
            return say.caution("not diagnosed");
        default:
            return say.caution("fault elsewhere");
    }
}

Finding judge(const Question& q, const Part& part) {
    Answer say(id, "two-piece", {std::string(word(q.diagnosis.fault)), Origin::job},
               {std::string(word(part.kind)), Origin::catalog});
    if (part.module) return judge_module(q, say);
    if (part.motor) return judge_motor(q, part, say);
    return not_concerned(id);
}

}  // namespace of_wanted_part

Rule wanted_part() {
    using namespace of_wanted_part;
    return {id,
            "the part replaces the half that failed, and a module only beside a motor proven good",
            Weight::hard,
            {"two-piece"},
            {},
            {"plate.family", "measured.windings", "measured.winding_to_shell", "measured.spins_free"},
            {},
            judge};
}

}  // namespace endbell::rule
