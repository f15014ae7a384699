// A furnace with cooling whose blower was read before it died, and motors to put on it. Invented for these
// tests.
#pragma once
#include <boost/test/unit_test.hpp>
#include <ostream>
#include <string>
#include <vector>

#include "engine/airflow/air_plan.hpp"
#include "engine/airflow/blower.hpp"

namespace endbell {

// Boost.Test prints a named value by its word.
template <class E>
requires requires {
    Words<E>::table;
}
std::ostream& operator<<(std::ostream& out, E value) {
    return out << word(value);
}
template <class E>
requires requires {
    Words<E>::table;
}
std::ostream& operator<<(std::ostream& out, const std::optional<E>& value) {
    return out << word(value);
}

}  // namespace endbell

namespace endbell::test {

inline const Limits limits;  // the program's own

/// As the engine's, with the facts of the job.
inline AirPlan plan_air(const FailedUnit& job, const Part& part, const Limits& in_force) {
    return endbell::plan_air(job, facts_of(job, in_force), part, in_force);
}

inline bool has(const std::vector<std::string>& list, const std::string& word) {
    for (const std::string& one : list) {
        if (one == word) return true;
    }
    return false;
}

/// RB-1, the reference blower of docs/explanation/physics.md: invented, not any real unit.
inline BlowerCurve reference_blower() {
    return {1.10, 0, 0.40, 0.36, 1.12, 0.22};
}

/// 3 tons, 64,000 Btu/h at 35 to 65 F, at sea level: read at 1,145.6 cfm and 0.6507 in.; 1,097.67 rpm is
/// 102.33 of 125 rpm of slip, so 32 of the 39.09 oz-ft of 1/2 hp at 1,075.
inline FailedUnit furnace() {
    FailedUnit job;
    job.unit.load = known(Load::indoor_blower);
    job.plate.family = known(Family::capacitor_run);
    job.plate.power = known(std::vector<Power>{horsepower(0.5)});
    job.plate.speed = known(rpm(1075));
    job.equipment.cooling = known(ton_cooling(3));
    job.equipment.heat_output = known(btu_per_hour(64000));
    job.equipment.rise_low = known(fahrenheit_degree(35));
    job.equipment.rise_high = known(fahrenheit_degree(65));
    job.equipment.altitude = known(foot(0));
    job.equipment.return_air = known(Temperature::fahrenheit(70));
    job.equipment.climate = known(Climate::normal);
    job.equipment.supply = known(bare_supply(volt(120)));
    job.controls.heat = known(HeatKind::gas);
    job.measured.airflow = known(cfm(1145.6));
    job.measured.static_total = known(inch_water(0.6507));
    job.measured.speed = known(rpm(1097.67));
    return job;
}

inline Part motor_part(Family family, double hp) {
    Part part;
    part.id = "M";
    part.motor = Motor{};
    part.motor->family = family;
    Rating rating;
    rating.power = horsepower(hp);
    rating.volts = plate_volts(115);
    part.motor->ratings.push_back(rating);
    return part;
}

/// Taps 1.. hold these torques.
inline Part constant_torque(double hp, const std::vector<double>& ounce_feet) {
    Part part = motor_part(Family::constant_torque, hp);
    int number = 0;
    for (double torque : ounce_feet) {
        Tap tap;
        tap.number = ++number;
        tap.torque = ounce_foot(torque);
        part.motor->taps.push_back(tap);
    }
    return part;
}

/// Taps 1.. print these speeds; the last is the rated one.
inline Part capacitor_run(double hp, const std::vector<double>& speeds) {
    Part part = motor_part(Family::capacitor_run, hp);
    part.motor->ratings[0].speed = rpm(speeds.back());
    int number = 0;
    for (double speed : speeds) {
        Tap tap;
        tap.number = ++number;
        tap.speed = rpm(speed);
        part.motor->taps.push_back(tap);
    }
    return part;
}

}  // namespace endbell::test
