#include "engine/wiring/line_side.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "engine/facts/rating.hpp"

namespace endbell::inline wiring {

namespace {

constexpr std::string_view third_line = "third line";
constexpr std::string_view capacitor = "capacitor";

/// Where a catalog states the terminal.
std::string key_of(std::string_view function) {
    return fmt::format("terminals.{}", function);
}

void wire_terminal(const Part& part, std::string_view function, NetPlace::Kind from, WireNote note,
                   WiringPlan& plan) {
    if (const PartTerminal* t = terminal(part, function)) {
        plan.wires.push_back({{from}, NetPlace::motor(t->label), note});
    } else {
        plan.lacking.push_back(key_of(function));
    }
}

/// The shell is earthed whether or not the catalog lists the terminal for it.
void wire_earth(const Part& part, WiringPlan& plan) {
    const PartTerminal* listed = terminal(part, "earth");
    plan.wires.push_back({{NetPlace::Kind::earth},
                          NetPlace::motor(listed != nullptr ? listed->label : "shell"),
                          WireNote::earth});
}

void wire_returns(const Part& part, const MotorFeed& feed, WiringPlan& plan) {
    using Kind = NetPlace::Kind;
    switch (feed.conductors) {
        case Conductors::line_and_neutral:
            wire_terminal(part, "second line", Kind::neutral, WireNote::neutral, plan);
            break;
        case Conductors::two_lines:
        case Conductors::three_lines:
            wire_terminal(part, "second line", feed.load_switch ? Kind::load_2 : Kind::line_2,
                          WireNote::second_line_conductor, plan);
            break;
    }
    if (feed.conductors == Conductors::three_lines)
        wire_terminal(part, third_line, Kind::load_3, WireNote::third_line_conductor, plan);
}

/// Both leads go to the two ends of a capacitor of its own. A motor with one has the other end at its run lead: that end and
/// the run lead share one leg, the one that is switched (common practice). Of several run leads none is chosen.
void wire_capacitor(const Motor& motor, WiringPlan& plan) {
    const bool electronic = motor.family && is_electronic(*motor.family);
    if (electronic || !motor.capacitor) return;
    std::vector<NetPlace> leads;
    for (const PartTerminal& t : motor.terminals) {
        if (t.function == capacitor) leads.push_back(NetPlace::motor(t.label));
    }
    const bool one_run_lead = plan.taps.size() == 1 && plan.taps.front().from.size() == 1;
    if (leads.empty() || leads.size() > 2 || (leads.size() == 1 && !one_run_lead)) {
        plan.lacking.push_back(key_of(capacitor));
        return;
    }
    plan.wires.push_back({{NetPlace::Kind::capacitor}, leads.front(), WireNote::capacitor});
    if (leads.size() == 2) {
        plan.wires.push_back({{NetPlace::Kind::capacitor_common}, leads.back(), WireNote::capacitor});
    } else {
        plan.wires.push_back(
            {plan.taps.front().from.front(), {NetPlace::Kind::capacitor_common}, WireNote::capacitor_common});
    }
}

/// The leads that carry the motor's current need a label to land by; a tap that takes a signal has its number printed.
void name_unlisted_leads(WiringPlan& plan) {
    const bool unnamed = std::any_of(plan.taps.begin(), plan.taps.end(), [](const TapRow& row) {
        return !row.from.empty() && row.terminal.empty();
    });
    if (unnamed) plan.lacking.push_back(plan.taps.size() == 1 ? "terminals.line" : "terminals.tap 1");
}

}  // namespace

void add_line_side(const Part& part, const MotorFeed& feed, WiringPlan& plan) {
    const Motor& motor = *part.motor;
    // Speed leads are the line side of a motor whose leads carry its current.
    if (signal_of(motor).is(SignalClass::switched_line)) {
        name_unlisted_leads(plan);
    } else {
        wire_terminal(part, "line", NetPlace::Kind::line_1, WireNote::constant_line_power, plan);
    }
    wire_returns(part, feed, plan);
    wire_earth(part, plan);
    if (!plan.line_taps)
        wire_terminal(part, "common", NetPlace::Kind::common_24v, WireNote::same_transformer, plan);
    wire_capacitor(motor, plan);
}

bool lands_twice(const WiringPlan& plan) {
    for (std::size_t i = 0; i < plan.wires.size(); ++i) {
        const Wire& one = plan.wires[i];
        const bool terminal = one.to.kind == NetPlace::Kind::motor || one.to.kind == NetPlace::Kind::pin;
        // Board outputs meet on the lead of the run signal.
        if (!terminal || one.note == WireNote::run_signal || one.note == WireNote::jumper) continue;
        for (std::size_t k = i + 1; k < plan.wires.size(); ++k) {
            if (plan.wires[k].to == one.to && plan.wires[k].note != WireNote::jumper) return true;
        }
    }
    return false;
}

std::optional<NoWiring> unlanded(const WiringPlan& plan) {
    // A capacitor lead lands by the motor's own diagram, and no line conductor waits for it.
    std::vector<std::string> missing;
    for (const std::string& key : plan.lacking) {
        if (key != key_of(capacitor)) missing.push_back(key);
    }
    const bool third = std::find(missing.begin(), missing.end(), key_of(third_line)) != missing.end();
    if (missing.empty() && lands_twice(plan)) missing.push_back("terminals.label");
    if (missing.empty()) return std::nullopt;
    return NoWiring{third ? WiringRefusal::fewer_than_three_line_wires : WiringRefusal::terminals_not_listed,
                    {},
                    missing};
}

}  // namespace endbell::inline wiring
