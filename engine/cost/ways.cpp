#include "engine/cost/ways.hpp"

#include <algorithm>

#include "engine/base/text.hpp"

namespace endbell {

namespace {

std::optional<Family> family_of(const Part& part) {
    return part.motor ? part.motor->family : std::nullopt;
}

bool same_number(const FailedUnit& job, const Candidate& candidate) {
    if (!job.unit.old_part_number) return false;
    const std::string old = number_key(*job.unit.old_part_number);
    if (old == number_key(candidate.part.number) || old == number_key(candidate.part.id)) return true;
    return std::any_of(candidate.claims.begin(), candidate.claims.end(),
                       [](const CrossReference& claim) { return claim.relation != Relation::replaces; });
}

bool had_constant_airflow(Family f) {
    return f == Family::constant_airflow || f == Family::communicating;
}

void motor_losses(const FailedUnit& job, const Motor& motor, std::vector<std::string_view>& lost) {
    const std::optional<Family> old = job.plate.family.value;
    if (old && motor.family) {
        const bool airflow_lost = had_constant_airflow(*old) && !had_constant_airflow(*motor.family);
        if (airflow_lost) lost.push_back("constant airflow");
        const auto logic = job.controls.dehumidify.value.value_or(DehumidifyLogic::not_used);
        if (airflow_lost && logic != DehumidifyLogic::not_used) lost.push_back("humidity control");
        if (*old == Family::communicating && *motor.family != Family::communicating)
            lost.push_back("communicating control");
        if (is_electronic(*old) && !is_electronic(*motor.family)) lost.push_back("efficiency");
    }
    if (job.plate.speeds && motor.speeds && *motor.speeds < *job.plate.speeds) lost.push_back("speeds");
    if (job.plate.bearing && *job.plate.bearing == Bearing::ball && motor.bearing == Bearing::sleeve) {
        lost.push_back("ball bearing");
    }
    const bool was_closed = job.plate.enclosure && is_enclosed(*job.plate.enclosure);
    if (was_closed && motor.enclosure && !is_enclosed(*motor.enclosure)) lost.push_back("closed enclosure");
    if (motor.warranty_months && *motor.warranty_months == 0) lost.push_back("warranty");
}

}  // namespace

std::string_view way_of(const FailedUnit& job, const Candidate& candidate) {
    if (candidate.part.kind == PartKind::module) return "module";
    const std::optional<Family> now = family_of(candidate.part);
    const std::optional<Family> old = job.plate.family.value;
    if (old && now && *old != *now) return "retrofit";
    return same_number(job, candidate) ? "same motor" : "universal";
}

std::string swap_task(const FailedUnit& job, std::string_view way) {
    if (way == "module") return "module swap";
    if (job.unit.load && *job.unit.load == Load::outdoor_fan) return "condenser motor swap";
    if (job.unit.load && *job.unit.load == Load::draft_inducer) return "inducer swap";
    return way == "retrofit" ? "retrofit swap" : "motor swap";
}

std::vector<std::string_view> losses(const FailedUnit& job, const Part& part) {
    std::vector<std::string_view> lost;
    if (part.motor) motor_losses(job, *part.motor, lost);
    if (part.module) {
        if (part.module->warranty_months && *part.module->warranty_months == 0) lost.push_back("warranty");
        lost.push_back("new motor half");
    }
    return lost;
}

std::string_view cure_task(std::string_view cause) {
    if (cause == "high static pressure" || cause == "too little air") return "duct repair";
    if (cause == "loaded filter") return "filter change";
    if (cause == "failed capacitor") return "capacitor swap";
    return "";
}

}  // namespace endbell
