// A quantity that is not known exactly: what it may be off by, and whether something was assumed for it.
#pragma once
#include <cmath>

#include "engine/units/quantity.hpp"

namespace endbell::inline airflow {

/// An estimate as plain numbers: of a share, which has no unit, or of the unit that was asked for.
struct EstimatedNumber {
    double value = 0;
    double plus_minus = 0;  // about 95 %
    bool assumed = false;
    bool known = false;  // false: nothing can be said, and `value` means nothing

    /// plus_minus as a share of the value. REQUIRES: a known value other than 0.
    double relative() const { return plus_minus / std::abs(value); }
};

inline EstimatedNumber estimated_number(double value, double share, bool assumed = false) {
    return {value, std::abs(value) * share, assumed, true};
}

template <class Q>
class Estimate;

/// Keeps the numbers of the unit that it was worked out in: asked for in that unit, they leave as they
/// entered, to the last digit.
template <class Dimension>
class Estimate<Quantity<Dimension>> {
  public:
    Estimate() = default;  // not known
    Estimate(Unit<Dimension> unit, const EstimatedNumber& number) : number_(number), unit_(unit) {}

    bool known() const { return number_.known; }
    bool assumed() const { return number_.assumed; }
    Quantity<Dimension> value() const { return unit_(number_.value); }
    Quantity<Dimension> plus_minus() const { return unit_(number_.plus_minus); }
    double relative() const { return number_.relative(); }

    EstimatedNumber in(Unit<Dimension> unit) const {
        if (unit.to_base == unit_.to_base) return number_;
        return {value().in(unit), plus_minus().in(unit), assumed(), known()};
    }

  private:
    EstimatedNumber number_;
    Unit<Dimension> unit_{1};
};

template <class Dimension>
Estimate<Quantity<Dimension>> estimate(Quantity<Dimension> value, double share, bool assumed = false) {
    constexpr Unit<Dimension> base{1};
    return {base, estimated_number(value.in(base), share, assumed)};
}
/// Off by as much whatever the value is.
template <class Dimension>
Estimate<Quantity<Dimension>> estimate_within(Quantity<Dimension> value, Quantity<Dimension> plus_minus) {
    constexpr Unit<Dimension> base{1};
    return {base, {value.in(base), plus_minus.in(base), false, true}};
}

}  // namespace endbell::inline airflow
