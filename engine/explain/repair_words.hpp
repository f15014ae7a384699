// The English of what is bought instead of a motor.
#pragma once
#include <string>
#include <vector>

#include "engine/explain/english.hpp"
#include "engine/kit/repair.hpp"

namespace endbell::inline explain {

/// Where its wires go.
std::string say(RepairLanding landing);
/// What is looked at first, and what shows that it was that. REQUIRES: something is bought for it.
std::string proof_of(Cure cure);

/// All of it, for the gate.
std::vector<English<RepairLanding>> english_of_landings();
std::vector<English<Cure>> english_of_proofs();

}  // namespace endbell::inline explain
