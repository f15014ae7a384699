// Electricity of one option in a year: what each call's tap draws, for as long as the call runs.
#pragma once
#include <vector>

#include "engine/cost/ledger.hpp"

namespace endbell::inline cost {

/// Hours a year of each group of calls, from the job; where it gives none, those of the federal fan-energy
/// rating (10 CFR 430 Subpart B Appendix AA, from memory): cooling 640, heating 830, circulation 400. Empty
/// when a call that runs has no known input power: a part of the energy is not the energy.
std::vector<EnergyLine> energy_lines(const FailedUnit& job, const AirPlan& air);

/// The old motor, kept: its measured watts in every one of these calls. Empty without a reading of watts.
std::vector<EnergyLine> energy_lines_of_old(const FailedUnit& job, const std::vector<Call>& calls);

Energy energy_of(const std::vector<EnergyLine>& lines);

/// `per_100_kwh` times the energy, rounded once from whole watt-hours.
Money energy_cost(Energy energy, const Money& per_100_kwh);

}  // namespace endbell::inline cost
