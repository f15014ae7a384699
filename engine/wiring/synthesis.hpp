// The fewest relays whose contacts bring every state of the signals to its tap.
//
// A relay's coil hangs on one signal. So the live signals among those with coils (a *position*) decide where
// every contact stands, and within a position each source (the constant supply, or a signal used as a source)
// leads to one tap or nowhere. Which sets of coils suffice can be read off the table, position by position:
// all smaller sets are tried first, so the first that suffices is a minimum.
#pragma once
#include <functional>
#include <optional>
#include <vector>

#include "engine/wiring/circuit.hpp"
#include "engine/wiring/feed.hpp"
#include "engine/wiring/table.hpp"

namespace endbell::inline wiring {

/// One conductor, fed through a tree of sources and led through a tree of taps. No position of any contact,
/// right or wrong, can make two taps live or join two sources. None: no set of coils does it.
std::optional<Circuit> one_conductor(const TapTable& table, Sources sources);

/// The part itself obeys the highest of several live taps: each source keeps its own route to a tap, and no tap
/// has two sources in any position.
std::optional<Circuit> highest_wins(const TapTable& table, Sources sources);

/// Each signal straight to the tap of its own state, for a board that lets one output live at a time.
/// None: two outputs would share a tap.
std::optional<Circuit> one_output_one_tap(const TapTable& table);

/// A circuit for the table, how it works, and what must be true while it does.
struct WiringWay {
    Circuit circuit;
    WiringMethod method;
    std::optional<WiringCondition> condition = std::nullopt;
};
/// The ways this table can be wired, the one to take first. `exclusive`: a board lets one output live at a time.
std::vector<WiringWay> ways_of(const TapTable& table, const MotorFeed& feed, bool exclusive);

/// Tries every set of coils, fewest first. Of the first size that works: fewest contacts, then fewest idle
/// states, then the lowest signals.
std::optional<Circuit> fewest(const TapTable& table,
                              const std::function<std::optional<Circuit>(SignalSet)>& build,
                              const std::function<int(const Circuit&)>& idle_states);

}  // namespace endbell::inline wiring
