#include "engine/wiring/setup.hpp"

#include <algorithm>

namespace endbell::inline wiring {

namespace {

std::optional<SignalClass> signal_class(const Motor& motor) {
    if (const Derived<SignalClass> whole = signal_of(motor)) return *whole;
    if (!motor.taps.empty()) return motor.taps.front().signal;
    return std::nullopt;
}

Setup refuse(Setup setup, WiringRefusal why, std::vector<WiringRescue> rescues) {
    setup.refusal = why;
    setup.rescues = std::move(rescues);
    return setup;
}

Setup lack(Setup setup, WiringRefusal why, std::string key) {
    setup.refusal = why;
    setup.lacking.push_back(std::move(key));
    return setup;
}

bool is_heat_call(const ControlSignal& s) {
    return s.role == Role::heat1 || s.role == Role::heat2 || s.role == Role::emergency;
}

/// A board keeps the blower's timing, proving and limits of a burner. A thermostat that commands the blower itself
/// loses them, with its W on a tap or relay or without.
bool burner_without_its_board(const FailedUnit& job, const Facts& facts, const Setup& setup) {
    return !setup.gated && facts.heat.burner.is(true) && job.controls.source &&
           *job.controls.source == ControlSource::thermostat;
}

bool calls_for_heat(Call call) {
    return call == Call::heat_low || call == Call::heat_high || call == Call::electric_heat;
}

/// A burner, or elements, that no state of these signals calls: their air would be left to chance. Elements beside a
/// heat pump are known by their power; its compressor heats on the cooling calls.
bool heat_without_a_wire(const Heat& heat, const Setup& setup) {
    if (!heat.burner.is(true) && !heat.elements.is(true)) return false;
    return std::none_of(setup.controls.demands.begin(), setup.controls.demands.end(), [](const Demand& d) {
        return std::any_of(d.calls.begin(), d.calls.end(), calls_for_heat);
    });
}

/// Lands the motor's conductors, or says why not: two land today, and the third of a three-phase motor has no place. The old
/// plate alone lands none.
Setup land_conductors(Setup setup, const Facts& facts, const Motor& motor) {
    const Derived<int> phases = phase_of(motor);
    if (phases.is(3))
        return lack(std::move(setup), WiringRefusal::fewer_than_three_line_wires, "terminals.third line");
    if (facts.supply.dead)
        return lack(std::move(setup), WiringRefusal::supply_not_known, "measured.line_volts");
    const bool known_supply = facts.supply.at_motor().has_value();
    if (!known_supply) return lack(std::move(setup), WiringRefusal::supply_not_known, "equipment.supply");
    const auto conductors = conductors_for(facts.supply, phases ? phases.value : facts.phase.value);
    if (!conductors || phases.disagree)
        return lack(std::move(setup), WiringRefusal::supply_not_known, "motors.phase");
    setup.conductors = *conductors;
    return setup;
}

NetPlace line_return(Conductors conductors) {
    return {conductors == Conductors::two_lines ? NetPlace::Kind::line_2 : NetPlace::Kind::neutral};
}

/// An outdoor fan hangs on the contactor's load side: one output, live while the compressor is called.
Controls contactor_controls() {
    Controls controls;
    controls.exclusive = true;
    controls.signals.push_back({"contactor T1", Role::output, Call::circulate});
    controls.demands = {{"off", 0, {}}, {"run", 1, {Call::circulate}}};
    return controls;
}

Setup contactor_setup(const Facts& facts, const Part& part) {
    using enum WiringRefusal;
    Setup setup = land_conductors({}, facts, *part.motor);
    if (setup.refusal) return setup;
    const std::optional<SignalClass> wants = signal_class(*part.motor);
    if (!wants) return lack(std::move(setup), signal_class_not_known, "motors.signal");
    if (*wants != SignalClass::switched_line) {
        return refuse(std::move(setup), contactor_feeds_line_leads_only, {WiringRescue::speed_leads});
    }
    setup.rule = TapRule::one_tap_only;
    setup.line_signals = setup.line_taps = setup.board_first = true;
    setup.controls = contactor_controls();
    setup.ends = {{NetPlace::Kind::line_1}, line_return(setup.conductors)};
    return setup;
}

void take_signals(const FailedUnit& job, const Facts& facts, const AirPlan& air, bool thermostat,
                  Setup& setup) {
    setup.controls = thermostat ? thermostat_controls(job, facts, air, setup.gated) : board_controls(job);
}

}  // namespace

std::vector<std::string> names_of(const std::vector<ControlSignal>& signals) {
    std::vector<std::string> names;
    names.reserve(signals.size());
    for (const ControlSignal& s : signals) names.push_back(s.name);
    return names;
}

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

Setup set_up(const FailedUnit& job, const Facts& facts, const Part& part, const AirPlan& air,
             bool use_run_signal) {
    using enum WiringRefusal;
    using enum WiringRescue;
    Setup setup;
    if (job.unit.load && *job.unit.load == Load::draft_inducer) {
        return refuse(std::move(setup), inducer_by_its_own_diagram, {assembly_and_its_diagram});
    }
    if (job.unit.load && *job.unit.load == Load::outdoor_fan) return contactor_setup(facts, part);
    const Motor& motor = *part.motor;
    if (phase_of(motor).is(3)) return land_conductors({}, facts, motor);
    const std::optional<SignalClass> wants = signal_class(motor);
    if (!wants) return lack(std::move(setup), signal_class_not_known, "motors.signal");
    if (!job.controls.source) return lack(std::move(setup), source_not_known, "controls.source");
    const ControlSource source = *job.controls.source;
    const bool serial = *wants == SignalClass::pulse || *wants == SignalClass::serial ||
                        source == ControlSource::pulse_or_serial;
    if (serial) return refuse(std::move(setup), serial_control, {equipment_makers_part});

    setup = land_conductors({}, facts, motor);
    if (setup.refusal) return setup;
    setup.line_taps = *wants != SignalClass::control_24v;
    setup.gated = use_run_signal && !setup.line_taps && has_run_signal(job, part);
    setup.line_signals = source == ControlSource::board_line && !setup.gated;
    setup.rule = motor.tap_rule.value_or(TapRule::not_stated);
    // Two live speed leads are two windings across the line at once: no sheet can allow it.
    if (*wants == SignalClass::switched_line) setup.rule = TapRule::one_tap_only;
    setup.ends.supply = {setup.line_taps ? NetPlace::Kind::line_1 : NetPlace::Kind::supply_24v};
    setup.ends.coil_return =
        setup.line_signals ? line_return(setup.conductors) : NetPlace{NetPlace::Kind::common_24v};
    // A signal feeds a tap only at the tap's own voltage; else it works coils alone.
    setup.sources = {true, setup.line_signals == setup.line_taps};
    setup.board_first = *wants == SignalClass::switched_line;
    take_signals(job, facts, air, source == ControlSource::thermostat || setup.gated, setup);
    setup.lacking = setup.controls.lacking;
    if (!setup.lacking.empty()) return refuse(std::move(setup), controls_not_known, {});
    if (setup.controls.signals.size() > most_signals)
        return refuse(std::move(setup), too_many_signals, {fewer_terminals});
    if (burner_without_its_board(job, facts, setup)) {
        const bool heats =
            std::any_of(setup.controls.signals.begin(), setup.controls.signals.end(), is_heat_call);
        return refuse(std::move(setup), heats ? heat_call_past_the_board : blower_off_its_board,
                      {board_blower_outputs, part_with_run_signal});
    }
    if (heat_without_a_wire(facts.heat, setup)) {
        return refuse(std::move(setup), heat_call_without_a_wire, {heat_terminal});
    }
    if (!setup.line_taps && job.controls.common_present && !*job.controls.common_present) {
        return refuse(std::move(setup), no_common_wire, {common_wire});
    }
    return setup;
}

}  // namespace endbell::inline wiring
