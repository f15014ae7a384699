// Every outcome that a test can come to: what a row of evidence may say, and so what a sheet must have words for. A test
// over random jobs holds that nothing else is said, and that each of these is.
#pragma once
#include <array>

#include "engine/diagnosis/kinds.hpp"

namespace endbell::inline diagnosis {

struct TestOutcome {
    Test test;
    TestReason reason;

    friend constexpr bool operator==(const TestOutcome&, const TestOutcome&) = default;
};

inline constexpr auto test_outcomes = [] {
    using enum TestReason;
    return std::to_array<TestOutcome>({
        {Test::symptom, not_measured},
        {Test::symptom, contradicted},
        {Test::symptom, does_not_start},
        {Test::symptom, runs_badly},
        {Test::symptom, normal},
        {Test::line_volts, not_measured},
        {Test::line_volts, contradicted},
        {Test::line_volts, no_voltage},
        {Test::line_volts, plate_volts_unknown},
        {Test::line_volts, in_band},
        {Test::line_volts, too_low},
        {Test::line_volts, too_high},
        {Test::line_volts, only_230_on_208},
        {Test::line_volts, below_range_a},
        {Test::control_volts, not_measured},
        {Test::control_volts, contradicted},
        {Test::control_volts, too_low},
        {Test::control_volts, too_high},
        {Test::control_volts, in_window},
        {Test::control_volts, signal_unknown},
        {Test::live_taps, no_tap_live},
        {Test::live_taps, one_tap_live},
        {Test::live_taps, two_taps_live},
        {Test::live_taps, highest_tap_runs},
        {Test::live_taps, priority_not_stated},
        {Test::spins_free, not_measured},
        {Test::spins_free, free},
        {Test::spins_free, stuck},
        {Test::shaft_play, not_measured},
        {Test::shaft_play, play},
        {Test::shaft_play, no_play},
        {Test::winding_to_shell, not_measured},
        {Test::winding_to_shell, insulated},
        {Test::winding_to_shell, at_the_limit},
        {Test::winding_to_shell, leaks},
        {Test::winding_open, closed},
        {Test::winding_open, open},
        {Test::winding_open, test_again_cold},
        {Test::winding_most, within},
        {Test::winding_most, beyond},
        {Test::winding_balance, not_measured},
        {Test::winding_balance, within},
        {Test::winding_balance, beyond},
        {Test::winding_balance, three_readings_needed},
        {Test::winding_balance, swings_or_zero},
        {Test::winding_balance, rotor_not_stated_held},
        {Test::winding_balance, rotor_not_held},
        {Test::winding_spread, within},
        {Test::winding_spread, beyond},
        {Test::capacitor, contradicted},
        {Test::capacitor, not_measured},
        {Test::capacitor, open},
        {Test::capacitor, over_range},
        {Test::capacitor, plate_capacitor_unknown},
        {Test::capacitor, good},
        {Test::capacitor, marginal},
        {Test::capacitor, replace},
        {Test::capacitor, bulged},
        {Test::capacitor, needs_volts_and_amps},
        {Test::capacitor, plate_hertz_unknown},
        {Test::capacitor, no_volts_across},
        {Test::static_total, not_measured},
        {Test::static_total, contradicted},
        {Test::static_total, wrong_signs},
        {Test::static_total, one_side},
        {Test::static_total, repair_duct_first},
        {Test::static_total, above_plate},
        {Test::static_total, within_plate},
        {Test::filter_drop, not_measured},
        {Test::filter_drop, clean_enough},
        {Test::filter_drop, loaded},
        {Test::rise, too_little_air},
        {Test::rise, too_much_air},
        {Test::rise, in_plate_range},
        {Test::rise, plate_rise_unknown},
        {Test::rise, rise_heat_unknown},
        {Test::airflow, enough_air},
        {Test::airflow, too_little_air},
        {Test::amps, not_measured},
        {Test::amps, contradicted},
        {Test::amps, plate_amps_unknown},
        {Test::amps, within_plate},
        {Test::amps, over_plate},
        {Test::plate_agrees, agrees},
        {Test::plate_agrees, volts_not_of_unit},
        {Test::plate_agrees, amps_over_unit},
    });
}();

}  // namespace endbell::inline diagnosis
