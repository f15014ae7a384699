// Power, earth, common, capacitor and voltage setting: by the terminals in the catalog, never by wire colour.
#pragma once
#include "engine/wiring/wiring.hpp"

namespace endbell {

/// Appends the line wires, the settings and what is lacking for them. `plan` must know its signals and taps.
void add_line_side(const Facts& facts, const Part& part, Conductors conductors, const Limits& limits,
                   WiringPlan& plan);

/// What the taps and relay coils add to the transformer, against its rating.
ControlPower control_power(const FailedUnit& job, const WiringPlan& plan, const Limits& limits);

/// Volts lost in both conductors of a control run. `ohm_per_1000_ft` is of one conductor.
double control_drop(double amperes, double one_way_feet, double ohm_per_1000_ft);

/// Full-load current at `secondary_volts` of a transformer.
double secondary_amps(ApparentPower rating, double secondary_volts);

}  // namespace endbell
