// The wanted table, and the small set arithmetic that every synthesis shares.
#pragma once
#include <optional>
#include <vector>

#include "engine/wiring/wiring.hpp"

namespace endbell::inline wiring {

/// What is wanted of every state. Size 2^signals each.
struct TapTable {
    int signals = 0;
    int highest_tap = 0;                     // taps are 1..highest_tap
    std::vector<std::optional<int>> wanted;  // 0: no tap; none: the state does not occur
    SignalSet must_run = 0;  // a state with one of these live needs a live tap, occurring or not
};

/// The table of these states. REQUIRES: no two of them want different taps of the same signals.
TapTable table_of(const std::vector<ControlState>& states, int signals, int highest_tap, SignalSet must_run);

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

}  // namespace endbell::inline wiring
