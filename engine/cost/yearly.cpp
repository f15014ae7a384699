#include "engine/cost/yearly.hpp"

#include <algorithm>
#include <cmath>

namespace endbell::inline cost {

namespace {

double minor(const std::optional<Money>& amount) {
    return amount ? static_cast<double>(amount->minor()) : 0.0;
}

double recurrence(const CostOption& option) {
    return minor(option.causes_left.empty() ? option.recurrence_cured : option.recurrence_uncured);
}

/// What a year's energy sum is worth a year over the option's life when its price escalates; 1 when it does
/// not.
template <class K>
double levelled(const CostOption& option, const YearTerms<K>& terms) {
    return uniform_present_value(terms.discount, terms.escalation, option.life) *
           capital_recovery(terms.discount, option.life);
}

template <class K>
double first_cost_a_year(const CostOption& option, const YearTerms<K>& terms) {
    return minor(option.today) * capital_recovery(terms.discount, option.life);
}

std::optional<double> positive(double number) {
    return std::isfinite(number) && number > 0 ? std::optional<double>(number) : std::nullopt;
}

/// Each input alone, all others held: the value at which both options cost the same a year.
template <class K>
void find_flips(const CostOption& base, const CostOption& option, const YearTerms<K>& terms, Comparison& c) {
    const double gap = first_cost_a_year(option, terms) + recurrence(option) -
                       first_cost_a_year(base, terms) - recurrence(base);
    const double energy_option = minor(option.energy_cost) * levelled(option, terms);
    const double energy_base = minor(base.energy_cost) * levelled(base, terms);
    const std::optional<double> factor = positive(gap / (energy_base - energy_option));
    c.flips_at_hours = factor;
    if (factor && terms.electricity) {
        const double price = *factor * static_cast<double>(terms.electricity->minor());
        if (price < 1e12) c.flips_at_electricity = Money(std::llround(price), terms.electricity->currency());
    }
    if (terms.escalation.value() != 0) return;  // the energy of a year would itself depend on the life
    const double left =
        first_cost_a_year(base, terms) + recurrence(base) + energy_base - recurrence(option) - energy_option;
    c.flips_at_life =
        minor(option.today) > 0 ? life_for(terms.discount, left / minor(option.today)) : std::nullopt;
}

}  // namespace

template <class K>
std::optional<Money> cost_per_year(const CostOption& option, const YearTerms<K>& terms) {
    if (!option.today || option.life <= Period()) return std::nullopt;
    const double energy = minor(option.energy_cost) * levelled(option, terms);
    const double year = first_cost_a_year(option, terms) + energy + recurrence(option);
    return Money(std::llround(year), option.today->currency());
}

template <class K>
std::optional<Comparison> compare(const CostOption& base, const CostOption& option,
                                  const YearTerms<K>& terms) {
    const bool comparable = base.today && option.today && base.life > Period() && option.life > Period() &&
                            base.energy_cost.has_value() == option.energy_cost.has_value();
    if (!comparable) return std::nullopt;
    Comparison c;
    const double shorter = std::min(base.life, option.life).in(calendar_year);
    c.over = calendar_year(std::max(1.0, std::floor(shorter)));
    c.extra_first_cost = minor(option.today) - minor(base.today);
    const double energy = minor(base.energy_cost) - minor(option.energy_cost);
    const double fewer_failures = recurrence(base) - recurrence(option);
    c.saving_per_year = energy + fewer_failures;
    const double worth = energy * uniform_present_value(terms.discount, terms.escalation, c.over) +
                         fewer_failures * uniform_present_value(terms.discount, c.over);
    c.net_saving = worth - c.extra_first_cost;
    if (c.extra_first_cost > 0) {
        c.simple_payback = simple_payback(c.extra_first_cost, c.saving_per_year);
        // Escalation concerns the energy alone; with both kinds of saving the plain rate is the careful one.
        const Rate<K> growth = fewer_failures == 0 ? terms.escalation : Rate<K>(0);
        c.discounted_payback =
            discounted_payback(terms.discount, growth, c.extra_first_cost, c.saving_per_year);
        c.savings_to_investment = worth / c.extra_first_cost;
        if (worth > 0)
            c.adjusted_return = adjusted_return(terms.discount, worth / c.extra_first_cost, c.over);
    }
    find_flips(base, option, terms, c);
    return c;
}

template std::optional<Money> cost_per_year(const CostOption&, const YearTerms<Real>&);
template std::optional<Money> cost_per_year(const CostOption&, const YearTerms<Nominal>&);
template std::optional<Comparison> compare(const CostOption&, const CostOption&, const YearTerms<Real>&);
template std::optional<Comparison> compare(const CostOption&, const CostOption&, const YearTerms<Nominal>&);

}  // namespace endbell::inline cost
