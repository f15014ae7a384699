// Power, earth, common, capacitor and voltage setting: by the terminals in the catalog, never by wire colour.
#pragma once
#include "engine/wiring/wiring.hpp"

namespace endbell::inline wiring {

/// Appends the line wires, the settings and what is lacking for them. `plan` must know its signals and taps.
void add_line_side(const Facts& facts, const Part& part, Conductors conductors, const Limits& limits,
                   WiringPlan& plan);

/// What the taps and relay coils add to the transformer, against its rating.
ControlPower control_power(const FailedUnit& job, const WiringPlan& plan, const Limits& limits);

/// What is lost in both conductors of a control run. `of_1000_ft` is one conductor's.
Voltage control_drop(Current current, Length one_way, Resistance of_1000_ft);

/// Full-load current of a transformer at its secondary.
Current secondary_current(ApparentPower rating, Voltage secondary);

}  // namespace endbell::inline wiring
