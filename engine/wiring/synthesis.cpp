#include "engine/wiring/synthesis.hpp"

#include <algorithm>
#include <bit>
#include <tuple>

#include "engine/wiring/table.hpp"

namespace endbell::inline wiring {

namespace {

/// Every subset of n signals, fewest members first, then ascending.
std::vector<SignalSet> smallest_first(int signals) {
    std::vector<SignalSet> sets;
    for (SignalSet s = 0; s < 1u << signals; ++s) sets.push_back(s);
    std::stable_sort(sets.begin(), sets.end(),
                     [](SignalSet a, SignalSet b) { return std::popcount(a) < std::popcount(b); });
    return sets;
}

using Better = std::tuple<int, int, SignalSet>;  // contacts, states left idle, coils

}  // namespace

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

std::optional<Circuit> fewest(const TapTable& table,
                              const std::function<std::optional<Circuit>(SignalSet)>& build,
                              const std::function<int(const Circuit&)>& idle_states) {
    std::optional<Circuit> best;
    Better best_key;
    int size = 0;
    for (const SignalSet coils : smallest_first(table.signals)) {
        if (best && std::popcount(coils) > size) break;
        std::optional<Circuit> circuit = build(coils);
        if (!circuit) continue;
        const Better key{circuit->contacts(), idle_states(*circuit), coils};
        if (best && !(key < best_key)) continue;
        best = std::move(circuit);
        best_key = key;
        size = std::popcount(coils);
    }
    return best;
}

int Circuit::contacts() const {
    int count = source_tree ? source_tree->contacts() : 0;
    for (const auto& [source, tree] : tap_trees) count += tree.contacts();
    return count;
}

std::vector<int> Circuit::taps_in(SignalSet live, int signals) const {
    const unsigned position = position_in(live, coils);
    std::vector<int> taps;
    for (const auto& [source, tree] : tap_trees) {
        const int from = source < 0 ? source_tree->leaf_at(position) : source;
        const bool fed = from == signals || (live >> from & 1u) != 0;
        const int tap = tree.leaf_at(position);
        if (fed && tap != 0) taps.push_back(tap);
    }
    std::sort(taps.begin(), taps.end());
    return taps;
}

}  // namespace endbell::inline wiring
