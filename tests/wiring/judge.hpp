// What is wrong with a plan as it is printed: its wires by volts, held against what was drawn. The volts are those of the
// witness (nodal.hpp); which states want air, what a tap may be called by, which conductors the part needs and what a
// transformer carries are said here once more. Nothing is asked of the planner, its simulator or its proof.
#pragma once
#include <string>

#include "tests/wiring/drawn.hpp"

namespace fixture {

/// Empty: nothing.
std::string fault_of(const WiringPlan& plan, const DrawnJob& drawn);

}  // namespace fixture
