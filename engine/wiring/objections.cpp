#include "engine/wiring/objections.hpp"

#include <algorithm>

namespace endbell::inline wiring {

namespace {

bool is_heat_call(const ControlSignal& s) {
    return s.role == Role::heat1 || s.role == Role::heat2 || s.role == Role::emergency;
}

/// A board keeps the blower's timing, proving and limits of a burner. A thermostat that commands the blower itself
/// loses them, with its W on a tap or relay or without.
bool burner_without_its_board(const FailedUnit& job, const Facts& facts, const MotorFeed& feed) {
    return !feed.gated && facts.heat.burner.is(true) && job.controls.source &&
           *job.controls.source == ControlSource::thermostat;
}

/// A burner, or elements, that no state of these signals calls: their air would be left to chance. Elements beside a
/// heat pump are known by their power; its compressor heats on the cooling calls.
bool heat_without_a_wire(const Heat& heat, const Controls& controls) {
    if (!heat.burner.is(true) && !heat.elements.is(true)) return false;
    return std::none_of(controls.demands.begin(), controls.demands.end(), [](const Demand& d) {
        return std::any_of(d.calls.begin(), d.calls.end(), calls_for_heat);
    });
}

}  // namespace

std::optional<NoWiring> objection_to(const Controls& controls, const MotorFeed& feed, const FailedUnit& job,
                                     const Facts& facts) {
    using enum WiringRefusal;
    using enum WiringRescue;
    if (feed.sender == Sender::contactor) return std::nullopt;  // it has one output, and heats nothing
    if (!controls.lacking.empty()) return NoWiring{controls_not_known, {}, controls.lacking};
    if (controls.signals.size() > most_signals) return NoWiring{too_many_signals, {fewer_terminals}};
    if (feed.outdoors) return std::nullopt;  // it heats nothing
    if (burner_without_its_board(job, facts, feed)) {
        const bool heats = std::any_of(controls.signals.begin(), controls.signals.end(), is_heat_call);
        return NoWiring{heats ? heat_call_past_the_board : blower_off_its_board,
                        {board_blower_outputs, part_with_run_signal}};
    }
    if (heat_without_a_wire(facts.heat, controls)) return NoWiring{heat_call_without_a_wire, {heat_terminal}};
    if (!feed.line_taps && job.controls.common_present && !*job.controls.common_present)
        return NoWiring{no_common_wire, {common_wire}};
    return std::nullopt;
}

}  // namespace endbell::inline wiring
