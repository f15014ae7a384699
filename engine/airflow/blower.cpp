#include "engine/airflow/blower.hpp"

#include <algorithm>
#include <cmath>

#include "engine/base/ensure.hpp"

namespace endbell::inline airflow {

namespace {

constexpr double thousand = 1000.0;
double kilo(Airflow q) {
    return q.in(cfm) / thousand;
}
double kilo(Speed n) {
    return n.in(rpm) / thousand;
}

OperatingPoint point_at(const BlowerCurve& blower, const Duct& duct, Airflow q, double s) {
    OperatingPoint point;
    point.airflow = q;
    point.pressure = static_of(duct, q, s);
    point.speed = speed_for(blower, q, point.pressure, s);
    point.torque = torque_of(blower, point.speed, q, s);
    point.shaft = shaft_power(point.torque, point.speed);
    return point;
}

/// `rising(q)` goes from below 0 to above 0 once between the ends. 60 halvings leave 1e-14 of the span.
template <class Rising>
Airflow bisect(Rising rising, Airflow below, Airflow above) {
    for (int i = 0; i < 60; ++i) {
        const Airflow middle = (below + above) / 2;
        (rising(middle) < 0 ? below : above) = middle;
    }
    return (below + above) / 2;
}

constexpr Airflow least_airflow = cfm(1e-6);
constexpr Airflow most_airflow = cfm(1e6);  // no equipment of this trade comes near

/// How far a point lies over the nearest of its limits, as a ratio less 1; and which limit that is.
struct Excess {
    double over = -1;
    std::optional<MotorLimit> which;
    void watch(double ratio, MotorLimit limit) {
        if (ratio - 1 > over) *this = {ratio - 1, limit};
    }
};

Excess excess(const OperatingPoint& point, const MotorLimits& limits) {
    Excess most;
    if (limits.torque) most.watch(point.torque / *limits.torque, MotorLimit::torque);
    if (limits.speed) most.watch(point.speed / *limits.speed, MotorLimit::speed);
    if (limits.shaft) most.watch(point.shaft / *limits.shaft, MotorLimit::power);
    return most;
}

/// The airflow at which the first of `limits` is reached. Torque, speed and shaft power all rise along a
/// duct.
std::optional<OperatingPoint> run_to_limit(const BlowerCurve& blower, const Duct& duct,
                                           const MotorLimits& limits, double s) {
    auto over = [&](Airflow q) { return excess(point_at(blower, duct, q, s), limits).over; };
    if (over(least_airflow) >= 0 || over(most_airflow) <= 0) return std::nullopt;
    OperatingPoint point = point_at(blower, duct, bisect(over, least_airflow, most_airflow), s);
    point.bound = excess(point, limits).which;
    return point;
}

}  // namespace

Pressure static_of(const BlowerCurve& blower, Speed speed, Airflow airflow, double density_ratio) {
    const double n = kilo(speed), q = kilo(airflow);
    return inch_water(density_ratio *
                      (blower.static_nn * n * n + blower.static_nq * n * q - blower.static_qq * q * q));
}

Torque torque_of(const BlowerCurve& blower, Speed speed, Airflow airflow, double density_ratio) {
    const double n = kilo(speed), q = kilo(airflow);
    return pound_foot(density_ratio *
                      (blower.torque_nn * n * n + blower.torque_nq * n * q + blower.torque_qq * q * q));
}

Speed speed_for(const BlowerCurve& blower, Airflow airflow, Pressure pressure, double density_ratio) {
    ensure(blower.static_nn > 0, "a blower's static rises with its speed");
    const double q = kilo(airflow), half = blower.static_nq * q / 2;
    const double rest = pressure.in(inch_water) / density_ratio + blower.static_qq * q * q;
    const double root = half * half + blower.static_nn * rest;
    return rpm(thousand * (std::sqrt(std::max(root, 0.0)) - half) / blower.static_nn);
}

std::optional<Airflow> airflow_for(const BlowerCurve& blower, Speed speed, Pressure pressure,
                                   double density_ratio) {
    auto short_of = [&](Airflow q) {
        return (pressure - static_of(blower, speed, q, density_ratio)).in(inch_water);
    };
    if (blower.static_qq <= 0 || short_of(least_airflow) >= 0) return std::nullopt;
    return bisect(short_of, least_airflow, most_airflow);
}

Pressure static_of(const Duct& duct, Airflow airflow, double density_ratio) {
    const double q = kilo(airflow);
    return duct.fixed + inch_water(density_ratio * duct.resistance * q * q);
}

Duct duct_through(Airflow airflow, Pressure pressure, double density_ratio, Pressure fixed) {
    const double q = kilo(airflow);
    ensure(q > 0 && density_ratio > 0, "a measured duct point has an airflow");
    return {fixed, (pressure - fixed).in(inch_water) / (density_ratio * q * q)};
}

std::optional<OperatingPoint> run_constant_torque(const BlowerCurve& blower, const Duct& duct, Torque tap,
                                                  const MotorLimits& limits, double density_ratio) {
    MotorLimits all = limits;
    all.torque = limits.torque ? std::min(tap, *limits.torque) : tap;
    std::optional<OperatingPoint> point = run_to_limit(blower, duct, all, density_ratio);
    const bool as_set = point && point->bound == MotorLimit::torque && *all.torque == tap;
    if (as_set) point->bound.reset();
    return point;
}

std::optional<OperatingPoint> run_constant_airflow(const BlowerCurve& blower, const Duct& duct, Airflow set,
                                                   const MotorLimits& limits, double density_ratio) {
    const OperatingPoint wanted = point_at(blower, duct, set, density_ratio);
    if (excess(wanted, limits).over <= 0) return wanted;
    return run_to_limit(blower, duct, limits, density_ratio);
}

std::optional<OperatingPoint> run_induction(const BlowerCurve& blower, const Duct& duct,
                                            const InductionMotor& motor, double density_ratio) {
    auto surplus = [&](Airflow q) {
        const OperatingPoint point = point_at(blower, duct, q, density_ratio);
        if (point.speed >= motor.synchronous) return 1.0;
        return (point.torque - motor.torque(point.speed)).in(pound_foot);
    };
    auto overspeed = [&](Airflow q) {
        return (speed_for(blower, q, static_of(duct, q, density_ratio), density_ratio) - motor.synchronous)
            .in(rpm);
    };
    if (overspeed(least_airflow) >= 0)
        return std::nullopt;  // the static alone asks for more than synchronous speed
    const Airflow top = bisect(overspeed, least_airflow, most_airflow);
    constexpr int steps = 400;
    for (int i = steps - 1; i >= 0; --i) {
        const Airflow below = i == 0 ? least_airflow : top * (double(i) / steps);
        if (surplus(below) >= 0) continue;
        return point_at(blower, duct, bisect(surplus, below, top * (double(i + 1) / steps)), density_ratio);
    }
    return std::nullopt;
}

}  // namespace endbell::inline airflow
