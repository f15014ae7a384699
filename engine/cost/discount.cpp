#include "engine/cost/discount.hpp"

namespace endbell::inline cost {

namespace plain {

double uniform_present_value(double d, double years) {
    // expm1 and log1p keep the digits where d is small; d = 0 is the limit.
    return d == 0 ? years : -std::expm1(-years * std::log1p(d)) / d;
}

double years_to_recover(double d, double multiple) {
    return d == 0 ? multiple : -std::log1p(-multiple * d) / std::log1p(d);
}

double net_present_value(double d, const std::vector<double>& flows) {
    double sum = 0;
    double factor = 1;
    for (double flow : flows) {
        sum += flow * factor;
        factor /= 1.0 + d;
    }
    return sum;
}

std::optional<double> internal_rate(const std::vector<double>& flows) {
    // Bisection: slow, sure, the same on every machine. Rates from -99 % to 10,000 % a year.
    double low = -0.99;
    double high = 100.0;
    const double at_low = net_present_value(low, flows);
    if (at_low == 0) return low;
    if ((at_low > 0) == (net_present_value(high, flows) > 0)) return std::nullopt;
    for (int step = 0; step < 200; ++step) {
        const double middle = (low + high) / 2;
        if ((net_present_value(middle, flows) > 0) == (at_low > 0)) {
            low = middle;
        } else {
            high = middle;
        }
    }
    return (low + high) / 2;
}

std::optional<double> modified_internal_rate(const std::vector<double>& flows, double finance,
                                             double reinvest) {
    if (flows.size() < 2) return std::nullopt;
    const double years = static_cast<double>(flows.size() - 1);
    double paid = 0;
    double earned = 0;
    for (std::size_t n = 0; n < flows.size(); ++n) {
        const double year = static_cast<double>(n);
        if (flows[n] < 0) paid -= flows[n] * std::pow(1.0 + finance, -year);
        if (flows[n] > 0) earned += flows[n] * std::pow(1.0 + reinvest, years - year);
    }
    if (paid <= 0 || earned <= 0) return std::nullopt;
    return std::pow(earned / paid, 1.0 / years) - 1.0;
}

}  // namespace plain

std::optional<Period> simple_payback(double extra_cost, double saving_a_year) {
    if (saving_a_year <= 0) return std::nullopt;
    return calendar_year(extra_cost / saving_a_year);
}

}  // namespace endbell::inline cost
