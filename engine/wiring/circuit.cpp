#include "engine/wiring/circuit.hpp"

#include <algorithm>

#include "engine/wiring/table.hpp"

namespace endbell::inline wiring {

int Circuit::contacts() const {
    int count = source_tree ? source_tree->contacts() : 0;
    for (const auto& [source, tree] : tap_trees) count += tree.contacts();
    for (const auto& [tap, tree] : own_conductors) count += tree.contacts();
    return count;
}

std::vector<int> Circuit::taps_in(SignalSet live, int signals) const {
    const unsigned position = position_in(live, coils);
    const auto fed_by = [&](int source) {
        return source == signals || (source < signals && (live >> source & 1u) != 0);
    };
    std::vector<int> taps;
    for (const auto& [tap, tree] : own_conductors) {
        if (fed_by(tree.leaf_at(position))) taps.push_back(tap);
    }
    for (const auto& [source, tree] : tap_trees) {
        const int from = source < 0 ? source_tree->leaf_at(position) : source;
        const int tap = tree.leaf_at(position);
        if (fed_by(from) && tap != 0) taps.push_back(tap);
    }
    std::sort(taps.begin(), taps.end());
    return taps;
}

std::vector<std::vector<int>> intended_table(const Circuit& circuit, int signals) {
    std::vector<std::vector<int>> intended;
    for (SignalSet live = 0; live < SignalSet{1} << signals; ++live)
        intended.push_back(circuit.taps_in(live, signals));
    return intended;
}

}  // namespace endbell::inline wiring
