// Power, earth, common and capacitor: by the terminals in the catalog, never by wire colour.
#pragma once
#include "engine/wiring/feed.hpp"
#include "engine/wiring/wiring.hpp"

namespace endbell::inline wiring {

/// Appends the line wires and what is lacking for them. `plan` must know its signals and taps.
void add_line_side(const Part& part, const MotorFeed& feed, WiringPlan& plan);

/// Two wires of the line side on one terminal of the part: its label is listed twice, and the catalog is wrong.
bool lands_twice(const WiringPlan& plan);

/// A line conductor or the common without a terminal of the part: the plan is no plan.
std::optional<NoWiring> unlanded(const WiringPlan& plan);

}  // namespace endbell::inline wiring
