// What is set, fitted or taken out of a part before power, in words of enums: with a wiring plan or without one.
#pragma once
#include "engine/wiring/wiring.hpp"

namespace endbell::inline wiring {

/// The voltage jumper on this supply; `ask` where it is not known or contradicts itself.
Setting jumper_for(const Supply& supply);

/// In the order in which a person does it. What the supply decides is `ask` where the supply is not known, or where what is
/// stated and what was read contradict each other. `plan` names the speed that is used, where there is one. Of a motor half
/// beside a module the jumper may be either's.
std::vector<Setting> settings_of(const FailedUnit& job, const Facts& facts, const WiredPart& wired,
                                 const WiringPlan& plan, const Limits& limits);

}  // namespace endbell::inline wiring
