#include "engine/facts/rating.hpp"

#include <algorithm>
#include <charconv>
#include <cmath>
#include <tuple>

#include "engine/model/limit.hpp"

namespace endbell::inline facts {

namespace {

bool in_band(const PlateVolts& plate, Voltage volts, const Limits& limits) {
    const double band = limits.value(limit::voltage_band);
    const double guard = limits.value(limit::voltage_guard).in(volt) + rounding;
    return volts.in(volt) >= plate.low.in(volt) * (1 - band) - guard &&
           volts.in(volt) <= plate.high.in(volt) * (1 + band) + guard;
}

/// What a catalog states beside what a family has by construction.
template <class T>
DerivedFact<T> stated_or_built(const std::optional<T>& stated, const std::optional<T>& built) {
    if (stated && built && *stated != *built) return contradicted<T>();
    if (stated) return {stated, Origin::catalog, std::nullopt, false};
    return built ? implied(*built, Because::family) : DerivedFact<T>{};
}

}  // namespace

VoltageFit voltage_fit(const PlateVolts& plate, Voltage nominal, const Supply& supply, const Limits& limits) {
    if (!in_band(plate, nominal, limits)) return VoltageFit::outside;
    if (supply.measured && !in_band(plate, *supply.measured, limits)) return VoltageFit::outside;
    const double far = limits.value(limit::voltage_caution);
    if (nominal < plate.low * (1 - far) || nominal > plate.high * (1 + far))
        return VoltageFit::far_from_plate;
    const bool service_208 = nominal == volt(208);
    if (service_208 && supply.measured && *supply.measured < limits.value(limit::voltage_range_a_208)) {
        return VoltageFit::below_range_a;
    }
    return VoltageFit::good;
}

bool suits(const PlateVolts& plate, const Supply& supply, const Limits& limits) {
    return std::any_of(supply.nominal.begin(), supply.nominal.end(), [&](Voltage n) {
        return voltage_fit(plate, n, supply, limits) != VoltageFit::outside;
    });
}

Voltage nearest_edge(const PlateVolts& plate, Voltage volts, const Limits& limits) {
    const double band = limits.value(limit::voltage_band);
    const Voltage low = plate.low * (1 - band);
    const Voltage high = plate.high * (1 + band);
    return std::abs((volts - low).in(volt)) <= std::abs((volts - high).in(volt)) ? low : high;
}

std::vector<Rating> ratings_of(const Part& part) {
    if (part.motor) return part.motor->ratings;
    if (!part.module) return {};
    Rating only;
    only.power = part.module->power;
    only.volts = part.module->volts;
    return {only};
}

std::optional<Rating> rating_in_use(const Facts& facts, const Part& part, const Limits& limits) {
    if (part.motor && part.motor->ratings.size() == 1) return part.motor->ratings.front();
    const std::vector<Rating> all = ratings_of(part);
    const double low = limits.value(limit::power_low);
    // Less is better, field by field.
    const auto rank = [&](const Rating& r) {
        const bool serves = r.volts && suits(*r.volts, facts.supply, limits);
        int kind = 3;
        double off = 0;
        if (facts.power && r.power) {
            const double ratio = *r.power / *facts.power;
            kind = ratio < low ? 2 : ratio <= 1 / low ? 0 : 1;
            off = kind == 0 ? 0 : std::abs(std::log(ratio));
        }
        const double speed_off = facts.speed && r.speed ? std::abs((*r.speed - *facts.speed).in(rpm)) : 1e9;
        return std::tuple(serves ? 0 : 1, kind, off, speed_off);
    };
    const auto best = std::min_element(all.begin(), all.end(),
                                       [&](const Rating& a, const Rating& b) { return rank(a) < rank(b); });
    if (best == all.end()) return std::nullopt;
    return *best;
}

DerivedFact<int> phase_of(const Motor& motor) {
    return stated_or_built(motor.phase, motor.family ? phase_by_construction(*motor.family) : std::nullopt);
}

DerivedFact<int> poles_of(const Motor& motor, std::optional<Speed> rated) {
    std::optional<int> derived;
    if (rated) derived = poles_from(*rated, motor.frequency.value_or(hertz(60)));
    if (motor.poles && derived && *motor.poles != *derived) return contradicted<int>();
    if (motor.poles) return {motor.poles, Origin::catalog, std::nullopt, false};
    return derived ? implied(*derived, Because::speed) : DerivedFact<int>{};
}

DerivedFact<SignalClass> signal_of(const Motor& motor) {
    return stated_or_built(motor.signal, motor.family ? signal_by_construction(*motor.family) : std::nullopt);
}

DerivedFact<Drive> drive_of(const Motor& motor) {
    if (motor.drive) return {motor.drive, Origin::catalog, std::nullopt, false};
    if (motor.family && !is_made_for_belts_too(*motor.family)) return implied(Drive::direct, Because::family);
    const bool air_over = motor.enclosure && is_air_over(*motor.enclosure);
    return air_over ? implied(Drive::direct, Because::air_over) : DerivedFact<Drive>{};
}

std::optional<int> frame_number(std::string_view frame) {
    const std::size_t first = frame.find_first_of("0123456789");
    if (first == std::string_view::npos) return std::nullopt;
    int number = 0;
    const char* const end = frame.data() + frame.size();
    const auto read = std::from_chars(frame.data() + first, end, number);
    return read.ec == std::errc() ? std::optional(number) : std::nullopt;
}

DerivedFact<bool> includes_module(const Motor& motor) {
    if (motor.family && is_induction(*motor.family)) return implied(true, Because::family);
    if (motor.includes_module) return {motor.includes_module, Origin::catalog, std::nullopt, false};
    const bool one_piece = motor.family && !is_two_piece(*motor.family);
    return one_piece ? implied(true, Because::family) : DerivedFact<bool>{};
}

}  // namespace endbell::inline facts
