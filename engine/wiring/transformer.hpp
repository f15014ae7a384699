// What a plan asks of the control transformer.
#pragma once
#include "engine/wiring/wiring.hpp"

namespace endbell::inline wiring {

/// What the taps and relay coils add to the transformer, against its rating.
ControlPower control_power(const FailedUnit& job, const WiringPlan& plan, const Limits& limits);

/// What is lost in both conductors of a control run. `of_1000_ft` is one conductor's.
Voltage control_drop(Current current, Length one_way, Resistance of_1000_ft);

}  // namespace endbell::inline wiring
