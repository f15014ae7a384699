#include <algorithm>

#include <fmt/format.h>

#include "engine/base/check.hpp"
#include "engine/model/limit.hpp"
#include "engine/wiring/line_side.hpp"
#include "engine/wiring/netlist.hpp"
#include "engine/wiring/proof.hpp"
#include "engine/wiring/remarks.hpp"
#include "engine/wiring/setup.hpp"
#include "engine/wiring/tap_choice.hpp"

namespace endbell::inline wiring {

namespace {

/// Everything a circuit needs to become a plan.
struct Task {
    const FailedUnit& job;
    const Facts& facts;
    const Part& part;
    const Limits& limits;
    Setup setup;
    std::vector<ControlState> states;
    TapTable table;
};

WiringPlan refused(const Setup& setup) {
    WiringPlan plan;
    plan.refusal = setup.refusal;
    plan.rescues = setup.rescues;
    plan.lacking = setup.lacking;
    plan.signals = names_of(setup.controls.signals);
    return plan;
}

TapTable table_of(const Setup& setup, const Part& part, const std::vector<ControlState>& states) {
    TapTable table;
    table.signals = static_cast<int>(setup.controls.signals.size());
    table.highest_tap = highest_tap(part, states);
    table.wanted.resize(std::size_t{1} << table.signals);
    table.must_run = setup.controls.must_run;
    for (const ControlState& s : states) table.wanted[s.live] = s.wanted_tap;
    return table;
}

const Tap* tap_of(const Part& part, int number) {
    for (const Tap& t : part.motor->taps) {
        if (t.number == number) return &t;
    }
    return nullptr;
}

std::string printed(const Part& part, int tap) {
    if (const PartTerminal* t = terminal(part, fmt::format("tap {}", tap))) return t->label;
    const PartTerminal* line = terminal(part, "line");
    const bool one_lead = part.motor->signal == SignalClass::switched_line && part.motor->taps.size() <= 1;
    if (one_lead && line != nullptr) return line->label;
    const Tap* known = tap_of(part, tap);
    return known != nullptr ? known->label : "";
}

/// A lead of a line-voltage motor that nothing feeds is live by its winding: it is capped alone.
void land_taps(const Task& task, WiringPlan& plan) {
    for (int tap = 1; tap <= task.table.highest_tap; ++tap) {
        const bool on_part = task.part.motor->taps.empty() || tap_of(task.part, tap) != nullptr;
        if (!on_part) continue;
        TapRow row;
        row.tap = tap;
        row.terminal = printed(task.part, tap);
        for (const Wire& w : plan.wires) {
            if (w.to == NetPlace::tap(tap)) row.from.push_back(w.from);
        }
        for (const ControlState& s : task.states) {
            if (s.wanted_tap == tap) row.states.push_back(s.name);
        }
        row.parked = plan.line_taps && row.from.empty();
        if (row.parked) plan.wires.push_back({NetPlace::tap(tap), NetPlace::cap(tap), WireNote::parked});
        plan.taps.push_back(std::move(row));
    }
}

/// All outputs that used to feed the old motor meet on the run-signal lead; the board keeps its timing.
void wire_run_signal(const Task& task, WiringPlan& plan) {
    if (!task.setup.gated) return;
    const NetPlace lead = NetPlace::motor(terminal(task.part, "run signal")->label);
    bool any = false;
    if (task.job.controls.terminals) {
        for (const Terminal& t : *task.job.controls.terminals) {
            if (is_thermostat_letter(t.name)) continue;
            plan.wires.push_back({NetPlace::board_output(t.name), lead, WireNote::run_signal});
            any = true;
        }
    }
    if (!any) plan.wires.push_back({{NetPlace::Kind::board_outputs}, lead, WireNote::run_signal});
}

WiringPlan finish(const Task& task, const Circuit& circuit, WiringMethod method,
                  std::optional<WiringCondition> condition = std::nullopt) {
    WiringPlan plan;
    plan.possible = true;
    plan.method = circuit.coils.empty() ? WiringMethod::direct : method;
    if (task.table.signals > 1) plan.condition = condition;  // one output alone meets it by itself
    plan.assumed = task.setup.controls.assumed;
    plan.tap_rule = task.setup.rule;
    plan.line_signals = task.setup.line_signals;
    plan.line_taps = task.setup.line_taps;
    plan.signals = names_of(task.setup.controls.signals);
    plan.must_run = task.setup.controls.must_run;
    plan.states = task.states;
    for (SignalSet live = 0; live < task.table.wanted.size(); ++live) {
        plan.intended.push_back(circuit.taps_in(live, task.table.signals));
    }
    const int poles = std::max(1, static_cast<int>(task.limits.value(limit::relay_poles)));
    write_netlist(circuit, task.setup.ends, poles, plan);
    plan.fewest_relays = true;
    land_taps(task, plan);
    wire_run_signal(task, plan);
    add_line_side(task.facts, task.part, task.setup.conductors, task.limits, plan);
    plan.truth = prove(plan);
    plan.proven = all_hold(plan.truth);
    check(plan.proven, "the simulator agrees with what was synthesised");
    return plan;
}

/// The ways this table can be wired, the one to take first.
std::vector<WiringPlan> ways(const Task& task) {
    std::vector<WiringPlan> plans;
    const Setup& setup = task.setup;
    if (setup.controls.exclusive && setup.sources.signals && setup.rule != TapRule::highest_tap_wins) {
        if (const auto direct = one_output_one_tap(task.table)) {
            plans.push_back(
                finish(task, *direct, WiringMethod::direct, WiringCondition::one_board_output_at_a_time));
        }
    }
    if (setup.rule == TapRule::highest_tap_wins) {
        if (const auto circuit = highest_wins(task.table, setup.sources)) {
            plans.push_back(finish(task, *circuit, WiringMethod::priority_of_the_part));
        }
    }
    if (const auto circuit = one_conductor(task.table, setup.sources)) {
        WiringPlan strict = finish(task, *circuit, WiringMethod::one_conductor);
        const bool relays_first = !setup.board_first && setup.rule != TapRule::highest_tap_wins;
        plans.insert(relays_first ? plans.begin() : plans.end(), std::move(strict));
    }
    return plans;
}

/// Another way is no choice where a part that does not obey the higher of two taps could get two: nothing shows that
/// the board never lets two outputs live. Only the way that is taken first may hold on a condition, which it states.
WiringPlan without_two_taps(WiringPlan other) {
    const bool two = std::any_of(other.truth.begin(), other.truth.end(),
                                 [](const TruthRow& row) { return row.live_taps.size() > 1; });
    if (!two || other.tap_rule == TapRule::highest_tap_wins) return other;
    WiringPlan none;
    none.refusal = WiringRefusal::two_taps_on_one_tap_part;
    none.method = other.method;
    none.tap_rule = other.tap_rule;
    none.signals = std::move(other.signals);
    return none;
}

/// A programmed motor or module has no taps to choose: its own plugs carry the same signals as before.
WiringPlan plug_for_plug() {
    WiringPlan plan;
    plan.possible = true;
    plan.method = WiringMethod::plug_for_plug;
    return plan;
}

WiringPlan plan_taps(const FailedUnit& job, const Facts& facts, const Part& part, const AirPlan& air,
                     const Limits& limits, bool use_run_signal) {
    Task task{job, facts, part, limits, set_up(job, facts, part, air, use_run_signal), {}, {}};
    if (task.setup.refusal) return refused(task.setup);
    TapChoice choice = choose_taps(task.setup.controls, part, air);
    if (choice.refusal) {
        task.setup.refusal = choice.refusal;
        task.setup.lacking = choice.lacking;
        return refused(task.setup);
    }
    task.states = std::move(choice.states);
    for (const ControlState& s : task.states) {
        const Tap* tap = tap_of(part, s.wanted_tap);
        const bool line_tap = tap != nullptr && tap->signal && *tap->signal != SignalClass::control_24v;
        if (tap != nullptr && tap->signal && line_tap != task.setup.line_taps) {
            task.setup.refusal = WiringRefusal::line_voltage_on_24v_tap;
            return refused(task.setup);
        }
    }
    task.table = table_of(task.setup, part, task.states);
    std::vector<WiringPlan> plans = ways(task);
    if (plans.empty()) {
        task.setup.refusal = WiringRefusal::no_circuit;
        return refused(task.setup);
    }
    WiringPlan first = std::move(plans.front());
    if (plans.size() > 1 && plans[1].relays.size() != first.relays.size())
        first.alternatives.push_back(without_two_taps(std::move(plans[1])));
    return first;
}

}  // namespace

WiringPlan lay_wiring(const FailedUnit& job, const Facts& facts, const Part& part, const AirPlan& air,
                      const Limits& limits) {
    if (part.module) return plug_for_plug();
    if (!part.motor) {
        WiringPlan none;
        none.refusal = WiringRefusal::no_motor;
        return none;
    }
    const Motor& motor = *part.motor;
    const bool programmed = motor.family && *motor.family == Family::constant_airflow;
    if (programmed) return plug_for_plug();
    WiringPlan plan = plan_taps(job, facts, part, air, limits, true);
    if (plan.possible && has_run_signal(job, part) && plan.alternatives.empty()) {
        WiringPlan other = plan_taps(job, facts, part, air, limits, false);
        if (other.possible && other.line_signals != plan.line_signals)
            plan.alternatives.push_back(without_two_taps(std::move(other)));
    }
    return plan;
}

Verdict verdict_of(WiringRefusal refusal) {
    using enum WiringRefusal;
    switch (refusal) {
        case fewer_than_three_line_wires:
        case supply_not_known:
            return Verdict::not_shown;
        case signal_class_not_known:
        case source_not_known:
        case controls_not_known:
        case taps_not_chosen:
            return Verdict::fits;
        case no_motor:
        case inducer_by_its_own_diagram:
        case contactor_feeds_line_leads_only:
        case serial_control:
        case too_many_signals:
        case heat_call_past_the_board:
        case blower_off_its_board:
        case heat_call_without_a_wire:
        case no_common_wire:
        case states_not_told_apart:
        case line_voltage_on_24v_tap:
        case no_circuit:
        case two_taps_on_one_tap_part:
            break;
    }
    return Verdict::does_not_fit;
}

Verdict verdict_of(const WiringPlan& plan) {
    return plan.refusal ? verdict_of(*plan.refusal) : Verdict::fits;
}

void annotate(WiringPlan& plan, const FailedUnit& job, const Facts& facts, const Part& part,
              const Limits& limits) {
    if (!plan.possible) return;
    if (plan.method != WiringMethod::plug_for_plug) {
        plan.faults = single_faults(plan);
        plan.power = control_power(job, plan, limits);
        plan.cautions = cautions_of(facts, part, plan);
    }
    plan.checks = checks_of(job, facts, part, plan);
    for (WiringPlan& other : plan.alternatives) annotate(other, job, facts, part, limits);
}

WiringPlan plan_wiring(const FailedUnit& job, const Facts& facts, const Part& part, const AirPlan& air,
                       const Limits& limits) {
    WiringPlan plan = lay_wiring(job, facts, part, air, limits);
    annotate(plan, job, facts, part, limits);
    return plan;
}

}  // namespace endbell::inline wiring
