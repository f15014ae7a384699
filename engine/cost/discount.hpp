// Discounting: factors, present value, payback, returns. Conventions of NIST Handbook 135 and 10 CFR 436
// (from memory): cash flows at the end of each year, first cost at year 0.
//
// A rate is real (inflation taken out) or nominal (inflation left in), and so is the money it discounts. The
// kind is part of the type: an expression that mixes them does not compile.
#pragma once
#include <cmath>
#include <cstddef>
#include <optional>
#include <vector>

#include "engine/units/units.hpp"

namespace endbell::inline cost {

struct Real {};
struct Nominal {};

/// A yearly rate as a fraction: 3 % is RealRate(0.03). Greater than -1.
template <class Kind>
class Rate {
  public:
    explicit constexpr Rate(double a_year) : a_year_(a_year) {}
    constexpr double value() const { return a_year_; }
    constexpr double growth() const { return 1.0 + a_year_; }

  private:
    double a_year_;
};
using RealRate = Rate<Real>;
using NominalRate = Rate<Nominal>;

struct Inflation {
    double a_year = 0;
};
/// (1 + nominal) = (1 + real)(1 + inflation): the only ways across.
inline constexpr NominalRate nominal(RealRate real, Inflation i) {
    return NominalRate(real.growth() * (1.0 + i.a_year) - 1.0);
}
inline constexpr RealRate real(NominalRate nominal_rate, Inflation i) {
    return RealRate(nominal_rate.growth() / (1.0 + i.a_year) - 1.0);
}

/// Cash flows at the ends of years 0, 1, 2 ..., in money of one kind.
template <class Kind>
struct Flows {
    std::vector<double> amounts;
};

/// On numbers without a kind: a rate is a fraction a year, and years are counted.
namespace plain {
double uniform_present_value(double d, double years);
double years_to_recover(double d, double multiple);
double net_present_value(double d, const std::vector<double>& flows);
std::optional<double> internal_rate(const std::vector<double>& flows);
std::optional<double> modified_internal_rate(const std::vector<double>& flows, double finance,
                                             double reinvest);
}  // namespace plain

/// SPV: what 1 at the end of year n is worth today.
template <class K>
double single_present_value(Rate<K> d, Period after) {
    return std::pow(d.growth(), -after.in(calendar_year));
}

/// UPV: what 1 at the end of every year is worth today.
template <class K>
double uniform_present_value(Rate<K> d, Period over) {
    return plain::uniform_present_value(d.value(), over.in(calendar_year));
}

/// UPV*: the same for a yearly sum that grows by `escalation`, the first one already grown once.
template <class K>
double uniform_present_value(Rate<K> d, Rate<K> escalation, Period over) {
    return plain::uniform_present_value(d.growth() / escalation.growth() - 1.0, over.in(calendar_year));
}

/// CRF: the equal yearly sum that pays back 1. REQUIRES: a period above 0.
template <class K>
double capital_recovery(Rate<K> d, Period over) {
    return 1.0 / uniform_present_value(d, over);
}

/// The life over which a yearly `part` of 1 pays it back: the inverse of capital_recovery. Empty: never.
template <class K>
std::optional<Period> life_for(Rate<K> d, double part) {
    if (part <= 0 || part <= d.value()) return std::nullopt;
    return calendar_year(plain::years_to_recover(d.value(), 1.0 / part));
}

template <class K>
double net_present_value(Rate<K> d, const Flows<K>& flows) {
    return plain::net_present_value(d.value(), flows.amounts);
}

/// The rate at which the net present value is zero; empty without a change of sign.
template <class K>
std::optional<Rate<K>> internal_rate(const Flows<K>& flows) {
    const std::optional<double> found = plain::internal_rate(flows.amounts);
    return found ? std::optional<Rate<K>>(Rate<K>(*found)) : std::nullopt;
}

template <class K>
std::optional<Rate<K>> modified_internal_rate(const Flows<K>& flows, Rate<K> finance, Rate<K> reinvest) {
    const std::optional<double> found =
        plain::modified_internal_rate(flows.amounts, finance.value(), reinvest.value());
    return found ? std::optional<Rate<K>>(Rate<K>(*found)) : std::nullopt;
}

/// Until the plain sum of savings equals the extra cost. Empty when nothing is saved.
std::optional<Period> simple_payback(double extra_cost, double saving_a_year);

/// The same for discounted savings that grow by `escalation`. Empty when they never reach the extra cost.
template <class K>
std::optional<Period> discounted_payback(Rate<K> d, Rate<K> escalation, double extra_cost,
                                         double saving_a_year) {
    if (extra_cost <= 0) return Period();
    if (saving_a_year <= 0) return std::nullopt;
    const double net = d.growth() / escalation.growth() - 1.0;
    if (extra_cost * net >= saving_a_year) return std::nullopt;
    return calendar_year(plain::years_to_recover(net, extra_cost / saving_a_year));
}

/// AIRR = (1 + d) SIR^(1/n) - 1: the modified internal rate with both rates d. SIR must be above 0.
template <class K>
double adjusted_return(Rate<K> d, double savings_to_investment, Period over) {
    return d.growth() * std::pow(savings_to_investment, 1.0 / over.in(calendar_year)) - 1.0;
}

}  // namespace endbell::inline cost
