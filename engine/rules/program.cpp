#include <algorithm>

#include "engine/base/text.hpp"
#include "engine/facts/rating.hpp"
#include "engine/rules/registry.hpp"

namespace endbell::inline rules::rule {

namespace {

constexpr std::string_view claim = "a programmed motor or module carries the program of this equipment";
constexpr std::string_view id = rule_id::program;

// A module that lists no motors, or an old motor whose number is not known, is nothing to warn of.
bool lists_old_motor(const Module& module, const FailedUnit& job) {
    const auto old = job.unit.old_part_number.said();
    return !old || module.fits.empty() ||
           std::any_of(module.fits.begin(), module.fits.end(),
                       [&](const std::string& m) { return number_key(m) == number_key(*old); });
}

// Constant-airflow and communicating motors obey a program made for one equipment. A constant-torque motor is
// held to one only where both sides name it: universal ones carry none.
bool concerned(const Query& q, const Part& part) {
    const auto was = q.facts.family.value;
    if (part.module) return !was || *was == Family::constant_airflow;
    if (!part.motor || !part.motor->family) return false;
    const Family now = *part.motor->family;
    if (was && *was != now) return false;
    if (now == Family::constant_airflow || now == Family::communicating) return true;
    return now == Family::constant_torque && q.job.plate.program.said() && part.motor->program;
}

Finding judge(const Query& q, const Part& part) {
    if (!concerned(q, part)) return not_concerned(id);
    const auto& has = part.module ? part.module->program : part.motor->program;
    FindingDraft say(id, "program", wanted(q.job.plate.program), offered(has));
    const auto needs = q.job.plate.program.said();
    if (!needs) return say.ask(Reason::program_not_stated, {"plate.program"});
    // A motor half carries none: it is asked of the module that goes with it.
    if (!has && part.motor && includes_module(*part.motor).is(false)) return not_concerned(id);
    if (!has) return say.ask(Reason::part_does_not_say, {part.module ? "modules.program" : "motors.program"});
    if (number_key(*needs) != number_key(*has)) return say.fails(Reason::other_program);
    if (part.module && !lists_old_motor(*part.module, q.job))
        return say.caution(Reason::old_motor_not_listed);
    return say.fits(Reason::same_program);
}

}  // namespace

Rule program() {
    return {id,
            claim,
            Weight::hard,
            {Reason::not_concerned, Reason::program_not_stated, Reason::part_does_not_say,
             Reason::other_program, Reason::old_motor_not_listed, Reason::same_program},
            {"program"},
            {},
            {"plate.program", "plate.family", "unit.old_part_number"},
            {"motors.family", "motors.program", "motors.includes_module"},
            {{"motors.program", Concerns::constant_airflow},
             {"modules.program"},
             {"module_fits.motor", Concerns::nobody}},
            judge};
}

}  // namespace endbell::inline rules::rule
