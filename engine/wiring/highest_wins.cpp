#include <algorithm>
#include <functional>

#include "engine/base/ensure.hpp"
#include "engine/wiring/synthesis.hpp"

namespace endbell::inline wiring {

namespace {

/// Where each source leads at one position: tap, or 0. Source table.signals is the supply.
/// The tap that each source is led to; 0: none.
using Routes = std::vector<int>;

bool routes_serve(const TapTable& table, const Routes& routes, const std::vector<SignalSet>& states) {
    return std::all_of(states.begin(), states.end(), [&](SignalSet state) {
        int highest = 0;
        for (int source = 0; source <= table.signals; ++source) {
            if (source_live(table, source, state))
                highest = std::max(highest, routes[static_cast<std::size_t>(source)]);
        }
        return serves(table, state, highest);
    });
}

/// One position of the coils: its states, and the taps that each source may lead to. A live source may not
/// lead above the tap that is wanted; 0 is always open to it.
struct Position {
    std::vector<SignalSet> states;
    std::vector<Leaves> open;
};

Position position_of(const TapTable& table, Sources sources, SignalSet coils, SignalSet live) {
    Position position{states_at(table, coils, live), {}};
    for (int source = 0; source <= table.signals; ++source) {
        int most = (source == table.signals ? sources.supply : sources.signals) ? table.highest_tap : 0;
        for (const SignalSet state : position.states) {
            if (table.wanted[state] && source_live(table, source, state))
                most = std::min(most, *table.wanted[state]);
        }
        position.open.push_back((Leaves{2} << most) - 1);
    }
    return position;
}

/// Every choice of routes, no tap twice, that serves this position. Stops at `most`.
std::vector<Routes> all_routes(const TapTable& table, const Position& position, std::size_t most) {
    std::vector<Routes> found;
    Routes routes(position.open.size(), 0);
    const std::function<void(std::size_t, Leaves)> extend = [&](std::size_t source, Leaves taken) {
        if (found.size() >= most) return;
        if (source == routes.size()) {
            if (routes_serve(table, routes, position.states)) found.push_back(routes);
            return;
        }
        extend(source + 1, taken);
        for (int tap = 1; tap <= table.highest_tap; ++tap) {
            if (((position.open[source] & ~taken) >> tap & 1u) == 0) continue;
            routes[source] = tap;
            extend(source + 1, taken | Leaves{1} << tap);
            routes[source] = 0;
        }
    };
    extend(0, 0);
    return found;
}

/// The routes at this position that differ least from those of its neighbours: branch and bound.
Routes nearest_routes(const TapTable& table, const Position& position,
                      const std::vector<Routes>& neighbours) {
    const std::size_t count = position.open.size();
    Routes best, routes(count, 0);
    std::size_t bound = count * neighbours.size() + 1;
    const std::function<void(std::size_t, Leaves, std::size_t)> extend = [&](std::size_t source, Leaves taken,
                                                                             std::size_t cost) {
        if (cost >= bound) return;
        if (source == count) {
            if (!routes_serve(table, routes, position.states)) return;
            best = routes;
            bound = cost;
            return;
        }
        const auto lead_to = [&](int tap) {
            if (tap != 0 && ((position.open[source] & ~taken) >> tap & 1u) == 0) return;
            std::size_t changed = 0;
            for (const Routes& n : neighbours) changed += n[source] != tap ? 1 : 0;
            routes[source] = tap;
            extend(source + 1, tap != 0 ? taken | Leaves{1} << tap : taken, cost + changed);
        };
        const int usual = neighbours.front()[source];
        lead_to(usual);
        for (int tap = 0; tap <= table.highest_tap; ++tap) {
            if (tap != usual) lead_to(tap);
        }
        routes[source] = 0;
    };
    extend(0, 0, 0);
    ensure(!best.empty(), "a position that was found to have ways has a nearest one");
    return best;
}

/// The position with most states that occur: it leaves least choice, so the others are grown from it.
unsigned busiest_position(const TapTable& table, const std::vector<int>& signals) {
    std::vector<int> occurring(std::size_t{1} << signals.size(), 0);
    for (SignalSet state = 0; state < 1u << table.signals; ++state) {
        if (!table.wanted[state]) continue;
        ++occurring[position_in(state, signals)];
    }
    return static_cast<unsigned>(std::max_element(occurring.begin(), occurring.end()) - occurring.begin());
}

/// From the routes at one position, coil by coil the least change: few contacts.
std::vector<Routes> grown_from(const TapTable& table, const std::vector<Position>& positions, unsigned start,
                               const Routes& first) {
    std::vector<Routes> picked(positions.size());
    picked[start] = first;
    for (unsigned step = 1; step < picked.size(); ++step) {
        const unsigned here = start ^ step;
        std::vector<Routes> neighbours;
        for (unsigned coil = 1; coil < picked.size(); coil <<= 1) {
            if (!picked[here ^ coil].empty()) neighbours.push_back(picked[here ^ coil]);
        }
        picked[here] = nearest_routes(table, positions[here], neighbours);
    }
    return picked;
}

/// The one tap of each source, where none is led to two. A tap may then choose its source by a conductor of its own, and no
/// two calls meet while contacts move.
std::optional<Routes> one_tap_a_source(const std::vector<Routes>& routes) {
    Routes taps(routes.front().size(), 0);
    for (const Routes& r : routes) {
        for (std::size_t source = 0; source < taps.size(); ++source) {
            if (r[source] == 0) continue;
            if (taps[source] != 0 && taps[source] != r[source]) return std::nullopt;
            taps[source] = r[source];
        }
    }
    return taps;
}

Circuit by_own_conductors(const TapTable& table, SignalSet coils, const std::vector<Routes>& routes,
                          const Routes& taps) {
    Circuit circuit;
    circuit.coils = members(coils);
    for (int tap = 1; tap <= table.highest_tap; ++tap) {
        if (std::find(taps.begin(), taps.end(), tap) == taps.end()) continue;
        std::vector<Leaves> sources;
        for (const Routes& r : routes) {
            const auto from = std::find(r.begin(), r.end(), tap) - r.begin();  // past the supply: from none
            sources.push_back(Leaves{1} << from);
        }
        circuit.own_conductors.emplace_back(tap,
                                            smallest_tree(static_cast<int>(circuit.coils.size()), sources));
    }
    return circuit;
}

Circuit circuit_of(const TapTable& table, SignalSet coils, const std::vector<Routes>& routes) {
    const std::optional<Routes> taps = one_tap_a_source(routes);
    if (taps && coils != 0) return by_own_conductors(table, coils, routes, *taps);
    Circuit circuit;
    circuit.coils = members(coils);
    for (int source = 0; source <= table.signals; ++source) {
        std::vector<Leaves> leaves;
        bool used = false;
        for (const Routes& r : routes) {
            const int tap = r[static_cast<std::size_t>(source)];
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
    std::vector<Position> positions;
    for (unsigned p = 0; p < 1u << signals.size(); ++p) {
        positions.push_back(position_of(table, sources, coils, spread(p, signals)));
        if (all_routes(table, positions.back(), 1).empty()) return std::nullopt;
    }
    // Bounds the search for few contacts, never the search for few coils.
    const std::size_t most = std::max<std::size_t>(1, 256 / positions.size());
    const unsigned start = busiest_position(table, signals);
    std::optional<Circuit> best;
    for (const Routes& first : all_routes(table, positions[start], most)) {
        Circuit circuit = circuit_of(table, coils, grown_from(table, positions, start, first));
        if (!best || circuit.contacts() < best->contacts()) best = std::move(circuit);
    }
    return best;
}

}  // namespace

std::optional<Circuit> highest_wins(const TapTable& table, Sources sources) {
    ensure(table.wanted.size() == std::size_t{1} << table.signals, "a wanted tap for every state");
    return fewest(
        table, [&](SignalSet coils) { return highest_wins_with(table, sources, coils); },
        [](const Circuit&) { return 0; });
}

std::optional<Circuit> one_output_one_tap(const TapTable& table) {
    Routes routes(static_cast<std::size_t>(table.signals) + 1, 0);
    Leaves taken = 0;
    for (int s = 0; s < table.signals; ++s) {
        const int tap = table.wanted[SignalSet{1} << s].value_or(0);
        if (tap != 0 && (taken >> tap & 1u)) return std::nullopt;
        taken |= Leaves{1} << tap;
        routes[static_cast<std::size_t>(s)] = tap;
    }
    return circuit_of(table, 0, {routes});
}

}  // namespace endbell::inline wiring
