#include "engine/fields/key_row.hpp"

namespace endbell::inline fields {

namespace {

Read<std::vector<int>> read_taps(const Folded& words) {
    Read<std::vector<int>> read = read_counts(words);
    if (!read.reading) return read;
    for (int tap : *read.reading) {
        if (tap < 1 || tap > 9)
            return unreadable<std::vector<int>>(words, "tap numbers from 1, such as '2; 3'");
    }
    return read;
}

Read<HeatRate> read_input(const Folded& words) {
    return read_heat(words, HeatSide::input);
}

}  // namespace

JobKeys measured_keys() {
    const GroupOf<MeasuredReadings> measured{"measured", Origin::measured, &FailedUnit::measured};
    using F = MeasuredReadings;
    return {
        row(measured, &F::line_volts,
            {"line_volts", "at the motor, under load where it runs", "V", "118",
             "Volts at the motor, line to line or line to neutral, under load?"},
            read_voltage, {60, 120, 0.60, nominals, volts_on_the_plate}),
        row(measured, &F::control_volts,
            {"control_volts", "tap to C with the call present", "V", "25.5",
             "Volts from the called tap to C, with the call present?"},
            read_voltage),
        row(measured, &F::live_taps,
            {"live_taps", "taps with voltage on them", "taps", "2; 3",
             "Which taps are live during the call?"},
            read_taps, {280, 180, 0.40, live_taps}),
        row(measured, &F::windings,
            {"windings", "three readings, pin to pin, rotor still", "ohm", "0.9; 0.9; 1.0",
             "Ohms between the three winding pins, rotor held still?"},
            read_windings),
        row(measured, &F::rotor_held,
            {"rotor_held", "the rotor was held still for them", "", "yes",
             "Was the rotor held still while the windings were read?"},
            read_yes_no),
        row(measured, &F::winding_to_shell,
            {"winding_to_shell", "OL is an open circuit", "ohm", "OL",
             "Ohms from a winding pin to the bare end shield?"},
            read_resistance),
        row(measured, &F::spins_free,
            {"spins_free", "by hand, power off", "", "yes", "Does the shaft spin free by hand?"},
            read_yes_no),
        row(measured, &F::shaft_play,
            {"shaft_play", "the shaft moves sideways", "", "no",
             "Does the shaft have play, up and down or in and out?"},
            read_yes_no),
        row(measured, &F::module_good,
            {"module_good", "the old module ran another motor half", "", "no",
             "Is the old module shown to be good, by running another motor half?"},
            read_yes_no),
        row(measured, &F::capacitor,
            {"capacitor", "by meter, out of circuit", "MFD", "3.1 MFD",
             "What does the capacitor read, by meter, out of circuit?"},
            read_metered_capacitance),
        row(measured, &F::capacitor_volts,
            {"capacitor_volts", "across the capacitor, running", "V", "295",
             "Volts across the capacitor, running?"},
            read_voltage),
        row(measured, &F::capacitor_amps,
            {"capacitor_amps", "in the start lead, running", "A", "1.4", "Amps in the start lead, running?"},
            read_current),
        row(measured, &F::capacitor_bulged, {"capacitor_bulged", "its top is not flat", "", "no"},
            read_yes_no),
        row(measured, &F::amps,
            {"amps", "motor current, running", "A", "3.1", "Line amps, running, door on?"}, read_current),
        row(measured, &F::speed, {"speed", "by tachometer", "rpm", "1060", "Rpm, running, door on?"},
            read_measured_speed),
        shown(measured, &F::watts, write_watts,
              row(measured, &F::watts,
                  {"watts", "electrical input", "W", "420 W", "Watts drawn, running, door on?"}, read_watts)),
        row(measured, &F::airflow,
            {"airflow", "through the blower", "cfm", "1180 CFM",
             "How much air moves, in cfm, and on which speed?"},
            read_airflow),
        row(measured, &F::static_supply,
            {"static_supply", "after the blower: positive", "in wc", "0.31",
             "Static pressure after the blower?"},
            read_pressure),
        row(measured, &F::static_return,
            {"static_return", "before the blower: negative", "in wc", "-0.22",
             "Static pressure before the blower? It reads negative."},
            read_pressure),
        row(measured, &F::static_total,
            {"static_total", "total external static", "in wc", "0.53",
             "Total external static pressure, both sides of the blower?"},
            read_pressure),
        row(measured, &F::filter_drop,
            {"filter_drop", "across the filter", "in wc", "0.15", "Pressure drop across the filter?"},
            read_pressure),
        row(measured, &F::coil_drop,
            {"coil_drop", "across the indoor coil, wet where it cools", "in wc", "0.25",
             "Pressure drop across the indoor coil?"},
            read_pressure),
        row(measured, &F::burner_input,
            {"burner_input", "heat input by the clock at the gas meter", "Btu/h", "64 MBH",
             "Heat input of the burner, clocked at the gas meter, in Btu/h?"},
            read_input),
        row(measured, &F::rise,
            {"rise", "supply less return air", "F", "48",
             "Temperature rise from return to supply, after ten minutes?"},
            read_rise),
        row(measured, &F::rise_heat,
            {"rise_heat", "what heated while the rise was read", "", "elements",
             "Which heat ran while the temperature rise was read: burner, compressor, elements, or both of a "
             "heat pump?"},
            read_kind<RiseHeat>),
        row(measured, &F::bore,
            {"bore", "of the wheel or blade hub", "in (from 6 up: mm)", "1/2",
             "What is the bore of the wheel's or blade's hub?"},
            read_shaft_diameter, {160, 120, 0.50, of_motor<&Motor::shaft_diameter>, nullptr, true}),
        row(measured, &F::shaft_needed,
            {"shaft_needed", "motor face to the far end of the hub", "in (from 25 up: mm)", "4-1/2",
             "How far from the motor's face to the far end of the hub?"},
            read_shaft_length, {170, 120, 0.50, of_motor<&Motor::shaft_length>, nullptr, true}),
        row(measured, &F::shaft_room,
            {"shaft_room", "the longest shaft that clears", "in (from 25 up: mm)", "6",
             "How long may a shaft be before it touches?"},
            read_shaft_length, {180, 120, 0.50, of_motor<&Motor::shaft_length>, nullptr, true}),
        row(measured, &F::second_bore,
            {"second_bore", "of the wheel at the other end, where there are two", "in (from 6 up: mm)", "1/2",
             "What is the bore of the wheel at the motor's other end?"},
            read_shaft_diameter, {162, 120, 0.50, of_motor<&Motor::second_shaft_diameter>, nullptr, true}),
        row(measured, &F::second_shaft_needed,
            {"second_shaft_needed", "motor face to the far end of that wheel's hub", "in (from 25 up: mm)",
             "4", "At the other end, how far from the motor's face to the far end of the hub?"},
            read_shaft_length, {172, 120, 0.50, of_motor<&Motor::second_shaft_length>, nullptr, true}),
        row(measured, &F::second_shaft_room,
            {"second_shaft_room", "the longest shaft that clears there", "in (from 25 up: mm)", "6",
             "At the other end, how long may a shaft be before it touches?"},
            read_shaft_length, {182, 120, 0.50, of_motor<&Motor::second_shaft_length>, nullptr, true}),
        row(measured, &F::band_diameter,
            {"band_diameter", "of the mount that stays in the equipment", "in (from 60 up: mm)", "5.6",
             "What is the diameter of the band or ring that stays?"},
            read_body_diameter, {140, 90, 0.50, of_motor<&Motor::body_diameter>, nullptr, true}),
        row(measured, &F::body_room,
            {"body_room", "the longest motor body that clears", "in (from 25 up: mm)", "7",
             "How long may a motor body be before it touches?"},
            read_shaft_length),
        row(measured, &F::symptoms,
            {"symptoms", "what it does wrong", "", "hums; trips hot",
             "What does it do: hum, rock, run slow, trip, or nothing?"},
            read_kinds<Symptom>),
        row(measured, &F::earlier_replacements,
            {"earlier_replacements", "motors or modules already lost here", "pieces", "1"}, read_count),
    };
}

}  // namespace endbell::inline fields
