#include "engine/airflow/duty.hpp"

#include <algorithm>

#include "engine/airflow/air_needs.hpp"
#include "engine/airflow/assumptions.hpp"
#include "engine/airflow/blower_fit.hpp"
#include "engine/airflow/duct_point.hpp"
#include "engine/airflow/serve_calls.hpp"
#include "engine/airflow/spread.hpp"

namespace endbell::inline airflow {

namespace {

std::optional<BlowerCurve> usable_table(const FailedUnit& job, const Facts& facts) {
    if (!job.equipment.blower_table || facts.belt.is(true) || !measured_static(job).known())
        return std::nullopt;
    return fit_blower(*job.equipment.blower_table).curve;
}

/// The target of the call that wants most; none unless each call's window is known.
std::optional<Airflow> most_wanted(const AirNeeds& needs) {
    std::optional<Airflow> most;
    for (const CallAir& call : needs.calls) {
        if (!has_window(call)) return std::nullopt;
        if (!most || call.target > *most) most = call.target;
    }
    return most;
}

/// Only its high tap lets an induction motor turn as fast as its plate says.
bool on_high_speed(const FailedUnit& job, const Facts& facts) {
    const Reading<Speed>& read = job.measured.speed;
    if (!read || !facts.speed || !facts.family || is_electronic(*facts.family)) return false;
    return *read >= *facts.speed * (1 - assumed::speed_reading);
}

}  // namespace

std::optional<Duty> measured_duty(const FailedUnit& job, const Facts& facts, const Limits& limits) {
    const MeasuredReadings& read = job.measured;
    if (!read.watts && !read.amps && !read.speed) return std::nullopt;
    if (!job.unit.load || *job.unit.load != Load::indoor_blower) return std::nullopt;
    const AirNeeds needs = air_needs(job, facts, limits);
    const std::optional<BlowerCurve> table = usable_table(job, facts);
    const DuctPoint point = find_point(job, facts, needs, table ? &*table : nullptr).point;
    if (!point.torque.known() || point.torque_from == TorqueSource::plate_power) return std::nullopt;
    const std::optional<Airflow> most = point.airflow.known() ? most_wanted(needs) : std::nullopt;
    const double ratio = most ? *most / point.airflow.value() : 1;
    const double by_air = most ? point.airflow.relative() : 0;
    Duty duty;
    duty.from = *point.torque_from;
    duty.largest = most || on_high_speed(job, facts);
    duty.torque = estimate(point.torque.value() * (ratio * ratio),
                           root_sum({point.torque.relative(), 2 * by_air}), point.torque.assumed());
    if (point.speed.known()) {
        const Power shaft = shaft_power(point.torque.value(), point.speed.value());
        duty.shaft = estimate(shaft * (ratio * ratio * ratio),
                              root_sum({point.torque.relative(), point.speed.relative(), 3 * by_air}),
                              point.torque.assumed() || point.speed.assumed());
    }
    return duty;
}

}  // namespace endbell::inline airflow
