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

/// Lands the motor's conductors, or says why not. The old plate alone lands none. `phase_key`: what says how many phases the
/// part has.
MotorFeed land_conductors(MotorFeed feed, const Facts& facts, const DerivedFact<int>& phases,
                          const char* phase_key) {
    using enum WiringRefusal;
    const Supply& supply = facts.supply;
    if (supply.dead) return lack(std::move(feed), supply_not_known, "measured.line_volts");
    if (!supply.at_motor()) return lack(std::move(feed), supply_not_known, "equipment.supply");
    if (supply.on_the_high_leg()) return lack(std::move(feed), load_on_the_high_leg, "measured.line_volts");
    if (phases.is(3) && !has_three_lines(facts))
        return lack(std::move(feed), fewer_than_three_line_wires, "equipment.supply");
    const auto conductors = conductors_for(supply, phases ? phases.value : facts.phase.value);
    if (!conductors || phases.disagree) return lack(std::move(feed), supply_not_known, phase_key);
    feed.conductors = *conductors;
    return feed;
}

MotorFeed land_conductors(MotorFeed feed, const Facts& facts, const Motor& motor) {
    return land_conductors(std::move(feed), facts, phase_of(motor), "motors.phase");
}

NetPlace line_return(const MotorFeed& feed) {
    if (feed.conductors == Conductors::line_and_neutral) return {NetPlace::Kind::neutral};
    return {feed.load_switch ? NetPlace::Kind::load_2 : NetPlace::Kind::line_2};
}

std::optional<NoWiring> without_line_leads(const Motor& motor) {
    const std::optional<SignalClass> wants = signal_class(motor);
    if (!wants) return NoWiring{WiringRefusal::signal_class_not_known, {}, {"motors.signal"}};
    if (*wants == SignalClass::switched_line) return std::nullopt;
    return NoWiring{WiringRefusal::contactor_feeds_line_leads_only, {WiringRescue::speed_leads}, {}};
}

/// A motor whose line current is switched as a whole, at `load_switch` or by an output beside it.
MotorFeed switched_feed(MotorFeed feed, const Facts& facts, const Motor& motor) {
    feed = land_conductors(std::move(feed), facts, motor);
    if (feed.refused) return feed;
    if (auto refused = without_line_leads(motor)) {
        feed.refused = std::move(refused);
        return feed;
    }
    // Each speed of a three-phase motor has three leads of its own, and a catalog lists one lead a tap.
    if (feed.conductors == Conductors::three_lines && motor.taps.size() > 1)
        return lack(std::move(feed), WiringRefusal::fewer_than_three_line_wires, "terminals.third line");
    feed.rule = TapRule::one_tap_only;
    feed.line_signals = feed.line_taps = feed.board_first = true;
    feed.ends = {{NetPlace::Kind::line_1}, line_return(feed)};
    feed.sources.supply = false;  // L1 stays live with the contactor open
    return feed;
}

/// A three-phase motor hangs on its starter, whose coil stays with whatever commands it today.
MotorFeed starter_feed(const Facts& facts, const Motor& motor) {
    MotorFeed feed;
    feed.sender = Sender::contactor;
    feed.load_switch = LoadSwitch::starter;
    feed.switch_output = "starter T1";
    return switched_feed(std::move(feed), facts, motor);
}

/// Where nobody has said what switches the fan: the contactor, unless the unit may have a defrost.
std::optional<FanCommand> fan_command(const FailedUnit& job, const Facts& facts, MotorFeed& feed) {
    if (job.controls.fan_command) return *job.controls.fan_command;
    if (!facts.heat.compressor.is(false)) return std::nullopt;
    feed.assumed.push_back("controls.fan_command");
    return FanCommand::contactor;
}

/// What a fan hangs on: the load side of the contactor, a relay or board output beside it, or a contactor of its own.
void hang_fan(MotorFeed& feed, FanCommand command, bool three_phase, bool several_speeds) {
    feed.load_switch =
        three_phase && command != FanCommand::contactor ? LoadSwitch::fan_contactor : LoadSwitch::contactor;
    const bool by_board = command == FanCommand::board && !three_phase;
    feed.sender = by_board && several_speeds ? Sender::board : Sender::contactor;
    feed.switch_output = by_board ? "board FAN"
                         : command == FanCommand::fan_relay && !three_phase
                             ? "fan relay NO"
                             : std::string(word(*feed.load_switch)) + " T1";
}

/// An outdoor fan. One that a defrost must stop never hangs on the compressor's contactor alone.
MotorFeed outdoor_feed(const FailedUnit& job, const Facts& facts, const Motor& motor) {
    using enum WiringRefusal;
    MotorFeed feed;
    feed.outdoors = true;
    MotorFeed landed = switched_feed(feed, facts, motor);
    if (landed.refused) return landed;
    const std::optional<FanCommand> command = fan_command(job, facts, feed);
    if (!command) return lack(std::move(feed), controls_not_known, "controls.fan_command");
    if (*command == FanCommand::contactor && !facts.heat.compressor)
        return lack(std::move(feed), controls_not_known, "controls.heat");
    if (*command == FanCommand::contactor && facts.heat.compressor.is(true))
        return refuse(std::move(feed), fan_runs_in_defrost, {WiringRescue::fan_output_of_the_defrost_board});
    hang_fan(feed, *command, landed.conductors == Conductors::three_lines, motor.taps.size() > 1);
    return switched_feed(std::move(feed), facts, motor);
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
    feed.ends.coil_return = feed.line_signals ? line_return(feed) : NetPlace{NetPlace::Kind::common_24v};
    // A signal feeds a tap only at the tap's own voltage; else it works coils alone.
    feed.sources = {true, feed.line_signals == feed.line_taps};
    feed.board_first = wants == SignalClass::switched_line;
    // Where the board's run signal decides when, the thermostat's letters are left to decide how fast.
    feed.sender = source == ControlSource::thermostat || feed.gated ? Sender::thermostat : Sender::board;
}

/// Line power is there all the time, and no run signal says when.
bool runs_by_line_power_alone(const MotorFeed& feed, const Part& part) {
    return !feed.board_first && terminal(part, "run signal") == nullptr &&
           part.motor->default_tap.value_or(0) > 0;
}

}  // namespace

MotorFeed line_feed(const Facts& facts, const Part& part) {
    if (part.motor) return land_conductors({}, facts, *part.motor);
    return land_conductors({}, facts, facts.phase, "plate.phase");
}

const std::vector<PartTerminal>& terminals_of(const Part& part) {
    return part.module ? part.module->terminals : part.motor->terminals;
}

const PartTerminal* terminal(const Part& part, std::string_view function) {
    const auto& list = terminals_of(part);
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
    const Motor& motor = *part.motor;
    if (job.unit.load && *job.unit.load == Load::outdoor_fan) return outdoor_feed(job, facts, motor);
    if (phase_of(motor).is(3)) return starter_feed(facts, motor);
    const std::optional<SignalClass> wants = signal_class(motor);
    if (!wants) return lack({}, signal_class_not_known, "motors.signal");
    if (!job.controls.source) return lack({}, source_not_known, "controls.source");
    const bool serial = *wants == SignalClass::pulse || *wants == SignalClass::serial ||
                        *job.controls.source == ControlSource::pulse_or_serial;
    if (serial) return refuse({}, serial_control, {equipment_makers_part});
    MotorFeed feed = land_conductors({}, facts, motor);
    if (!feed.refused) choose_voltages(feed, job, part, *wants, use_run_signal);
    if (!feed.refused && runs_by_line_power_alone(feed, part))
        return refuse(std::move(feed), runs_without_a_call, {part_that_stops});
    return feed;
}

}  // namespace endbell::inline wiring
