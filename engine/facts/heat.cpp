#include "engine/facts/heat.hpp"

#include <algorithm>
#include <utility>

#include "engine/model/limit.hpp"

namespace endbell::inline facts {

namespace {

bool burns_fuel(HeatKind kind) {
    return kind == HeatKind::gas || kind == HeatKind::oil || kind == HeatKind::dual_fuel;
}

template <class Q>
std::optional<Q> above_zero(const Reading<Q>& reading) {
    const std::optional<Q> said = reading.said();
    return said && *said > Q() ? said : std::nullopt;
}

// ---- burners

constexpr Length highest_place = foot(20000);  // above it no house stands: the reading says nothing

/// What a derated burner keeps of its input: counted from the sea, not from where derating begins.
std::optional<double> derated_share(const FailedUnit& job, const Limits& limits) {
    const std::optional<Length> altitude = job.equipment.altitude.said();
    if (!altitude || *altitude <= limits.value(limit::derate_from) || *altitude > highest_place)
        return std::nullopt;
    return std::max(0.1, 1 - limits.value(limit::altitude_derate) * altitude->in(foot) / 1000);
}

/// Output over input: stated, or what the plate's own two figures say.
std::optional<double> efficiency_of(const FailedUnit& job, const Heat& heat) {
    const std::optional<double> stated = job.equipment.efficiency.said();
    if (stated && *stated > 0) return stated;
    if (heat.fuel_input && heat.fuel_output && *heat.fuel_output <= *heat.fuel_input)
        return *heat.fuel_output / *heat.fuel_input;
    return std::nullopt;
}

/// A clocked meter says it; else what the plate says for the altitude; else, high up, both with and without derating.
void find_fuel(const FailedUnit& job, const Limits& limits, Heat& heat) {
    const std::optional<double> efficiency = efficiency_of(job, heat);
    const std::optional<HeatRate> clocked = above_zero(job.measured.burner_input);
    const std::optional<HeatRate> labelled = above_zero(job.equipment.altitude_input);
    const std::optional<HeatRate> low = above_zero(job.equipment.low_heat_output);
    if (!heat.fuel_output && heat.fuel_input && efficiency) heat.fuel_output = *heat.fuel_input * *efficiency;
    const std::optional<HeatRate> input = clocked ? clocked : labelled;
    if (input && efficiency) {
        const HeatCase when = clocked ? HeatCase::clocked : HeatCase::at_altitude;
        const HeatRate output = *input * *efficiency;
        heat.fuel_heat = {{when, output, {}, {}}};
        if (low && heat.fuel_output)
            heat.low_fuel_heat = {{when, *low * (output / *heat.fuel_output), {}, {}}};
        if (!heat.fuel_output) heat.fuel_output = output;
        return;
    }
    const std::optional<double> share = derated_share(job, limits);
    const auto cases = [&](HeatRate rated) -> std::vector<HeatOutput> {
        if (!share) return {{HeatCase::as_rated, rated, {}, {}}};
        return {{HeatCase::not_derated, rated, {}, {}}, {HeatCase::derated, rated * *share, {}, {}}};
    };
    if (heat.fuel_output) heat.fuel_heat = cases(*heat.fuel_output);
    if (low) heat.low_fuel_heat = cases(*low);
    if (share && (heat.fuel_output || low)) heat.fuel_asks = {"measured.burner_input"};
    if (input) heat.fuel_asks.emplace_back("equipment.efficiency");
}

// ---- elements

struct VoltRange {
    Voltage least, greatest;
};

/// Elements below this are on no blower's supply: they stand across both legs of one whose motor is on one (common practice).
constexpr Voltage least_of_elements = volt(150);
// Kilowatts are printed at 240 V, on 208 V equipment at either (common practice).
constexpr Voltage rated_low = volt(208), rated_high = volt(240);

/// What a nominal as motors write it may be at the unit: 230 V motors run on 240 V systems (ANSI C84.1, from memory).
Voltage service_of(Voltage nominal) {
    if (nominal == volt(230)) return volt(240);
    if (nominal == volt(460)) return volt(480);
    if (nominal == volt(575)) return volt(600);
    return nominal;
}

bool is_read(const Supply& supply) {
    return supply.measured && supply.at_work() == supply.measured;
}

/// The live reading; else every nominal that the job leaves; none where the motor's supply cannot be that of the elements.
std::optional<VoltRange> volts_at_work(const Supply& supply, std::optional<Voltage> rated) {
    const auto fits = [&](Voltage at) {
        if (at < least_of_elements) return false;
        return !rated || (at / *rated > 0.7 && at / *rated < 1.4);
    };
    if (is_read(supply)) {
        if (!fits(*supply.measured)) return std::nullopt;
        return VoltRange{*supply.measured, *supply.measured};
    }
    std::optional<VoltRange> range;
    for (const Voltage nominal : supply.nominal) {
        if (!fits(nominal)) continue;
        if (!range) range = VoltRange{nominal, service_of(nominal)};
        range->least = std::min(range->least, nominal);
        range->greatest = std::max(range->greatest, service_of(nominal));
    }
    return range;
}

/// Of volts nobody has read, the elements' own class: 240 V elements may stand on 208.
VoltRange any_volts(std::optional<Voltage> rated) {
    if (!rated) return {rated_low, rated_high};
    const bool may_stand_on_208 = *rated > volt(215) && *rated < volt(250);
    return {may_stand_on_208 ? rated_low : *rated * 0.9, *rated};
}

HeatOutput at_volts(Power rated_power, Voltage rated, Voltage at) {
    const double share = at / rated;
    return {HeatCase::at_volts, kilowatt_heat(rated_power.in(kilowatt)*share * share), rated, at};
}

void find_elements(const FailedUnit& job, const Supply& supply, Heat& heat) {
    heat.element_power = job.equipment.electric_heat.said();
    const auto stages = job.equipment.electric_stages.said();
    if (stages && !stages->empty()) {
        Power all;
        for (const Power stage : *stages) all = all + stage;
        if (!heat.element_power) heat.element_power = all;
        heat.first_stage = stages->front() / all;
    }
    if (!heat.element_power || *heat.element_power <= watt(0)) return;
    const std::optional<Voltage> rated = above_zero(job.equipment.electric_heat_volts);
    const std::optional<VoltRange> known = volts_at_work(supply, rated);
    const VoltRange at = known.value_or(any_volts(rated));
    // 208 V elements never stand on 240 V: they would give a third more than rated.
    const bool may_be_208 = at.greatest < volt(220);
    const bool high_class = at.least > volt(250);
    const Voltage least_rated = rated        ? *rated
                                : high_class ? at.greatest
                                : may_be_208 ? rated_low
                                             : rated_high;
    const Voltage most_rated = rated ? *rated : high_class ? at.greatest : rated_high;
    const HeatOutput most = at_volts(*heat.element_power, least_rated, at.greatest);
    const HeatOutput least = at_volts(*heat.element_power, most_rated, at.least);
    heat.element_heat = {most};
    if (least.heat < most.heat) heat.element_heat.push_back(least);
    if (!rated) heat.element_asks.emplace_back("equipment.electric_heat_volts");
    if (!is_read(supply) || !known) heat.element_asks.emplace_back("measured.line_volts");
}

void find_kinds(Heat& heat) {
    const bool has_elements = heat.element_power && *heat.element_power > watt(0);
    if (!heat.kind) {
        if (heat.fuel_shown()) heat.burner = implied(true, Because::fuel_input);
        if (has_elements) heat.elements = implied(true, Because::element_power);
        return;
    }
    heat.burner = implied(burns_fuel(*heat.kind), Because::heat_kind);
    const bool pump = *heat.kind == HeatKind::heat_pump || *heat.kind == HeatKind::dual_fuel;
    heat.compressor = implied(pump, Because::heat_kind);
    if (has_elements) {
        heat.elements = implied(true, Because::element_power);
    } else if (*heat.kind == HeatKind::electric) {
        heat.elements = implied(true, Because::heat_kind);
    } else if (*heat.kind != HeatKind::heat_pump || heat.element_power) {
        // Beside a heat pump there may be some: not known.
        heat.elements = implied(false, Because::heat_kind);
    }
}

}  // namespace

Heat heat_of(const FailedUnit& job, const Supply& supply, const Limits& limits) {
    Heat heat;
    heat.kind = job.controls.heat.said();
    heat.fuel_input = above_zero(job.equipment.heat_input);
    heat.fuel_output = above_zero(job.equipment.heat_output);
    find_fuel(job, limits, heat);
    find_elements(job, supply, heat);
    find_kinds(heat);
    return heat;
}

}  // namespace endbell::inline facts
