#include "engine/match/ratings.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <tuple>

#include "engine/match/trade.hpp"

namespace endbell {

namespace {

// Nominal classes of North American supplies (ANSI C84.1, as motor plates print them; from memory).
constexpr std::array nominal_classes{115.0, 208.0, 230.0, 277.0, 460.0, 575.0};

Voltage nearest_class(Voltage reading) {
    const double volts = reading.in(volt);
    return volt(*std::min_element(nominal_classes.begin(), nominal_classes.end(), [&](double a, double b) {
        return std::abs(a - volts) < std::abs(b - volts);
    }));
}

void add_once(std::vector<Voltage>& list, Voltage volts) {
    if (std::find(list.begin(), list.end(), volts) == list.end()) list.push_back(volts);
}

bool in_band(const PlateVolts& plate, Voltage volts, const Limits& limits) {
    const double band = limits.value("voltage.band");
    const double guard = limits.value("voltage.guard") + rounding;
    return volts.in(volt) >= plate.low.in(volt) * (1 - band) - guard &&
           volts.in(volt) <= plate.high.in(volt) * (1 + band) + guard;
}

}  // namespace

Supply supply_of(const Question& q) {
    Supply supply;
    const auto reading = said(q.job.measured.line_volts);
    if (reading) {
        supply.dead = reading->in(volt) < q.limits.value("voltage.live");
        if (!supply.dead) supply.measured = *reading;
        supply.wanted = wanted(q.job.measured.line_volts);
    }
    if (const auto stated = said(q.job.equipment.supply)) {
        supply.nominal = {*stated};
        if (!reading) supply.wanted = wanted(q.job.equipment.supply);
    } else if (supply.measured) {
        supply.nominal = {nearest_class(*supply.measured)};
        supply.from_reading = true;
    } else if (said(q.job.plate.volts) && said(q.job.unit.plate_trusted) != false) {
        for (const PlateVolts& v : *q.job.plate.volts) {
            add_once(supply.nominal, v.low);
            add_once(supply.nominal, v.high);
            if (!supply.wanted.known()) supply.wanted = {v, q.job.plate.volts.origin};
        }
        std::sort(supply.nominal.begin(), supply.nominal.end());
    }
    return supply;
}

VoltageFit voltage_fit(const PlateVolts& plate, Voltage nominal, const Supply& supply, const Limits& limits) {
    if (!in_band(plate, nominal, limits)) return VoltageFit::outside;
    if (supply.measured && !in_band(plate, *supply.measured, limits)) return VoltageFit::outside;
    const double far = limits.value("voltage.caution");
    if (nominal < plate.low * (1 - far) || nominal > plate.high * (1 + far))
        return VoltageFit::far_from_plate;
    const bool service_208 = nominal == volt(208);
    if (service_208 && supply.measured && supply.measured->in(volt) < limits.value("voltage.range_a_208")) {
        return VoltageFit::below_range_a;
    }
    return VoltageFit::good;
}

Voltage nearest_edge(const PlateVolts& plate, Voltage volts, const Limits& limits) {
    const double band = limits.value("voltage.band");
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

std::optional<Rating> rating_in_use(const Question& q, const Part& part) {
    if (part.motor && part.motor->ratings.size() == 1) return part.motor->ratings.front();
    const std::vector<Rating> all = ratings_of(part);
    const Supply supply = supply_of(q);
    const auto power = old_power(q.job);
    const auto speed = said(q.job.plate.speed);
    const double low = q.limits.value("power.low");
    // Less is better, field by field.
    const auto rank = [&](const Rating& r) {
        const bool suits =
            r.volts && std::any_of(supply.nominal.begin(), supply.nominal.end(), [&](Voltage n) {
                return voltage_fit(*r.volts, n, supply, q.limits) != VoltageFit::outside;
            });
        int kind = 3;
        double off = 0;
        if (power && r.power) {
            const double ratio = *r.power / *power;
            kind = ratio < low ? 2 : ratio <= 1 / low ? 0 : 1;
            off = kind == 0 ? 0 : std::abs(std::log(ratio));
        }
        const double speed_off = speed && r.speed ? std::abs((*r.speed - *speed).in(rpm)) : 1e9;
        return std::tuple(suits ? 0 : 1, kind, off, speed_off);
    };
    const auto best = std::min_element(all.begin(), all.end(),
                                       [&](const Rating& a, const Rating& b) { return rank(a) < rank(b); });
    if (best == all.end()) return std::nullopt;
    return *best;
}

std::optional<Power> power_in_use(const Question& q, const Part& part) {
    const auto rating = rating_in_use(q, part);
    if (!rating) return std::nullopt;
    return rating->power;
}

std::optional<Current> amps_in_use(const Question& q, const Part& part) {
    const auto rating = rating_in_use(q, part);
    if (!rating) return std::nullopt;
    return rating->amps;
}

std::optional<Speed> speed_in_use(const Question& q, const Part& part) {
    const auto rating = rating_in_use(q, part);
    if (!rating) return std::nullopt;
    return rating->speed;
}

}  // namespace endbell
