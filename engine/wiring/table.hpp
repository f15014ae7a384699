// The wanted table and the small set arithmetic that both syntheses share.
#pragma once
#include <functional>

#include "engine/wiring/synthesis.hpp"

namespace endbell::inline wiring {

std::vector<int> members(SignalSet set);

/// Position p of coils on `signals`, as a set of signals; and the position that a state puts them in.
SignalSet spread(unsigned position, const std::vector<int>& signals);
unsigned position_in(SignalSet state, const std::vector<int>& signals);

/// All states in which exactly `live` of the coil signals `coils` are live.
std::vector<SignalSet> states_at(const TapTable& table, SignalSet coils, SignalSet live);

/// Does this state get what the table asks, when `tap` (0: none) is the tap the motor obeys?
bool serves(const TapTable& table, SignalSet state, int tap);

/// Source table.signals is the constant supply.
bool source_live(const TapTable& table, int source, SignalSet state);

/// Tries every set of coils, fewest first. Of the first size that works: fewest contacts, then fewest idle
/// states, then the lowest signals.
std::optional<Circuit> fewest(const TapTable& table,
                              const std::function<std::optional<Circuit>(SignalSet)>& build,
                              const std::function<int(const Circuit&)>& idle_states);

}  // namespace endbell::inline wiring
