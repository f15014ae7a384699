// Which speed lead serves a call whose air is not known: a motor that takes over the leads of one of its kind keeps their
// order. Such a lead is provisional: rise and static at start-up decide.
#pragma once
#include "engine/airflow/air_plan.hpp"

namespace endbell::inline airflow {

/// True where each output of a line-voltage board feeds a speed lead of its own, of an induction motor that takes the place
/// of another. Then no two calls may share a lead.
bool takes_over_leads(const FailedUnit& job, const Facts& facts, const Part& part);

/// Circulation that no terminal is named for takes no lead from the other calls.
bool takes_a_lead(const FailedUnit& job, Call call);

/// Gives each call without a tap a free lead: the one that was in use (controls.leads), else of known airflows the
/// nearest, else high for cooling and the next lower for heating (common practice). A call with no free lead stays
/// without. REQUIRES: takes_over_leads().
void give_leads(AirPlan& plan, const FailedUnit& job, const Part& part);

}  // namespace endbell::inline airflow
