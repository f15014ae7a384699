#include "engine/wiring/objections.hpp"

#include <algorithm>

#include "engine/wiring/needed_calls.hpp"

namespace endbell::inline wiring {

namespace {

bool is_heat_call(const ControlSignal& s) {
    return s.role == Role::heat1 || s.role == Role::heat2 || s.role == Role::heat3 ||
           s.role == Role::emergency;
}

/// A board keeps the blower's timing, proving and limits of a burner. A thermostat that commands the blower itself
/// loses them, with its W on a tap or relay or without.
bool burner_without_its_board(const FailedUnit& job, const Facts& facts, const MotorFeed& feed) {
    return !feed.gated && facts.heat.burner.is(true) && job.controls.source &&
           *job.controls.source == ControlSource::thermostat;
}

/// A state of the job's own that heats, or cools, and wants the motor off.
bool still_while_heating(const Controls& controls) {
    return std::any_of(controls.demands.begin(), controls.demands.end(), [&](const Demand& d) {
        return d.calls.empty() && (d.live & controls.heats.all()) != 0;
    });
}

/// Whether elements stand beside the heat pump decides what a heat call is, and whether one is missing.
bool elements_not_known(const Heat& heat, const Controls& controls) {
    return heat.kind == HeatKind::heat_pump && !heat.elements && controls.assumed.empty();
}

std::optional<NoWiring> not_known(const Controls& controls, const Facts& facts, const MotorFeed& feed) {
    using enum WiringRefusal;
    using enum WiringRescue;
    if (!controls.not_known.empty())
        return NoWiring{
            terminal_not_known, {meaning_of_the_terminal}, {"controls.terminals"}, {}, controls.not_known};
    if (!controls.lacking.empty()) {
        NoWiring none{controls_not_known, {}, controls.lacking};
        // Thermostat letters alone, on a furnace: what is asked for are the board's own outputs.
        if (feed.sender != Sender::board || controls.idle.empty()) return none;
        none.rescues = {board_blower_outputs};
        for (const IdleTerminal& t : controls.idle) none.terminals.push_back(t.name);
        return none;
    }
    if (!feed.outdoors && elements_not_known(facts.heat, controls))
        return NoWiring{controls_not_known, {}, {"equipment.electric_heat"}};
    return std::nullopt;
}

std::optional<NoWiring> without_wire_or_state(const Controls& controls, const MotorFeed& feed,
                                              const FailedUnit& job, const Facts& facts) {
    using enum WiringRefusal;
    using enum WiringRescue;
    if (auto calls = calls_without_a_wire(job, facts.heat, controls, feed); !calls.empty())
        return NoWiring{call_without_a_wire, {terminal_of_the_call}, {}, std::move(calls)};
    if (auto names = signals_without_a_state(controls); !names.empty())
        return NoWiring{terminal_without_a_state, {meaning_of_the_terminal}, {}, {}, std::move(names)};
    if (still_while_heating(controls)) return NoWiring{motor_still_while_heating, {meaning_of_the_terminal}};
    return std::nullopt;
}

}  // namespace

std::optional<NoWiring> objection_to(const Controls& controls, const MotorFeed& feed, const FailedUnit& job,
                                     const Facts& facts) {
    using enum WiringRefusal;
    using enum WiringRescue;
    if (feed.sender == Sender::contactor) return std::nullopt;  // it has one output, and heats nothing
    if (auto none = not_known(controls, facts, feed)) return none;
    if (controls.signals.size() > most_signals) return NoWiring{too_many_signals, {fewer_terminals}};
    if (feed.outdoors) return std::nullopt;  // it heats nothing
    if (burner_without_its_board(job, facts, feed)) {
        const bool heats = std::any_of(controls.signals.begin(), controls.signals.end(), is_heat_call);
        return NoWiring{heats ? heat_call_past_the_board : blower_off_its_board,
                        {board_blower_outputs, part_with_run_signal}};
    }
    if (auto none = without_wire_or_state(controls, feed, job, facts)) return none;
    if (!feed.line_taps && job.controls.common_present && !*job.controls.common_present)
        return NoWiring{no_common_wire, {common_wire}};
    return std::nullopt;
}

}  // namespace endbell::inline wiring
