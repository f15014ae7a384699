// The states of one thermostat, by the kind of heat that it commands.
#pragma once
#include <optional>
#include <vector>

#include "engine/wiring/states.hpp"

namespace endbell::inline wiring {

/// A heat call may mean elements: they are in, or nobody has said that beside a heat pump there are none.
bool may_run_elements(const Heat& heat);

/// What a board's run signal makes with no thermostat wire live. REQUIRES: heat.kind.
std::vector<Demand> run_signal_demands(const std::vector<ControlSignal>& signals,
                                       const ControlReadings& facts, const Heat& heat);

/// REQUIRES: heat.kind. `gated`: a board's run signal decides when the motor runs, so that even without a call a tap must be
/// live: the board runs on after a call, and while a limit is open.
std::vector<Demand> thermostat_demands(const std::vector<ControlSignal>& signals,
                                       const ControlReadings& facts, const Heat& heat, bool gated);

/// What keeps `live` away, a set that no demand stands for.
Interlock what_keeps_away(SignalSet live, const std::vector<ControlSignal>& signals,
                          const ControlReadings& facts, const Heat& heat);

}  // namespace endbell::inline wiring
