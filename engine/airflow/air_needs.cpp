#include "engine/airflow/air_needs.hpp"

#include <algorithm>
#include <set>

#include "engine/airflow/air.hpp"
#include "engine/airflow/assumptions.hpp"
#include "engine/model/limit.hpp"

namespace endbell::inline airflow {

namespace {

struct AirflowWindow {
    Airflow low, target, high;
    friend AirflowWindow operator*(const AirflowWindow& window, double times) {
        return {window.low * times, window.target * times, window.high * times};
    }
};

/// The facts that windows are made of, and what was assumed on the way.
struct WindowFacts {
    const FailedUnit& job;
    const Facts& facts;
    const Limits& limits;
    AirNeeds out;

    void assume(const std::string& key) {
        if (std::find(out.assumed.begin(), out.assumed.end(), key) == out.assumed.end())
            out.assumed.push_back(key);
    }
};

/// The reading, unless it is missing or no place on earth; else the standard one, named as assumed.
template <class T>
T place_or(WindowFacts& needs, const Reading<T>& reading, T least, T most, T standard, const char* key) {
    if (reading && *reading >= least && *reading <= most) return *reading;
    needs.assume(key);
    return standard;
}

void set_place(WindowFacts& needs) {
    const EquipmentReadings& equipment = needs.job.equipment;
    const Length altitude =
        place_or(needs, equipment.altitude, foot(-1500), foot(20000), foot(0), "equipment.altitude");
    const Temperature inlet =
        place_or(needs, equipment.return_air, Temperature::fahrenheit(-40), Temperature::fahrenheit(180),
                 assumed::return_air, "equipment.return_air");
    needs.out.density_ratio = density_ratio(altitude, inlet);
    needs.out.heat_factor = heat_factor(needs.out.density_ratio * standard_density);
}

template <class Q>
bool above_zero(const Reading<Q>& reading) {
    return reading && *reading > Q();
}

/// The window of each ton of cooling.
AirflowWindow per_ton(WindowFacts& needs) {
    const Limits& limits = needs.limits;
    const Reading<Climate>& climate = needs.job.equipment.climate;
    if (!climate) needs.assume("equipment.climate");
    if (climate && *climate == Climate::humid) {
        return {std::min(limits.value(limit::cooling_low), limits.value(limit::cooling_humid_low)),
                assumed::cooling_humid, limits.value(limit::cooling_high)};
    }
    if (climate && *climate == Climate::dry) {
        return {limits.value(limit::cooling_low), assumed::cooling_dry,
                std::max(limits.value(limit::cooling_high), limits.value(limit::cooling_dry_high))};
    }
    return {limits.value(limit::cooling_low), assumed::cooling_normal, limits.value(limit::cooling_high)};
}

void set(CallAir& call, const AirflowWindow& window) {
    call.low = std::min(window.low, window.high);  // a shop may have tightened one edge past the other
    call.target = std::clamp(window.target, call.low, window.high);
    call.high = window.high;
}

double tons(const WindowFacts& needs) {
    return needs.job.equipment.cooling->in(ton_cooling);
}

void need_cooling(WindowFacts& needs, CallAir& call, double share) {
    call.basis = WindowBasis::cfm_per_ton;
    if (!above_zero(needs.job.equipment.cooling)) {
        call.lacking.push_back("equipment.cooling");
        return;
    }
    if (share < 1) needs.assume("equipment.cooling_stages");  // the low stage's own capacity is on no key
    set(call, per_ton(needs) * (tons(needs) * share));
}

void need_dehumidify(WindowFacts& needs, CallAir& call) {
    need_cooling(needs, call, 1);
    if (!call.lacking.empty()) return;
    const Airflow cooling = call.target, least = needs.limits.value(limit::cooling_least) * tons(needs);
    call.target = std::max(cooling * assumed::dehumidify_target, least);
    call.low = std::max(cooling * assumed::dehumidify_low, least);
    call.high = std::max(cooling * assumed::dehumidify_high, call.target);
}

/// From the plate's rise window; the target is the airflow at the middle of the rises.
void need_rise(WindowFacts& needs, CallAir& call, double share) {
    const EquipmentReadings& equipment = needs.job.equipment;
    call.basis = WindowBasis::temperature_rise;
    call.hard = true;
    const std::optional<HeatRate>& output = needs.facts.heat.fuel_output;
    if (!output)
        call.lacking.push_back(needs.facts.heat.fuel_input ? "equipment.efficiency"
                                                           : "equipment.heat_output");
    if (!above_zero(equipment.rise_low)) call.lacking.push_back("equipment.rise_low");
    if (!equipment.rise_high || (equipment.rise_low && *equipment.rise_high < *equipment.rise_low)) {
        call.lacking.push_back("equipment.rise_high");
    }
    if (!call.lacking.empty()) return;
    if (share < 1) needs.assume("equipment.heating_stages");
    const HeatRate heat = *output * share;
    call.heat = heat;
    const HeatFactor factor = needs.out.heat_factor;
    call.low = airflow_for(heat, *equipment.rise_high, factor);
    call.high = airflow_for(heat, *equipment.rise_low, factor);
    call.target = airflow_for(heat, (*equipment.rise_low + *equipment.rise_high) / 2, factor);
}

/// Elements: never above the rise limit; and never less than a heat pump running with them needs. More air
/// than the elements ask for does no harm, so cooling airflow is always allowed.
void need_elements(WindowFacts& needs, CallAir& call) {
    const EquipmentReadings& equipment = needs.job.equipment;
    call.basis = WindowBasis::electric_elements;
    call.hard = true;
    const std::optional<Power>& elements = needs.facts.heat.element_power;
    if (!elements || *elements <= watt(0)) {
        call.lacking.push_back("equipment.electric_heat");
        return;
    }
    const HeatRate heat = kilowatt_heat(elements->in(kilowatt));
    call.heat = heat;
    auto at = [&](TemperatureRise rise) { return airflow_for(heat, rise, needs.out.heat_factor); };
    const TemperatureRise most_rise = needs.limits.value(limit::element_rise);
    call.low = at(most_rise);
    call.target = at(std::min(assumed::electric_target_rise, most_rise));
    call.high = at(std::min(assumed::electric_least_rise, most_rise));
    if (!above_zero(equipment.cooling)) return;
    const AirflowWindow cooling = per_ton(needs);
    call.high = std::max(call.high, cooling.high * tons(needs));
    if (needs.facts.heat.kind == HeatKind::heat_pump) {
        call.low = std::max(call.low, cooling.low * tons(needs));
        call.target = std::max(call.target, cooling.target * tons(needs));
    }
}

/// The heating calls themselves are the elements: in an electric furnace; and beside a heat pump whose job
/// names a heating terminal but none for the elements, since that terminal is the one they hang on.
bool heats_by_elements(const FailedUnit& job, const Heat& heat) {
    if (heat.kind == HeatKind::electric) return true;
    if (heat.kind != HeatKind::heat_pump || !heat.element_power || !job.controls.terminals) return false;
    const std::vector<Terminal>& terminals = *job.controls.terminals;
    return !terminals.empty() && std::none_of(terminals.begin(), terminals.end(), [](const Terminal& t) {
        return t.call == Call::electric_heat;
    });
}

void need_heating(WindowFacts& needs, CallAir& call, double share) {
    const Heat& heat = needs.facts.heat;
    if (heats_by_elements(needs.job, heat)) return need_elements(needs, call);
    if (heat.kind == HeatKind::heat_pump)
        return need_cooling(needs, call, share < 1 ? assumed::low_stage_cooling : 1);
    if (heat.burner.is(true)) return need_rise(needs, call, share);
    if (!heat.kind && heat.element_power) return need_elements(needs, call);
    call.basis = WindowBasis::temperature_rise;
    call.hard = true;
    call.lacking.push_back("controls.heat");
}

/// Low and steady: at least 0.40 of the cooling airflow, at best 0.50; more only costs watts.
void need_circulation(WindowFacts& needs, CallAir& call) {
    call.basis = WindowBasis::circulation;
    const EquipmentReadings& equipment = needs.job.equipment;
    Airflow reference;
    if (above_zero(equipment.cooling)) {
        reference = per_ton(needs).target * tons(needs);
    } else {
        CallAir heating;
        need_heating(needs, heating, 1);
        reference = heating.target;
    }
    if (reference <= Airflow()) {
        call.lacking.push_back("equipment.cooling");
        return;
    }
    set(call, {reference * assumed::circulate_low, reference * assumed::circulate_target, reference});
}

std::set<Call> calls_of(const FailedUnit& job, const Heat& heat) {
    std::set<Call> calls;
    const EquipmentReadings& equipment = job.equipment;
    if (job.controls.terminals && !job.controls.terminals->empty()) {
        for (const Terminal& terminal : *job.controls.terminals) {
            if (terminal.call) calls.insert(*terminal.call);
        }
    } else if (!job.controls.states) {
        calls.insert(Call::circulate);
        if (equipment.cooling) calls.insert(Call::cool_high);
        if (equipment.cooling && equipment.cooling_stages && *equipment.cooling_stages > 1)
            calls.insert(Call::cool_low);
        const bool heats = heat.burner.is(true) || heat.compressor.is(true) || heat.fuel_shown();
        if (heats) calls.insert(Call::heat_high);
        if (heats && equipment.heating_stages && *equipment.heating_stages > 1) calls.insert(Call::heat_low);
    }
    if (job.controls.states) {
        for (const CustomState& state : *job.controls.states) {
            if (state.call) calls.insert(*state.call);
        }
    }
    const bool heating_named = calls.count(Call::heat_high) || calls.count(Call::heat_low);
    const bool elements = heat.element_power || heat.kind == HeatKind::electric;
    if (elements && !(heating_named && heats_by_elements(job, heat))) calls.insert(Call::electric_heat);
    return calls;
}

CallAir need(WindowFacts& needs, Call which) {
    CallAir call;
    call.call = which;
    switch (which) {
        case Call::circulate:
            need_circulation(needs, call);
            break;
        case Call::cool_low:
            need_cooling(needs, call, assumed::low_stage_cooling);
            break;
        case Call::cool_high:
            need_cooling(needs, call, 1);
            break;
        case Call::heat_low:
            need_heating(needs, call, assumed::low_stage_heating);
            break;
        case Call::heat_high:
            need_heating(needs, call, 1);
            break;
        case Call::electric_heat:
            need_elements(needs, call);
            break;
        case Call::dehumidify:
            need_dehumidify(needs, call);
            break;
    }
    if (!call.lacking.empty()) call.unmet_reason = UnmetReason::window_not_known;
    return call;
}

}  // namespace

AirNeeds air_needs(const FailedUnit& job, const Facts& facts, const Limits& limits) {
    WindowFacts needs{job, facts, limits, {}};
    set_place(needs);
    for (Call call : calls_of(job, facts.heat)) needs.out.calls.push_back(need(needs, call));
    return needs.out;
}

}  // namespace endbell::inline airflow
