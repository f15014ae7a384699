// The English of an air plan: what was assumed, what brings static down, what a heat output rests on.
#pragma once
#include <string>
#include <string_view>

#include "engine/airflow/air_plan.hpp"

namespace endbell::inline explain {

/// What would change if the truth were another than what was assumed. `assumed`: a job key, a catalog column or the word of
/// an Assumption.
std::string what_it_changes(std::string_view assumed);
std::vector<std::string_view> explained_assumptions();

std::string say(StaticCure cure);
/// "burner derated"; of elements "rated 240 V, fed with 208 V".
std::string say(const HeatOutput& output);

}  // namespace endbell::inline explain
