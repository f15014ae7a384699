// The calls that the equipment needs, and those of them that no state of its controls gives.
#pragma once
#include <vector>

#include "engine/wiring/states.hpp"

namespace endbell::inline wiring {

/// Needed, and called by no state. A second stage of cooling may share the wire of the first where that calls the high
/// stage's air; a stage of a burner may not, whose rise would leave its range.
std::vector<Call> calls_without_a_wire(const FailedUnit& job, const Heat& heat, const Controls& controls,
                                       const MotorFeed& feed);

/// Signals that command the blower, and stand in no state that wants it to run.
std::vector<std::string> signals_without_a_state(const Controls& controls);

}  // namespace endbell::inline wiring
