#include "engine/airflow/serve_calls.hpp"

#include <algorithm>
#include <cmath>

#include "engine/airflow/air.hpp"
#include "engine/airflow/assumptions.hpp"
#include "engine/airflow/duct_point.hpp"
#include "engine/airflow/speed_leads.hpp"
#include "engine/airflow/spread.hpp"
#include "engine/model/limit.hpp"

namespace endbell::inline airflow {

namespace {

void expect_rise(CallAir& call, const Estimate<Airflow>& airflow, HeatFactor heat_factor) {
    if (!airflow.known() || airflow.value() <= Airflow()) return;
    const double share = root_sum({airflow.relative(), assumed::heat_output});
    for (CallHeat& heat : call.heats) {
        heat.expected_rise = estimate(rise_for(heat.output.heat, airflow.value(), heat_factor), share,
                                      airflow.assumed() || call.heats.size() > 1);
    }
    if (!call.heats.empty()) call.expected_rise = call.heats.front().expected_rise;
}

void explain_unmet(CallAir& call, const AirPlan& plan, const std::vector<TapFlow>& flows) {
    const CallWindow window = window_of(call);
    const bool usable = std::any_of(flows.begin(), flows.end(),
                                    [&](const TapFlow& f) { return in_window(window, f.airflow); });
    const bool any = std::any_of(plan.taps.begin(), plan.taps.end(),
                                 [&](const TapAir& tap) { return in_window(window, tap.airflow.value()); });
    call.unmet_reason = usable ? UnmetReason::outranked
                        : any  ? UnmetReason::overload
                               : UnmetReason::no_tap_in_window;
}

/// A met call may still be worth a word.
void caution(CallAir& call, const TapAir& air, const FailedUnit& job, const Limits& limits) {
    const double off = std::abs(air.airflow.value() / call.target - 1);
    if (call.basis == WindowBasis::cfm_per_ton && off > limits.value(limit::airflow_match)) {
        call.cautions.push_back(off > limits.value(limit::airflow_warn) ? CallCaution::far_off_target
                                                                        : CallCaution::off_target);
    }
    if (air.static_total.known() && air.static_total.value() > allowed_static(job, limits))
        call.cautions.push_back(CallCaution::static_over_plate);
    if (call.basis == WindowBasis::temperature_rise && call.expected_rise.known() && call.rise_high) {
        if (*call.rise_high - call.expected_rise.value() < limits.value(limit::rise_margin))
            call.cautions.push_back(CallCaution::rise_near_limit);
    }
    const Power of_each_cfm =
        air.input_power.known() ? air.input_power.value() / air.airflow.value().in(cfm) : Power();
    if (of_each_cfm > limits.value(limit::fan_efficacy)) call.cautions.push_back(CallCaution::watts_per_cfm);
}

/// Whether the motor or the equipment is near a limit somewhere within the uncertainty.
bool near_a_limit(const CallAir& call, const TapAir& air, const Limits& limits) {
    if (air.bound || air.caution) return true;
    if (air.load.known && air.load.value + air.load.plus_minus > limits.value(limit::load_full)) return true;
    return std::any_of(call.cautions.begin(), call.cautions.end(), [](CallCaution said) {
        return said == CallCaution::static_over_plate || said == CallCaution::rise_near_limit;
    });
}

}  // namespace

bool has_window(const CallAir& call) {
    return call.high > Airflow();
}
CallWindow window_of(const CallAir& call) {
    return {call.call, call.low, call.target, call.high, call.hard};
}

void serve_by_taps(AirPlan& plan, const FailedUnit& job, const Limits& limits, HeatFactor heat_factor,
                   Sharing sharing) {
    std::vector<std::size_t> which, taps;
    std::vector<CallWindow> windows;
    std::vector<TapFlow> flows;
    std::optional<std::size_t> aside;
    for (std::size_t i = 0; i < plan.calls.size(); ++i) {
        if (!has_window(plan.calls[i])) continue;
        if (sharing == Sharing::one_call_a_tap && !takes_a_lead(job, plan.calls[i].call)) {
            aside = i;
            continue;
        }
        which.push_back(i);
        windows.push_back(window_of(plan.calls[i]));
    }
    for (std::size_t i = 0; i < plan.taps.size(); ++i) {
        if (plan.taps[i].caution == LoadCaution::overload) continue;
        taps.push_back(i);
        flows.push_back({plan.taps[i].airflow.value(), plan.taps[i].airflow.plus_minus()});
    }
    const auto serve = [&](CallAir& call, const CallWindow& window, std::optional<int> flow) {
        if (!flow) {
            explain_unmet(call, plan, flows);
            return;
        }
        const auto at = static_cast<std::size_t>(*flow);
        const TapAir& tap = plan.taps[taps[at]];
        call.tap = tap.tap;
        call.met = true;
        expect_rise(call, tap.airflow, heat_factor);
        caution(call, tap, job, limits);
        call.assured = assured_in(window, flows[at]) && !near_a_limit(call, tap, limits);
    };
    const TapAssignment choice = assign_taps(windows, flows, sharing);
    for (std::size_t i = 0; i < which.size(); ++i) serve(plan.calls[which[i]], windows[i], choice.tap[i]);
    if (aside) {
        const CallWindow window = window_of(plan.calls[*aside]);
        serve(plan.calls[*aside], window, assign_taps({window}, flows).tap.front());
    }
}

void serve_by_program(CallAir& call, const FailedUnit& job, const Limits& limits, HeatFactor heat_factor) {
    call.unmet_reason = UnmetReason::limit_binds;
    if (!call.programmed) return;
    const TapAir& point = *call.programmed;
    const CallWindow window = window_of(call);
    expect_rise(call, point.airflow, heat_factor);
    if (!in_window(window, point.airflow.value()) || point.caution == LoadCaution::overload) return;
    call.met = true;
    call.unmet_reason.reset();
    caution(call, point, job, limits);
    call.assured = assured_in(window, {point.airflow.value(), point.airflow.plus_minus()}) &&
                   !near_a_limit(call, point, limits);
}

}  // namespace endbell::inline airflow
