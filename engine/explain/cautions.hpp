// The usual cautions.
#pragma once
#include "engine/explain/document.hpp"

namespace endbell::inline explain {

/// Lock-out, stored charge, live plug, rotating parts, meter: at the head of every sheet that sends someone
/// to a cabinet. `electronic`: the old or the new motor is electronically commutated.
void add_safety(Document& to, bool electronic);

/// Defers to the equipment's instructions, local code and licensed practice.
void add_deference(Document& to);

}  // namespace endbell::inline explain
