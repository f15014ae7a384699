#include "engine/facts/supply_fact.hpp"

#include <algorithm>

#include "engine/model/limit.hpp"

namespace endbell::inline facts {

namespace {

void add_once(std::vector<Voltage>& list, Voltage volts) {
    if (std::find(list.begin(), list.end(), volts) == list.end()) list.push_back(volts);
}

bool in_band(const PlateVolts& plate, Voltage volts, double band) {
    return volts >= plate.low * (1 - band) && volts <= plate.high * (1 + band);
}

/// Of a system's volts those that this motor can hang on: the one nearest to a live reading; else, of a three-phase
/// motor, line to line; else those in a band of the old plate. Where none of them is, all stay.
std::vector<Voltage> volts_in_question(const SupplySystem& system, const Supply& supply,
                                       const DerivedFact<int>& phase,
                                       const DerivedFact<std::vector<PlateVolts>>& plate, double band) {
    std::vector<Voltage> all = volts_of(system);
    if (all.size() == 1) return all;
    if (phase.is(3)) return {system.line};
    if (supply.measured) {
        const auto off = [&](Voltage v) { return std::abs((v - *supply.measured) / v); };
        return {
            *std::min_element(all.begin(), all.end(), [&](Voltage a, Voltage b) { return off(a) < off(b); })};
    }
    if (!plate) return all;
    std::vector<Voltage> fitting;
    for (const Voltage v : all) {
        const bool fits = std::any_of(plate->begin(), plate->end(),
                                      [&](const PlateVolts& rating) { return in_band(rating, v, band); });
        if (fits) fitting.push_back(v);
    }
    return fitting.empty() ? all : fitting;
}

std::optional<int> phases_of(const SupplySystem& system) {
    switch (system.kind) {
        case SupplyKind::split:
        case SupplyKind::single_phase:
            return 1;
        case SupplyKind::three_phase:
            return 3;
        case SupplyKind::wye:       // a single-phase load hangs on two of its conductors
        case SupplyKind::high_leg:  // likewise
        case SupplyKind::bare:
            return std::nullopt;
    }
    return std::nullopt;
}

}  // namespace

std::optional<Voltage> Supply::at_motor() const {
    if (from_plate || nominal.size() != 1) return std::nullopt;
    return nominal.front();
}

bool Supply::on_the_high_leg() const {
    return high_leg && measured && nearest_class(*measured).nominal == volt(208);
}

std::optional<Voltage> Supply::at_work() const {
    constexpr double believable = 0.20;  // of the stated nominal; common practice
    const std::optional<Voltage> nominal_here = at_motor();
    if (!measured || !stated || !nominal_here) return measured ? measured : nominal_here;
    return std::abs(*measured / *nominal_here - 1) <= believable ? measured : nominal_here;
}

Supply supply_of(const FailedUnit& job, const DerivedFact<int>& phase,
                 const DerivedFact<std::vector<PlateVolts>>& volts, const Limits& limits) {
    Supply supply;
    supply.legs = job.measured.line_volts.said();
    if (supply.legs) {
        supply.reading = supply.legs->lowest();
        supply.highest = supply.legs->highest();
        supply.lost_leg = *supply.reading < *supply.highest * limits.value(limit::voltage_lost_leg);
        supply.dead = *supply.reading < limits.value(limit::voltage_live) || supply.lost_leg;
        if (!supply.dead) supply.measured = supply.reading;
        supply.wanted = {*supply.reading, job.measured.line_volts.origin};
    }
    if (const auto system = job.equipment.supply.said()) {
        supply.stated = true;
        supply.nominal = volts_in_question(*system, supply, phase, volts, limits.value(limit::voltage_band));
        supply.phases = phases_of(*system);
        supply.high_leg = system->kind == SupplyKind::high_leg;
        if (!supply.reading) supply.wanted = {supply.nominal.front(), job.equipment.supply.origin};
    } else if (supply.measured) {
        supply.nominal = {nearest_class(*supply.measured).nominal};
        supply.from_reading = true;
    } else if (volts) {
        supply.from_plate = true;
        for (const PlateVolts& v : *volts) {
            add_once(supply.nominal, v.low);
            add_once(supply.nominal, v.high);
            if (!supply.wanted.known()) supply.wanted = {v, volts.origin};
        }
        std::sort(supply.nominal.begin(), supply.nominal.end());
    }
    return supply;
}

std::optional<Conductors> conductors_for(const Supply& supply, std::optional<int> phases) {
    const std::optional<Voltage> volts = supply.at_motor();
    if (!volts || supply.dead) return std::nullopt;
    const bool to_neutral = nearest_class(*volts).to_neutral;
    if (phases == 3) return to_neutral ? std::nullopt : std::optional(Conductors::three_lines);
    if (!phases && !to_neutral) return std::nullopt;  // one phase or three: not told by the volts
    return to_neutral ? Conductors::line_and_neutral : Conductors::two_lines;
}

}  // namespace endbell::inline facts
