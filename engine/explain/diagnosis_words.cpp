#include "engine/explain/diagnosis_words.hpp"

#include <array>

namespace endbell::inline explain {

namespace {

// As a table names them, in its first column.
constexpr auto test_names = std::to_array<English<Test>>({
    {Test::symptom, "symptom"},
    {Test::line_volts, "line volts"},
    {Test::motor_volts, "motor's volts"},
    {Test::legs, "three legs"},
    {Test::fuse_drop, "drop across fuse"},
    {Test::contactor_drop, "drop across pole"},
    {Test::control_volts, "control volts"},
    {Test::live_taps, "live taps"},
    {Test::thermostat, "thermostat"},
    {Test::float_switch, "float switch"},
    {Test::door_switch, "door switch"},
    {Test::control_fuse, "low-voltage fuse"},
    {Test::primary, "transformer primary"},
    {Test::transformer, "R to C"},
    {Test::board_output, "board output"},
    {Test::spins_free, "spins free"},
    {Test::wheel_loose, "wheel loose"},
    {Test::shaft_play, "shaft play"},
    {Test::winding_to_shell, "winding to shell"},
    {Test::winding_open, "winding open"},
    {Test::winding_most, "winding ohms"},
    {Test::winding_balance, "winding balance"},
    {Test::winding_spread, "winding spread"},
    {Test::signs, "signs"},
    {Test::under_water, "under water"},
    {Test::capacitor, "capacitor"},
    {Test::static_total, "static total"},
    {Test::filter_drop, "filter drop"},
    {Test::coil_drop, "coil drop"},
    {Test::iced, "ice"},
    {Test::wheel, "wheel blades"},
    {Test::belt, "belt"},
    {Test::burner_input, "burner input"},
    {Test::rise, "temperature rise"},
    {Test::airflow, "airflow per ton"},
    {Test::amps, "running amps"},
    {Test::plate_agrees, "plate against unit"},
    {Test::family, "motor family"},
    {Test::plate_figure, "plate figure"},
    {Test::supply_system, "supply system"},
    {Test::changed_before, "changed before"},
    {Test::read_again, "read again"},
});

constexpr auto fault_titles = std::to_array<English<Fault>>({
    {Fault::motor, "Fault: motor"},
    {Fault::module, "Fault: module"},
    {Fault::motor_and_module, "Fault: motor and module"},
    {Fault::capacitor, "Fault: capacitor"},
    {Fault::supply, "Fault: supply"},
    {Fault::control_signal, "Fault: control signal"},
    {Fault::airflow, "Fault: airflow"},
    {Fault::wheel, "Fault: wheel"},
    {Fault::rotation, "Fault: rotation"},
    {Fault::flooded, "Flooded: no reading is judged"},
    {Fault::none, "No fault found"},
    {Fault::not_shown, "Not shown yet by the readings given"},
});

// Why nothing is replaced.
constexpr auto keep_sentences = std::to_array<English<Fault>>({
    {Fault::capacitor, "Do not replace it yet: the readings put the fault elsewhere (capacitor)."},
    {Fault::supply, "Do not replace it yet: the readings put the fault elsewhere (supply)."},
    {Fault::control_signal, "Do not replace it yet: the readings put the fault elsewhere (control signal)."},
    {Fault::airflow, "Do not replace it yet: the readings put the fault elsewhere (airflow)."},
    {Fault::wheel, "Do not replace it yet: the readings put the fault elsewhere (wheel)."},
    {Fault::rotation, "Do not replace it: nothing but its way round is wrong, and that is set."},
    {Fault::flooded,
     "Do not replace the motor by itself: what stood in water is not judged by readings. Never light or "
     "power a "
     "unit that stood in water: flooded gas and electric controls are replaced, and the unit is inspected "
     "first, by "
     "its own instructions."},
    {Fault::none, "Do not replace it yet: the readings show no fault."},
});

constexpr auto cause_names = std::to_array<English<Cause>>({
    {Cause::high_static, "high static pressure"},
    {Cause::loaded_filter, "loaded filter"},
    {Cause::too_little_air, "too little air"},
    {Cause::low_supply, "low supply voltage"},
    {Cause::high_supply, "high supply voltage"},
    {Cause::two_taps_live, "two taps live"},
    {Cause::lost_leg, "lost or uneven leg"},
    {Cause::water, "water"},
    {Cause::failed_capacitor, "failed capacitor"},
    {Cause::overload, "overload"},
    {Cause::wrong_motor, "wrong motor fitted before"},
    {Cause::not_found, "not found"},
});

// What to do about each. Source: common practice, as docs/explanation/diagnosis.md names it test by test.
constexpr auto cure_sentences = std::to_array<English<Cause>>({
    {Cause::high_static,
     "Open the duct: filter, coil, closed registers, undersized return. Measure the total static again "
     "before the new part runs for good."},
    {Cause::loaded_filter, "Change the filter and measure its pressure drop again."},
    {Cause::too_little_air, "Find what holds the air back: filter, coil, wheel, duct. Then measure again."},
    {Cause::low_supply,
     "Find the voltage drop: connections, wire size, transformer. Measure at the motor, running."},
    {Cause::high_supply,
     "Set the equipment's taps for the supply, or call the utility. Measure at the motor, running."},
    {Cause::two_taps_live,
     "Find which two calls reach the motor together, and part them before power is on."},
    {Cause::lost_leg,
     "Find the bad leg: volts across each closed fuse and contactor pole under load, about nought is good. "
     "Then all "
     "three legs at the motor, running."},
    {Cause::water,
     "Find where the water comes from: drain, connectors up, drip loop, rain shield. Dry it, then read "
     "winding to "
     "shell again."},
    {Cause::failed_capacitor, "Fit a new capacitor of the plate's microfarads, at its volts or more."},
    {Cause::overload,
     "Find what overloads it: wheel, pulley, static, door off, wrong speed. Measure amps, door on."},
    {Cause::wrong_motor,
     "Do not copy the plate of the old motor: go by the equipment's own plate and the measured sizes."},
    {Cause::not_found,
     "A motor was lost here before. Take static, volts and amps under load before the new one is left "
     "alone."},
});

// What is at fault outside the motor, and what puts it right. Source: common practice.
constexpr auto culprit_sentences = std::to_array<English<Culprit>>({
    {Culprit::run_capacitor,
     "The capacitor is at fault: fit one of the motor plate's microfarads, at its volts or more, then read "
     "amps."},
    {Culprit::start_capacitor,
     "The start capacitor is at fault: fit a start capacitor of its own microfarads and volts, never a run "
     "capacitor, "
     "and look at the switch that takes it out."},
    {Culprit::line_fuse,
     "A line fuse is at fault: it drops volts while closed. Before a new one: windings to shell, amps of "
     "each leg."},
    {Culprit::contactor,
     "The contactor is at fault: a closed pole drops volts. Change the contactor, then read the legs at the "
     "motor."},
    {Culprit::control_fuse,
     "The low-voltage fuse is blown. Find the short in the 24 V wiring first, then fit one of the same "
     "size."},
    {Culprit::float_switch,
     "The float or condensate switch is open: clear the drain, empty the pan. It is never bridged to run."},
    {Culprit::door_switch,
     "The door switch is open: seat the door or change the switch. It is never bridged to run."},
    {Culprit::thermostat, "The thermostat gives no call: its settings, batteries and base wiring first."},
    {Culprit::transformer,
     "The transformer is dead with its primary live and its fuse good: change it, its primary on the tap of "
     "the "
     "supply's own volts."},
    {Culprit::board_relay,
     "The board does not give its output though 24 V and the call are there: its fan relay, heat and cool "
     "each "
     "have one."},
    {Culprit::control_wiring,
     "The call leaves the board and does not reach the motor: wire, plug, and a common of the same "
     "transformer."},
    {Culprit::filter, "The filter holds the air back: change it, then read the static again."},
    {Culprit::coil, "The coil holds the air back: clean it, dry side and wet, then read its drop again."},
    {Culprit::belt,
     "The belt is at fault: fit one of the same section and length, sheaves in line, tension as its maker "
     "says, and read amps after fifteen minutes. The motor stays."},
    {Culprit::wheel,
     "The wheel is at fault: centre it, clean its blades, look at its hub and its own bearing. The motor "
     "turns free."},
    {Culprit::duct,
     "The duct holds the air back: closed registers, crushed or undersized runs, the return's face."},
    {Culprit::tap,
     "The speed setting is at fault: filter and static are in order. Set another tap, then read the rise."},
    {Culprit::burner_input,
     "The burner is fired over its plate: gas pressure and orifices by the plate, then clock the meter "
     "again."},
    {Culprit::supply, "The supply is at fault: find where the volts are lost before any motor."},
    {Culprit::phase_order,
     "The order of phases is at fault: exchange two leads of this motor, behind its own contactor. Never at "
     "the unit's "
     "supply: a scroll compressor there would turn backwards."},
    {Culprit::rotation,
     "It turns the wrong way round: set its reversing plug or leads by the motor's own diagram, looked at "
     "from the end "
     "that the plate names. One that cannot be reversed is the wrong motor: never turn a wheel round "
     "instead."},
});

}  // namespace

std::string say(Test test) {
    return english_of(test_names, test);
}

std::string fault_title(Fault fault) {
    return english_of(fault_titles, fault);
}

std::string fault_sentence(Fault fault) {
    return fault_title(fault) + ".";
}

std::string keep_sentence(Fault fault) {
    return english_of(keep_sentences, fault);
}

std::string culprit_sentence(Culprit culprit) {
    return english_of(culprit_sentences, culprit);
}

std::string cause_sentence(const RootCause& root) {
    return "Cause: " + english_of(cause_names, root.cause) + " (" + root.job_key + "). " +
           english_of(cure_sentences, root.cause);
}

std::string cure_step(Cause cause) {
    const std::string cure = english_of(cure_sentences, cause);
    if (cause == Cause::not_found) return "Find the cause: " + cure;
    return "Cure the cause, " + english_of(cause_names, cause) + ": " + cure;
}

std::string next_life_sentence(const RootCause& root) {
    const std::string what = english_of(cause_names, root.cause) + " (" + root.job_key + ")";
    if (root.cause == Cause::not_found)
        return "What shortens the next one's life: " + what +
               ". One was lost here before: find the cause, or expect to be back.";
    return "What shortens the next one's life: " + what +
           ". Cure it with the replacement, or expect to be back.";
}

std::vector<English<Test>> english_of_tests() {
    return std::vector(test_names.begin(), test_names.end());
}

std::vector<English<Fault>> english_of_faults() {
    return std::vector(fault_titles.begin(), fault_titles.end());
}

std::vector<English<Fault>> english_of_keeping() {
    return std::vector(keep_sentences.begin(), keep_sentences.end());
}

std::vector<English<Culprit>> english_of_culprits() {
    return std::vector(culprit_sentences.begin(), culprit_sentences.end());
}

std::vector<English<Cause>> english_of_causes() {
    return std::vector(cause_names.begin(), cause_names.end());
}

std::vector<English<Cause>> english_of_cures() {
    return std::vector(cure_sentences.begin(), cure_sentences.end());
}

}  // namespace endbell::inline explain
