#include "engine/airflow/prediction.hpp"

#include <algorithm>
#include <cmath>

#include "engine/airflow/assumptions.hpp"
#include "engine/airflow/electric.hpp"
#include "engine/airflow/spread.hpp"
#include "engine/base/ensure.hpp"

namespace endbell::inline airflow {

namespace {

// Stand-ins where the point's static or speed is unknown: they cancel out of every airflow on the same duct,
// and the answer's own static or speed is marked unknown.
constexpr Pressure any_static = inch_water(0.5);
constexpr Speed any_speed = rpm(1000);

template <class Q>
Q value_or(const Estimate<Q>& estimate, Q otherwise) {
    return estimate.known() ? estimate.value() : otherwise;
}
template <class Q>
double share_of(const Estimate<Q>& estimate) {
    return estimate.known() ? estimate.relative() : 0.0;
}

/// What the square-root law may be off by where the duct has a fixed-pressure part.
double fixed_part_share(double torque_ratio) {
    const double off = (1 - torque_ratio) / 0.75;
    return assumed::fixed_part_at_quarter * off * off;
}

/// Sum of squared changes of each answer as the inputs move one at a time.
struct Spread {
    double airflow = 0, pressure = 0, speed = 0, torque = 0;
    void add(const OperatingPoint& middle, const OperatingPoint& moved) {
        auto square = [](double ratio) { return (ratio - 1) * (ratio - 1); };
        airflow += square(moved.airflow / middle.airflow);
        pressure += square(moved.pressure / middle.pressure);
        speed += square(moved.speed / middle.speed);
        torque += square(moved.torque / middle.torque);
    }
};

}  // namespace

BlowerCurve reference_shape(Airflow airflow, Pressure pressure, Speed speed, Torque torque,
                            double density_ratio) {
    // Static at the reference point: 1.10 n^2 - 0.40 Q^2 = 0.50 at 0.98903 krpm and 1.2 kcfm, so 2.152
    // and 1.152 of it.
    const double n = speed.in(rpm) / 1000, q = airflow.in(cfm) / 1000;
    const double e = pressure.in(inch_water) / density_ratio, t = torque.in(pound_foot) / density_ratio;
    return {2.152 * e / (n * n), 0, 1.152 * e / (q * q), 0.17 * t / (n * n), 0.67 * t / (n * q),
            0.16 * t / (q * q)};
}

Prediction::Prediction(const DuctPoint& point, const BlowerCurve* table, double density_ratio)
    : point_(point), density_ratio_(density_ratio) {
    if (table && point.static_total.known()) table_ = *table;
    ensure(point.airflow.known() && (table_ || point.torque.known()),
           "a prediction starts from a measured airflow and torque");
}

Scene Prediction::scene(const Shift& shift) const {
    const Airflow airflow = point_.airflow.value() * shift.airflow;
    const Pressure pressure = value_or(point_.static_total, any_static) * shift.pressure;
    Scene scene;
    scene.density_ratio = density_ratio_;
    scene.duct = duct_through(airflow, pressure, density_ratio_);
    if (table_) {
        scene.blower = *table_;
        scene.blower.torque_nn *= shift.torque;
        scene.blower.torque_nq *= shift.torque;
        scene.blower.torque_qq *= shift.torque;
    } else {
        scene.blower = reference_shape(airflow, pressure, value_or(point_.speed, any_speed) * shift.speed,
                                       point_.torque.value() * shift.torque, density_ratio_);
    }
    return scene;
}

std::optional<TapAir> Prediction::settle_with(const Solve& solve, double setting_share) const {
    const std::optional<OperatingPoint> middle = solve(scene({}), 1);
    if (!middle) return std::nullopt;
    const double by_torque = table_ ? assumed::torque_by_table : point_.torque.relative();
    const Shift shifts[] = {{1 + share_of(point_.airflow), 1, 1, 1, 1},
                            {1, 1 + share_of(point_.static_total), 1, 1, 1},
                            {1, 1, table_ ? 1 : 1 + share_of(point_.speed), 1, 1},
                            {1, 1, 1, 1 + by_torque, 1},
                            {1, 1, 1, 1, 1 + setting_share}};
    Spread spread;
    for (const Shift& shift : shifts) {
        if (const auto moved = solve(scene(shift), shift.setting)) spread.add(*middle, *moved);
    }
    const double flow_ratio = middle->airflow / point_.airflow.value();
    const double fixed = fixed_part_share(flow_ratio * flow_ratio);
    const bool guess = point_.airflow.assumed() || (!table_ && point_.torque.assumed());
    const bool speed_known = table_ || point_.speed.known();
    TapAir tap;
    tap.bound = middle->bound;
    tap.airflow = estimate(middle->airflow, root_sum({std::sqrt(spread.airflow), fixed}), guess);
    tap.torque = estimate(middle->torque, std::sqrt(spread.torque), guess);
    if (speed_known) {
        tap.speed = estimate(middle->speed, root_sum({std::sqrt(spread.speed), fixed}),
                             guess || (!table_ && point_.speed.assumed()));
    }
    if (point_.static_total.known()) {
        tap.static_total =
            estimate(middle->pressure, root_sum({std::sqrt(spread.pressure), 2 * fixed}), guess);
    }
    return tap;
}

MotorLimits Prediction::watched(const MotorLimits& limits) const {
    return table_ || point_.speed.known() ? limits : MotorLimits{std::nullopt, std::nullopt, limits.torque};
}

std::optional<TapAir> Prediction::hold_torque(Torque tap, const MotorLimits& limits) const {
    const MotorLimits seen = watched(limits);
    return settle_with(
        [&](const Scene& s, double setting) {
            return run_constant_torque(s.blower, s.duct, tap * setting, seen, s.density_ratio);
        },
        assumed::tap_torque);
}

std::optional<TapAir> Prediction::hold_airflow(Airflow set, const MotorLimits& limits) const {
    const MotorLimits seen = watched(limits);
    return settle_with(
        [&](const Scene& s, double setting) {
            return run_constant_airflow(s.blower, s.duct, set * setting, seen, s.density_ratio);
        },
        assumed::airflow_reading);
}

std::optional<TapAir> Prediction::spin(const SlipLine& line) const {
    return settle_with(
        [&](const Scene& s, double setting) {
            SlipLine moved = line;
            moved.strength *= setting;
            return run_induction(s.blower, s.duct, motor_of(moved), s.density_ratio);
        },
        assumed::torque_by_slip);
}

TapAir Prediction::turn_at(const DuctPoint& point, Speed speed) {
    const double ratio = speed / point.speed.value();
    const double by_ratio = root_sum({point.speed.relative(), assumed::tap_speed});
    const bool guess = point.airflow.assumed() || point.speed.assumed();
    TapAir tap;
    tap.airflow =
        estimate(point.airflow.value() * ratio, root_sum({point.airflow.relative(), by_ratio}), guess);
    tap.speed = estimate(speed, assumed::tap_speed);
    if (point.static_total.known()) {
        tap.static_total = estimate(point.static_total.value() * ratio * ratio,
                                    root_sum({point.static_total.relative(), 2 * by_ratio}), guess);
    }
    if (point.torque.known()) {
        tap.torque =
            estimate(point.torque.value() * ratio * ratio, root_sum({point.torque.relative(), 2 * by_ratio}),
                     guess || point.torque.assumed());
    }
    return tap;
}

}  // namespace endbell::inline airflow
