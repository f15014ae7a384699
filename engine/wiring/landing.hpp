// Where the plan's conductors meet the part: each tap, and the lead of the run signal.
#pragma once
#include "engine/wiring/wiring.hpp"

namespace endbell::inline wiring {

/// Fills `plan.taps` from its wires and states. A lead of a line-voltage motor that nothing feeds is live by its
/// winding: it is capped alone.
void land_taps(const Part& part, int highest_tap, WiringPlan& plan);

/// All outputs that used to feed the old motor meet on the run-signal lead; the board keeps its timing.
void wire_run_signal(const FailedUnit& job, const Part& part, WiringPlan& plan);

}  // namespace endbell::inline wiring
