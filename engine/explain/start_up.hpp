// What is read when it runs, and what the plan expects of each reading.
#pragma once
#include <optional>
#include <string>
#include <vector>

#include "engine/job/start_up_file.hpp"
#include "engine/select/select.hpp"

namespace endbell::inline explain {

struct StartUpReading {
    std::string what, expected;
    std::vector<StartUpLine> lines = {};  // that its record keeps; none: words, or read once
};

/// Rotation first, then volts and amps, then each call by itself: what hurts most is read first.
std::vector<StartUpReading> start_up_readings(const FailedUnit& job, const Selection& selection,
                                              const Option& option);

/// The form of its record, to be filled in.
std::string start_up_form(const FailedUnit& job, const Selection& selection, const Option& option);

/// "Static 0.52 in. w.c. at start-up, 0.81 now: filter, coil or duct has closed up."
std::string sentence(const SinceStartUp& since);

}  // namespace endbell::inline explain
