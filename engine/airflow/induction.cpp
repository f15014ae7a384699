#include "engine/airflow/induction.hpp"

#include <cmath>

#include "engine/base/ensure.hpp"

namespace endbell::inline airflow {

Torque SlipLine::at(Speed speed) const {
    return full_load * (strength * ((synchronous - speed) / (synchronous - rated)));
}

InductionMotor motor_of(const SlipLine& line) {
    return {line.synchronous, [line](Speed speed) { return line.at(speed); }};
}

double strength_of_tap(const SlipLine& high, Speed tap_speed) {
    ensure(tap_speed < high.synchronous, "an induction motor runs below synchronous speed");
    const double ratio = tap_speed / high.rated;
    return ratio * ratio * ((high.synchronous - high.rated) / (high.synchronous - tap_speed));
}

Speed settle(const SlipLine& line, Torque known, Speed at) {
    // Fan torque rises and motor torque falls with speed, so they meet once between standstill and
    // synchronous.
    Speed below = rpm(0), above = line.synchronous;
    for (int i = 0; i < 60; ++i) {
        const Speed middle = (below + above) / 2;
        const double ratio = middle / at;
        (known * (ratio * ratio) < line.at(middle) ? below : above) = middle;
    }
    return (below + above) / 2;
}

Torque BreakdownCurve::at(Speed speed) const {
    const double slip = 1 - speed / synchronous;
    if (slip <= 0) return pound_foot(0);
    return breakdown_torque * (voltage * voltage * 2 / (slip / breakdown_slip + breakdown_slip / slip));
}

InductionMotor motor_of(const BreakdownCurve& curve) {
    return {curve.synchronous, [curve](Speed speed) { return curve.at(speed); }};
}

}  // namespace endbell::inline airflow
