// What must be said about a plan, and the checks before it is left: explain/ has the sentences.

#include <algorithm>

#include "engine/wiring/commissioning.hpp"
#include "engine/wiring/motion.hpp"
#include "engine/wiring/nodal.hpp"
#include "engine/wiring/proof.hpp"
#include "engine/wiring/transformer.hpp"
#include "engine/wiring/wiring.hpp"

namespace endbell::inline wiring {

namespace {

/// An outdoor fan that a defrost must stop. An indoor fan of three phases hangs on a starter.
bool stops_in_defrost(const Facts& facts, const WiringPlan& plan) {
    return plan.load_switch && plan.load_switch != LoadSwitch::starter && facts.heat.compressor.is(true);
}

bool has_wire_note(const WiringPlan& plan, WireNote note) {
    return std::any_of(plan.wires.begin(), plan.wires.end(), [&](const Wire& w) { return w.note == note; });
}

bool electronic(const Part& part) {
    return part.module || (part.motor && part.motor->family && is_electronic(*part.motor->family));
}

/// What stands for line present and no tap live: what the part then does, and what is done about it.
std::optional<WiringCaution> without_a_tap(const Part& part, const WiringPlan& plan) {
    if (!has_wire_note(plan, WireNote::run_signal)) return std::nullopt;
    const std::optional<int> tap = part.motor->default_tap;
    if (!tap) return WiringCaution::tap_held_without_a_call;
    if (*tap == 0) return WiringCaution::stops_without_a_tap;
    const bool serves = std::any_of(plan.states.begin(), plan.states.end(),
                                    [](const ControlState& s) { return s.by_default; });
    return serves ? WiringCaution::runs_at_its_default_tap : WiringCaution::default_tap_gives_other_air;
}

template <class Test>
bool some_fault(const WiringPlan& plan, Test test) {
    return std::any_of(plan.faults.begin(), plan.faults.end(), test);
}

bool two_live_somewhere(const WiringPlan& plan) {
    return std::any_of(plan.truth.begin(), plan.truth.end(),
                       [](const TruthRow& row) { return row.live_taps.size() > 1; });
}

bool runs_on(const Part& part) {
    const auto& taps = part.motor->taps;
    return std::any_of(taps.begin(), taps.end(),
                       [](const Tap& t) { return t.off_delay && t.off_delay->in(second) > 0; });
}

/// Is a state on a lead that no airflow shows to be right, one that burns or any?
bool provisional(const WiringPlan& plan, bool burning_alone) {
    return std::any_of(plan.states.begin(), plan.states.end(), [&](const ControlState& s) {
        return s.provisional && (!burning_alone || (s.live & plan.heats.burner) != 0);
    });
}

std::vector<WiringCaution> cautions_of(const FailedUnit& job, const Facts& facts, const Part& part,
                                       const WiringPlan& plan) {
    using enum WiringCaution;
    std::vector<WiringCaution> list;
    const auto when = [&](bool true_here, WiringCaution caution) {
        if (true_here) list.push_back(caution);
    };
    when(electronic(part), line_power_always_present);
    when(has_wire_note(plan, WireNote::second_line_conductor) &&
             !has_wire_note(plan, WireNote::third_line_conductor),
         both_line_conductors_live);
    when(facts.supply.high_leg, a_high_leg_is_there);
    when(facts.supply.at_motor() && has_wire_note(plan, WireNote::neutral) &&
             nearest_class(*facts.supply.at_motor()).nominal == volt(277),
         line_to_line_is_480);
    when(plan.load_switch.has_value(), load_side_only);
    when(plan.load_switch && has_wire_note(plan, WireNote::capacitor) &&
             !has_wire_note(plan, WireNote::capacitor_common),
         fourth_lead_on_a_dual_capacitor);
    when(has_wire_note(plan, WireNote::third_line_conductor), reverse_by_this_motors_leads);
    when(stops_in_defrost(facts, plan), fan_stops_in_defrost);
    if (plan.method == WiringMethod::plug_for_plug) return list;
    when(has_wire_note(plan, WireNote::earth) && !plan.line_taps, earth_g_is_not_fan_g);
    when(has_wire_note(plan, WireNote::same_transformer), common_from_the_same_transformer);
    when(has_wire_note(plan, WireNote::run_signal), one_relay_group_only);
    when(has_wire_note(plan, WireNote::parked), parked_leads_are_live);
    when(provisional(plan, false), leads_are_provisional);
    when(provisional(plan, true), fuel_heat_lead_needs_a_rise);
    when(plan.line_signals && !plan.line_taps, line_coils_and_24v_contacts);
    when(!plan.line_signals && plan.line_taps && !plan.relays.empty(), control_coils_and_line_contacts);
    when(plan.tap_rule == TapRule::not_stated && !plan.line_taps, tap_rule_not_stated);
    when(plan.tap_rule == TapRule::highest_tap_wins && two_live_somewhere(plan), verify_the_priority);
    when(plan.condition == WiringCondition::one_board_output_at_a_time, one_board_output_at_a_time);
    when(plan.condition == WiringCondition::blower_runs_while_elements_are_hot, elements_hold_the_blower);
    if (const auto without = without_a_tap(part, plan)) list.push_back(*without);
    const bool zones = job.controls.zone_panel && *job.controls.zone_panel;
    when(zones && !job.controls.least_zone, zone_air_not_known);
    when(!plan.short_of_air.empty(), zone_static_over_the_limit);
    when(facts.heat.burner.is(true) && !plan.load_switch, the_board_keeps_the_blower);
    const bool heat_pump = facts.heat.kind == HeatKind::heat_pump;
    when(heat_pump && !plan.signals.empty() && !plan.load_switch, compressor_heat_at_the_cooling_tap);
    when(some_fault(plan, [](const FaultRow& f) { return f.two_taps; }) &&
             plan.tap_rule != TapRule::highest_tap_wins,
         fault_makes_two_taps_live);
    const auto lost = [](const FaultRow& f) { return f.kind == FaultKind::lost_common; };
    when(some_fault(plan, [&](const FaultRow& f) { return f.back_feed && !lost(f); }), fault_back_feeds);
    when(some_fault(plan, [](const FaultRow& f) { return f.heat_without_air(); }), fault_heats_without_air);
    when(some_fault(plan, [&](const FaultRow& f) { return f.back_feed && lost(f); }),
         lost_common_feeds_calls);
    const Motion motion = motion_of(plan);
    when(motion.ties_calls, moving_relays_tie_calls);
    when(motion.two_taps_live, moving_relays_make_two_taps_live);
    when(!plan.line_signals && !plan.signals.empty(), leaking_thermostat_outputs);
    when(runs_on(part), runs_on_after_the_call);
    when(plan.power.judgement == PowerJudgement::over_plan, transformer_above_its_planned_load);
    when(plan.power.judgement == PowerJudgement::over_rating, transformer_overloaded);
    return list;
}

/// Those that only a plan knows; commissioning has the rest.
std::vector<SiteCheck> checks_of_plan(const Facts& facts, const WiringPlan& plan) {
    using enum SiteCheck;
    std::vector<SiteCheck> list;
    const auto when = [&](bool true_here, SiteCheck checkpoint) {
        if (true_here) list.push_back(checkpoint);
    };
    when(std::any_of(plan.settings.begin(), plan.settings.end(),
                     [](const Setting& s) { return is_for_the_supply(s.what); }),
         settings_match_the_supply);
    when(!plan.signals.empty() && !plan.line_taps, tap_volts_with_each_call);
    when(plan.signals.size() > 1, one_tap_live_in_each_call);
    when(stops_in_defrost(facts, plan), fan_stops_in_a_forced_defrost);
    return list;
}

/// Nothing of it is left that somebody might land.
WiringPlan doubted(const WiringPlan& plan) {
    WiringPlan none;
    none.refusal = WiringRefusal::electrical_check_disagrees;
    none.method = plan.method;
    none.tap_rule = plan.tap_rule;
    none.signals = plan.signals;
    none.alternatives = plan.alternatives;
    return none;
}

}  // namespace

void annotate(WiringPlan& plan, const FailedUnit& job, const Facts& facts, const WiredPart& wired,
              const Limits& limits) {
    const Part& part = wired.pins();
    for (WiringPlan& other : plan.alternatives) annotate(other, job, facts, wired, limits);
    if (!plan.possible) return;
    if (plan.method != WiringMethod::plug_for_plug) {
        const ElectricalLoads loads = loads_of(plan, facts, part, limits);
        if (!disagreements(plan, loads).empty()) {
            plan = doubted(plan);
            return;
        }
        plan.faults = single_faults(plan, loads);
    }
    plan.cautions = cautions_of(job, facts, part, plan);
    plan.checks = checks_of(job, facts, &wired.itself, checks_of_plan(facts, plan));
}

}  // namespace endbell::inline wiring
