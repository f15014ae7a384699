#include "engine/explain/diagnosis_words.hpp"

#include <array>

namespace endbell::inline explain {

namespace {

// As a table names them, in its first column.
constexpr auto test_names = std::to_array<English<Test>>({
    {Test::symptom, "symptom"},
    {Test::line_volts, "line volts"},
    {Test::control_volts, "control volts"},
    {Test::live_taps, "live taps"},
    {Test::spins_free, "spins free"},
    {Test::shaft_play, "shaft play"},
    {Test::winding_to_shell, "winding to shell"},
    {Test::winding_open, "winding open"},
    {Test::winding_most, "winding ohms"},
    {Test::winding_balance, "winding balance"},
    {Test::winding_spread, "winding spread"},
    {Test::capacitor, "capacitor"},
    {Test::static_total, "static total"},
    {Test::filter_drop, "filter drop"},
    {Test::rise, "temperature rise"},
    {Test::airflow, "airflow per ton"},
    {Test::amps, "running amps"},
    {Test::plate_agrees, "plate against unit"},
    {Test::family, "motor family"},
    {Test::read_again, "read again"},
});

constexpr std::string_view not_taken = "not measured";
constexpr std::string_view doubted = "contradicts another reading";

// As they stand behind reading and limit.
constexpr auto outcome_words = [] {
    using enum TestReason;
    return std::to_array<English<TestOutcome>>({
        {{Test::symptom, not_measured}, "not stated"},
        {{Test::symptom, contradicted}, doubted},
        {{Test::symptom, does_not_start}, "does not start"},
        {{Test::symptom, runs_badly}, "runs badly"},
        {{Test::symptom, normal}, "normal"},

        {{Test::line_volts, not_measured}, not_taken},
        {{Test::line_volts, contradicted}, doubted},
        {{Test::line_volts, no_voltage}, "no voltage"},
        {{Test::line_volts, plate_volts_unknown}, "plate volts not known"},
        {{Test::line_volts, in_band}, "in band"},
        {{Test::line_volts, too_low}, "too low"},
        {{Test::line_volts, too_high}, "too high"},
        {{Test::line_volts, only_230_on_208}, "rated above its 208 V service"},
        {{Test::line_volts, below_range_a}, "below service range A"},

        {{Test::control_volts, not_measured}, not_taken},
        {{Test::control_volts, contradicted}, doubted},
        {{Test::control_volts, too_low}, "too low"},
        {{Test::control_volts, too_high}, "too high"},
        {{Test::control_volts, in_window}, "in window"},
        {{Test::control_volts, signal_unknown}, "signal class not known"},

        {{Test::live_taps, no_tap_live}, "no tap live"},
        {{Test::live_taps, one_tap_live}, "one tap live"},
        {{Test::live_taps, two_taps_live}, "two taps live"},
        {{Test::live_taps, highest_tap_runs}, "highest tap runs"},
        {{Test::live_taps, priority_not_stated}, "priority not stated"},

        {{Test::spins_free, not_measured}, not_taken},
        {{Test::spins_free, free}, "free"},
        {{Test::spins_free, stuck}, "drags or is stuck"},
        {{Test::shaft_play, not_measured}, not_taken},
        {{Test::shaft_play, play}, "play"},
        {{Test::shaft_play, no_play}, "no play"},

        {{Test::winding_to_shell, not_measured}, not_taken},
        {{Test::winding_to_shell, insulated}, "insulated"},
        {{Test::winding_to_shell, at_the_limit}, "at the limit"},
        {{Test::winding_to_shell, leaks}, "leaks to the shell"},

        // "winding open: closed" contradicts itself.
        {{Test::winding_open, closed}, "none is open"},
        {{Test::winding_open, open}, "open"},
        {{Test::winding_open, test_again_cold}, "test again when cold"},
        {{Test::winding_most, within}, "within"},
        // 20 ohm fails too, and is not beyond 20.
        {{Test::winding_most, beyond}, "at or above"},
        {{Test::winding_balance, not_measured}, not_taken},
        {{Test::winding_balance, within}, "within"},
        {{Test::winding_balance, beyond}, "beyond"},
        {{Test::winding_balance, three_readings_needed}, "three readings are needed"},
        {{Test::winding_balance, swings_or_zero}, "swings or reads zero"},
        {{Test::winding_balance, rotor_not_stated_held}, "not stated that the rotor was held"},
        {{Test::winding_balance, rotor_not_held}, "rotor was not held"},
        {{Test::winding_spread, within}, "within"},
        {{Test::winding_spread, beyond}, "beyond"},

        {{Test::capacitor, contradicted}, doubted},
        {{Test::capacitor, not_measured}, not_taken},
        {{Test::capacitor, open}, "open"},
        {{Test::capacitor, over_range}, "over range"},
        {{Test::capacitor, plate_capacitor_unknown}, "plate microfarads not known"},
        {{Test::capacitor, good}, "good"},
        {{Test::capacitor, marginal}, "marginal"},
        {{Test::capacitor, replace}, "replace"},
        {{Test::capacitor, bulged}, "bulged"},
        {{Test::capacitor, needs_volts_and_amps}, "needs volts and amps"},
        {{Test::capacitor, plate_hertz_unknown}, "plate hertz not known"},
        {{Test::capacitor, no_volts_across}, "no volts across it"},

        {{Test::static_total, not_measured}, not_taken},
        {{Test::static_total, contradicted}, doubted},
        {{Test::static_total, wrong_signs}, "signs do not fit the sides"},
        {{Test::static_total, one_side}, "one side is not the total"},
        {{Test::static_total, repair_duct_first}, "repair the duct first"},
        {{Test::static_total, above_plate}, "above the plate"},
        {{Test::static_total, within_plate}, "within the plate"},
        {{Test::filter_drop, not_measured}, not_taken},
        {{Test::filter_drop, clean_enough}, "clean enough"},
        {{Test::filter_drop, loaded}, "loaded"},
        {{Test::rise, too_little_air}, "too little air"},
        {{Test::rise, too_much_air}, "too much air"},
        {{Test::rise, in_plate_range}, "in the plate's range"},
        {{Test::rise, plate_rise_unknown}, "plate rise not known"},
        {{Test::rise, rise_heat_unknown}, "which heat ran not known"},
        {{Test::airflow, enough_air}, "enough air"},
        {{Test::airflow, too_little_air}, "too little air"},

        {{Test::amps, not_measured}, not_taken},
        {{Test::amps, contradicted}, doubted},
        {{Test::amps, plate_amps_unknown}, "plate amps not known"},
        {{Test::amps, within_plate}, "within the plate"},
        {{Test::amps, over_plate}, "over the plate"},
        {{Test::plate_agrees, agrees}, "agrees"},
        {{Test::plate_agrees, volts_not_of_unit}, "volts are not the unit's"},
        {{Test::plate_agrees, amps_over_unit}, "amps over the unit's"},
    });
}();

constexpr auto fault_titles = std::to_array<English<Fault>>({
    {Fault::motor, "Fault: motor"},
    {Fault::module, "Fault: module"},
    {Fault::motor_and_module, "Fault: motor and module"},
    {Fault::capacitor, "Fault: capacitor"},
    {Fault::supply, "Fault: supply"},
    {Fault::control_signal, "Fault: control signal"},
    {Fault::airflow, "Fault: airflow"},
    {Fault::wheel_or_bearing, "Fault: wheel or bearing"},
    {Fault::none, "No fault found"},
    {Fault::not_shown, "Not shown yet by the readings given"},
});

// Why nothing is replaced.
constexpr auto keep_sentences = std::to_array<English<Fault>>({
    {Fault::capacitor, "Do not replace it yet: the readings put the fault elsewhere (capacitor)."},
    {Fault::supply, "Do not replace it yet: the readings put the fault elsewhere (supply)."},
    {Fault::control_signal, "Do not replace it yet: the readings put the fault elsewhere (control signal)."},
    {Fault::airflow, "Do not replace it yet: the readings put the fault elsewhere (airflow)."},
    {Fault::none, "Do not replace it yet: the readings show no fault."},
});

constexpr auto cause_names = std::to_array<English<Cause>>({
    {Cause::high_static, "high static pressure"},
    {Cause::loaded_filter, "loaded filter"},
    {Cause::too_little_air, "too little air"},
    {Cause::low_supply, "low supply voltage"},
    {Cause::high_supply, "high supply voltage"},
    {Cause::two_taps_live, "two taps live"},
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
    {Cause::failed_capacitor, "Fit a new capacitor of the plate's microfarads, at its volts or more."},
    {Cause::overload,
     "Find what overloads it: wheel, pulley, static, door off, wrong speed. Measure amps, door on."},
    {Cause::wrong_motor,
     "Do not copy the plate of the old motor: go by the equipment's own plate and the measured sizes."},
    {Cause::not_found,
     "A motor was lost here before. Take static, volts and amps under load before the new one is left "
     "alone."},
});

}  // namespace

std::string say(Test test) {
    return english_of(test_names, test);
}

std::string say(const TestOutcome& outcome) {
    return english_of(outcome_words, outcome);
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

std::vector<English<TestOutcome>> english_of_outcomes() {
    return std::vector(outcome_words.begin(), outcome_words.end());
}

std::vector<English<Fault>> english_of_faults() {
    return std::vector(fault_titles.begin(), fault_titles.end());
}

std::vector<English<Fault>> english_of_keeping() {
    return std::vector(keep_sentences.begin(), keep_sentences.end());
}

std::vector<English<Cause>> english_of_causes() {
    return std::vector(cause_names.begin(), cause_names.end());
}

std::vector<English<Cause>> english_of_cures() {
    return std::vector(cure_sentences.begin(), cure_sentences.end());
}

}  // namespace endbell::inline explain
