#include "engine/cost/ways.hpp"

#include <algorithm>

#include "engine/base/text.hpp"

namespace endbell::inline cost {

namespace {

std::optional<Family> family_of(const Part& part) {
    return part.motor ? part.motor->family : std::nullopt;
}

bool own_number(const FailedUnit& job, const Part& part) {
    if (!job.unit.old_part_number) return false;
    const std::string old = number_key(*job.unit.old_part_number);
    return old == number_key(part.number) || old == number_key(part.id);
}

bool referenced_as_equal(const Candidate& candidate) {
    return std::any_of(
        candidate.cross_references.begin(), candidate.cross_references.end(),
        [](const CrossReference& reference) { return reference.relation != Relation::replaces; });
}

template <class T>
bool is_among(const std::optional<T>& value, const DerivedFact<std::vector<T>>& stated) {
    return value && stated && std::find(stated->begin(), stated->end(), *value) != stated->end();
}

/// A rating of the plate's own power and volts. What either side does not state is not equal.
bool has_plate_rating(const Facts& facts, const Motor& motor) {
    return std::any_of(motor.ratings.begin(), motor.ratings.end(), [&](const Rating& rating) {
        return rating.power && facts.power.is(*rating.power) && is_among(rating.volts, facts.volts);
    });
}

/// Made to stand in for many motors: several powers to choose from, or families it is meant to replace.
/// Several voltages alone make an ordinary motor of two voltages.
bool is_universal(const Motor& motor) {
    if (!motor.retrofit_for.empty()) return true;
    return std::any_of(motor.ratings.begin(), motor.ratings.end(), [&](const Rating& rating) {
        const std::optional<Power>& first = motor.ratings.front().power;
        return rating.power && first && *rating.power != *first;
    });
}

bool has_work(const CostOption& option, ShopTask task) {
    return std::any_of(option.lines.begin(), option.lines.end(),
                       [task](const CostLine& line) { return line.task == task; });
}

bool cures_cause(const CostOption& option, Cause cause) {
    const std::optional<ShopTask> task = cure_task(cause);
    if (task && has_work(option, *task)) return true;
    const bool new_motor = !is_repair(option.way) && option.way != WayOut::module;
    if (cause == Cause::wrong_motor) return new_motor;
    return cause == Cause::failed_capacitor && new_motor && has_work(option, ShopTask::capacitor_removal);
}

bool had_constant_airflow(Family f) {
    return f == Family::constant_airflow || f == Family::communicating;
}

void motor_losses(const FailedUnit& job, const Facts& facts, const Motor& motor, std::vector<Loss>& lost) {
    const std::optional<Family>& old = facts.family.value;
    if (old && motor.family) {
        const bool airflow_lost = had_constant_airflow(*old) && !had_constant_airflow(*motor.family);
        if (airflow_lost) lost.push_back(Loss::constant_airflow);
        const auto logic = job.controls.dehumidify.said().value_or(DehumidifyLogic::not_used);
        if (airflow_lost && logic != DehumidifyLogic::not_used) lost.push_back(Loss::humidity_control);
        if (*old == Family::communicating && *motor.family != Family::communicating)
            lost.push_back(Loss::communicating_control);
        if (is_electronic(*old) && !is_electronic(*motor.family)) lost.push_back(Loss::efficiency);
    }
    if (job.plate.speeds && motor.speeds && *motor.speeds < *job.plate.speeds) lost.push_back(Loss::speeds);
    if (job.plate.bearing && *job.plate.bearing == Bearing::ball && motor.bearing == Bearing::sleeve) {
        lost.push_back(Loss::ball_bearing);
    }
    const bool was_closed = job.plate.enclosure && is_enclosed(*job.plate.enclosure);
    if (was_closed && motor.enclosure && !is_enclosed(*motor.enclosure))
        lost.push_back(Loss::closed_enclosure);
    if (motor.warranty_months && *motor.warranty_months == 0) lost.push_back(Loss::warranty);
}

}  // namespace

WayOut way_by_family(const Facts& facts, PartKind kind, std::optional<Family> family) {
    if (kind == PartKind::module) return WayOut::module;
    const std::optional<Family>& old = facts.family.value;
    return old && family && *old != *family ? WayOut::retrofit : WayOut::motor;
}

WayOut way_of(const FailedUnit& job, const Facts& facts, const Candidate& candidate) {
    const std::optional<Family> now = family_of(candidate.part);
    const std::optional<Family>& old = facts.family.value;
    const WayOut told = way_by_family(facts, candidate.part.kind, now);
    if (told != WayOut::motor) return told;
    if (own_number(job, candidate.part)) return WayOut::same_motor;
    if (!candidate.part.motor) return WayOut::motor;
    const Motor& motor = *candidate.part.motor;
    if (referenced_as_equal(candidate) && old && now && has_plate_rating(facts, motor))
        return WayOut::same_motor;
    return is_universal(motor) ? WayOut::universal : WayOut::motor;
}

bool is_repair(WayOut way) {
    return way == WayOut::keep_and_cure || way == WayOut::capacitor || way == WayOut::control_repair;
}

ShopTask swap_task(const FailedUnit& job, WayOut way) {
    if (way == WayOut::module) return ShopTask::module_swap;
    if (job.unit.load && *job.unit.load == Load::outdoor_fan) return ShopTask::condenser_motor_swap;
    if (job.unit.load && *job.unit.load == Load::draft_inducer) return ShopTask::inducer_swap;
    return way == WayOut::retrofit ? ShopTask::retrofit_swap : ShopTask::motor_swap;
}

std::vector<Loss> losses(const FailedUnit& job, const Facts& facts, const Part& part) {
    std::vector<Loss> lost;
    if (part.motor) motor_losses(job, facts, *part.motor, lost);
    if (part.module) {
        if (part.module->warranty_months && *part.module->warranty_months == 0)
            lost.push_back(Loss::warranty);
        lost.push_back(Loss::new_motor_half);
    }
    return lost;
}

std::optional<ShopTask> cure_task(Cause cause) {
    switch (cause) {
        case Cause::high_static:
        case Cause::too_little_air:
            return ShopTask::duct_repair;
        case Cause::loaded_filter:
            return ShopTask::filter_change;
        case Cause::failed_capacitor:
            return ShopTask::capacitor_swap;
        case Cause::low_supply:
        case Cause::high_supply:
        case Cause::lost_leg:
            return ShopTask::supply_repair;
        case Cause::two_taps_live:
            return ShopTask::control_repair;
        case Cause::overload:
        case Cause::water:
        case Cause::wrong_motor:
        case Cause::not_found:
            return std::nullopt;
    }
    return std::nullopt;
}

std::vector<ShopTask> cure_tasks(const std::vector<RootCause>& causes) {
    std::vector<ShopTask> tasks;
    for (const RootCause& root : causes) {
        if (const std::optional<ShopTask> task = cure_task(root.cause)) add_task(tasks, *task);
    }
    return tasks;
}

std::vector<Cause> causes_left(const CostOption& option, const std::vector<RootCause>& causes) {
    std::vector<Cause> left;
    for (const RootCause& root : causes) {
        if (!cures_cause(option, root.cause)) left.push_back(root.cause);
    }
    return left;
}

}  // namespace endbell::inline cost
