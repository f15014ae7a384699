// A plate voltage: one nominal, or a span such as 208-230.
#pragma once
#include <compare>

#include "engine/units/units.hpp"

namespace endbell {

/// low == high for a single nominal. 208-230 has low 208, high 230. A reconnectable 115/208-230 is two of
/// these.
struct PlateVolts {
    Voltage low;
    Voltage high;
    friend auto operator<=>(const PlateVolts&, const PlateVolts&) = default;
};

constexpr PlateVolts plate_volts(double nominal) {
    return {volt(nominal), volt(nominal)};
}
constexpr PlateVolts plate_volts(double low, double high) {
    return {volt(low), volt(high)};
}

}  // namespace endbell
