// A circuit before it has relays and wires: trees of contacts between the sources and the taps.
#pragma once
#include <optional>
#include <utility>
#include <vector>

#include "engine/wiring/tree.hpp"
#include "engine/wiring/wiring.hpp"

namespace endbell::inline wiring {

/// A circuit in the abstract. Coil i of the trees is signal coils[i]. Leaves of a tap tree: 0 is nowhere,
/// else the tap. Leaves of a tree of sources: a signal, `signals` for the supply, or one more for none.
struct Circuit {
    std::vector<int> coils;
    std::optional<ContactTree> source_tree;                   // one conductor: which source feeds it
    std::vector<std::pair<int, ContactTree>> tap_trees;       // (source, tree); source -1: the one conductor
    std::vector<std::pair<int, ContactTree>> own_conductors;  // (tap, tree): which source feeds this tap
    int contacts() const;
    /// The taps it means to be live, ascending, when `live` of `signals` signals are.
    std::vector<int> taps_in(SignalSet live, int signals) const;
};

/// What the circuit means to be live in each of the 2^signals states: the proof holds the netlist to it.
std::vector<std::vector<int>> intended_table(const Circuit& circuit, int signals);

}  // namespace endbell::inline wiring
