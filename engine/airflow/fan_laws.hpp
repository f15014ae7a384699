// One wheel on one duct in one density of air: flow goes with speed, pressure and torque with its square,
// shaft power with its cube. Source: fan affinity laws. Exact only where the duct has no fixed-pressure part.
#pragma once
#include "engine/units/units.hpp"

namespace endbell::inline airflow {

/// A fan's running point. Torque follows from power and speed.
struct FanPoint {
    Airflow airflow;
    Pressure pressure;
    Speed speed;
    Power shaft;
};

constexpr double cube(double x) {
    return x * x * x;
}

/// The same fan and duct with every speed multiplied by `speed_ratio`.
constexpr FanPoint scaled(const FanPoint& point, double speed_ratio) {
    return {point.airflow * speed_ratio, point.pressure * (speed_ratio * speed_ratio),
            point.speed * speed_ratio, point.shaft * cube(speed_ratio)};
}

/// The shaft torque that moves `wanted` where `torque` moves `airflow`: T2 = T1 (Q2 / Q1)^2.
constexpr Torque torque_for(Airflow wanted, Torque torque, Airflow airflow) {
    const double ratio = wanted / airflow;
    return torque * (ratio * ratio);
}

/// The airflow of a torque on the same duct: Q2 = Q1 sqrt(T2 / T1). REQUIRES: both torques above 0.
Airflow airflow_at(Torque torque, Torque known_torque, Airflow known_airflow);

}  // namespace endbell::inline airflow
