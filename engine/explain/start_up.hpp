// What is read when it runs, and what the plan expects of each reading.
#pragma once
#include <string>
#include <vector>

#include "engine/select/select.hpp"

namespace endbell::inline explain {

struct StartUpReading {
    std::string what, expected;
};

/// Rotation first, then volts and amps, then each call by itself: what hurts most is read first.
std::vector<StartUpReading> start_up_readings(const FailedUnit& job, const Option& option);

}  // namespace endbell::inline explain
