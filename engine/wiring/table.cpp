#include "engine/wiring/table.hpp"

namespace endbell::inline wiring {

TapTable table_of(const std::vector<ControlState>& states, int signals, int highest_tap, SignalSet must_run) {
    TapTable table;
    table.signals = signals;
    table.highest_tap = highest_tap;
    table.must_run = must_run;
    table.wanted.resize(std::size_t{1} << signals);
    for (const ControlState& s : states) table.wanted[s.live] = s.by_default ? 0 : s.wanted_tap;
    return table;
}

std::vector<int> members(SignalSet set) {
    std::vector<int> all;
    for (int i = 0; set >> i != 0; ++i) {
        if (set >> i & 1u) all.push_back(i);
    }
    return all;
}

SignalSet spread(unsigned position, const std::vector<int>& signals) {
    SignalSet set = 0;
    for (std::size_t i = 0; i < signals.size(); ++i) {
        if (position >> i & 1u) set |= 1u << signals[i];
    }
    return set;
}

unsigned position_in(SignalSet state, const std::vector<int>& signals) {
    unsigned position = 0;
    for (std::size_t i = 0; i < signals.size(); ++i) position |= (state >> signals[i] & 1u) << i;
    return position;
}

std::vector<SignalSet> states_at(const TapTable& table, SignalSet coils, SignalSet live) {
    std::vector<SignalSet> states;
    for (SignalSet s = 0; s < 1u << table.signals; ++s) {
        if ((s & coils) == live) states.push_back(s);
    }
    return states;
}

bool serves(const TapTable& table, SignalSet state, int tap) {
    const std::optional<int>& wanted = table.wanted[state];
    if (wanted && *wanted != tap) return false;
    return tap != 0 || (state & table.must_run) == 0 || (wanted && *wanted == 0);
}

bool source_live(const TapTable& table, int source, SignalSet state) {
    return source == table.signals || (state >> source & 1u) != 0;
}

}  // namespace endbell::inline wiring
