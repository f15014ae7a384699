#include <algorithm>

#include "engine/cost/ways.hpp"
#include "engine/cost/yearly.hpp"

namespace endbell::inline cost {

namespace {

/// The least real rate of 10 CFR 436.14(a)(2): what holds where the shop states none.
constexpr double least_real_rate = 0.03;

double fraction(const Reading<Share>& share, double otherwise) {
    return share ? static_cast<double>(share->millionths) / 1e6 : otherwise;
}

CostOption& at(Ledger& ledger, int i) {
    return ledger.options[static_cast<std::size_t>(i)];
}

/// The index of the option with the least known amount among those that count; the first of equals.
template <class Amount, class Counts>
std::optional<int> cheapest(Ledger& ledger, Amount amount, Counts counts) {
    std::optional<int> best;
    for (int i = 0; i < static_cast<int>(ledger.options.size()); ++i) {
        const std::optional<Money>& known = at(ledger, i).*amount;
        if (!known || !counts(at(ledger, i))) continue;
        if (!best || *known < *(at(ledger, *best).*amount)) best = i;
    }
    return best;
}

/// Where the motor is not at fault, a way that replaces it answers nothing, however little it costs.
bool is_answer(const Ledger& ledger, const CostOption& option) {
    return !ledger.repairs_only || is_repair(option.way);
}

/// Costs a year with and without energy are not compared. New equipment is more than this motor: where the
/// others' energy is known, it stands apart.
void rank_by_year(Ledger& ledger) {
    bool some_energy = false;
    bool some_without = false;
    for (const CostOption& option : ledger.options) {
        if (!option.per_year || !is_answer(ledger, option)) continue;
        some_energy = some_energy || option.energy_cost.has_value();
        some_without = some_without || (!option.energy_cost && option.way != WayOut::equipment);
    }
    if (some_energy && some_without) return;
    ledger.cheapest_per_year = cheapest(ledger, &CostOption::per_year, [&](const CostOption& option) {
        return is_answer(ledger, option) && (option.energy_cost.has_value() || !some_energy);
    });
}

template <class K>
void spread(Ledger& ledger, const YearTerms<K>& terms) {
    ledger.discount_rate = terms.discount.value();
    for (CostOption& option : ledger.options) option.per_year = cost_per_year(option, terms);
    if (ledger.cheapest_today) {
        const CostOption base = at(ledger, *ledger.cheapest_today);
        for (int i = 0; i < static_cast<int>(ledger.options.size()); ++i) {
            if (i != *ledger.cheapest_today)
                at(ledger, i).against_cheapest = compare(base, at(ledger, i), terms);
        }
    }
    rank_by_year(ledger);
}

}  // namespace

void put_on_years(const FailedUnit& job, Ledger& ledger) {
    ledger.cheapest_today = cheapest(ledger, &CostOption::today,
                                     [&](const CostOption& option) { return is_answer(ledger, option); });
    const ShopReadings& shop = job.shop;
    if (!shop.electricity) ledger.lacking.emplace_back("shop.electricity");
    if (shop.real_discount_rate && shop.nominal_discount_rate) {
        ledger.lacking.emplace_back("shop.real_discount_rate and shop.nominal_discount_rate");
    } else if (shop.nominal_discount_rate && shop.energy_escalation) {
        ledger.lacking.emplace_back("shop.nominal_discount_rate and shop.energy_escalation");
    } else if (shop.nominal_discount_rate) {
        ledger.rate_kind = RateKind::nominal;
        ledger.rate_source = "shop.nominal_discount_rate";
        const NominalRate rate(fraction(shop.nominal_discount_rate, 0));
        spread(ledger, YearTerms<Nominal>{rate, NominalRate(0), shop.electricity.value});
    } else {
        ledger.rate_kind = RateKind::real;
        ledger.rate_source = shop.real_discount_rate ? "shop.real_discount_rate" : "10-cfr-436.14";
        const RealRate rate(fraction(shop.real_discount_rate, least_real_rate));
        spread(ledger,
               YearTerms<Real>{rate, RealRate(fraction(shop.energy_escalation, 0)), shop.electricity.value});
    }
}

}  // namespace endbell::inline cost
