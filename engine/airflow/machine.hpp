// The new motor as this folder needs it: limits, taps, and what turns shaft power into watts.
#pragma once
#include <optional>
#include <vector>

#include "engine/airflow/blower.hpp"
#include "engine/airflow/induction.hpp"
#include "engine/facts/rating.hpp"
#include "engine/model/failed_unit.hpp"
#include "engine/model/part.hpp"

namespace endbell::inline airflow {

/// Torque for constant torque, speed for induction; absent: the catalog does not say.
struct TapSetting {
    int number = 0;
    std::optional<Torque> torque;
    std::optional<Speed> speed;
};

struct Machine {
    std::optional<Family> family;
    std::vector<TapSetting> taps;  // ascending number; a one-speed motor has one, numbered 1
    std::optional<Power> rated;
    std::optional<Speed> rated_speed;
    std::optional<Speed> synchronous;  // induction only
    std::optional<Speed> speed_limit;
    std::optional<double> efficiency;    // at rated load
    std::optional<double> power_factor;  // from rated amps, where they and the efficiency are printed
    std::optional<Voltage> volts;        // what it will run on
    double strength = 1;                 // (volts / rated volts)^2 where the supply lies below the rating
    double altitude_share = 1;           // of its rating: thin air cools it less
    int phases = 1;

    MotorLimits limits() const;
    /// The high tap's slip line; none unless it is an induction motor of known power, speed and poles.
    std::optional<SlipLine> slip_line() const;
};

/// What thin air leaves of a motor's rating: all of it up to limit altitude.motor_from.
double motor_share(const FailedUnit& job, const Limits& limits);

/// A module is its motor half's plate with the module's own power. Of several ratings, the one in use.
Machine machine_of(const Facts& facts, const Part& part, const Limits& limits);

}  // namespace endbell::inline airflow
