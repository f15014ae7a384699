// Answers to try where somebody wants to know whether any answer to a key matters: every word, and both sides of every
// size at which something may change.
#pragma once
#include <algorithm>
#include <array>
#include <cstdio>
#include <cstdlib>
#include <map>
#include <string>
#include <tuple>
#include <type_traits>
#include <vector>

#include "engine/model/failed_unit.hpp"
#include "engine/words/write.hpp"

namespace endbell::inline fields {

/// Sizes at which something may change, by dimension: limits, what the job states and what parts have.
class StepSizes {
  public:
    template <class T>
    void add(T size) {
        std::get<std::vector<T>>(sizes_).push_back(size);
    }
    template <class T>
    const std::vector<T>& of() const {
        return std::get<std::vector<T>>(sizes_);
    }
    /// What parts say where a plate has words of its own, by the job's key: programs, plugs and the like.
    std::map<std::string, std::vector<std::string>, std::less<>> texts;

  private:
    std::tuple<std::vector<Voltage>, std::vector<Current>, std::vector<Power>, std::vector<Speed>,
               std::vector<Length>, std::vector<Capacitance>, std::vector<Frequency>, std::vector<Resistance>,
               std::vector<Pressure>, std::vector<Airflow>, std::vector<TemperatureRise>,
               std::vector<HeatRate>, std::vector<ApparentPower>, std::vector<Temperature>>
        sizes_;
};

/// From where to where a size is searched between its steps: what such a reading can be in this trade (common practice).
template <class T>
struct Span {
    T from;
    T to;
};
constexpr Span<Voltage> span_of(std::type_identity<Voltage>) {
    return {volt(0.5), volt(600)};
}
constexpr Span<Current> span_of(std::type_identity<Current>) {
    return {ampere(0.05), ampere(100)};
}
constexpr Span<Power> span_of(std::type_identity<Power>) {
    return {watt(5), kilowatt(30)};
}
constexpr Span<Speed> span_of(std::type_identity<Speed>) {
    return {rpm(100), rpm(4000)};
}
constexpr Span<Length> span_of(std::type_identity<Length>) {
    return {inch(0.1), foot(10'000)};
}
constexpr Span<Capacitance> span_of(std::type_identity<Capacitance>) {
    return {microfarad(1), microfarad(200)};
}
constexpr Span<Frequency> span_of(std::type_identity<Frequency>) {
    return {hertz(45), hertz(66)};
}
constexpr Span<Resistance> span_of(std::type_identity<Resistance>) {
    return {ohm(0.05), ohm(1e7)};
}
constexpr Span<Pressure> span_of(std::type_identity<Pressure>) {
    return {inch_water(0.02), inch_water(4)};
}
constexpr Span<Airflow> span_of(std::type_identity<Airflow>) {
    return {cfm(50), cfm(5000)};
}
constexpr Span<TemperatureRise> span_of(std::type_identity<TemperatureRise>) {
    return {fahrenheit_degree(4), fahrenheit_degree(150)};
}
constexpr Span<HeatRate> span_of(std::type_identity<HeatRate>) {
    return {btu_per_hour(3000), btu_per_hour(300'000)};
}
constexpr Span<ApparentPower> span_of(std::type_identity<ApparentPower>) {
    return {volt_ampere(5), volt_ampere(250)};
}

/// Nought, each step with both of its sides, and sizes between. Of a pressure also the other side of the blower.
template <class D>
std::vector<Quantity<D>> sizes_to_try(const StepSizes& steps) {
    using T = Quantity<D>;
    constexpr double beside = 0.001;  // finer than any meter of this trade
    constexpr double further = 1.6;   // about five in a decade
    std::vector<T> sizes{T{}};
    for (const T at : steps.of<T>()) {
        for (const double side : {1 - beside, 1.0, 1 + beside}) sizes.push_back(at * side);
    }
    const Span<T> span = span_of(std::type_identity<T>{});
    for (T at = span.from; at <= span.to; at = at * further) sizes.push_back(at);
    if constexpr (std::is_same_v<T, Pressure>) {
        const std::size_t positive = sizes.size();
        for (std::size_t i = 0; i < positive; ++i) sizes.push_back(sizes[i] * -1);
    }
    std::sort(sizes.begin(), sizes.end());
    const auto as_one = [](T a, T b) { return b - a <= b * (beside / 4) && b > T{}; };
    sizes.erase(std::unique(sizes.begin(), sizes.end(), as_one), sizes.end());
    return sizes;
}

inline std::vector<Temperature> temperatures_to_try(const StepSizes& steps, std::string_view key) {
    std::vector<Temperature> list;
    if (key ==
        "equipment.return_air") {  // of a house that somebody lives in, or comes home to (common practice)
        for (double celsius = 5; celsius <= 35; celsius += 2.5) list.push_back(Temperature::celsius(celsius));
        return list;
    }
    for (const Temperature at : steps.of<Temperature>()) {
        for (const double side : {-0.1, 0.0, 0.1})
            list.push_back(Temperature::celsius(at.in_celsius() + side));
    }
    for (double celsius = 0; celsius <= 100; celsius += 5) list.push_back(Temperature::celsius(celsius));
    return list;
}

/// Three readings pin to pin: equal at every size, one that differs, one open, one only.
inline std::vector<std::string> windings_to_try(const StepSizes& steps) {
    std::vector<std::string> texts{"OL; OL; OL", "5", "5; 5; OL"};
    const auto three = [&](double a, double b, double c) {
        texts.push_back(write(ohm(a)) + "; " + write(ohm(b)) + "; " + write(ohm(c)));
    };
    for (const Resistance size : sizes_to_try<ResistanceDimension>(steps)) {
        const double r = size.in(ohm);
        if (r > 1000) continue;
        three(r, r, r);
        three(5, 5, 5 + r);
        three(15, 15, 15 + r);
    }
    for (const double share : {0.05, 0.09, 0.11, 0.2, 1.0}) three(5, 5, 5 * (1 + share));
    return texts;
}

namespace detail {

template <class T>
struct IsList : std::false_type {};
template <class T>
struct IsList<std::vector<T>> : std::true_type {};
template <class T>
struct IsQuantity : std::false_type {};
template <class D>
struct IsQuantity<Quantity<D>> : std::true_type {
    using Dimension = D;
};

/// Drawings of a unit rather than readings: no list holds the answers to it. Money and terms are the shop's own.
template <class T>
inline constexpr bool has_no_list =
    std::is_same_v<T, std::vector<Terminal>> || std::is_same_v<T, std::vector<LeadInUse>> ||
    std::is_same_v<T, std::vector<CustomState>> || std::is_same_v<T, std::vector<BlowerRow>> ||
    std::is_same_v<T, std::vector<std::string>> || std::is_same_v<T, Date> || std::is_same_v<T, Money> ||
    std::is_same_v<T, Share>;

/// To five figures, as no meter of this trade shows more.
inline std::string rounded(const std::string& size) {
    char* unit = nullptr;
    const double number = std::strtod(size.c_str(), &unit);
    if (unit == size.c_str() || size.find('/') != std::string::npos || size.find("OL") == 0) return size;
    char text[32];
    std::snprintf(text, sizeof text, "%.5g", number);
    return std::string(std::string_view(text).find('e') == std::string_view::npos
                           ? text
                           : size.substr(0, static_cast<std::size_t>(unit - size.c_str()))) +
           unit;
}

template <class T>
struct IsLegs : std::false_type {};
template <class D>
struct IsLegs<Legs<Quantity<D>>> : std::true_type {
    using Dimension = D;
};

template <class T, class Writer>
std::vector<std::string> written(const std::vector<T>& values, const Writer& writer) {
    std::vector<std::string> texts;
    for (const T& value : values) {
        std::string text = rounded(writer(value));
        if (texts.empty() || texts.back() != text) texts.push_back(std::move(text));
    }
    return texts;
}

template <class E>
std::vector<std::string> words() {
    std::vector<std::string> texts;
    for (const Word<E>& w : Words<E>::table) texts.emplace_back(w.text);
    return texts;
}

}  // namespace detail

/// One for all, and three of which one is a little off, far off, or dead.
template <class D>
std::vector<std::string> legs_to_try(const StepSizes& steps) {
    std::vector<std::string> texts;
    for (const Quantity<D> size : sizes_to_try<D>(steps)) {
        const auto write_one = [](Quantity<D> leg) { return detail::rounded(write(leg)); };
        const std::string all = write_one(size);
        texts.push_back(all);
        const std::string number = all.substr(0, all.find(' '));
        for (const double share : {0.0, 0.5, 0.94, 0.97, 1.0}) {
            const std::string other = write_one(size * share);
            texts.push_back(number + "/" + number + "/" + other.substr(0, other.find(' ')));
        }
    }
    return texts;
}

/// Answers as a person would write them, by the kind of value. Those that cannot be true are among them: the reader
/// refuses them.
template <class T>
std::vector<std::string> texts_to_try(const StepSizes& steps, std::string_view key) {
    if constexpr (std::is_same_v<T, bool>) {
        return {"yes", "no"};
    } else if constexpr (std::is_same_v<T, std::string>) {
        const auto known = steps.texts.find(key);
        if (known == steps.texts.end()) return {};
        std::vector<std::string> texts = known->second;
        texts.emplace_back("other 1");
        return texts;
    } else if constexpr (std::is_same_v<T, int>) {
        return {"0", "1", "2", "3", "4", "5", "6", "8", "10", "12"};
    } else if constexpr (std::is_same_v<T, double>) {
        return {"0.1", "0.3", "0.55", "0.8", "0.95", "1", "1.15", "1.35", "2", "5", "10", "20", "100", "400"};
    } else if constexpr (std::is_same_v<T, SupplySystem>) {
        return {"115",      "120",      "208",      "230",      "240",      "277",
                "460",      "480",      "120/240",  "208Y/120", "480Y/277", "240 high leg",
                "115-1-60", "230-1-60", "230-1-50", "208-3-60", "460-3-60"};
    } else if constexpr (std::is_same_v<T, std::vector<PlateVolts>>) {
        return {"115", "208-230", "208", "230", "277", "460", "115/208-230"};
    } else if constexpr (std::is_same_v<T, std::vector<int>>) {
        return {"none", "1", "2", "5", "1; 2"};
    } else if constexpr (std::is_same_v<T, std::vector<Resistance>>) {
        return windings_to_try(steps);
    } else if constexpr (std::is_same_v<T, Temperature>) {
        return detail::written(temperatures_to_try(steps, key), [](Temperature t) { return write(t); });
    } else if constexpr (detail::has_no_list<T>) {
        return {};
    } else if constexpr (std::is_enum_v<T>) {
        return detail::words<T>();
    } else if constexpr (detail::IsLegs<T>::value) {
        return legs_to_try<typename detail::IsLegs<T>::Dimension>(steps);
    } else if constexpr (detail::IsList<T>::value) {
        return texts_to_try<typename T::value_type>(steps, key);  // each by itself
    } else {
        static_assert(detail::IsQuantity<T>::value, "say which answers of this kind are to be tried");
        return detail::written(sizes_to_try<typename detail::IsQuantity<T>::Dimension>(steps),
                               [](T size) { return write(size); });
    }
}

/// What a reading states is itself a step for others of its dimension.
template <class T>
void add_steps(StepSizes& steps, const T& value) {
    if constexpr (detail::IsLegs<T>::value) {
        for (const auto& leg : value.each()) steps.add(leg);
    } else if constexpr (detail::IsQuantity<T>::value || std::is_same_v<T, Temperature>) {
        if constexpr (requires { steps.add(value); }) steps.add(value);
    } else if constexpr (std::is_same_v<T, SupplySystem>) {
        for (const Voltage v : volts_of(value)) steps.add(v);
    } else if constexpr (std::is_same_v<T, std::vector<PlateVolts>>) {
        for (const PlateVolts& v : value) {
            steps.add(v.low);
            steps.add(v.high);
        }
    } else if constexpr (detail::IsList<T>::value) {
        if constexpr (detail::IsQuantity<typename T::value_type>::value) {
            for (const auto& one : value) steps.add(one);
        }
    }
}

}  // namespace endbell::inline fields
