// The last step of a plan: which predicted point serves which call, and what is to be said of it.
#pragma once
#include "engine/airflow/air_needs.hpp"
#include "engine/airflow/tap_assignment.hpp"

namespace endbell::inline airflow {

bool has_window(const CallAir& call);
/// REQUIRES: has_window(call).
CallWindow window_of(const CallAir& call);

/// Gives each call its tap by the exact assignment, or the reason why it has none. Overloaded taps serve
/// nobody. A call for circulation that no terminal is named for takes no lead from the others. REQUIRES: plan.taps and
/// plan.calls are filled.
void serve_by_taps(AirPlan& plan, const FailedUnit& job, const Limits& limits, HeatFactor heat_factor,
                   Sharing sharing);

/// Judges `call.programmed` against the call's own window.
/// REQUIRES: has_window(call); an absent programmed point means that a limit binds at any airflow.
void serve_by_program(CallAir& call, const FailedUnit& job, const Limits& limits, HeatFactor heat_factor);

}  // namespace endbell::inline airflow
