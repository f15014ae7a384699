// engine/units: quantities, money and dates. A unit is named where a number enters and where it leaves, nowhere else.
// Here: the dimensions and units of this trade. Factors: GNU units 2.22 agrees (tests/outside).
#pragma once
#include "engine/units/quantity.hpp"

namespace endbell::inline units {

struct PowerDimension;
struct VoltageDimension;
struct CurrentDimension;
struct ApparentPowerDimension;
struct ResistanceDimension;
struct CapacitanceDimension;
struct FrequencyDimension;
struct SpeedDimension;
struct TorqueDimension;
struct LengthDimension;
struct AirflowDimension;
struct PressureDimension;
struct HeatDimension;
struct EnergyDimension;
struct DurationDimension;
struct PeriodDimension;
struct RiseDimension;
struct DensityDimension;
struct HeatFactorDimension;

using Power = Quantity<PowerDimension>;
using Voltage = Quantity<VoltageDimension>;
using Current = Quantity<CurrentDimension>;
using ApparentPower = Quantity<ApparentPowerDimension>;
using Resistance = Quantity<ResistanceDimension>;
using Capacitance = Quantity<CapacitanceDimension>;
using Frequency = Quantity<FrequencyDimension>;
using Speed = Quantity<SpeedDimension>;
using Torque = Quantity<TorqueDimension>;
using Length = Quantity<LengthDimension>;
using Airflow = Quantity<AirflowDimension>;
using Pressure = Quantity<PressureDimension>;
using HeatRate = Quantity<HeatDimension>;
using Energy = Quantity<EnergyDimension>;
using Duration = Quantity<DurationDimension>;
/// Years that pass, in which money is discounted and things wear out: never the hours that something runs.
using Period = Quantity<PeriodDimension>;
/// A difference of two temperatures. Never a temperature.
using TemperatureRise = Quantity<RiseDimension>;
using Density = Quantity<DensityDimension>;
/// The heat that an airflow carries for each degree.
using HeatFactor = Quantity<HeatFactorDimension>;

inline constexpr Unit<PowerDimension> watt{1.0};
inline constexpr Unit<PowerDimension> kilowatt{1000.0};
inline constexpr Unit<PowerDimension> horsepower{745.69987};  // mechanical; nameplates round to 746
inline constexpr Unit<VoltageDimension> volt{1.0};
inline constexpr Unit<CurrentDimension> ampere{1.0};
inline constexpr Unit<ApparentPowerDimension> volt_ampere{1.0};
inline constexpr Unit<ResistanceDimension> ohm{1.0};
inline constexpr Unit<CapacitanceDimension> microfarad{1.0};
inline constexpr Unit<FrequencyDimension> hertz{1.0};
inline constexpr Unit<SpeedDimension> rpm{1.0};
inline constexpr Unit<TorqueDimension> pound_foot{1.0};
inline constexpr Unit<TorqueDimension> ounce_foot{1.0 / 16.0};
inline constexpr Unit<TorqueDimension> newton_metre{1.0 / 1.3558179483};
inline constexpr Unit<LengthDimension> inch{1.0};
inline constexpr Unit<LengthDimension> millimetre{1.0 / 25.4};
inline constexpr Unit<LengthDimension> foot{12.0};
inline constexpr Unit<AirflowDimension> cfm{1.0};
inline constexpr Unit<AirflowDimension> litre_per_second{2.1188800};
inline constexpr Unit<PressureDimension> inch_water{1.0};  // at 4 C: 249.08891 Pa
inline constexpr Unit<PressureDimension> pascal{1.0 / 249.08891};
inline constexpr Unit<HeatDimension> btu_per_hour{1.0};
inline constexpr Unit<HeatDimension> kilowatt_heat{3412.1416};
inline constexpr Unit<HeatDimension> ton_cooling{12000.0};
inline constexpr Unit<EnergyDimension> kilowatt_hour{1.0};
inline constexpr Unit<DurationDimension> hour{1.0};
inline constexpr Unit<DurationDimension> calendar_day{24.0};
inline constexpr Unit<DurationDimension> second{1.0 / 3600.0};
inline constexpr Unit<PeriodDimension> calendar_year{1.0};
inline constexpr Unit<RiseDimension> fahrenheit_degree{1.0};
inline constexpr Unit<RiseDimension> celsius_degree{1.8};
inline constexpr Unit<DensityDimension> pound_per_cubic_foot{1.0};
inline constexpr Unit<HeatFactorDimension> btu_per_hour_cfm_degree{1.0};

/// A temperature: a point on a scale. Two of them differ by a TemperatureRise.
class Temperature {
  public:
    static constexpr Temperature fahrenheit(double f) { return Temperature(f); }
    static constexpr Temperature celsius(double c) { return Temperature(c * 1.8 + 32.0); }
    constexpr double in_fahrenheit() const { return fahrenheit_; }
    constexpr double in_celsius() const { return (fahrenheit_ - 32.0) / 1.8; }

    constexpr Temperature() = default;
    friend constexpr auto operator<=>(Temperature, Temperature) = default;
    friend constexpr TemperatureRise operator-(Temperature a, Temperature b) {
        return fahrenheit_degree(a.fahrenheit_ - b.fahrenheit_);
    }
    friend constexpr Temperature operator+(Temperature a, TemperatureRise rise) {
        return Temperature(a.fahrenheit_ + rise.in(fahrenheit_degree));
    }

  private:
    explicit constexpr Temperature(double f) : fahrenheit_(f) {}
    double fahrenheit_ = 0;
};

/// hp = torque[lb-ft] * rpm / 5252.113 (33,000 ft-lb/min over 2 pi).
inline constexpr double pound_foot_rpm_per_horsepower = 5252.113;

inline constexpr Torque torque_of(Power shaft, Speed speed) {
    return pound_foot(pound_foot_rpm_per_horsepower * shaft.in(horsepower) / speed.in(rpm));
}
inline constexpr Power shaft_power(Torque torque, Speed speed) {
    return horsepower(torque.in(pound_foot)*speed.in(rpm) / pound_foot_rpm_per_horsepower);
}

}  // namespace endbell::inline units
