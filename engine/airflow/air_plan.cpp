#include "engine/airflow/air_plan.hpp"

#include <algorithm>
#include <cmath>

#include "engine/airflow/air.hpp"
#include "engine/airflow/air_needs.hpp"
#include "engine/airflow/assumptions.hpp"
#include "engine/airflow/blower_fit.hpp"
#include "engine/airflow/duct_point.hpp"
#include "engine/airflow/machine.hpp"
#include "engine/airflow/prediction.hpp"
#include "engine/airflow/spread.hpp"
#include "engine/airflow/tap_assignment.hpp"

namespace endbell {

namespace {

void add(std::vector<std::string>& list, const std::string& key) {
    if (std::find(list.begin(), list.end(), key) == list.end()) list.push_back(key);
}
void add(std::vector<std::string>& list, const std::vector<std::string>& keys) {
    for (const std::string& key : keys) add(list, key);
}

bool has_window(const CallAir& call) {
    return call.high > 0;
}
CallWindow window_of(const CallAir& call) {
    return {call.call, call.low, call.target, call.high, call.hard};
}

void expect_rise(CallAir& call, const Estimate& airflow, double heat_factor) {
    if (!call.heat || !airflow.known || airflow.value <= 0) return;
    const double rise = rise_for(*call.heat, cfm(airflow.value), heat_factor).in(fahrenheit_degree);
    call.expected_rise = estimate(rise, root_sum({relative(airflow), assumed::heat_output}), airflow.assumed);
}

/// Everything plan_air knows while it works: the job's readings, the part as a machine, the plan so far.
struct Planner {
    const FailedUnit& job;
    const Limits& limits;
    Machine machine;
    AirNeeds needs;
    std::optional<BlowerCurve> table;
    AirPlan plan;

    void read_table();
    void find_old_point();
    void predict();
    void predict_taps();
    void predict_programmed();
    std::optional<TapAir> settle(const TapSetting& tap);
    void choose();
    void caution(CallAir& call, const TapAir& air) const;
    void explain_unmet(CallAir& call, const std::vector<TapFlow>& flows);
    /// The table serves only where the static is known: without it the duct has no place on the curve.
    const BlowerCurve* curve() const { return table && measured_static(job).known ? &*table : nullptr; }
    bool solvable() const { return plan.point.airflow.known && (plan.point.torque.known || curve()); }
};

void Planner::read_table() {
    if (!job.equipment.blower_table) return;
    if (job.unit.belt_drive && *job.unit.belt_drive) {  // the table's rpm is the wheel's, not the motor's
        plan.table_refused = "belt drive";
        return;
    }
    const BlowerFit fit = fit_blower(*job.equipment.blower_table);
    table = fit.curve;
    plan.table_refused = fit.refusal;
}

void Planner::find_old_point() {
    const FoundPoint found = find_point(job, needs, curve());
    plan.point = found.point;
    add(plan.lacking, found.lacking);
    plan.contradictions = found.contradictions;
    if (plan.point.airflow.known) add(plan.assumed, found.assumed);
    const bool limited = machine.speed_limit || machine.rated;
    if (limited && !plan.point.speed.known && !curve())
        add(plan.lacking, "measured.speed");  // limits go unwatched
}

/// One tap's point, none where the catalog or the readings do not decide it; `lacking` says which.
std::optional<TapAir> Planner::settle(const TapSetting& tap) {
    const DuctPoint& point = plan.point;
    if (*machine.family == Family::constant_torque) {
        if (!tap.torque || *tap.torque <= pound_foot(0)) {
            add(plan.lacking, "taps.torque");
            return std::nullopt;
        }
        return Prediction(point, curve(), needs.density_ratio).hold_torque(*tap.torque, machine.limits());
    }
    if (!tap.speed || *tap.speed <= rpm(0)) {
        add(plan.lacking, "taps.speed");
        return std::nullopt;
    }
    std::optional<SlipLine> line = machine.slip_line();
    if (line && solvable() && *tap.speed < line->synchronous) {
        line->strength *= strength_of_tap(*line, *tap.speed);
        return Prediction(point, curve(), needs.density_ratio).spin(*line);
    }
    if (!point.speed.known) {
        add(plan.lacking, "measured.speed");
        return std::nullopt;
    }
    return Prediction::turn_at(point, *tap.speed);
}

void Planner::predict_taps() {
    const bool torque = *machine.family == Family::constant_torque;
    if (machine.taps.empty()) add(plan.lacking, torque ? "taps.torque" : "taps.speed");
    for (const TapSetting& setting : machine.taps) {
        std::optional<TapAir> tap = settle(setting);
        if (!tap) continue;
        tap->tap = setting.number;
        add_electric(*tap, machine, limits, plan.assumed);
        plan.taps.push_back(*tap);
    }
    plan.computed = !plan.taps.empty();
}

void Planner::predict_programmed() {
    const Prediction prediction(plan.point, curve(), needs.density_ratio);
    add(plan.assumed, "motors.program");  // that the program asks for each call's target
    for (CallAir& call : plan.calls) {
        if (!has_window(call)) continue;
        call.programmed = prediction.hold_airflow(cfm(call.target), machine.limits());
        if (!call.programmed) {
            call.unmet_reason = "limit binds";
            continue;
        }
        add_electric(*call.programmed, machine, limits, plan.assumed);
        const Estimate& airflow = call.programmed->airflow;
        call.met = in_window(window_of(call), airflow.value) && call.programmed->caution != "overload";
        call.assured = call.met && assured_in(window_of(call), {airflow.value, airflow.plus_minus});
        if (!call.met) call.unmet_reason = "limit binds";
        expect_rise(call, airflow, needs.heat_factor);
        if (call.met) caution(call, *call.programmed);
    }
    plan.computed = true;
}

/// How the part's airflow is set decides the method; the readings decide whether it can be carried out.
void Planner::predict() {
    if (!machine.family) {
        add(plan.lacking, "motors.family");
        return;
    }
    if (*machine.family == Family::communicating) {
        plan.method = "by the board";
        return;
    }
    find_old_point();
    switch (*machine.family) {
        case Family::constant_airflow:
            plan.method = "programmed airflow";
            if (solvable()) predict_programmed();
            return;
        case Family::constant_torque:
            plan.method = curve() ? "blower table" : "torque ratio";
            if (solvable()) predict_taps();
            return;
        default:
            plan.method = !machine.slip_line() || !solvable() ? "fan laws"
                          : curve()                           ? "blower table"
                                                              : "slip line";
            if (plan.point.airflow.known) predict_taps();
    }
}

void Planner::explain_unmet(CallAir& call, const std::vector<TapFlow>& flows) {
    const CallWindow window = window_of(call);
    const bool usable = std::any_of(flows.begin(), flows.end(),
                                    [&](const TapFlow& f) { return in_window(window, f.airflow); });
    const bool any = std::any_of(plan.taps.begin(), plan.taps.end(),
                                 [&](const TapAir& tap) { return in_window(window, tap.airflow.value); });
    call.unmet_reason = usable ? "outranked" : any ? "overload" : "no tap in window";
}

/// A met call may still be worth a word.
void Planner::caution(CallAir& call, const TapAir& air) const {
    const EquipmentFacts& equipment = job.equipment;
    const double off = std::abs(air.airflow.value / call.target - 1);
    if (call.basis == "cfm per ton" && off > limits.value("airflow.match")) {
        call.cautions.push_back(off > limits.value("airflow.warn") ? "far off target" : "off target");
    }
    const double most = equipment.static_limit ? equipment.static_limit->in(inch_water)
                                               : limits.value("static.plate_default");
    if (air.static_total.known && air.static_total.value > most) call.cautions.push_back("static over plate");
    if (call.basis == "temperature rise" && call.expected_rise && equipment.rise_high) {
        const double margin = equipment.rise_high->in(fahrenheit_degree)-call.expected_rise->value;
        if (margin < limits.value("rise.margin")) call.cautions.push_back("rise near limit");
    }
    const double watts_per_cfm = air.input_power.known ? air.input_power.value / air.airflow.value : 0;
    if (watts_per_cfm > limits.value("fan.efficacy")) call.cautions.push_back("watts per cfm");
}

void Planner::choose() {
    std::vector<std::size_t> which, taps;
    std::vector<CallWindow> windows;
    std::vector<TapFlow> flows;
    for (std::size_t i = 0; i < plan.calls.size(); ++i) {
        if (!has_window(plan.calls[i])) continue;
        which.push_back(i);
        windows.push_back(window_of(plan.calls[i]));
    }
    for (std::size_t i = 0; i < plan.taps.size(); ++i) {
        if (plan.taps[i].caution == "overload") continue;
        taps.push_back(i);
        flows.push_back({plan.taps[i].airflow.value, plan.taps[i].airflow.plus_minus});
    }
    const TapAssignment choice = assign_taps(windows, flows);
    for (std::size_t i = 0; i < which.size(); ++i) {
        CallAir& call = plan.calls[which[i]];
        if (!choice.tap[i]) {
            explain_unmet(call, flows);
            continue;
        }
        const auto flow = static_cast<std::size_t>(*choice.tap[i]);
        const TapAir& tap = plan.taps[taps[flow]];
        call.tap = tap.tap;
        call.met = true;
        call.assured = assured_in(windows[i], flows[flow]);
        expect_rise(call, tap.airflow, needs.heat_factor);
        caution(call, tap);
    }
}

}  // namespace

AirPlan plan_air(const FailedUnit& job, const Part& part, const Limits& limits) {
    Planner planner{job, limits, machine_of(job, part), {}, std::nullopt, {}};
    AirPlan& plan = planner.plan;
    plan.method = "no calls";
    const Estimate pressure = measured_static(job);
    plan.duct_first = pressure.known && pressure.value > limits.value("static.repair_first");
    if (!job.unit.load) add(plan.lacking, "unit.load");
    if (!job.unit.load || *job.unit.load != Load::indoor_blower) return plan;
    planner.needs = air_needs(job, limits);
    plan.calls = planner.needs.calls;
    plan.assumed = planner.needs.assumed;
    plan.method = "no motor";
    if (!part.motor && !part.module) return plan;
    planner.read_table();
    planner.predict();
    if (!plan.taps.empty()) planner.choose();
    for (CallAir& call : plan.calls) {
        add(plan.lacking, call.lacking);
        if (!plan.computed && has_window(call)) {
            call.unmet_reason = plan.method == "by the board" ? "by the board" : "not measured";
        }
    }
    if (plan.computed) add(plan.assumed, "duct curve");  // that the duct is as it was measured
    return plan;
}

const CallAir* find_call(const AirPlan& plan, Call call) {
    for (const CallAir& one : plan.calls) {
        if (one.call == call) return &one;
    }
    return nullptr;
}

const TapAir* air_of(const AirPlan& plan, Call call) {
    const CallAir* found = find_call(plan, call);
    if (!found || !found->met) return nullptr;
    if (found->programmed) return &*found->programmed;
    for (const TapAir& tap : plan.taps) {
        if (tap.tap == found->tap) return &tap;
    }
    return nullptr;
}

}  // namespace endbell
