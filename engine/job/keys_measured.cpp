#include "engine/job/key_row.hpp"

namespace endbell::inline job {

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

}  // namespace

Rows measured_keys() {
    const GroupOf<MeasuredFacts> measured{"measured", Origin::measured, &FailedUnit::measured};
    using F = MeasuredFacts;
    return {
        row(measured, &F::line_volts, {"line_volts", "at the motor, under load where it runs", "V", "118"},
            read_voltage),
        row(measured, &F::control_volts, {"control_volts", "tap to C with the call present", "V", "25.5"},
            read_voltage),
        row(measured, &F::live_taps, {"live_taps", "taps with voltage on them", "taps", "2; 3"}, read_taps),
        row(measured, &F::windings,
            {"windings", "three readings, pin to pin, rotor still", "ohm", "0.9; 0.9; 1.0"}, read_windings),
        row(measured, &F::rotor_held, {"rotor_held", "the rotor was held still for them", "", "yes"},
            read_yes_no),
        row(measured, &F::winding_to_shell, {"winding_to_shell", "OL is an open circuit", "ohm", "OL"},
            read_resistance),
        row(measured, &F::spins_free, {"spins_free", "by hand, power off", "", "yes"}, read_yes_no),
        row(measured, &F::shaft_play, {"shaft_play", "the shaft moves sideways", "", "no"}, read_yes_no),
        row(measured, &F::capacitor, {"capacitor", "by meter, out of circuit", "MFD", "3.1 MFD"},
            read_metered_capacitance),
        row(measured, &F::capacitor_volts, {"capacitor_volts", "across the capacitor, running", "V", "295"},
            read_voltage),
        row(measured, &F::capacitor_amps, {"capacitor_amps", "in the start lead, running", "A", "1.4"},
            read_current),
        row(measured, &F::capacitor_bulged, {"capacitor_bulged", "its top is not flat", "", "no"},
            read_yes_no),
        row(measured, &F::amps, {"amps", "motor current, running", "A", "3.1"}, read_current),
        row(measured, &F::speed, {"speed", "by tachometer", "rpm", "1060"}, read_measured_speed),
        shown(measured, &F::watts, write_watts,
              row(measured, &F::watts, {"watts", "electrical input", "W", "420 W"}, read_watts)),
        row(measured, &F::airflow, {"airflow", "through the blower", "cfm", "1180 CFM"}, read_airflow),
        row(measured, &F::static_supply, {"static_supply", "after the blower: positive", "in wc", "0.31"},
            read_pressure),
        row(measured, &F::static_return, {"static_return", "before the blower: negative", "in wc", "-0.22"},
            read_pressure),
        row(measured, &F::static_total, {"static_total", "total external static", "in wc", "0.53"},
            read_pressure),
        row(measured, &F::filter_drop, {"filter_drop", "across the filter", "in wc", "0.15"}, read_pressure),
        row(measured, &F::rise, {"rise", "supply less return air", "F", "48"}, read_rise),
        row(measured, &F::bore, {"bore", "of the wheel or blade hub", "in (from 6 up: mm)", "1/2"},
            read_shaft_diameter),
        row(measured, &F::shaft_needed,
            {"shaft_needed", "motor face to the far end of the hub", "in (from 25 up: mm)", "4-1/2"},
            read_shaft_length),
        row(measured, &F::shaft_room,
            {"shaft_room", "the longest shaft that clears", "in (from 25 up: mm)", "6"}, read_shaft_length),
        row(measured, &F::band_diameter,
            {"band_diameter", "of the mount that stays in the equipment", "in (from 60 up: mm)", "5.6"},
            read_body_diameter),
        row(measured, &F::body_room,
            {"body_room", "the longest motor body that clears", "in (from 25 up: mm)", "7"},
            read_shaft_length),
        row(measured, &F::symptoms, {"symptoms", "what it does wrong", "", "hums; trips hot"},
            read_kinds<Symptom>),
        row(measured, &F::earlier_replacements,
            {"earlier_replacements", "motors or modules already lost here", "pieces", "1"}, read_count),
    };
}

}  // namespace endbell::inline job
