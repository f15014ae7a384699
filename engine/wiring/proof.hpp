// The intended table against the simulator, state by state; then fault by fault.
#pragma once
#include "engine/wiring/nodal.hpp"

namespace endbell::inline wiring {

/// One row a state of the signals, 2^n in all. A row holds when the simulator finds the wanted tap obeyed
/// where the state is reachable; at most one tap live where the part does not say that the highest wins; no
/// elements without air; no back-feed, short circuit or mixed voltage. Under "one board output at a time"
/// states with several live outputs are the board's to prevent, and hold for that reason.
std::vector<TruthRow> prove(const WiringPlan& plan);
bool all_hold(const std::vector<TruthRow>& truth);

/// Every relay coil open, every contact stuck either way, every control wire off, every common lost, one at a time; by relay
/// logic and by volts. A relay that is left half drawn in counts both ways.
std::vector<FaultRow> single_faults(const WiringPlan& plan, const ElectricalLoads& loads);

}  // namespace endbell::inline wiring
