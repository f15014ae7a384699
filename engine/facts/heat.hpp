// What heats, and how much: by fuel, altitude and clock, or by elements, their rated volts and the volts at work.
#pragma once
#include "engine/facts/facts.hpp"

namespace endbell::inline facts {

/// `supply` is the motor's; elements hang on the same one where it has their class.
Heat heat_of(const FailedUnit& job, const Supply& supply, const Limits& limits);

}  // namespace endbell::inline facts
