// The ways out of a failed motor, and what each gives up.
#pragma once
#include <string>
#include <string_view>
#include <vector>

#include "engine/cost/ledger.hpp"

namespace endbell {

/// "module", "same motor", "universal" (another motor of the same family) or "retrofit" (another family).
/// The same motor has the old number, or a cross reference that says so without changing its family.
std::string_view way_of(const FailedUnit& job, const Candidate& candidate);

/// The labour task of taking the old part out and putting this one in.
std::string swap_task(const FailedUnit& job, std::string_view way);

/// What the old unit had and this part does not give, in a fixed order of stable words: "constant airflow",
/// "humidity control", "communicating control", "efficiency", "speeds", "ball bearing", "closed enclosure",
/// "warranty", "new motor half".
std::vector<std::string_view> losses(const FailedUnit& job, const Part& part);

/// The labour task that cures a killer by its stable word; empty where no shop task is known for it.
std::string_view cure_task(std::string_view cause);

}  // namespace endbell
