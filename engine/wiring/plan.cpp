// The way of a plan from the first file of the folder to the last: wiring.hpp is its map.
#include <algorithm>

#include "engine/base/ensure.hpp"
#include "engine/model/limit.hpp"
#include "engine/wiring/after_the_call.hpp"
#include "engine/wiring/landing.hpp"
#include "engine/wiring/line_side.hpp"
#include "engine/wiring/motion.hpp"
#include "engine/wiring/netlist.hpp"
#include "engine/wiring/objections.hpp"
#include "engine/wiring/plugs.hpp"
#include "engine/wiring/proof.hpp"
#include "engine/wiring/settings.hpp"
#include "engine/wiring/synthesis.hpp"
#include "engine/wiring/tap_choice.hpp"
#include "engine/wiring/transformer.hpp"

namespace endbell::inline wiring {

namespace {

/// Everything a circuit needs to become a plan.
struct Task {
    const FailedUnit& job;
    const Facts& facts;
    const Part& part;
    const Limits& limits;
    const MotorFeed& feed;
    const Controls& controls;
    const std::vector<ControlState>& states;
    const TapTable& table;
    const AfterTheCall& after;
    const std::vector<Call>& short_of_air;
};

WiringPlan refused(const NoWiring& none, const std::vector<ControlSignal>& signals = {}) {
    WiringPlan plan;
    plan.refusal = none.why;
    plan.rescues = none.rescues;
    plan.lacking = none.lacking;
    plan.refused_calls = none.calls;
    plan.refused_terminals = none.terminals;
    plan.signals = names_of(signals);
    return plan;
}

/// The states that come about in this plan: what its condition keeps away is none of them.
void take_states(const Task& task, WiringPlan& plan) {
    const bool apart = plan.condition == WiringCondition::one_board_output_at_a_time;
    for (const ControlState& state : task.states) {
        if (!state.overlap || !apart) plan.states.push_back(state);
        if (state.overlap && apart)
            plan.kept_away.push_back({state.name, state.maker, Interlock::one_board_output_at_a_time, false});
    }
    plan.interlocks = task.controls.interlocks;
    plan.kept_away.insert(plan.kept_away.end(), task.after.kept_away.begin(), task.after.kept_away.end());
}

/// The circuit as relays and wires, on this part, with its proof.
WiringPlan drawn_up(const Task& task, const WiringWay& way) {
    WiringPlan plan;
    plan.possible = true;
    plan.method = way.circuit.coils.empty() ? WiringMethod::direct : way.method;
    plan.condition = way.condition ? way.condition : task.after.condition;
    plan.assumed = task.controls.assumed;
    plan.assumed.insert(plan.assumed.end(), task.feed.assumed.begin(), task.feed.assumed.end());
    plan.load_switch = task.feed.load_switch;
    plan.tap_rule = task.feed.rule;
    plan.line_signals = task.feed.line_signals;
    plan.line_taps = task.feed.line_taps;
    if (task.feed.gated && task.part.motor->default_tap.value_or(0) > 0)
        plan.default_tap = task.part.motor->default_tap;
    plan.signals = names_of(task.controls.signals);
    plan.heats = task.controls.heats;
    plan.idle = task.controls.idle;
    plan.short_of_air = task.short_of_air;
    take_states(task, plan);
    plan.intended = intended_table(way.circuit, task.table.signals);
    const int poles = std::max(1, static_cast<int>(task.limits.value(limit::relay_poles)));
    write_netlist(way.circuit, task.feed.ends, poles, plan);
    plan.fewest_relays = true;
    land_taps(task.part, task.table.highest_tap, plan);
    if (task.feed.gated) wire_run_signal(task.job, task.part, plan);
    add_line_side(task.part, task.feed, plan);
    plan.truth = prove(plan);
    plan.proven = is_proven(plan.truth);
    ensure(plan.proven || unlanded(plan), "the simulator agrees with what was synthesised");
    plan.power = control_power(task.job, plan, task.limits);
    return plan;
}

/// Another plan is no choice where a part that does not obey the higher of two taps could get two: nothing shows that
/// the board never lets two outputs live. Only the plan that is taken first may hold on a condition, which it states.
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

/// A plan whose moving relays can tie one call to another gives way to one whose cannot, where there is one.
void pass_over_the_unsteady(std::vector<WiringPlan>& plans) {
    if (plans.size() < 2) return;
    const auto unsteady = std::stable_partition(
        plans.begin(), plans.end(), [](const WiringPlan& plan) { return motion_of(plan).steady(); });
    if (unsteady != plans.begin()) plans.erase(unsteady, plans.end());
}

/// The speeds of an outdoor fan are its leads: the lowest and the highest, whatever air the blower needs.
AirPlan speeds_by_lead(const Part& part) {
    AirPlan air;
    if (part.motor->taps.empty()) return air;
    const auto by_number = [](const Tap& a, const Tap& b) { return a.number < b.number; };
    const auto [lowest, highest] =
        std::minmax_element(part.motor->taps.begin(), part.motor->taps.end(), by_number);
    for (const Word<Call>& call : Words<Call>::table) {
        CallAir entry;
        entry.call = call.value;
        entry.tap =
            call.value == Call::cool_low || call.value == Call::heat_low ? lowest->number : highest->number;
        air.calls.push_back(entry);
    }
    return air;
}

WiringPlan plan_taps(const FailedUnit& job, const Facts& facts, const Part& part, const AirPlan& blower_air,
                     const Limits& limits, bool use_run_signal) {
    const MotorFeed feed = feed_of(job, facts, part, use_run_signal);
    if (feed.refused) return refused(*feed.refused);
    const AirPlan air = feed.outdoors ? speeds_by_lead(part) : blower_air;
    const Controls controls = controls_of(job, facts, air, feed);
    if (const auto objection = objection_to(controls, feed, job, facts))
        return refused(*objection, controls.signals);
    const TapChoice choice = choose_taps(controls, part, air, feed);
    if (choice.refused) return refused(*choice.refused, controls.signals);
    const TapTable table = table_of(choice.states, static_cast<int>(controls.signals.size()),
                                    highest_tap(part, choice.states), controls.heats.all());
    const AfterTheCall after = after_the_call(job, facts, part, feed, controls, choice.states, limits);
    if (after.refused) return refused(*after.refused, controls.signals);
    const std::vector<Call> short_of_air = short_on_the_least_zone(job, air);
    std::vector<WiringPlan> plans;
    const Task task{job, facts, part, limits, feed, controls, choice.states, table, after, short_of_air};
    for (const WiringWay& way : ways_of(table, feed, controls.exclusive))
        plans.push_back(drawn_up(task, way));
    if (plans.empty()) return refused({WiringRefusal::no_circuit}, controls.signals);
    pass_over_the_unsteady(plans);
    WiringPlan first = std::move(plans.front());
    if (const auto missing = unlanded(first)) return refused(*missing, controls.signals);
    if (feed.gated && !part.motor->default_tap) first.lacking.emplace_back("motors.default_tap");
    if (plans.size() > 1 && plans[1].relays.size() != first.relays.size())
        first.alternatives.push_back(without_two_taps(std::move(plans[1])));
    return first;
}

WiringPlan laid(const FailedUnit& job, const Facts& facts, const Part& part, const AirPlan& air,
                const Limits& limits) {
    if (part.module) return plug_for_plug(facts, part);
    if (!part.motor) return refused({WiringRefusal::no_motor});
    const Motor& motor = *part.motor;
    const bool programmed = motor.family && *motor.family == Family::constant_airflow;
    if (programmed) return plug_for_plug(facts, part);
    WiringPlan plan = plan_taps(job, facts, part, air, limits, true);
    if (plan.possible && has_run_signal(job, part) && plan.alternatives.empty()) {
        WiringPlan other = plan_taps(job, facts, part, air, limits, false);
        if (other.possible && other.line_signals != plan.line_signals)
            plan.alternatives.push_back(without_two_taps(std::move(other)));
    }
    return plan;
}

}  // namespace

WiringPlan lay_wiring(const FailedUnit& job, const Facts& facts, const WiredPart& part, const AirPlan& air,
                      const Limits& limits) {
    WiringPlan plan = laid(job, facts, part.pins(), air, limits);
    plan.settings = settings_of(job, facts, part, plan, limits);
    return plan;
}

WiringPlan plan_wiring(const FailedUnit& job, const Facts& facts, const WiredPart& part, const AirPlan& air,
                       const Limits& limits) {
    WiringPlan plan = lay_wiring(job, facts, part, air, limits);
    annotate(plan, job, facts, part, limits);
    return plan;
}

}  // namespace endbell::inline wiring
