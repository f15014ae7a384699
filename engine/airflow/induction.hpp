// Induction motors as fans see them: synchronous speed, slip, and torque between the two.
#pragma once
#include <optional>

#include "engine/airflow/blower.hpp"
#include "engine/units/units.hpp"

namespace endbell::inline airflow {

/// Torque falls in a straight line from full load at `rated` to nothing at `synchronous`; `strength` is what
/// a lower tap or a lower voltage (its square) leaves of it. Good near full load; real motors bend and peak
/// below it.
struct SlipLine {
    Speed synchronous;
    Speed rated;
    Torque full_load;
    double strength = 1;
    Torque at(Speed speed) const;
};
InductionMotor motor_of(const SlipLine& line);

/// The strength of a tap whose printed speed was taken on the fan that loads the high tap fully:
/// (n/nR)^2 (ns - nR)/(ns - n). REQUIRES: speed below synchronous.
double strength_of_tap(const SlipLine& high, Speed tap_speed);

/// Where the line meets a fan that takes `known` torque at `at` and more with the square of speed.
Speed settle(const SlipLine& line, Torque known, Speed at);

/// Kloss form: torque peaks at `breakdown_torque` when the slip is `breakdown_slip` (0.2 to 0.35 for fan-duty
/// motors).
struct BreakdownCurve {
    Speed synchronous;
    Torque breakdown_torque;
    double breakdown_slip = 0.25;
    double voltage = 1;  // fraction of rated; torque goes with its square
    Torque at(Speed speed) const;
};
InductionMotor motor_of(const BreakdownCurve& curve);

}  // namespace endbell::inline airflow
