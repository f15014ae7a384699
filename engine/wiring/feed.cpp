#include "engine/wiring/feed.hpp"

#include <algorithm>

#include "engine/facts/rating.hpp"

namespace endbell::inline wiring {

namespace {

std::optional<SignalClass> signal_class(const Motor& motor) {
    if (const DerivedFact<SignalClass> whole = signal_of(motor)) return *whole;
    if (!motor.taps.empty()) return motor.taps.front().signal;
    return std::nullopt;
}

MotorFeed refuse(MotorFeed feed, WiringRefusal why, std::vector<WiringRescue> rescues) {
    feed.refused = NoWiring{why, std::move(rescues), {}};
    return feed;
}

MotorFeed lack(MotorFeed feed, WiringRefusal why, std::string key) {
    feed.refused = NoWiring{why, {}, {std::move(key)}};
    return feed;
}

/// Lands the motor's conductors, or says why not: two land today, and the third of a three-phase motor has no place. The old
/// plate alone lands none.
MotorFeed land_conductors(MotorFeed feed, const Facts& facts, const Motor& motor) {
    const DerivedFact<int> phases = phase_of(motor);
    if (phases.is(3))
        return lack(std::move(feed), WiringRefusal::fewer_than_three_line_wires, "terminals.third line");
    if (facts.supply.dead)
        return lack(std::move(feed), WiringRefusal::supply_not_known, "measured.line_volts");
    const bool known_supply = facts.supply.at_motor().has_value();
    if (!known_supply) return lack(std::move(feed), WiringRefusal::supply_not_known, "equipment.supply");
    const auto conductors = conductors_for(facts.supply, phases ? phases.value : facts.phase.value);
    if (!conductors || phases.disagree)
        return lack(std::move(feed), WiringRefusal::supply_not_known, "motors.phase");
    feed.conductors = *conductors;
    return feed;
}

NetPlace line_return(Conductors conductors) {
    return {conductors == Conductors::two_lines ? NetPlace::Kind::line_2 : NetPlace::Kind::neutral};
}

MotorFeed contactor_feed(const Facts& facts, const Part& part) {
    using enum WiringRefusal;
    MotorFeed feed = land_conductors({}, facts, *part.motor);
    if (feed.refused) return feed;
    const std::optional<SignalClass> wants = signal_class(*part.motor);
    if (!wants) return lack(std::move(feed), signal_class_not_known, "motors.signal");
    if (*wants != SignalClass::switched_line) {
        return refuse(std::move(feed), contactor_feeds_line_leads_only, {WiringRescue::speed_leads});
    }
    feed.rule = TapRule::one_tap_only;
    feed.line_signals = feed.line_taps = feed.board_first = true;
    feed.sender = Sender::contactor;
    feed.ends = {{NetPlace::Kind::line_1}, line_return(feed.conductors)};
    return feed;
}

/// What feeds a motor that a thermostat or a board commands, once its conductors have landed.
void choose_voltages(MotorFeed& feed, const FailedUnit& job, const Part& part, SignalClass wants,
                     bool use_run_signal) {
    const ControlSource source = *job.controls.source;
    feed.line_taps = wants != SignalClass::control_24v;
    feed.gated = use_run_signal && !feed.line_taps && has_run_signal(job, part);
    feed.line_signals = source == ControlSource::board_line && !feed.gated;
    feed.rule = part.motor->tap_rule.value_or(TapRule::not_stated);
    // Two live speed leads are two windings across the line at once: no sheet can allow it.
    if (wants == SignalClass::switched_line) feed.rule = TapRule::one_tap_only;
    feed.ends.supply = {feed.line_taps ? NetPlace::Kind::line_1 : NetPlace::Kind::supply_24v};
    feed.ends.coil_return =
        feed.line_signals ? line_return(feed.conductors) : NetPlace{NetPlace::Kind::common_24v};
    // A signal feeds a tap only at the tap's own voltage; else it works coils alone.
    feed.sources = {true, feed.line_signals == feed.line_taps};
    feed.board_first = wants == SignalClass::switched_line;
    // Where the board's run signal decides when, the thermostat's letters are left to decide how fast.
    feed.sender = source == ControlSource::thermostat || feed.gated ? Sender::thermostat : Sender::board;
}

}  // namespace

const PartTerminal* terminal(const Part& part, std::string_view function) {
    const auto& list = part.module ? part.module->terminals : part.motor->terminals;
    const auto found =
        std::find_if(list.begin(), list.end(), [&](const PartTerminal& t) { return t.function == function; });
    return found == list.end() ? nullptr : &*found;
}

bool has_run_signal(const FailedUnit& job, const Part& part) {
    return terminal(part, "run signal") != nullptr && job.controls.run_signal_available &&
           *job.controls.run_signal_available;
}

MotorFeed feed_of(const FailedUnit& job, const Facts& facts, const Part& part, bool use_run_signal) {
    using enum WiringRefusal;
    using enum WiringRescue;
    if (job.unit.load && *job.unit.load == Load::draft_inducer)
        return refuse({}, inducer_by_its_own_diagram, {assembly_and_its_diagram});
    if (job.unit.load && *job.unit.load == Load::outdoor_fan) return contactor_feed(facts, part);
    const Motor& motor = *part.motor;
    if (phase_of(motor).is(3)) return land_conductors({}, facts, motor);
    const std::optional<SignalClass> wants = signal_class(motor);
    if (!wants) return lack({}, signal_class_not_known, "motors.signal");
    if (!job.controls.source) return lack({}, source_not_known, "controls.source");
    const bool serial = *wants == SignalClass::pulse || *wants == SignalClass::serial ||
                        *job.controls.source == ControlSource::pulse_or_serial;
    if (serial) return refuse({}, serial_control, {equipment_makers_part});
    MotorFeed feed = land_conductors({}, facts, motor);
    if (!feed.refused) choose_voltages(feed, job, part, *wants, use_run_signal);
    return feed;
}

}  // namespace endbell::inline wiring
