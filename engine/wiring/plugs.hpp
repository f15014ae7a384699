// A programmed motor or a module: its plugs carry what they carried before, pin by pin as the catalog lists them.
#pragma once
#include "engine/wiring/wiring.hpp"

namespace endbell::inline wiring {

/// REQUIRES: the part is a module or a motor. Refused where what feeds it is not known: which conductor lands on which pin, and
/// whether its jumper is in, hang on that. Lists in `lacking` what the catalog does not say of its pins.
WiringPlan plug_for_plug(const Facts& facts, const Part& part);

}  // namespace endbell::inline wiring
