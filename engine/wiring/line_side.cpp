#include "engine/wiring/line_side.hpp"

#include <fmt/format.h>

#include "engine/base/ensure.hpp"
#include "engine/facts/rating.hpp"
#include "engine/model/limit.hpp"
#include "engine/wiring/feed.hpp"

namespace endbell::inline wiring {

namespace {

void wire_terminal(const Part& part, std::string_view function, NetPlace::Kind from, WireNote note,
                   WiringPlan& plan) {
    if (const PartTerminal* t = terminal(part, function)) {
        plan.wires.push_back({{from}, NetPlace::motor(t->label), note});
    } else {
        plan.lacking.push_back(fmt::format("terminals.{}", function));
    }
}

/// What is set on a motor of more than one rating. REQUIRES: it has a selector.
SettingKind setting_of(VoltageSelection selection) {
    ensure(selection != VoltageSelection::none, "only a selector is set");
    return selection == VoltageSelection::jumper ? SettingKind::jumper
           : selection == VoltageSelection::plug ? SettingKind::plug
                                                 : SettingKind::leads;
}

/// The rating in use says how the motor must be set; a selector meant for another voltage must be out.
void add_voltage_setting(const Facts& facts, const Part& part, const Limits& limits, WiringPlan& plan) {
    const std::optional<Rating> chosen = rating_in_use(facts, part, limits);
    if (!chosen) return;
    if (chosen->selection != VoltageSelection::none) {
        plan.settings.push_back({setting_of(chosen->selection),
                                 fmt::format("set for {:g} V", facts.supply.at_motor()->in(volt))});
        return;
    }
    for (const Rating& r : part.motor->ratings) {
        if (r.selection == VoltageSelection::none) continue;
        plan.settings.push_back({setting_of(r.selection), "removed"});
        return;
    }
}

void add_capacitor(const Facts& facts, const Motor& motor, WiringPlan& plan) {
    const bool electronic = motor.family && is_electronic(*motor.family);
    if (electronic && facts.had_capacitor) plan.settings.push_back({SettingKind::capacitor, "removed"});
    if (electronic || !motor.capacitor) return;
    std::string value = fmt::format("{:g} uF", motor.capacitor->in(microfarad));
    if (motor.capacitor_volts) value += fmt::format(" {:g} V", motor.capacitor_volts->in(volt));
    plan.settings.push_back({SettingKind::capacitor, value});
    for (const PartTerminal& t : motor.terminals) {
        if (t.function == "capacitor")
            plan.wires.push_back(
                {{NetPlace::Kind::capacitor}, NetPlace::motor(t.label), WireNote::capacitor});
    }
}

}  // namespace

void add_line_side(const Facts& facts, const Part& part, Conductors conductors, const Limits& limits,
                   WiringPlan& plan) {
    const Motor& motor = *part.motor;
    const bool both_live = conductors == Conductors::two_lines;
    // Speed leads are the line side of a motor whose leads carry its current.
    const bool leads_carry_current = motor.signal && *motor.signal == SignalClass::switched_line;
    if (!leads_carry_current)
        wire_terminal(part, "line", NetPlace::Kind::line_1, WireNote::constant_line_power, plan);
    wire_terminal(part, "second line", both_live ? NetPlace::Kind::line_2 : NetPlace::Kind::neutral,
                  both_live ? WireNote::second_line_conductor : WireNote::neutral, plan);
    wire_terminal(part, "earth", NetPlace::Kind::earth, WireNote::earth, plan);
    if (!plan.line_taps)
        wire_terminal(part, "common", NetPlace::Kind::common_24v, WireNote::same_transformer, plan);
    add_voltage_setting(facts, part, limits, plan);
    add_capacitor(facts, motor, plan);
}

}  // namespace endbell::inline wiring
