// Which checks a unit owes, by its load, heat, motor and drive, whether or not there is a plan to wire by.
#pragma once
#include <string_view>
#include <vector>

#include "engine/facts/facts.hpp"
#include "engine/model/part.hpp"
#include "engine/wiring/site_check.hpp"

namespace endbell::inline wiring {

/// `part` may be null: then what holds for the old motor. `of_the_plan`: those that only a plan knows, put in their places.
std::vector<SiteCheck> checks_of(const FailedUnit& job, const Facts& facts, const Part* part,
                                 const std::vector<SiteCheck>& of_the_plan = {});

/// Old or new is a three-phase motor: it has three legs to read, and two to swap.
bool has_three_legs(const Facts& facts, const Part* part);

/// Id of the Source by which a check is asked for.
std::string_view source_of(SiteCheck check);

}  // namespace endbell::inline wiring
