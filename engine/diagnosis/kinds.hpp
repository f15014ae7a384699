// The words of a diagnosis: what is tested, what a test says, what kills motors.
// Each word is the spelling in JSON; a sheet has the English of explain/diagnosis_words.cpp.
#pragma once
#include "engine/model/word.hpp"

namespace endbell {

/// One reading against one threshold. The two last never make a row: a missing reading is wanted for them.
enum class Test {
    symptom,
    line_volts,
    control_volts,
    live_taps,
    spins_free,
    shaft_play,
    winding_to_shell,
    winding_open,
    winding_most,
    winding_balance,
    winding_spread,
    capacitor,
    static_total,
    filter_drop,
    rise,
    airflow,
    amps,
    plate_agrees,
    family,
    read_again  // the reading contradicts another
};
template <>
struct Words<Test> {
    static constexpr std::array table{Word<Test>{Test::symptom, "symptom"},
                                      Word<Test>{Test::line_volts, "line volts"},
                                      Word<Test>{Test::control_volts, "control volts"},
                                      Word<Test>{Test::live_taps, "live taps"},
                                      Word<Test>{Test::spins_free, "spins free"},
                                      Word<Test>{Test::shaft_play, "shaft play"},
                                      Word<Test>{Test::winding_to_shell, "winding to shell"},
                                      Word<Test>{Test::winding_open, "winding open"},
                                      Word<Test>{Test::winding_most, "winding ohms"},
                                      Word<Test>{Test::winding_balance, "winding balance"},
                                      Word<Test>{Test::winding_spread, "winding spread"},
                                      Word<Test>{Test::capacitor, "capacitor"},
                                      Word<Test>{Test::static_total, "static total"},
                                      Word<Test>{Test::filter_drop, "filter drop"},
                                      Word<Test>{Test::rise, "temperature rise"},
                                      Word<Test>{Test::airflow, "airflow per ton"},
                                      Word<Test>{Test::amps, "running amps"},
                                      Word<Test>{Test::plate_agrees, "plate against unit"},
                                      Word<Test>{Test::family, "motor family"},
                                      Word<Test>{Test::read_again, "read again"}};
};

/// What a test says of its reading. Which test says which: test_outcomes.hpp.
enum class TestReason {
    not_measured,
    contradicted,
    // symptom
    does_not_start,
    runs_badly,
    normal,
    // line and signal
    no_voltage,
    plate_volts_unknown,
    in_band,
    too_low,
    too_high,
    only_230_on_208,
    below_range_a,
    in_window,
    signal_unknown,
    no_tap_live,
    one_tap_live,
    two_taps_live,
    highest_tap_runs,
    priority_not_stated,
    // shaft
    free,
    stuck,
    play,
    no_play,
    // windings
    insulated,
    at_the_limit,
    leaks,
    closed,
    open,
    test_again_cold,
    within,
    beyond,
    three_readings_needed,
    swings_or_zero,
    rotor_not_stated_held,
    rotor_not_held,
    // capacitor
    over_range,
    plate_capacitor_unknown,
    good,
    marginal,
    replace,
    bulged,
    needs_volts_and_amps,
    plate_hertz_unknown,
    no_volts_across,
    // air
    wrong_signs,
    one_side,
    repair_duct_first,
    above_plate,
    within_plate,
    clean_enough,
    loaded,
    too_little_air,
    too_much_air,
    in_plate_range,
    plate_rise_unknown,
    enough_air,
    // current, and the plate beside the unit's
    plate_amps_unknown,
    over_plate,
    agrees,
    volts_not_of_unit,
    amps_over_unit
};
template <>
struct Words<TestReason> {
    static constexpr std::array table{
        Word<TestReason>{TestReason::not_measured, "not measured"},
        Word<TestReason>{TestReason::contradicted, "contradicted"},
        Word<TestReason>{TestReason::does_not_start, "does not start"},
        Word<TestReason>{TestReason::runs_badly, "runs badly"},
        Word<TestReason>{TestReason::normal, "normal"},
        Word<TestReason>{TestReason::no_voltage, "no voltage"},
        Word<TestReason>{TestReason::plate_volts_unknown, "plate volts not known"},
        Word<TestReason>{TestReason::in_band, "in band"},
        Word<TestReason>{TestReason::too_low, "too low"},
        Word<TestReason>{TestReason::too_high, "too high"},
        Word<TestReason>{TestReason::only_230_on_208, "230 on a 208 service"},
        Word<TestReason>{TestReason::below_range_a, "below service range A"},
        Word<TestReason>{TestReason::in_window, "in window"},
        Word<TestReason>{TestReason::signal_unknown, "signal class not known"},
        Word<TestReason>{TestReason::no_tap_live, "no tap live"},
        Word<TestReason>{TestReason::one_tap_live, "one tap live"},
        Word<TestReason>{TestReason::two_taps_live, "two taps live"},
        Word<TestReason>{TestReason::highest_tap_runs, "highest tap runs"},
        Word<TestReason>{TestReason::priority_not_stated, "priority not stated"},
        Word<TestReason>{TestReason::free, "free"},
        Word<TestReason>{TestReason::stuck, "drags or is stuck"},
        Word<TestReason>{TestReason::play, "play"},
        Word<TestReason>{TestReason::no_play, "no play"},
        Word<TestReason>{TestReason::insulated, "insulated"},
        Word<TestReason>{TestReason::at_the_limit, "at the limit"},
        Word<TestReason>{TestReason::leaks, "leaks to the shell"},
        Word<TestReason>{TestReason::closed, "closed"},
        Word<TestReason>{TestReason::open, "open"},
        Word<TestReason>{TestReason::test_again_cold, "test again when cold"},
        Word<TestReason>{TestReason::within, "within"},
        Word<TestReason>{TestReason::beyond, "beyond"},
        Word<TestReason>{TestReason::three_readings_needed, "three readings are needed"},
        Word<TestReason>{TestReason::swings_or_zero, "swings or reads zero"},
        Word<TestReason>{TestReason::rotor_not_stated_held, "rotor not stated held"},
        Word<TestReason>{TestReason::rotor_not_held, "rotor was not held"},
        Word<TestReason>{TestReason::over_range, "over range"},
        Word<TestReason>{TestReason::plate_capacitor_unknown, "plate microfarads not known"},
        Word<TestReason>{TestReason::good, "good"},
        Word<TestReason>{TestReason::marginal, "marginal"},
        Word<TestReason>{TestReason::replace, "replace"},
        Word<TestReason>{TestReason::bulged, "bulged"},
        Word<TestReason>{TestReason::needs_volts_and_amps, "needs volts and amps"},
        Word<TestReason>{TestReason::plate_hertz_unknown, "plate hertz not known"},
        Word<TestReason>{TestReason::no_volts_across, "no volts across it"},
        Word<TestReason>{TestReason::wrong_signs, "signs do not fit the sides"},
        Word<TestReason>{TestReason::one_side, "one side is not the total"},
        Word<TestReason>{TestReason::repair_duct_first, "repair the duct first"},
        Word<TestReason>{TestReason::above_plate, "above the plate"},
        Word<TestReason>{TestReason::within_plate, "within the plate"},
        Word<TestReason>{TestReason::clean_enough, "clean enough"},
        Word<TestReason>{TestReason::loaded, "loaded"},
        Word<TestReason>{TestReason::too_little_air, "too little air"},
        Word<TestReason>{TestReason::too_much_air, "too much air"},
        Word<TestReason>{TestReason::in_plate_range, "in the plate's range"},
        Word<TestReason>{TestReason::plate_rise_unknown, "plate rise not known"},
        Word<TestReason>{TestReason::enough_air, "enough air"},
        Word<TestReason>{TestReason::plate_amps_unknown, "plate amps not known"},
        Word<TestReason>{TestReason::over_plate, "over the plate"},
        Word<TestReason>{TestReason::agrees, "agrees"},
        Word<TestReason>{TestReason::volts_not_of_unit, "volts are not the unit's"},
        Word<TestReason>{TestReason::amps_over_unit, "amps over the unit's"}};
};

/// What killed the part, or is about to kill the next.
enum class Cause {
    high_static,
    loaded_filter,
    too_little_air,
    low_supply,
    high_supply,
    two_taps_live,
    failed_capacitor,
    overload,
    wrong_motor,
    not_found  // one was lost here before, and no reading shows why
};
template <>
struct Words<Cause> {
    static constexpr std::array table{Word<Cause>{Cause::high_static, "high static pressure"},
                                      Word<Cause>{Cause::loaded_filter, "loaded filter"},
                                      Word<Cause>{Cause::too_little_air, "too little air"},
                                      Word<Cause>{Cause::low_supply, "low supply voltage"},
                                      Word<Cause>{Cause::high_supply, "high supply voltage"},
                                      Word<Cause>{Cause::two_taps_live, "two taps live"},
                                      Word<Cause>{Cause::failed_capacitor, "failed capacitor"},
                                      Word<Cause>{Cause::overload, "overload"},
                                      Word<Cause>{Cause::wrong_motor, "wrong motor fitted before"},
                                      Word<Cause>{Cause::not_found, "lost before, cause not found"}};
};

}  // namespace endbell
