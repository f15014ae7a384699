// Where a plan ends before there is one.
#pragma once
#include <string>
#include <vector>

#include "engine/wiring/kinds.hpp"

namespace endbell::inline wiring {

/// Why a stage stops, and what would let it go on. The first stage that has one ends the plan.
struct NoWiring {
    WiringRefusal why;
    std::vector<WiringRescue> rescues = {};
    std::vector<std::string> lacking = {};  // job keys or part columns
    std::vector<Call> calls = {};           // that it is about
    std::vector<std::string> terminals = {};
};

}  // namespace endbell::inline wiring
