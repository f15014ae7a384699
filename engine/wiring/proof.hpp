// The intended table against the simulator, state by state; then fault by fault.
#pragma once
#include "engine/wiring/nodal.hpp"

namespace endbell::inline wiring {

/// One row a state of the signals, 2^n in all. A row holds when the simulator finds the wanted tap obeyed
/// where the state is reachable; at most one tap live where the part does not say that the highest wins; no
/// elements, burner or compressor without air; no back-feed, short circuit or mixed voltage.
std::vector<TruthRow> prove(const WiringPlan& plan);

/// Every row holds, or the plan's condition keeps it away: "one board output at a time" does not make a row with two live
/// outputs hold, but names what prevents it. There too the wires do only what the circuit means.
bool is_proven(const std::vector<TruthRow>& truth);

/// Every relay coil open, every contact stuck either way, every control wire off, every common lost, one at a time; by relay
/// logic and by volts. A relay that is left half drawn in counts both ways.
std::vector<FaultRow> single_faults(const WiringPlan& plan, const ElectricalLoads& loads);

}  // namespace endbell::inline wiring
