// What the old motor did on this duct, from whatever was read: airflow, static, speed, shaft torque.
#pragma once
#include <optional>
#include <string>
#include <vector>

#include "engine/airflow/air_needs.hpp"
#include "engine/airflow/blower.hpp"

namespace endbell::inline airflow {

struct FoundPoint {
    DuctPoint point;
    std::vector<std::string> lacking;  // job keys, the easiest reading first
    std::vector<std::string> assumed;  // job keys
};

/// Airflow: the reading; else heat output over rise; else speed and static on `blower`.
/// Shaft torque: the best method of old_torque.hpp. `blower` may be null.
FoundPoint find_point(const FailedUnit& job, const Facts& facts, const AirNeeds& needs,
                      const BlowerCurve* blower);

/// What warmed the air while the rise was read: the middle where two outputs are possible, and how far off they may be.
struct Warmth {
    HeatRate heat;
    double share = 0;
    std::vector<std::string> asks;  // job keys that would decide between the two
};

/// None where no key says. Beside a compressor, whose output no plate tells, only a rise that the elements or the burner made
/// alone says anything.
std::optional<Warmth> heat_in_the_air(const FailedUnit& job, const Heat& heat);
/// A rise was read beside a compressor, and nobody said which heat ran.
bool rise_heat_open(const FailedUnit& job, const Heat& heat);

/// Supply less return: the sign carries the side, above the room before the duct, below it after. None where a sign is wrong.
std::optional<Pressure> static_of_halves(const MeasuredReadings& measured);
/// As stated, else of its halves.
std::optional<Pressure> total_static(const MeasuredReadings& measured);
/// The same with what a gauge leaves open; unknown unless above 0.
Estimate<Pressure> measured_static(const FailedUnit& job);

/// The external static that the equipment's plate allows, else limit static.plate_default.
Pressure allowed_static(const FailedUnit& job, const Limits& limits);

}  // namespace endbell::inline airflow
