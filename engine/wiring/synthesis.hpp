// The fewest relays whose contacts bring every state of the signals to its tap.
//
// A relay's coil hangs on one signal. So the live signals among those with coils (a *position*) decide where
// every contact stands, and within a position each source (the constant supply, or a signal used as a source)
// leads to one tap or nowhere. Which sets of coils suffice can be read off the table, position by position:
// all smaller sets are tried first, so the first that suffices is a minimum.
#pragma once
#include <optional>
#include <vector>

#include "engine/wiring/tree.hpp"
#include "engine/wiring/wiring.hpp"

namespace endbell::inline wiring {

/// What is wanted of every state. Size 2^signals each.
struct TapTable {
    int signals = 0;
    int highest_tap = 0;                     // taps are 1..highest_tap
    std::vector<std::optional<int>> wanted;  // 0: no tap; none: the state does not occur
    SignalSet must_run = 0;  // a state with one of these live needs a live tap, occurring or not
};

/// What may lead to a tap. With neither there is no circuit.
struct Sources {
    bool supply = true;   // R or L1 is at hand
    bool signals = true;  // a signal may itself feed a tap
};

/// A circuit in the abstract. Coil i of the trees is signal coils[i]. Leaves of a tap tree: 0 is nowhere,
/// else the tap. Leaves of the source tree: a signal, or `signals` for the supply.
struct Circuit {
    std::vector<int> coils;
    std::optional<ContactTree> source_tree;              // one conductor: which source feeds it
    std::vector<std::pair<int, ContactTree>> tap_trees;  // (source, tree); source -1: the one conductor
    int contacts() const;
    /// The taps it means to be live, ascending, when `live` of `signals` signals are.
    std::vector<int> taps_in(SignalSet live, int signals) const;
};

/// One conductor, fed through a tree of sources and led through a tree of taps. No position of any contact,
/// right or wrong, can make two taps live or join two sources. None: no set of coils does it.
std::optional<Circuit> one_conductor(const TapTable& table, Sources sources);

/// The part itself obeys the highest of several live taps: each source keeps its own way to a tap, and no tap
/// has two sources in any position.
std::optional<Circuit> highest_wins(const TapTable& table, Sources sources);

/// Each signal straight to the tap of its own state, for a board that lets one output live at a time.
/// None: two outputs would share a tap.
std::optional<Circuit> one_output_one_tap(const TapTable& table);

}  // namespace endbell::inline wiring
