#include "engine/airflow/trade_offs.hpp"

#include <algorithm>
#include <cmath>

#include "engine/airflow/assumptions.hpp"
#include "engine/airflow/duct_point.hpp"
#include "engine/model/limit.hpp"

namespace endbell::inline airflow {

namespace {

template <class Q>
std::optional<Q> change(const Estimate<Q>& from, const Estimate<Q>& to) {
    return from.known() && to.known() ? std::optional(to.value() - from.value()) : std::nullopt;
}

/// On one duct speed follows airflow (fan laws), so sound follows it too.
double louder(const TapAir& from, const TapAir& to) {
    return assumed::decibels_of_speed * std::log10(to.airflow.value() / from.airflow.value());
}

TapTrade trade(const CallAir& call, const TapAir& chosen, const TapAir& other) {
    TapTrade out;
    out.tap = other.tap;
    out.in_window = other.airflow.value() >= call.low && other.airflow.value() <= call.high;
    out.overloads = other.caution == LoadCaution::overload;
    out.airflow = other.airflow.value() - chosen.airflow.value();
    out.static_total = change(chosen.static_total, other.static_total);
    out.input_power = change(chosen.input_power, other.input_power);
    out.decibels = louder(chosen, other);
    return out;
}

/// The taps that move the next less and the next more air than the chosen one.
void compare_neighbours(CallAir& call, const AirPlan& plan, const TapAir& chosen) {
    const TapAir *below = nullptr, *above = nullptr;
    const Airflow mine = chosen.airflow.value();
    for (const TapAir& tap : plan.taps) {
        const Airflow air = tap.airflow.value();
        if (air < mine && (!below || air > below->airflow.value())) below = &tap;
        if (air > mine && (!above || air < above->airflow.value())) above = &tap;
    }
    if (below != nullptr) call.trades.push_back(trade(call, chosen, *below));
    if (above != nullptr) call.trades.push_back(trade(call, chosen, *above));
}

/// The least open zone alone, were the airflow held: static goes with its square. By-passed air is in `least_zone`.
void weigh_zone(CallAir& call, const FailedUnit& job, const Limits& limits, Airflow airflow) {
    const ControlReadings& controls = job.controls;
    if (!controls.zone_panel || !*controls.zone_panel || !controls.least_zone) return;
    if (*controls.least_zone <= Airflow() || call.call == Call::circulate) return;
    const double more = airflow / *controls.least_zone;
    const Pressure plate = allowed_static(job, limits);
    call.zone_static = plate * (more * more);
    const Reading<Pressure>& coil = job.equipment.coil_limit;
    if (*call.zone_static <= (coil ? *coil : plate)) return;
    call.cautions.push_back(CallCaution::zone_static);
    call.assured = false;  // with that zone alone the equipment is over its limit
}

bool return_is_small(const FailedUnit& job, const Limits& limits, Airflow airflow) {
    const Reading<double>& face = job.equipment.return_size;
    return face && *face > 0 && airflow / *face > limits.value(limit::return_face);
}

void weigh_call(CallAir& call, const AirPlan& plan, const FailedUnit& job, const Limits& limits) {
    const TapAir* chosen = air_of(plan, call.call);
    if (chosen == nullptr || !chosen->airflow.known() || chosen->airflow.value() <= Airflow()) return;
    const Airflow airflow = chosen->airflow.value();
    const Reading<HeatRate>& cooling = job.equipment.cooling;
    if (call.basis == WindowBasis::cfm_per_ton && call.call != Call::cool_low && cooling &&
        *cooling > HeatRate())
        call.cfm_per_ton = airflow.in(cfm)*plan.density_ratio / cooling->in(ton_cooling);
    weigh_zone(call, job, limits, airflow);
    if (return_is_small(job, limits, airflow)) call.cautions.push_back(CallCaution::return_too_small);
    if (call.tap) compare_neighbours(call, plan, *chosen);
}

/// Any reading that is over its limit, or that nobody took, is looked at before the duct is cut open.
std::vector<StaticCure> cures_of(const FailedUnit& job, const Limits& limits, const CallAir* call,
                                 Airflow airflow) {
    std::vector<StaticCure> cures;
    const MeasuredReadings& measured = job.measured;
    const auto over = [](const Reading<Pressure>& drop, Pressure most) { return !drop || *drop > most; };
    if (over(measured.filter_drop, limits.value(limit::filter_drop))) cures.push_back(StaticCure::filter);
    if (over(measured.coil_drop, limits.value(limit::coil_drop))) cures.push_back(StaticCure::coil);
    if (return_is_small(job, limits, airflow)) cures.push_back(StaticCure::return_face);
    const bool lower = call != nullptr &&
                       std::any_of(call->trades.begin(), call->trades.end(),
                                   [](const TapTrade& t) { return t.in_window && t.airflow < Airflow(); });
    if (lower) cures.push_back(StaticCure::lower_tap);
    cures.push_back(StaticCure::duct);
    return cures;
}

/// The worst static of all calls that are served; where none is known, the measured one.
std::optional<StaticOverPlate> static_over(const AirPlan& plan, const FailedUnit& job, const Limits& limits) {
    const CallAir* worst = nullptr;
    StaticOverPlate over;
    Airflow airflow = plan.point.airflow.known() ? plan.point.airflow.value() : Airflow();
    for (const CallAir& call : plan.calls) {
        const TapAir* air = air_of(plan, call.call);
        if (air == nullptr || !air->static_total.known() || air->static_total.value() <= over.found) continue;
        worst = &call;
        over.found = air->static_total.value();
        airflow = air->airflow.value();
    }
    if (worst != nullptr) over.call = worst->call;
    if (worst == nullptr && measured_static(job).known()) over.found = measured_static(job).value();
    over.most = allowed_static(job, limits);
    over.plate_says = bool(job.equipment.static_limit);
    if (over.found <= over.most) return std::nullopt;
    over.cures = cures_of(job, limits, worst, airflow);
    return over;
}

/// What the hardest call takes of the motor's rating, where that is little.
std::optional<double> small_load(const AirPlan& plan, const Limits& limits) {
    std::optional<double> most;
    for (const CallAir& call : plan.calls) {
        const TapAir* air = air_of(plan, call.call);
        if (air == nullptr || call.call == Call::circulate) continue;
        if (!air->load.known) return std::nullopt;
        most = std::max(most.value_or(0), air->load.value);
    }
    return most && *most < limits.value(limit::load_small) ? most : std::nullopt;
}

std::optional<Power> watts_of(const AirPlan& plan, Call call) {
    const TapAir* air = air_of(plan, call);
    return air != nullptr && air->input_power.known() ? std::optional(air->input_power.value())
                                                      : std::nullopt;
}

std::optional<FurnaceClass> class_of(const Heat& heat, const Reading<double>& efficiency) {
    if (heat.kind == HeatKind::oil) return FurnaceClass::oil;
    if (heat.kind == HeatKind::electric) return FurnaceClass::electric_or_modular;
    std::optional<double> share = efficiency.said();
    if (!share && heat.fuel_input && heat.fuel_output) share = *heat.fuel_output / *heat.fuel_input;
    if (heat.kind != HeatKind::gas || !share) return std::nullopt;
    return *share >= assumed::condenses_from ? FurnaceClass::gas_condensing
                                             : FurnaceClass::gas_non_condensing;
}

/// Of furnaces alone, whose three modes all have watts.
std::optional<FanEnergy> fan_energy_of(const AirPlan& plan, const FailedUnit& job, const Heat& heat) {
    if (heat.kind != HeatKind::gas && heat.kind != HeatKind::oil && heat.kind != HeatKind::electric)
        return std::nullopt;
    FanEnergyTest test;
    std::optional<Power> most;
    for (const CallAir& call : plan.calls) {
        const TapAir* air = air_of(plan, call.call);
        if (air == nullptr || air->airflow.value() <= test.greatest_airflow) continue;
        test.greatest_airflow = air->airflow.value();
        most = watts_of(plan, call.call);
    }
    const CallAir *low = find_call(plan, Call::heat_low), *high = find_call(plan, Call::heat_high);
    const CallAir* elements = find_call(plan, Call::electric_heat);
    const CallAir* heating = low != nullptr ? low : high != nullptr ? high : elements;
    const auto circulation = watts_of(plan, Call::circulate);
    const auto warm = heating != nullptr ? watts_of(plan, heating->call) : std::nullopt;
    if (!most || !circulation || !warm) return std::nullopt;
    test.cooling = *most;
    test.heating = *warm;
    test.circulation = *circulation;
    if (low != nullptr && high != nullptr && low->heat && high->heat && *high->heat > HeatRate())
        test.reduced_heat_ratio = *low->heat / *high->heat;
    FanEnergy out;
    out.rating = fan_energy_rating(test);
    out.a_year = fan_energy(test);
    out.furnace = class_of(heat, job.equipment.efficiency);
    if (out.furnace) out.most = greatest_rating(*out.furnace, test.greatest_airflow);
    return out;
}

}  // namespace

void weigh_choices(AirPlan& plan, const FailedUnit& job, const Facts& facts, const Limits& limits) {
    for (CallAir& call : plan.calls) weigh_call(call, plan, job, limits);
    plan.static_over = static_over(plan, job, limits);
    plan.small_load = small_load(plan, limits);
    plan.fan_energy = fan_energy_of(plan, job, facts.heat);
}

}  // namespace endbell::inline airflow
