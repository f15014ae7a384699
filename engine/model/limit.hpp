// The limits as code names them. A constant finds its row and its unit while it is compiled: one that has no row, or whose
// row is written in another dimension's unit, does not compile.
//     const Length clearance = limits.value(limit::bore_clearance);
#pragma once
#include <type_traits>

#include "engine/base/ensure.hpp"
#include "engine/model/limit_rows.hpp"
#include "engine/units/units.hpp"

namespace endbell::inline model {

/// A unit as rows write it.
template <class Dimension>
struct RowUnit {
    std::string_view text;
    Unit<Dimension> unit;
};

/// The units of a dimension. Airflow of a ton, power of a cfm, ohms of 1000 ft: what it is divided by, the reader knows.
template <class Dimension>
inline constexpr auto row_units = std::array<RowUnit<Dimension>, 0>{};
template <>
inline constexpr auto row_units<VoltageDimension> = std::array{RowUnit<VoltageDimension>{"V", volt}};
template <>
inline constexpr auto row_units<CurrentDimension> = std::array{RowUnit<CurrentDimension>{"A", ampere}};
template <>
inline constexpr auto row_units<ApparentPowerDimension> =
    std::array{RowUnit<ApparentPowerDimension>{"VA", volt_ampere}};
template <>
inline constexpr auto row_units<PowerDimension> = std::array{RowUnit<PowerDimension>{"W per cfm", watt}};
template <>
inline constexpr auto row_units<ResistanceDimension> = std::array{
    RowUnit<ResistanceDimension>{"ohm", ohm}, RowUnit<ResistanceDimension>{"ohm per 1000 ft", ohm}};
template <>
inline constexpr auto row_units<LengthDimension> =
    std::array{RowUnit<LengthDimension>{"in", inch}, RowUnit<LengthDimension>{"ft", foot}};
template <>
inline constexpr auto row_units<PressureDimension> =
    std::array{RowUnit<PressureDimension>{"in. w.c.", inch_water}};
template <>
inline constexpr auto row_units<AirflowDimension> = std::array{
    RowUnit<AirflowDimension>{"cfm per ton", cfm}, RowUnit<AirflowDimension>{"cfm per square inch", cfm}};
template <>
inline constexpr auto row_units<RiseDimension> =
    std::array{RowUnit<RiseDimension>{"F degrees", fahrenheit_degree},
               RowUnit<RiseDimension>{"C degrees", celsius_degree}};
template <>
inline constexpr auto row_units<DurationDimension> =
    std::array{RowUnit<DurationDimension>{"days", calendar_day}, RowUnit<DurationDimension>{"s", second}};

namespace detail {

template <class T>
using As = std::type_identity<T>;

constexpr LimitId named(std::string_view id) {
    for (std::size_t place = 0; place < limit_rows.size(); ++place) {
        if (limit_rows[place].id == id) return {limit_rows[place].id, place};
    }
    throw OurBug("no such limit: " + std::string(id));
}

constexpr double only_if(bool holds) {
    if (!holds) throw OurBug("a limit of another unit");
    return 1;
}

template <class Dimension>
constexpr double scale(std::string_view unit, As<Quantity<Dimension>>) {
    for (const RowUnit<Dimension>& known : row_units<Dimension>) {
        if (known.text == unit) return known.unit.to_base;
    }
    return only_if(false);
}
constexpr double scale(std::string_view unit, As<Temperature>) {
    return only_if(unit == "C");
}
/// Shares say of what; there are three counts.
constexpr double scale(std::string_view unit, As<double>) {
    return only_if(unit.substr(0, 3) == "of " || unit == "standard steps" || unit == "poles" ||
                   unit == "a year");
}

template <class Dimension>
constexpr Quantity<Dimension> made(double number, double scale, As<Quantity<Dimension>>) {
    return Unit<Dimension>{scale}(number);
}
constexpr Temperature made(double number, double, As<Temperature>) {
    return Temperature::celsius(number);
}
constexpr double made(double number, double, As<double>) {
    return number;
}

}  // namespace detail

/// A row whose value is a T: a quantity, a Temperature, or a double for a share or a count.
template <class T>
class LimitOf : public LimitId {
  public:
    constexpr explicit LimitOf(std::string_view id)
        : LimitId(detail::named(id)), scale_(detail::scale(limit_rows[place].unit, detail::As<T>{})) {}
    constexpr T of(double number) const { return detail::made(number, scale_, detail::As<T>{}); }

  private:
    double scale_;  // the row's unit in the dimension's base unit
};

namespace limit {

// supply
inline constexpr LimitOf<double> voltage_band{"voltage.band"};
inline constexpr LimitOf<Voltage> voltage_guard{"voltage.guard"};
inline constexpr LimitOf<double> voltage_caution{"voltage.caution"};
inline constexpr LimitOf<Voltage> voltage_live{"voltage.live"};
inline constexpr LimitOf<Voltage> voltage_absent{"voltage.absent"};
inline constexpr LimitOf<Voltage> voltage_range_a_208{"voltage.range_a_208"};
inline constexpr LimitOf<double> voltage_unbalance{"voltage.unbalance"};
inline constexpr LimitOf<double> voltage_unbalance_most{"voltage.unbalance_most"};
inline constexpr LimitOf<double> voltage_lost_leg{"voltage.lost_leg"};
inline constexpr LimitOf<Voltage> contact_drop{"contact.drop"};
inline constexpr LimitOf<double> voltage_frequency{"voltage.frequency"};
inline constexpr LimitOf<double> voltage_combined{"voltage.combined"};

// size and speed
inline constexpr LimitOf<double> power_low{"power.low"};
inline constexpr LimitOf<double> power_step_up{"power.step_up"};
inline constexpr LimitOf<double> speed_match{"speed.match"};
inline constexpr LimitOf<Length> bore_clearance{"shaft.bore_clearance"};
inline constexpr LimitOf<Length> bore_standard_short{"bore.standard_short"};
inline constexpr LimitOf<Length> shaft_length_slack{"shaft.length_slack"};
inline constexpr LimitOf<Length> body_band{"body.band"};
inline constexpr LimitOf<Length> bolt_circle_match{"bolt_circle.match"};
inline constexpr LimitOf<TemperatureRise> ambient_short{"ambient.short"};
inline constexpr LimitOf<Temperature> ambient_outdoor{"ambient.outdoor"};

// current
inline constexpr LimitOf<double> current_over_plate{"current.over_plate"};
inline constexpr LimitOf<double> current_over_old{"current.over_old"};
inline constexpr LimitOf<double> current_lost_leg{"current.lost_leg"};
inline constexpr LimitOf<double> current_circuit{"current.circuit"};
inline constexpr LimitOf<Current> current_plate_rounding{"current.plate_rounding"};

// capacitor
inline constexpr LimitOf<double> capacitor_part{"capacitor.part"};
inline constexpr LimitOf<double> capacitor_replace{"capacitor.replace"};

// electronic motors
inline constexpr LimitOf<double> winding_balance{"winding.balance"};
inline constexpr LimitOf<Resistance> winding_spread{"winding.spread"};
inline constexpr LimitOf<Resistance> winding_most{"winding.most"};
inline constexpr LimitOf<Resistance> winding_least{"winding.least"};
inline constexpr LimitOf<Resistance> winding_ground{"winding.ground"};
inline constexpr LimitOf<Voltage> tap_low{"tap.low"};
inline constexpr LimitOf<Voltage> tap_high{"tap.high"};
inline constexpr LimitOf<Voltage> serial_low{"serial.low"};
inline constexpr LimitOf<Voltage> serial_high{"serial.high"};
inline constexpr LimitOf<Voltage> pulse_low{"pulse.low"};
inline constexpr LimitOf<Voltage> pulse_high{"pulse.high"};
inline constexpr LimitOf<Current> tap_current{"tap.current"};
inline constexpr LimitOf<Voltage> tap_volts{"tap.volts"};

// air
inline constexpr LimitOf<Pressure> static_repair_first{"static.repair_first"};
inline constexpr LimitOf<Pressure> static_plate_default{"static.plate_default"};
inline constexpr LimitOf<Pressure> static_low{"static.low"};
inline constexpr LimitOf<Pressure> filter_drop{"filter.drop"};
inline constexpr LimitOf<Pressure> static_agree{"static.agree"};
inline constexpr LimitOf<double> airflow_match{"airflow.match"};
inline constexpr LimitOf<double> airflow_warn{"airflow.warn"};
inline constexpr LimitOf<double> load_full{"load.full"};
inline constexpr LimitOf<double> load_warn{"load.warn"};
inline constexpr LimitOf<double> load_small{"load.small"};
inline constexpr LimitOf<Airflow> cooling_least{"cooling.least"};
inline constexpr LimitOf<Airflow> cooling_low{"cooling.low"};
inline constexpr LimitOf<Airflow> cooling_high{"cooling.high"};
inline constexpr LimitOf<Airflow> cooling_humid_low{"cooling.humid_low"};
inline constexpr LimitOf<Airflow> cooling_dry_high{"cooling.dry_high"};
inline constexpr LimitOf<Power> fan_efficacy{"fan.efficacy"};
inline constexpr LimitOf<TemperatureRise> rise_margin{"rise.margin"};
inline constexpr LimitOf<TemperatureRise> element_rise{"element.rise"};
inline constexpr LimitOf<Duration> element_run_on{"element.run_on"};
inline constexpr LimitOf<Pressure> coil_drop{"coil.drop"};
inline constexpr LimitOf<Airflow> return_face{"return.face"};
inline constexpr LimitOf<double> start_up_change{"start_up.change"};

inline constexpr LimitOf<double> burner_over{"burner.over"};
// altitude
inline constexpr LimitOf<Length> derate_from{"altitude.derate_from"};
inline constexpr LimitOf<double> altitude_derate{"altitude.derate"};
inline constexpr LimitOf<Length> motor_from{"altitude.motor_from"};
inline constexpr LimitOf<double> altitude_motor{"altitude.motor"};

// control power
inline constexpr LimitOf<double> transformer_plan{"transformer.plan"};
inline constexpr LimitOf<double> transformer_fuse{"transformer.fuse"};
inline constexpr LimitOf<ApparentPower> relay_coil{"relay.coil"};
inline constexpr LimitOf<double> relay_poles{"relay.poles"};
inline constexpr LimitOf<double> relay_pull_in{"relay.pull_in"};
inline constexpr LimitOf<double> relay_drop_out{"relay.drop_out"};
inline constexpr LimitOf<ApparentPower> call_load{"call.load"};
inline constexpr LimitOf<Resistance> wire_control{"wire.control"};
inline constexpr LimitOf<ApparentPower> class2_power{"class2.power"};
inline constexpr LimitOf<Voltage> class2_volts{"class2.volts"};

// recurrence
inline constexpr LimitOf<double> recurrence_cured{"recurrence.cured"};
inline constexpr LimitOf<double> recurrence_uncured{"recurrence.uncured"};

// money
inline constexpr LimitOf<Duration> price_age{"price.age"};

}  // namespace limit

}  // namespace endbell::inline model
