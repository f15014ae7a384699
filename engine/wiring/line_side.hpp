// Power, earth, common, capacitor and voltage setting: by the terminals in the catalog, never by wire colour.
#pragma once
#include "engine/wiring/wiring.hpp"

namespace endbell::inline wiring {

/// Appends the line wires, the settings and what is lacking for them. `plan` must know its signals and taps.
void add_line_side(const Facts& facts, const Part& part, Conductors conductors, const Limits& limits,
                   WiringPlan& plan);

}  // namespace endbell::inline wiring
