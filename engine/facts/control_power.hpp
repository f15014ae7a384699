// What a control transformer must be: derived here for the rule, the wiring plan and the kit.
#pragma once
#include <optional>

#include "engine/facts/supply_fact.hpp"
#include "engine/model/finding.hpp"
#include "engine/model/limits.hpp"

namespace endbell::inline facts {

inline constexpr Voltage control_volts = volt(24.0);

/// What one live 24 V tap draws.
ApparentPower tap_load(const Limits& limits);

/// Full-load current at the 24 V side.
Current secondary_current(ApparentPower rating);

/// What protects the 24 V side: limit transformer.fuse of its rated current, the next size that is made, and never more
/// than a class 2 source may be fused at; the smallest that is made where that is less.
Current secondary_fuse(ApparentPower rating, const Limits& limits);

/// A transformer that carries `total` within its planned share, on the supply of the motor that it serves: control
/// transformer and blower hang on one supply (common practice).
Remedy transformer_for(ApparentPower total, const Supply& supply, const Limits& limits);

}  // namespace endbell::inline facts
