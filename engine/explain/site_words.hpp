// The English of what is checked at the unit.
#pragma once
#include <optional>
#include <string>
#include <vector>

#include "engine/explain/english.hpp"
#include "engine/wiring/site_check.hpp"

namespace endbell::inline explain {

/// As a step of the work.
std::string say(SiteCheck check);

/// What stands at the head of a sheet, where not doing it can hurt somebody.
std::optional<std::string> warning_of(SiteCheck check);

/// All of it, for the gate.
std::vector<English<SiteCheck>> english_of_site_checks();
std::vector<English<SiteCheck>> english_of_site_warnings();

}  // namespace endbell::inline explain
