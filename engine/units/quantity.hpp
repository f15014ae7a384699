// Quantities whose unit is named where a number enters and where it leaves, and nowhere else:
//     Power p = horsepower(0.5);      double w = p.in(watt);
// A sum, a difference and a comparison exist between equal dimensions only.
#pragma once
#include <compare>

namespace endbell::inline units {

template <class Dimension>
class Quantity;

/// `to_base` times a number in this unit is the number in the dimension's base unit.
template <class Dimension>
struct Unit {
    double to_base;
    constexpr Quantity<Dimension> operator()(double number) const;
};

template <class Dimension>
class Quantity {
  public:
    constexpr Quantity() = default;
    constexpr double in(Unit<Dimension> unit) const { return base_ / unit.to_base; }

    friend constexpr auto operator<=>(Quantity, Quantity) = default;
    friend constexpr Quantity operator+(Quantity a, Quantity b) { return Quantity(a.base_ + b.base_); }
    friend constexpr Quantity operator-(Quantity a, Quantity b) { return Quantity(a.base_ - b.base_); }
    friend constexpr Quantity operator*(Quantity a, double factor) { return Quantity(a.base_ * factor); }
    friend constexpr Quantity operator*(double factor, Quantity a) { return a * factor; }
    friend constexpr Quantity operator/(Quantity a, double divisor) { return Quantity(a.base_ / divisor); }
    /// A ratio of two equal dimensions has no unit.
    friend constexpr double operator/(Quantity a, Quantity b) { return a.base_ / b.base_; }

  private:
    friend struct Unit<Dimension>;
    explicit constexpr Quantity(double base) : base_(base) {}
    double base_ = 0;
};

template <class Dimension>
constexpr Quantity<Dimension> Unit<Dimension>::operator()(double number) const {
    return Quantity<Dimension>(number * to_base);
}

}  // namespace endbell::inline units
