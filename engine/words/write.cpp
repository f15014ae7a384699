#include "engine/words/write.hpp"

#include <algorithm>
#include <array>
#include <charconv>
#include <cmath>

#include "engine/words/number.hpp"
#include "engine/words/power.hpp"

namespace endbell::inline words {

namespace {

/// Twelve significant figures: more than any plate or meter has, and free of the last bit of a conversion.
std::string figures(double value) {
    if (!std::isfinite(value)) return shortest(value);
    std::array<char, 64> text{};
    const auto end =
        std::to_chars(text.data(), text.data() + text.size(), value, std::chars_format::scientific, 11).ptr;
    double rounded = value;
    std::from_chars(text.data(), end, rounded);
    return shortest(rounded);
}

std::string with(double value, const char* unit) {
    return figures(value) + " " + unit;
}

/// "1/2" for 0.5, "5 5/8" for 5.625; empty when no denominator up to `most` fits.
std::string as_fraction(double value, const std::vector<int>& denominators) {
    const double whole = std::floor(value);
    for (int bottom : denominators) {
        const double top = (value - whole) * bottom;
        const double nearest = std::round(top);
        if (nearest < 1 || nearest >= bottom || std::abs(top - nearest) > 1e-9) continue;
        const std::string part = shortest(nearest) + "/" + std::to_string(bottom);
        return whole == 0 ? part : shortest(whole) + " " + part;
    }
    return "";
}

}  // namespace

std::string write(Power shaft) {
    const double hp = shaft.in(horsepower);
    static const std::vector<int> ladder{2, 3, 4, 5, 6, 7, 8, 10, 12, 15, 20, 25, 30, 40, 50, 60};
    for (double standard : power_ladder()) {
        if (std::abs(hp - standard) > 1e-9 * standard) continue;
        const std::string fraction = as_fraction(standard, ladder);
        return (fraction.empty() ? figures(standard) : fraction) + " hp";
    }
    return with(hp, "hp");
}

std::string write_watts(Power input) {
    return with(input.in(watt), "W");
}

std::string write(const PlateVolts& v) {
    const std::string low = figures(v.low.in(volt));
    const std::string high = figures(v.high.in(volt));
    if (v.low == v.high) return low + " V";
    // A dash across two classes would be a question; " to " says one winding for the whole span.
    const bool dash = v == plate_volts(208, 230);
    return low + (dash ? "-" : " to ") + high + " V";
}

std::string write(Voltage v) {
    return with(v.in(volt), "V");
}
std::string write(Current i) {
    return with(i.in(ampere), "A");
}

namespace {

/// "460/467/450 V": the figures, and the unit once.
template <class T>
std::string write_legs(const Legs<T>& legs) {
    std::string text;
    for (const T& one : legs.each()) {
        const std::string written = write(one);
        if (!text.empty()) text = text.substr(0, text.rfind(' ')) + "/";
        text += written;
    }
    return text;
}

}  // namespace

std::string write(const LineVolts& legs) {
    return write_legs(legs);
}
std::string write(const LineAmps& legs) {
    return write_legs(legs);
}
std::string write(ApparentPower s) {
    return with(s.in(volt_ampere), "VA");
}
std::string write(Resistance r) {
    return std::isinf(r.in(ohm)) ? "OL" : with(r.in(ohm), "ohm");
}
std::string write(Capacitance c) {
    return with(c.in(microfarad), "MFD");
}
std::string write(Frequency f) {
    return with(f.in(hertz), "Hz");
}
std::string write(Speed n) {
    return with(n.in(rpm), "rpm");
}
std::string write(Torque t) {
    return with(t.in(ounce_foot), "oz-ft");
}

std::string write(Length l) {
    const double inches = l.in(inch);
    const std::string fraction = inches < 100 ? as_fraction(inches, {2, 4, 8, 16, 32}) : "";
    return (fraction.empty() ? figures(inches) : fraction) + " in";
}

std::string write(Airflow q) {
    return with(q.in(cfm), "cfm");
}
std::string write(Pressure p) {
    return with(p.in(inch_water), "in wc");
}
std::string write(HeatRate q) {
    return with(q.in(btu_per_hour), "Btu/h");
}
std::string write(Temperature t) {
    return with(t.in_celsius(), "C");
}
std::string write_fahrenheit(Temperature t) {
    return with(t.in_fahrenheit(), "F");
}
std::string write(TemperatureRise r) {
    return with(r.in(fahrenheit_degree), "F");
}
std::string write(Duration d) {
    return with(d.in(second), "s");
}

std::string write(Date date) {
    const auto digits = [](unsigned number, std::size_t width) {
        const std::string text = std::to_string(number);
        return std::string(width - std::min(width, text.size()), '0') + text;
    };
    return digits(static_cast<unsigned>(static_cast<int>(date.year())), 4) + "-" +
           digits(static_cast<unsigned>(date.month()), 2) + "-" +
           digits(static_cast<unsigned>(date.day()), 2);
}

std::string write(Share share) {
    const std::int64_t whole = share.millionths / 10'000;
    std::string part = std::to_string(share.millionths % 10'000);
    part.insert(0, 4 - part.size(), '0');
    while (!part.empty() && part.back() == '0') part.pop_back();
    return std::to_string(whole) + (part.empty() ? "" : "." + part) + " %";
}

std::string write(bool yes) {
    return yes ? "yes" : "no";
}
std::string write(int count) {
    return std::to_string(count);
}
std::string write(double number) {
    return shortest(number);
}
std::string write(const std::string& text) {
    return text;
}
std::string write(const Money& money) {
    return money.amount();
}

std::string write(const std::vector<Power>& powers) {
    std::string text;
    for (Power p : powers) text += (text.empty() ? "" : "; ") + write(p);
    return text;
}

std::string write(const std::vector<PlateVolts>& volts) {
    std::string text;
    for (const PlateVolts& v : volts) text += (text.empty() ? "" : " or ") + write(v);
    return text;
}

}  // namespace endbell::inline words
