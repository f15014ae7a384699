// The old motor's duty: what its fan really asks of a shaft. Where it was measured, motors are judged by it and not by a plate,
// which only says what the old motor could have done.
#pragma once
#include <optional>
#include <vector>

#include "engine/airflow/air_plan.hpp"

namespace endbell::inline airflow {

struct Duty {
    Estimate<Torque> torque;
    Estimate<Power> shaft;  // not known without a speed
    TorqueSource from = TorqueSource::watts;
    /// It is what the largest call takes: worked out for that call's airflow, or read on the high speed. Otherwise another
    /// call may ask for more.
    bool largest = false;
};

/// From watts, amps, speed or airflow; none where nothing was measured that tells it, and of anything but an indoor blower.
/// Where the airflow is known and so is each call's window, the duty of the largest call (the square and the cube of the
/// airflows' ratio, on the same duct); else as it was read.
std::optional<Duty> measured_duty(const FailedUnit& job, const Facts& facts, const Limits& limits);

}  // namespace endbell::inline airflow
