// Readings of the air that cannot all be true. Each row of contrary.cpp is one law that they would break; whatever takes part is
// read again, and nothing rests on it.
#pragma once
#include <string>
#include <vector>

#include "engine/facts/facts.hpp"
#include "engine/model/failed_unit.hpp"
#include "engine/model/limits.hpp"

namespace endbell::inline airflow {

/// The keys of readings that cannot all be true.
using ContraryKeys = std::vector<std::string>;

/// Only what no motor, fan or heat can do: two readings that merely differ may have been taken on two taps.
std::vector<ContraryKeys> contrary_air(const FailedUnit& job, const Facts& facts, const Limits& limits);

/// The job as if what contradicts had not been read: nothing can rest on it.
FailedUnit without_contrary(FailedUnit job, const std::vector<ContraryKeys>& contrary);

}  // namespace endbell::inline airflow
