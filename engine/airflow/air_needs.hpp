// Which calls the equipment has, and the airflow window of each.
#pragma once
#include <string>
#include <vector>

#include "engine/airflow/air_plan.hpp"

namespace endbell::inline airflow {

struct AirNeeds {
    std::vector<CallAir> calls;        // in the order of Call; no tap chosen yet
    std::vector<std::string> assumed;  // job keys
    HeatFactor heat_factor;            // at this altitude and return air
    double density_ratio = 1;
};

/// The volume that `standard` cfm of standard air have here: the same mass.
Airflow here(Airflow standard, const AirNeeds& needs);

/// Calls named at controls.terminals; where no terminal is named, those that the equipment's own facts show.
/// Elements always have a call. An unknown window is 0 to 0 with its missing job keys in `lacking`.
AirNeeds air_needs(const FailedUnit& job, const Facts& facts, const Limits& limits);

}  // namespace endbell::inline airflow
