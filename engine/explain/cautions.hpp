// The usual cautions, and the stable words of stages as sentences.
#pragma once
#include <string>
#include <string_view>

#include "engine/explain/document.hpp"

namespace endbell {

/// Lock-out, stored charge, live plug, rotating parts, meter: at the head of every sheet that sends someone
/// to a cabinet. `electronic`: the old or the new motor is electronically commutated.
void add_safety(Document& to, bool electronic);

/// Defers to the equipment's instructions, local code and licensed practice.
void add_deference(Document& to);

/// A caution or refusal word of the wiring stage as a sentence; a word without one is said as it stands.
std::string wiring_sentence(std::string_view word);

}  // namespace endbell
