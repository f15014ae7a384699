// Options on a yearly footing: equivalent annual cost over each one's own life, and each beside the cheapest.
#pragma once
#include "engine/cost/discount.hpp"
#include "engine/cost/ledger.hpp"

namespace endbell::inline cost {

/// Prices that a year's cost depends on, in money of one kind.
template <class Kind>
struct YearTerms {
    Rate<Kind> discount;
    Rate<Kind> escalation;             // of the electricity price
    std::optional<Money> electricity;  // per 100 kWh
};

/// EAC = today x CRF(life) + energy levelled over the life + expected recurrence. It assumes renewal in kind,
/// which makes options of unequal lives comparable. Absent without a total, a life, or an energy price where
/// energy is known.
template <class K>
std::optional<Money> cost_per_year(const CostOption& option, const YearTerms<K>& terms);

/// Absent unless both have totals, lives, and the same knowledge of their energy.
template <class K>
std::optional<Comparison> compare(const CostOption& base, const CostOption& option,
                                  const YearTerms<K>& terms);

extern template std::optional<Money> cost_per_year(const CostOption&, const YearTerms<Real>&);
extern template std::optional<Money> cost_per_year(const CostOption&, const YearTerms<Nominal>&);
extern template std::optional<Comparison> compare(const CostOption&, const CostOption&,
                                                  const YearTerms<Real>&);
extern template std::optional<Comparison> compare(const CostOption&, const CostOption&,
                                                  const YearTerms<Nominal>&);

/// Finds the cheapest option today; gives every option its cost a year and its comparison with that one;
/// finds the cheapest a year. The rate is the job's real or nominal one, else the least real rate of 10 CFR
/// 436.14(a)(2). The job's escalation is real: beside a nominal rate it is refused.
void put_on_years(const FailedUnit& job, Ledger& ledger);

}  // namespace endbell::inline cost
