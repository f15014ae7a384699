// A part's ratings against the supply that it will meet, and the one that is in use.
#pragma once
#include <optional>
#include <string_view>
#include <vector>

#include "engine/facts/facts.hpp"
#include "engine/model/part.hpp"

namespace endbell::inline facts {

/// Ordered worst last.
enum class VoltageFit { good, below_range_a, far_from_plate, outside };

/// One plate voltage against one nominal and the live reading.
VoltageFit voltage_fit(const PlateVolts& plate, Voltage nominal, const Supply& supply, const Limits& limits);

/// A nominal at the motor, and the live reading, lie in its band.
bool suits(const PlateVolts& plate, const Supply& supply, const Limits& limits);

/// The band's nearer edge to `volts`: what the reading would have to reach.
Voltage nearest_edge(const PlateVolts& plate, Voltage volts, const Limits& limits);

/// A motor's ratings, or the one voltage and power of a module.
std::vector<Rating> ratings_of(const Part& part);

/// The rating a person would use: volts that suit the supply, then the old power exactly, else the next
/// larger, else the largest below; then the nearest speed; then the first. Empty when there are no ratings.
std::optional<Rating> rating_in_use(const Facts& facts, const Part& part, const Limits& limits);

/// Phases that the part's plate says, or its family has by construction; `disagree` where these differ.
DerivedFact<int> phase_of(const Motor& motor);
/// Pole count that the part's plate says, or that follows from the rated speed in use.
DerivedFact<int> poles_of(const Motor& motor, std::optional<Speed> rated);
/// What the motor is made to drive, as the catalog says it; else its own shaft, where its kind or the air that must pass over
/// it ties it to one (common practice).
DerivedFact<Drive> drive_of(const Motor& motor);
/// The number in a NEMA frame: 56 of "56HZ". The letters behind it tell of the shaft and of more holes in the same feet.
std::optional<int> frame_number(std::string_view frame);
/// What tells the part to run: as the catalog states it, or as its family has it by construction.
DerivedFact<SignalClass> signal_of(const Motor& motor);
/// Whether the motor is sold with all of its electronics. What the catalog states stands, of an induction motor apart, which
/// has none; of a motor in one piece it need not be stated, of one in two pieces it must.
DerivedFact<bool> includes_module(const Motor& motor);

}  // namespace endbell::inline facts
