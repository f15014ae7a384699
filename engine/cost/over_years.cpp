#include "engine/cost/over_years.hpp"

#include <cmath>

namespace endbell::inline cost {

std::vector<double> spent_by_year(const CostOption& option, double escalation) {
    if (!option.today || option.life < calendar_year(1)) return {};
    const auto minor = [](const std::optional<Money>& m) {
        return m ? static_cast<double>(m->minor()) : 0.0;
    };
    // The same choice as in the cost a year: a cause that stays makes the next loss likelier.
    const double loss =
        minor(option.causes_left.empty() ? option.recurrence_cured : option.recurrence_uncured);
    double energy = minor(option.energy_cost);
    std::vector<double> spent{minor(option.today)};
    for (int year = 1; year <= static_cast<int>(std::floor(option.life.in(calendar_year))); ++year) {
        energy *= 1.0 + escalation;
        spent.push_back(spent.back() + energy + loss);
    }
    return spent;
}

}  // namespace endbell::inline cost
