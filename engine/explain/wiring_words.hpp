// What a sheet says of a wiring plan: its cautions, its checks, why there is none and what would make one possible. JSON
// has the words of wiring/kinds.hpp instead. A gate in tests/explain fails where one of them lacks its English.
#pragma once
#include "engine/explain/english.hpp"
#include "engine/wiring/wiring.hpp"

namespace endbell::inline explain {

/// A whole sentence.
std::string say(WiringCaution caution);
/// A whole sentence: a step of the work.
/// The rest of a sentence: "No wiring is given: ...".
std::string say(WiringRefusal refusal);
/// The rest of a sentence: "It would become possible with: ...".
std::string say(WiringRescue rescue);

/// Whole sentences: what is done, and what happens otherwise.
std::string say(const Setting& setting);

/// All of it, for the gate.
std::vector<English<WiringCaution>> english_of_wiring_cautions();
std::vector<English<WiringRefusal>> english_of_wiring_refusals();
std::vector<English<WiringRescue>> english_of_wiring_rescues();

}  // namespace endbell::inline explain
