// What one way out has cost by the end of each year of its life: the figures of a chart.
#pragma once
#include <vector>

#include "engine/cost/ledger.hpp"

namespace endbell::inline cost {

/// Minor units by the end of year 0, 1, 2 ... up to the whole years of its life: today's total, then each year's
/// electricity and the expected loss. Money of today, not discounted; `escalation` is the real yearly growth of
/// the electricity's price, the first year already grown once. Nothing is bought again when the life ends. Empty
/// without a total or a life. Electricity that is not known counts as nothing: say so beside it.
std::vector<double> spent_by_year(const CostOption& option, double escalation);

}  // namespace endbell::inline cost
