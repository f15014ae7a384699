#include "engine/wiring/synthesis.hpp"

#include <algorithm>
#include <bit>
#include <functional>
#include <tuple>

#include "engine/base/check.hpp"

namespace endbell {

namespace {

std::vector<int> members(SignalSet set) {
    std::vector<int> all;
    for (int i = 0; set >> i != 0; ++i) {
        if (set >> i & 1u) all.push_back(i);
    }
    return all;
}

/// Every subset of n signals, fewest members first, then ascending.
std::vector<SignalSet> smallest_first(int signals) {
    std::vector<SignalSet> sets;
    for (SignalSet s = 0; s < 1u << signals; ++s) sets.push_back(s);
    std::stable_sort(sets.begin(), sets.end(),
                     [](SignalSet a, SignalSet b) { return std::popcount(a) < std::popcount(b); });
    return sets;
}

/// Position p of coils on `signals`, as a set of signals.
SignalSet spread(unsigned position, const std::vector<int>& signals) {
    SignalSet set = 0;
    for (std::size_t i = 0; i < signals.size(); ++i) {
        if (position >> i & 1u) set |= 1u << signals[i];
    }
    return set;
}

/// All states in which exactly `live` of the coil signals `coils` are live.
std::vector<SignalSet> states_at(const TapTable& table, SignalSet coils, SignalSet live) {
    std::vector<SignalSet> states;
    for (SignalSet s = 0; s < 1u << table.signals; ++s) {
        if ((s & coils) == live) states.push_back(s);
    }
    return states;
}

/// Does this state get what the table asks, when `tap` (0: none) is the tap the motor obeys?
bool serves(const TapTable& table, SignalSet state, int tap) {
    const std::optional<int>& wanted = table.wanted[state];
    if (wanted && *wanted != tap) return false;
    return tap != 0 || (state & table.must_run) == 0 || (wanted && *wanted == 0);
}

using Better = std::tuple<int, int, SignalSet>;  // contacts, states left idle, coils

/// The first size of coil set that works, and of that size the best.
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

// ---- one conductor

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

bool source_live(const TapTable& table, int source, SignalSet state) {
    return source == table.signals || (state >> source & 1u) != 0;
}

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
        unsigned position = 0;
        for (std::size_t i = 0; i < circuit.coils.size(); ++i) {
            if (state >> circuit.coils[i] & 1u) position |= 1u << i;
        }
        const bool fed = source_live(table, circuit.source_tree->leaf_at(position), state);
        if (!fed || circuit.tap_trees.front().second.leaf_at(position) == 0) ++idle;
    }
    return idle;
}

// ---- highest tap wins

/// Where each source leads at one position: tap, or 0. Source table.signals is the supply.
using Ways = std::vector<int>;

bool ways_serve(const TapTable& table, const Ways& ways, const std::vector<SignalSet>& states) {
    return std::all_of(states.begin(), states.end(), [&](SignalSet state) {
        int highest = 0;
        for (int source = 0; source <= table.signals; ++source) {
            if (source_live(table, source, state))
                highest = std::max(highest, ways[static_cast<std::size_t>(source)]);
        }
        return serves(table, state, highest);
    });
}

/// Every way of leading sources to taps, no tap twice, that serves this position. Stops at `most`.
std::vector<Ways> all_ways(const TapTable& table, Sources sources, SignalSet coils, SignalSet live,
                           std::size_t most) {
    const std::vector<SignalSet> states = states_at(table, coils, live);
    std::vector<Ways> found;
    Ways ways(static_cast<std::size_t>(table.signals) + 1, 0);
    const std::function<void(int, Leaves)> extend = [&](int source, Leaves taken) {
        if (found.size() >= most) return;
        if (source > table.signals) {
            if (ways_serve(table, ways, states)) found.push_back(ways);
            return;
        }
        extend(source + 1, taken);
        if (source == table.signals ? !sources.supply : !sources.signals) return;
        for (int tap = 1; tap <= table.highest_tap; ++tap) {
            if (taken >> tap & 1u) continue;
            ways[static_cast<std::size_t>(source)] = tap;
            extend(source + 1, taken | Leaves{1} << tap);
            ways[static_cast<std::size_t>(source)] = 0;
        }
    };
    extend(0, 0);
    return found;
}

/// The ways at this position that differ least from those of its neighbours: branch and bound.
Ways nearest_ways(const TapTable& table, Sources sources, SignalSet coils, SignalSet live,
                  const std::vector<Ways>& neighbours) {
    const std::vector<SignalSet> states = states_at(table, coils, live);
    const std::size_t count = static_cast<std::size_t>(table.signals) + 1;
    Ways best, ways(count, 0);
    std::size_t bound = count * neighbours.size() + 1;
    const std::function<void(std::size_t, Leaves, std::size_t)> extend = [&](std::size_t source, Leaves taken,
                                                                             std::size_t cost) {
        if (cost >= bound) return;
        if (source == count) {
            if (!ways_serve(table, ways, states)) return;
            best = ways;
            bound = cost;
            return;
        }
        const bool open = static_cast<int>(source) == table.signals ? sources.supply : sources.signals;
        const auto lead_to = [&](int tap) {
            if (tap != 0 && (!open || (taken >> tap & 1u))) return;
            std::size_t changed = 0;
            for (const Ways& n : neighbours) changed += n[source] != tap ? 1 : 0;
            ways[source] = tap;
            extend(source + 1, tap != 0 ? taken | Leaves{1} << tap : taken, cost + changed);
        };
        const int usual = neighbours.front()[source];
        lead_to(usual);
        for (int tap = 0; tap <= table.highest_tap; ++tap) {
            if (tap != usual) lead_to(tap);
        }
        ways[source] = 0;
    };
    extend(0, 0, 0);
    check(!best.empty(), "a position that was found to have ways has a nearest one");
    return best;
}

/// The position with most states that occur: it leaves least choice, so the others are grown from it.
unsigned busiest_position(const TapTable& table, const std::vector<int>& signals) {
    std::vector<int> occurring(std::size_t{1} << signals.size(), 0);
    for (SignalSet state = 0; state < 1u << table.signals; ++state) {
        if (!table.wanted[state]) continue;
        unsigned position = 0;
        for (std::size_t i = 0; i < signals.size(); ++i) position |= (state >> signals[i] & 1u) << i;
        ++occurring[position];
    }
    return static_cast<unsigned>(std::max_element(occurring.begin(), occurring.end()) - occurring.begin());
}

/// From the ways at one position, coil by coil the least change: few contacts.
std::vector<Ways> grown_from(const TapTable& table, Sources sources, const std::vector<int>& signals,
                             unsigned start, const Ways& first) {
    const SignalSet coils = spread((1u << signals.size()) - 1, signals);
    std::vector<Ways> picked(std::size_t{1} << signals.size());
    picked[start] = first;
    for (unsigned step = 1; step < picked.size(); ++step) {
        const unsigned position = start ^ step;
        std::vector<Ways> neighbours;
        for (std::size_t i = 0; i < signals.size(); ++i) {
            const Ways& neighbour = picked[position ^ 1u << i];
            if (!neighbour.empty()) neighbours.push_back(neighbour);
        }
        picked[position] = nearest_ways(table, sources, coils, spread(position, signals), neighbours);
    }
    return picked;
}

Circuit circuit_of(const TapTable& table, SignalSet coils, const std::vector<Ways>& ways) {
    Circuit circuit;
    circuit.coils = members(coils);
    for (int source = 0; source <= table.signals; ++source) {
        std::vector<Leaves> leaves;
        bool used = false;
        for (const Ways& w : ways) {
            const int tap = w[static_cast<std::size_t>(source)];
            leaves.push_back(Leaves{1} << tap);
            used = used || tap != 0;
        }
        if (used)
            circuit.tap_trees.emplace_back(source,
                                           smallest_tree(static_cast<int>(circuit.coils.size()), leaves));
    }
    return circuit;
}

std::optional<Circuit> highest_wins_with(const TapTable& table, Sources sources, SignalSet coils) {
    const std::vector<int> signals = members(coils);
    const std::size_t positions = std::size_t{1} << signals.size();
    for (unsigned p = 0; p < positions; ++p) {
        if (all_ways(table, sources, coils, spread(p, signals), 1).empty()) return std::nullopt;
    }
    // Bounds the search for few contacts, never the search for few coils.
    const std::size_t most = std::max<std::size_t>(1, 1024 / positions);
    const unsigned start = busiest_position(table, signals);
    std::optional<Circuit> best;
    for (const Ways& first : all_ways(table, sources, coils, spread(start, signals), most)) {
        Circuit circuit = circuit_of(table, coils, grown_from(table, sources, signals, start, first));
        if (!best || circuit.contacts() < best->contacts()) best = std::move(circuit);
    }
    return best;
}

}  // namespace

int Circuit::contacts() const {
    int count = source_tree ? source_tree->contacts() : 0;
    for (const auto& [source, tree] : tap_trees) count += tree.contacts();
    return count;
}

std::vector<int> Circuit::taps_in(SignalSet live, int signals) const {
    unsigned position = 0;
    for (std::size_t i = 0; i < coils.size(); ++i) {
        if (live >> coils[i] & 1u) position |= 1u << i;
    }
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

std::optional<Circuit> one_conductor(const TapTable& table, Sources sources) {
    check(table.wanted.size() == std::size_t{1} << table.signals, "a wanted tap for every state");
    return fewest(
        table, [&](SignalSet coils) { return one_conductor_with(table, sources, coils); },
        [&](const Circuit& c) { return idle_states(table, c); });
}

std::optional<Circuit> highest_wins(const TapTable& table, Sources sources) {
    check(table.wanted.size() == std::size_t{1} << table.signals, "a wanted tap for every state");
    return fewest(
        table, [&](SignalSet coils) { return highest_wins_with(table, sources, coils); },
        [](const Circuit&) { return 0; });
}

std::optional<Circuit> one_output_one_tap(const TapTable& table) {
    Ways ways(static_cast<std::size_t>(table.signals) + 1, 0);
    Leaves taken = 0;
    for (int s = 0; s < table.signals; ++s) {
        const int tap = table.wanted[SignalSet{1} << s].value_or(0);
        if (tap != 0 && (taken >> tap & 1u)) return std::nullopt;
        taken |= Leaves{1} << tap;
        ways[static_cast<std::size_t>(s)] = tap;
    }
    return circuit_of(table, 0, {ways});
}

}  // namespace endbell
