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

enum class Stage { low, full };

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

/// The window of each ton of cooling, of standard air.
AirflowWindow standard_per_ton(WindowFacts& needs) {
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

/// Tons ask for a mass of air: in thin air the same mass is more cfm.
AirflowWindow per_ton(WindowFacts& needs) {
    return standard_per_ton(needs) * (1 / needs.out.density_ratio);
}

void set(CallAir& call, const AirflowWindow& window) {
    call.low = std::min(window.low, window.high);  // a shop may have tightened one edge past the other
    call.target = std::clamp(window.target, call.low, window.high);
    call.high = window.high;
}

double tons(const WindowFacts& needs) {
    return needs.job.equipment.cooling->in(ton_cooling);
}

/// Of the low stage, as its own key says it; else the usual share.
double low_tons(WindowFacts& needs) {
    if (above_zero(needs.job.equipment.low_cooling)) return needs.job.equipment.low_cooling->in(ton_cooling);
    needs.assume("equipment.low_cooling");
    return tons(needs) * assumed::low_stage_cooling;
}

void need_cooling(WindowFacts& needs, CallAir& call, Stage stage) {
    call.basis = WindowBasis::cfm_per_ton;
    if (!above_zero(needs.job.equipment.cooling)) {
        call.lacking.push_back("equipment.cooling");
        return;
    }
    set(call, per_ton(needs) * (stage == Stage::low ? low_tons(needs) : tons(needs)));
}

void need_dehumidify(WindowFacts& needs, CallAir& call) {
    need_cooling(needs, call, Stage::full);
    if (!call.lacking.empty()) return;
    const Airflow cooling = call.target,
                  least = here(needs.limits.value(limit::cooling_least), needs.out) * tons(needs);
    call.target = std::max(cooling * assumed::dehumidify_target, least);
    call.low = std::max(cooling * assumed::dehumidify_low, least);
    call.high = std::max(cooling * assumed::dehumidify_high, call.target);
}

/// The window of each output that is possible, and the one that holds for all of them: the most heat decides the least air.
void hold_for_all(CallAir& call, const std::vector<CallHeat>& heats) {
    call.heats = heats;
    call.heat = heats.front().output.heat;
    call.low = heats.front().low;
    call.target = heats.front().target;
    call.high = heats.front().high;
    for (const CallHeat& one : heats) {
        call.low = std::max(call.low, one.low);
        call.high = std::min(call.high, one.high);
    }
    call.target = std::clamp(call.target, call.low, std::max(call.low, call.high));
}

void leave_unknown(CallAir& call, const std::vector<std::string>& keys) {
    call.low = call.target = call.high = Airflow();
    call.lacking.insert(call.lacking.end(), keys.begin(), keys.end());
}

/// The plate's own word for the least air in heat, which is of standard air; it stands above any rule of thumb.
std::optional<Airflow> plate_least(const WindowFacts& needs) {
    const Reading<Airflow>& least = needs.job.equipment.heat_least_air;
    return above_zero(least) ? std::optional(here(*least, needs.out)) : std::nullopt;
}

/// What the burner may put out at this stage; empty where nothing says.
std::vector<HeatOutput> outputs_of(WindowFacts& needs, Stage stage) {
    const Heat& heat = needs.facts.heat;
    if (stage == Stage::full || !heat.low_fuel_heat.empty())
        return stage == Stage::full ? heat.fuel_heat : heat.low_fuel_heat;
    std::vector<HeatOutput> outputs = heat.fuel_heat;
    for (HeatOutput& output : outputs) output.heat = output.heat * assumed::low_stage_heating;
    needs.assume("equipment.low_heat_output");
    return outputs;
}

/// The rises that the plate permits: the low stage may have its own.
void find_rises(const WindowFacts& needs, CallAir& call, Stage stage) {
    const EquipmentReadings& equipment = needs.job.equipment;
    const bool own = stage == Stage::low && equipment.low_rise_low && equipment.low_rise_high;
    const Reading<TemperatureRise>& low = own ? equipment.low_rise_low : equipment.rise_low;
    const Reading<TemperatureRise>& high = own ? equipment.low_rise_high : equipment.rise_high;
    if (!above_zero(low)) call.lacking.push_back(own ? "equipment.low_rise_low" : "equipment.rise_low");
    if (!high || (low && *high < *low))
        call.lacking.push_back(own ? "equipment.low_rise_high" : "equipment.rise_high");
    if (!call.lacking.empty()) return;
    call.rise_low = *low;
    call.rise_high = *high;
}

/// From the plate's rise window; the target is the airflow at the middle of the rises.
void need_rise(WindowFacts& needs, CallAir& call, Stage stage) {
    call.basis = WindowBasis::temperature_rise;
    call.hard = true;
    const std::vector<HeatOutput> outputs = outputs_of(needs, stage);
    if (outputs.empty())
        call.lacking.push_back(needs.facts.heat.fuel_input ? "equipment.efficiency"
                                                           : "equipment.heat_output");
    find_rises(needs, call, stage);
    if (!call.lacking.empty()) return;
    const auto at = [&](HeatRate heat, TemperatureRise rise) {
        return airflow_for(heat, rise, needs.out.heat_factor);
    };
    std::vector<CallHeat> heats;
    for (const HeatOutput& output : outputs) {
        heats.push_back({output,
                         at(output.heat, *call.rise_high),
                         at(output.heat, (*call.rise_low + *call.rise_high) / 2),
                         at(output.heat, *call.rise_low),
                         {}});
    }
    hold_for_all(call, heats);
    // No air is right for both: the clock at the meter decides.
    if (call.low > call.high) return leave_unknown(call, needs.facts.heat.fuel_asks);
    if (stage == Stage::low) return;
    call.plate_least = plate_least(needs);
    if (!call.plate_least) return;
    // Where it is more than any output lets through, contrary.cpp has named the two; here the lesser output alone says no.
    if (*call.plate_least > call.high)
        return leave_unknown(call, {"equipment.heat_least_air", "equipment.rise_low"});
    call.low = std::max(call.low, *call.plate_least);
    call.target = std::max(call.target, call.low);
}

/// Elements: never less than their plate asks for, else than the rise limit allows; and never less than a heat pump
/// running with them needs. More air than the elements ask for does no harm, so cooling airflow is always allowed.
void need_elements(WindowFacts& needs, CallAir& call, Stage stage) {
    const EquipmentReadings& equipment = needs.job.equipment;
    const Heat& heat = needs.facts.heat;
    call.basis = WindowBasis::electric_elements;
    call.hard = true;
    if (heat.element_heat.empty()) {
        call.lacking.push_back("equipment.electric_heat");
        return;
    }
    for (const std::string& key : heat.element_asks) needs.assume(key);
    call.plate_least = plate_least(needs);
    if (!call.plate_least) needs.assume("equipment.heat_least_air");
    const TemperatureRise most_rise = needs.limits.value(limit::element_rise);
    const double share = stage == Stage::low ? heat.first_stage.value_or(1) : 1;
    std::vector<CallHeat> heats;
    for (HeatOutput output : heat.element_heat) {
        output.heat = output.heat * share;
        const auto at = [&](TemperatureRise rise) {
            return airflow_for(output.heat, std::min(rise, most_rise), needs.out.heat_factor);
        };
        heats.push_back({output,
                         call.plate_least.value_or(at(most_rise)),
                         at(assumed::electric_target_rise),
                         at(assumed::electric_least_rise),
                         {}});
    }
    hold_for_all(call, heats);
    call.high = std::max(call.high, call.low);
    call.target = std::clamp(call.target, call.low, call.high);
    if (!above_zero(equipment.cooling)) return;
    const AirflowWindow cooling = per_ton(needs);
    call.high = std::max(call.high, cooling.high * tons(needs));
    if (heat.kind == HeatKind::heat_pump) {
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

void need_heating(WindowFacts& needs, CallAir& call, Stage stage) {
    const Heat& heat = needs.facts.heat;
    if (heats_by_elements(needs.job, heat)) return need_elements(needs, call, stage);
    if (heat.kind == HeatKind::heat_pump) return need_cooling(needs, call, stage);
    if (heat.burner.is(true)) return need_rise(needs, call, stage);
    if (!heat.kind && heat.element_power) return need_elements(needs, call, stage);
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
        need_heating(needs, heating, Stage::full);
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
            need_cooling(needs, call, Stage::low);
            break;
        case Call::cool_high:
            need_cooling(needs, call, Stage::full);
            break;
        case Call::heat_low:
            need_heating(needs, call, Stage::low);
            break;
        case Call::heat_high:
            need_heating(needs, call, Stage::full);
            break;
        case Call::electric_heat:
            need_elements(needs, call, Stage::full);
            break;
        case Call::dehumidify:
            need_dehumidify(needs, call);
            break;
    }
    if (!call.lacking.empty()) call.unmet_reason = UnmetReason::window_not_known;
    return call;
}

}  // namespace

Airflow here(Airflow standard, const AirNeeds& needs) {
    return standard / needs.density_ratio;
}

AirNeeds air_needs(const FailedUnit& job, const Facts& facts, const Limits& limits) {
    WindowFacts needs{job, facts, limits, {}};
    set_place(needs);
    for (Call call : calls_of(job, facts.heat)) needs.out.calls.push_back(need(needs, call));
    return needs.out;
}

}  // namespace endbell::inline airflow
