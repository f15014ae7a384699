// What speaks against wiring these controls to this part, before a tap is chosen.
#pragma once
#include "engine/wiring/states.hpp"

namespace endbell::inline wiring {

/// The gravest comes first, and only it is told.
std::optional<NoWiring> objection_to(const Controls& controls, const MotorFeed& feed, const FailedUnit& job,
                                     const Facts& facts);

}  // namespace endbell::inline wiring
