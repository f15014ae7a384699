// Values as text that the readers of this folder read back to the same value. Never looks at the locale.
#pragma once
#include <string>
#include <vector>

#include "engine/model/kinds.hpp"
#include "engine/model/legs.hpp"
#include "engine/model/supply.hpp"
#include "engine/units/date.hpp"
#include "engine/units/money.hpp"
#include "engine/units/units.hpp"

namespace endbell::inline words {

std::string write(Power shaft);        // "1/2 hp"; off the ladder "0.45 hp"
std::string write_watts(Power input);  // "420 W"
std::string write(const PlateVolts&);  // "208-230 V"
std::string write(Voltage);
std::string write(const SupplySystem&);  // "230 V", "120/240", "208Y/120", "240 high leg", "460-3-60"
std::string write(Current);
std::string write(const LineVolts&);  // "118 V", "460/467/450 V"
std::string write(const LineAmps&);
std::string write(ApparentPower);
std::string write(Resistance);  // "OL" for infinity
std::string write(Capacitance);
std::string write(Frequency);
std::string write(Speed);
std::string write(Torque);
std::string write(Length);  // "1/2 in", "5 5/8 in", "5.6 in"
std::string write(Airflow);
std::string write(Pressure);
std::string write(HeatRate);
std::string write(Temperature shown_in_celsius);
std::string write_fahrenheit(Temperature);
std::string write(TemperatureRise);  // Fahrenheit degrees
std::string write(Duration);
std::string write(Date);   // "2026-01-31"
std::string write(Share);  // "8.25 %"
std::string write(bool yes);
std::string write(int count);
std::string write(double number);
std::string write(const std::string& text);
std::string write(const Money& money);  // the amount only: its currency stands beside it

/// Several powers high to low: "1/2 hp; 1/3 hp".
std::string write(const std::vector<Power>& powers);
/// "115 V or 208-230 V": reconnectable.
std::string write(const std::vector<PlateVolts>& volts);

template <class E>
requires requires {
    Words<E>::table;
}
std::string write(E value) {
    return std::string(word(value));
}

/// Any other list: "a; b".
template <class T>
std::string write(const std::vector<T>& list) {
    std::string text;
    for (const T& one : list) text += (text.empty() ? "" : "; ") + write(one);
    return text;
}

}  // namespace endbell::inline words
