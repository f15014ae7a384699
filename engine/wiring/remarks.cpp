#include "engine/wiring/remarks.hpp"

#include <algorithm>

namespace endbell {

namespace {

bool electronic(const Part& part) {
    return part.motor && part.motor->family && is_electronic(*part.motor->family);
}

bool has_wire_note(const WiringPlan& plan, std::string_view note) {
    return std::any_of(plan.wires.begin(), plan.wires.end(),
                       [&](const Wire& w) { return w.note_id == note; });
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

}  // namespace

std::vector<std::string_view> cautions_of(const Facts& facts, const Part& part, const WiringPlan& plan) {
    std::vector<std::string_view> list;
    const auto when = [&](bool true_here, std::string_view caution) {
        if (true_here) list.push_back(caution);
    };
    when(electronic(part), "line power always present");
    when(has_wire_note(plan, "second line conductor"), "both line conductors live");
    when(has_wire_note(plan, "earth") && !plan.line_taps, "earth G is not fan G");
    when(has_wire_note(plan, "same transformer"), "common from the same transformer");
    when(has_wire_note(plan, "run signal"), "outputs of one relay group only");
    when(has_wire_note(plan, "parked"), "parked leads are live");
    when(plan.line_signals && !plan.line_taps, "line coils and 24 V contacts apart");
    when(!plan.line_signals && plan.line_taps && !plan.relays.empty(), "24 V coils and line contacts apart");
    when(plan.tap_rule == TapRule::not_stated && !plan.line_taps, "tap rule not stated");
    when(plan.tap_rule == TapRule::highest_tap_wins && two_live_somewhere(plan),
         "verify the priority of the taps");
    when(!plan.condition.empty(), "one board output at a time");
    when(facts.heat.burner.is(true), "the board keeps the blower");
    const bool heat_pump = facts.heat.kind == HeatKind::heat_pump;
    when(heat_pump && !plan.signals.empty(), "compressor heat at the cooling tap");
    when(some_fault(plan, [](const FaultRow& f) { return f.two_taps; }) &&
             plan.tap_rule != TapRule::highest_tap_wins,
         "a fault can make two taps live");
    when(some_fault(plan, [](const FaultRow& f) { return f.back_feed; }), "a fault can back-feed");
    when(some_fault(plan, [](const FaultRow& f) { return f.heat_without_air; }),
         "a fault can heat without air");
    when(!plan.line_signals && !plan.signals.empty(), "leaking thermostat outputs");
    when(runs_on(part), "runs on after the call");
    when(plan.power.judgement == "over plan", "transformer above its planned load");
    when(plan.power.judgement == "over rating", "transformer overloaded");
    return list;
}

std::vector<std::string_view> checks_of(const FailedUnit& job, const Facts& facts, const Part& part, const WiringPlan& plan) {
    std::vector<std::string_view> list{"lock out", "absence of voltage"};
    const auto when = [&](bool true_here, std::string_view checkpoint) {
        if (true_here) list.push_back(checkpoint);
    };
    const bool old_electronics = facts.family && is_electronic(*facts.family);
    when(electronic(part) || old_electronics, "wait five minutes");
    when(facts.had_capacitor, "discharge the capacitor");
    when(true, "earth continuous");
    when(!plan.settings.empty(), "settings match the supply");
    when(true, "plugs in before power");
    when(electronic(part), "line at the motor without a call");
    when(!plan.signals.empty() && !plan.line_taps, "tap volts with each call");
    when(plan.signals.size() > 1, "one tap live in each call");
    when(true, "rotation");
    when(true, "amps at or below plate");
    const bool blower = !job.unit.load || *job.unit.load == Load::indoor_blower;
    when(blower, "static and airflow");
    when(plan.must_run != 0 || (blower && facts.heat.burner.is(true)), "temperature rise");
    when(facts.heat.burner.is(true), "combustion and limits");
    return list;
}

}  // namespace endbell
