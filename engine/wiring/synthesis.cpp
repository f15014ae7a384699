#include "engine/wiring/synthesis.hpp"

#include <algorithm>
#include <bit>
#include <tuple>

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

std::vector<WiringWay> ways_of(const TapTable& table, const MotorFeed& feed, bool exclusive) {
    std::vector<WiringWay> ways;
    const bool part_decides = feed.rule == TapRule::highest_tap_wins;
    if (exclusive && feed.sources.signals && !part_decides) {
        if (auto direct = one_output_one_tap(table)) {
            std::optional<WiringCondition> condition;
            if (table.signals > 1) condition = WiringCondition::one_board_output_at_a_time;
            ways.push_back({std::move(*direct), WiringMethod::direct, condition});
        }
    }
    if (part_decides) {
        if (auto circuit = highest_wins(table, feed.sources))
            ways.push_back({std::move(*circuit), WiringMethod::priority_of_the_part});
    }
    if (auto circuit = one_conductor(table, feed.sources)) {
        const bool relays_first = !feed.board_first && !part_decides;
        ways.insert(relays_first ? ways.begin() : ways.end(),
                    {std::move(*circuit), WiringMethod::one_conductor});
    }
    return ways;
}

}  // namespace endbell::inline wiring
