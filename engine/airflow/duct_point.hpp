// What the old motor did on this duct, from whatever was read: airflow, static, speed, shaft torque.
#pragma once
#include <optional>
#include <string>
#include <vector>

#include "engine/airflow/air_needs.hpp"
#include "engine/airflow/blower.hpp"

namespace endbell {

struct FoundPoint {
    DuctPoint point;
    std::vector<std::string> lacking;  // job keys, the easiest reading first
    std::vector<std::string> assumed;  // job keys
    bool usable() const { return point.airflow.known && point.torque.known; }
};

/// Airflow: the reading; else heat output over rise; else speed and static on `blower`.
/// Shaft torque, best first: `blower` at the measured speed; watts times efficiency; the slip line at the
/// measured speed; amps; the plate's power as an upper bound (assumed, wide). `blower` may be null.
FoundPoint find_point(const FailedUnit& job, const AirNeeds& needs, const BlowerCurve* blower);

/// Measured total, or supply less return (the return side reads negative); unknown unless above 0.
Estimate measured_static(const FailedUnit& job);

}  // namespace endbell
