#include "engine/airflow/air_plan.hpp"

#include <algorithm>

#include "engine/airflow/air_needs.hpp"
#include "engine/airflow/blower_fit.hpp"
#include "engine/airflow/contrary.hpp"
#include "engine/airflow/duct_point.hpp"
#include "engine/airflow/machine.hpp"
#include "engine/airflow/prediction.hpp"
#include "engine/airflow/serve_calls.hpp"
#include "engine/airflow/speed_leads.hpp"
#include "engine/airflow/trade_offs.hpp"
#include "engine/base/text.hpp"
#include "engine/model/limit.hpp"

namespace endbell::inline airflow {

namespace {

void add(std::vector<std::string>& list, const std::string& key) {
    if (std::find(list.begin(), list.end(), key) == list.end()) list.push_back(key);
}
void add(std::vector<std::string>& list, const std::vector<std::string>& keys) {
    for (const std::string& key : keys) add(list, key);
}

/// Everything plan_air knows while it works: the job's readings, the part as a machine, the plan so far.
struct Planner {
    const FailedUnit& job;
    const Facts& facts;
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
    /// The table serves only where the static is known: without it the duct has no place on the curve.
    const BlowerCurve* curve() const { return table && measured_static(job).known() ? &*table : nullptr; }
    bool solvable() const { return plan.point.airflow.known() && (plan.point.torque.known() || curve()); }
};

void Planner::read_table() {
    if (!job.equipment.blower_table) return;
    if (facts.belt.is(true)) {  // the table's rpm is the wheel's, not the motor's
        plan.table_refused = TableRefusal::belt_drive;
        return;
    }
    const BlowerFit fit = fit_blower(*job.equipment.blower_table);
    table = fit.curve;
    plan.table_refused = fit.refusal;
}

void Planner::find_old_point() {
    const FoundPoint found = find_point(job, facts, needs, curve());
    plan.point = found.point;
    add(plan.lacking, found.lacking);
    if (plan.point.airflow.known()) add(plan.assumed, found.assumed);
    const bool limited = machine.speed_limit || machine.rated;
    if (limited && !plan.point.speed.known() && !curve())
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
    if (!point.speed.known()) {
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
        call.programmed = prediction.hold_airflow(call.target, machine.limits());
        if (call.programmed) add_electric(*call.programmed, machine, limits, plan.assumed);
        serve_by_program(call, job, limits, needs.heat_factor);
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
        plan.method = AirMethod::by_the_board;
        return;
    }
    find_old_point();
    switch (*machine.family) {
        case Family::constant_airflow:
            plan.method = AirMethod::programmed_airflow;
            if (solvable()) predict_programmed();
            return;
        case Family::constant_torque:
            plan.method = curve() ? AirMethod::blower_table : AirMethod::torque_ratio;
            if (solvable()) predict_taps();
            return;
        default:
            plan.method = !machine.slip_line() || !solvable() ? AirMethod::fan_laws
                          : curve()                           ? AirMethod::blower_table
                                                              : AirMethod::slip_line;
            if (plan.point.airflow.known()) predict_taps();
    }
}

AirPlan plan_by_readings(const FailedUnit& job, const Facts& facts, const Part& part, const Limits& limits) {
    Planner planner{job, facts, limits, machine_of(facts, part, limits), {}, std::nullopt, {}};
    planner.machine.altitude_share = motor_share(job, limits);
    AirPlan& plan = planner.plan;
    plan.method = AirMethod::no_calls;
    const Estimate<Pressure> pressure = measured_static(job);
    plan.duct_first = pressure.known() && pressure.value() > limits.value(limit::static_repair_first);
    if (!job.unit.load) add(plan.lacking, "unit.load");
    if (!job.unit.load || *job.unit.load != Load::indoor_blower) return plan;
    planner.needs = air_needs(job, facts, limits);
    plan.calls = planner.needs.calls;
    plan.assumed = planner.needs.assumed;
    plan.density_ratio = planner.needs.density_ratio;
    plan.motor_share = planner.machine.altitude_share;
    plan.method = AirMethod::no_motor;
    if (!part.motor && !part.module) return plan;
    planner.read_table();
    planner.predict();
    const bool own_leads = takes_over_leads(job, facts, part);
    const Sharing sharing = own_leads ? Sharing::one_call_a_tap : Sharing::allowed;
    if (!plan.taps.empty()) serve_by_taps(plan, job, limits, planner.needs.heat_factor, sharing);
    if (own_leads) give_leads(plan, job, part);
    for (CallAir& call : plan.calls) {
        add(plan.lacking, call.lacking);
        if (call.heats.size() > 1)
            add(plan.lacking, call.basis == WindowBasis::electric_elements ? facts.heat.element_asks
                                                                           : facts.heat.fuel_asks);
        if (!plan.computed && has_window(call)) {
            call.unmet_reason = plan.method == AirMethod::by_the_board ? UnmetReason::by_the_board
                                                                       : UnmetReason::not_measured;
        }
    }
    if (plan.computed) add(plan.assumed, std::string(word(Assumption::duct_curve)));
    weigh_choices(plan, job, facts, limits);
    return plan;
}

}  // namespace

AirPlan plan_air(const FailedUnit& job, const Facts& facts, const Part& part, const Limits& limits) {
    const bool blower = job.unit.load && *job.unit.load == Load::indoor_blower;
    const auto contrary = blower ? contrary_air(job, facts, limits) : std::vector<ContraryKeys>{};
    if (contrary.empty()) return plan_by_readings(job, facts, part, limits);
    const FailedUnit settled = without_contrary(job, contrary);
    AirPlan plan = plan_by_readings(settled, facts_of(settled, limits), part, limits);
    for (const ContraryKeys& keys : contrary) plan.contradictions.push_back(joined(keys, " and "));
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

}  // namespace endbell::inline airflow
