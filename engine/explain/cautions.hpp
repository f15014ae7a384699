// The usual cautions.
#pragma once
#include <vector>

#include "engine/explain/document.hpp"
#include "engine/wiring/site_check.hpp"

namespace endbell::inline explain {

/// What can hurt, of what the unit owes: at the head of every sheet that sends someone to a cabinet. `live_tests`: the
/// sheet asks for readings with the power on.
void add_safety(Document& to, const std::vector<SiteCheck>& owed, bool live_tests);

/// What the unit owes before it is left, as a list: for a sheet without an order of work.
void add_proving(Document& to, const std::vector<SiteCheck>& owed);

/// Defers to the equipment's instructions, local code and licensed practice.
void add_deference(Document& to);

}  // namespace endbell::inline explain
