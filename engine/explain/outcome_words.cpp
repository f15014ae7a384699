// What a test says, as it stands beside its reading.
#include <array>

#include "engine/explain/diagnosis_words.hpp"

namespace endbell::inline explain {

namespace {

constexpr std::string_view not_taken = "not measured";
constexpr std::string_view doubted = "contradicts another reading";
constexpr std::string_view thaw = "ice: thaw first, then judge";

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
        {{Test::line_volts, below_range_a}, "below service range A"},
        {{Test::line_volts, supply_not_stated}, "of another system: what feeds it?"},
        {{Test::motor_volts, in_band}, "in its band"},
        {{Test::motor_volts, too_low}, "not made for so little"},
        {{Test::motor_volts, too_high}, "not made for so much"},
        {{Test::motor_volts, only_230_on_208}, "rated above its 208 V service"},
        {{Test::legs, not_measured}, not_taken},
        {{Test::legs, contradicted}, doubted},
        {{Test::legs, three_readings_needed}, "one pair shows no lost leg: read all three"},
        {{Test::legs, within}, "balanced"},
        {{Test::legs, derate}, "unbalanced: the motor carries less"},
        {{Test::legs, beyond}, "unbalanced: find the cause first"},
        {{Test::legs, lost_leg}, "a leg is lost"},
        {{Test::fuse_drop, within}, "closed and good"},
        {{Test::fuse_drop, beyond}, "drops: blown or loose"},
        {{Test::contactor_drop, within}, "closed and good"},
        {{Test::contactor_drop, beyond}, "drops: burnt or not closed"},

        {{Test::control_volts, not_measured}, not_taken},
        {{Test::control_volts, contradicted}, doubted},
        {{Test::control_volts, too_low}, "too low"},
        {{Test::control_volts, too_high}, "too high"},
        {{Test::control_volts, in_window}, "in window"},
        {{Test::control_volts, signal_unknown}, "signal class not known"},
        {{Test::control_volts, another_signal}, "another signal class: which?"},
        {{Test::control_volts, kind_unclear}, "ac or dc: said both ways"},
        {{Test::control_volts, over_the_window}, "over the printed window: which program?"},

        {{Test::live_taps, no_tap_live}, "no tap live"},
        {{Test::live_taps, one_tap_live}, "one tap live"},
        {{Test::live_taps, two_taps_live}, "two taps live"},
        {{Test::live_taps, highest_tap_runs}, "highest tap runs"},
        {{Test::live_taps, priority_not_stated}, "priority not stated"},

        {{Test::thermostat, calls}, "calls"},
        {{Test::thermostat, no_call}, "does not call"},
        {{Test::float_switch, closed}, "closed"},
        {{Test::float_switch, open}, "open"},
        {{Test::door_switch, closed}, "closed"},
        {{Test::door_switch, open}, "open"},
        {{Test::control_fuse, good}, "good"},
        {{Test::control_fuse, open}, "blown"},
        {{Test::primary, live}, "live"},
        {{Test::primary, no_voltage}, "dead"},
        {{Test::transformer, live}, "live"},
        {{Test::transformer, no_voltage}, "dead"},
        {{Test::board_output, live}, "live"},
        {{Test::board_output, no_voltage}, "dead"},

        {{Test::spins_free, not_measured}, not_taken},
        {{Test::spins_free, contradicted}, doubted},
        {{Test::spins_free, free}, "free"},
        {{Test::spins_free, stuck}, "drags or is stuck"},
        {{Test::wheel_loose, not_measured}, not_taken},
        {{Test::wheel_loose, free}, "free"},
        {{Test::wheel_loose, stuck}, "still drags"},
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
        {{Test::winding_open, one_lead_open}, "one lead is open"},
        {{Test::winding_open, test_again_cold}, "test again when cold"},
        {{Test::winding_most, within}, "within"},
        // 20 ohm fails too, and is not beyond 20.
        {{Test::winding_most, beyond}, "at or above"},
        {{Test::winding_balance, not_measured}, not_taken},
        {{Test::winding_balance, within}, "within"},
        {{Test::winding_balance, beyond}, "beyond"},
        {{Test::winding_balance, three_readings_needed}, "three readings are needed"},
        {{Test::winding_balance, swings_or_zero}, "swings or reads zero"},
        {{Test::winding_balance, near_short}, "near a short: null the leads, read again"},
        {{Test::winding_balance, rotor_not_stated_held}, "not stated that the rotor was held"},
        {{Test::winding_balance, rotor_not_held}, "rotor was not held"},
        {{Test::winding_spread, within}, "within"},
        {{Test::winding_spread, beyond}, "beyond"},

        {{Test::signs, burnt}, "burnt: read the windings"},
        {{Test::signs, wet}, "wet"},
        {{Test::under_water, not_measured}, "not stated"},
        {{Test::under_water, flooded}, "no reading is judged"},
        {{Test::under_water, dry}, "no"},

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
        {{Test::static_total, iced}, thaw},
        {{Test::filter_drop, not_measured}, not_taken},
        {{Test::filter_drop, contradicted}, doubted},
        {{Test::filter_drop, iced}, thaw},
        {{Test::filter_drop, clean}, "clean"},
        {{Test::filter_drop, dirty}, "dirty"},
        {{Test::filter_drop, clean_enough}, "clean enough"},
        {{Test::filter_drop, loaded}, "loaded"},
        {{Test::rise, too_little_air}, "too little air"},
        {{Test::rise, too_much_air}, "too much air"},
        {{Test::rise, in_plate_range}, "in the plate's range"},
        {{Test::rise, plate_rise_unknown}, "plate rise not known"},
        {{Test::rise, rise_heat_unknown}, "which heat ran not known"},
        {{Test::rise, iced}, thaw},
        {{Test::airflow, enough_air}, "enough air"},
        {{Test::airflow, too_little_air}, "too little air"},
        {{Test::airflow, iced}, thaw},
        {{Test::coil_drop, clean_enough}, "clean enough"},
        {{Test::coil_drop, loaded}, "loaded"},
        {{Test::coil_drop, iced}, thaw},
        {{Test::wheel, not_measured}, "not looked at"},
        {{Test::wheel, clean}, "clean"},
        {{Test::wheel, dirty}, "dirty"},
        {{Test::belt, not_measured}, "not looked at"},
        {{Test::belt, pulls}, "pulls"},
        {{Test::belt, slips}, "slips, or is off"},
        {{Test::burner_input, within}, "as its plate says"},
        {{Test::burner_input, over_fired}, "over-fired"},

        {{Test::amps, not_measured}, not_taken},
        {{Test::amps, contradicted}, doubted},
        {{Test::amps, plate_amps_unknown}, "plate amps not known"},
        {{Test::amps, within_plate}, "within the plate"},
        {{Test::amps, over_plate}, "over the plate"},
        {{Test::amps, lost_leg}, "a leg carries nothing"},
        {{Test::plate_agrees, agrees}, "agrees"},
        {{Test::plate_agrees, volts_not_of_unit}, "volts are not the unit's"},
        {{Test::plate_agrees, amps_over_unit}, "amps over the unit's"},
    });
}();

}  // namespace

std::string say(const TestOutcome& outcome) {
    return english_of(outcome_words, outcome);
}

std::vector<English<TestOutcome>> english_of_outcomes() {
    return std::vector(outcome_words.begin(), outcome_words.end());
}

}  // namespace endbell::inline explain
