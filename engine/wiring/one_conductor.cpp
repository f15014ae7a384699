#include <algorithm>

#include "engine/base/ensure.hpp"
#include "engine/wiring/synthesis.hpp"

namespace endbell::inline wiring {

namespace {

/// At one position the conductor has one source and one tap. `taps[s]` are the taps that source s may lead
/// to.
struct Permitted {
    std::vector<Leaves> taps;
    Leaves sources() const {
        Leaves set = 0;
        for (std::size_t s = 0; s < taps.size(); ++s) {
            if (taps[s] != 0) set |= Leaves{1} << s;
        }
        return set;
    }
};

Permitted permitted_at(const TapTable& table, Sources sources, SignalSet coils, SignalSet live) {
    Permitted result;
    const std::vector<SignalSet> states = states_at(table, coils, live);
    for (int source = 0; source <= table.signals; ++source) {
        Leaves taps = 0;
        if (source == table.signals ? sources.supply : sources.signals) {
            for (int tap = 0; tap <= table.highest_tap; ++tap) {
                const bool good = std::all_of(states.begin(), states.end(), [&](SignalSet state) {
                    return serves(table, state, source_live(table, source, state) ? tap : 0);
                });
                if (good) taps |= Leaves{1} << tap;
            }
        }
        result.taps.push_back(taps);
    }
    return result;
}

std::optional<Circuit> one_conductor_with(const TapTable& table, Sources sources, SignalSet coils) {
    Circuit circuit;
    circuit.coils = members(coils);
    const int count = static_cast<int>(circuit.coils.size());
    std::vector<Permitted> permitted;
    std::vector<Leaves> choices;
    for (unsigned p = 0; p < 1u << count; ++p) {
        permitted.push_back(permitted_at(table, sources, coils, spread(p, circuit.coils)));
        choices.push_back(permitted.back().sources());
        if (choices.back() == 0) return std::nullopt;
    }
    circuit.source_tree = smallest_tree(count, choices);
    for (unsigned p = 0; p < 1u << count; ++p) {
        choices[p] = permitted[p].taps[static_cast<std::size_t>(circuit.source_tree->leaf_at(p))];
    }
    circuit.tap_trees.emplace_back(-1, smallest_tree(count, choices));
    return circuit;
}

/// States that do not occur, have something live, and find no tap: harmless, but a lost wire looks like them.
int idle_states(const TapTable& table, const Circuit& circuit) {
    int idle = 0;
    for (SignalSet state = 1; state < 1u << table.signals; ++state) {
        if (table.wanted[state]) continue;
        const unsigned position = position_in(state, circuit.coils);
        const bool fed = source_live(table, circuit.source_tree->leaf_at(position), state);
        if (!fed || circuit.tap_trees.front().second.leaf_at(position) == 0) ++idle;
    }
    return idle;
}

}  // namespace

std::optional<Circuit> one_conductor(const TapTable& table, Sources sources) {
    ensure(table.wanted.size() == std::size_t{1} << table.signals, "a wanted tap for every state");
    return fewest(
        table, [&](SignalSet coils) { return one_conductor_with(table, sources, coils); },
        [&](const Circuit& c) { return idle_states(table, c); });
}

}  // namespace endbell::inline wiring
