// The last word on a plan: what each choice of a tap costs, what stands over a limit, and what brings it down.
#pragma once
#include "engine/airflow/air_plan.hpp"

namespace endbell::inline airflow {

/// Fills what is said of each served call beside its window, the worst static over the plate, and the fan energy rating.
/// Chooses nothing.
void weigh_choices(AirPlan& plan, const FailedUnit& job, const Facts& facts, const Limits& limits);

}  // namespace endbell::inline airflow
