// What must be said about a plan, and the checks before it is left: explain/ has the sentences.
#pragma once
#include "engine/wiring/wiring.hpp"

namespace endbell::inline wiring {

std::vector<WiringCaution> cautions_of(const Facts& facts, const Part& part, const WiringPlan& plan);
std::vector<WiringCheck> checks_of(const FailedUnit& job, const Facts& facts, const Part& part,
                                   const WiringPlan& plan);

}  // namespace endbell::inline wiring
