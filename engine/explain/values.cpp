#include "engine/explain/values.hpp"

#include <array>
#include <charconv>
#include <cmath>

#include "engine/words/write.hpp"

namespace endbell::inline explain {

namespace {

struct Speaker {
    std::string operator()(std::monostate) const { return "not known"; }
    std::string operator()(bool yes) const { return yes ? "yes" : "no"; }
    std::string operator()(double number) const { return say_number(number, 3); }
    std::string operator()(const std::string& word) const { return word; }
    std::string operator()(Rotation r) const {
        switch (r) {
            case Rotation::cw_shaft_end:
                return "clockwise from the shaft end (CWSE = CCWLE)";
            case Rotation::ccw_shaft_end:
                return "counter-clockwise from the shaft end (CCWSE = CWLE)";
            case Rotation::reversible:
                return "reversible";
        }
        return "";
    }
    std::string operator()(Voltage v) const { return say_number(v.in(volt), 1) + " V"; }
    std::string operator()(Current a) const { return say_number(a.in(ampere), 2) + " A"; }
    std::string operator()(Length l) const {
        const std::string exact = write(l);  // "1/2 in"; a worked-out bound may have no such fraction
        return exact.size() <= 10 ? exact : say_number(l.in(inch), 3) + " in";
    }
    std::string operator()(Pressure p) const { return say_number(p.in(inch_water), 2) + " in. w.c."; }
    std::string operator()(Airflow q) const { return say_number(q.in(cfm), 0) + " cfm"; }
    std::string operator()(Resistance r) const {
        if (!std::isfinite(r.in(ohm))) return "open (OL)";
        return say_number(r.in(ohm), 2) + " ohm";
    }
    std::string operator()(TemperatureRise rise) const {
        return say_number(rise.in(fahrenheit_degree), 0) + " F degrees";
    }
    template <class T>
    std::string operator()(const T& quantity) const {
        return write(quantity);
    }
};

}  // namespace

std::string say(const Value& value) {
    return std::visit(Speaker{}, value);
}

std::string say(const Datum& fact) {
    if (!fact.known()) return "not known";
    return say(fact.value) + (fact.origin == Origin::guessed || fact.origin == Origin::assumed
                                  ? " (" + std::string(say(fact.origin)) + ")"
                                  : "");
}

std::string_view say(Origin origin) {
    constexpr std::array<std::string_view, 9> names{"plate", "measured", "equipment", "job",    "catalog",
                                                    "shop",  "implied",  "guessed",   "assumed"};
    return names[static_cast<std::size_t>(origin)];
}

std::string say_number(double number, int decimals) {
    if (!std::isfinite(number)) return "-";
    std::array<char, 64> text{};
    const auto end =
        std::to_chars(text.data(), text.data() + text.size(), number, std::chars_format::fixed, decimals).ptr;
    std::string out(text.data(), end);
    if (out.find('.') != std::string::npos) {
        out.erase(out.find_last_not_of('0') + 1);
        if (out.back() == '.') out.pop_back();
    }
    return out == "-0" ? "0" : out;
}

}  // namespace endbell::inline explain
