// A motor's ratings against the supply it will meet.
#pragma once
#include <optional>
#include <vector>

#include "engine/match/rule.hpp"

namespace endbell {

/// The supply as far as the job tells it.
struct Supply {
    std::vector<Voltage> nominal;     // every nominal that the job leaves possible; empty: it says nothing
    std::optional<Voltage> measured;  // a live reading; a dead line is none
    bool from_reading = false;        // `nominal` is only the class nearest to the reading
    bool dead = false;                // there is a reading, and no motor could run on it
    Fact wanted;
};
Supply supply_of(const Question& question);

/// Ordered worst last.
enum class VoltageFit { good, below_range_a, far_from_plate, outside };

/// One plate voltage against one nominal and the live reading.
VoltageFit voltage_fit(const PlateVolts& plate, Voltage nominal, const Supply& supply, const Limits& limits);

/// The band's nearer edge to `volts`: what the reading would have to reach.
Voltage nearest_edge(const PlateVolts& plate, Voltage volts, const Limits& limits);

/// A motor's ratings, or the one voltage and power of a module.
std::vector<Rating> ratings_of(const Part& part);

/// The rating a person would use: volts that suit the supply, then the old power exactly, else the next
/// larger, else the largest below; then the nearest speed; then the first. Empty when there are no ratings.
std::optional<Rating> rating_in_use(const Question& question, const Part& part);

/// What that rating says, where it says it.
std::optional<Power> power_in_use(const Question& question, const Part& part);
std::optional<Current> amps_in_use(const Question& question, const Part& part);
std::optional<Speed> speed_in_use(const Question& question, const Part& part);

}  // namespace endbell
