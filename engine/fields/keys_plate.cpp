#include "engine/fields/key_row.hpp"

namespace endbell::inline fields {

namespace {

Read<Temperature> read_ambient(const Folded& words) {
    return read_temperature(words, Degrees::celsius);
}

Read<std::vector<PlateVolts>> read_volts(const FailedUnit& job, const Folded& words) {
    return read_plate_volts(words, job.plate.family.value);
}

/// Also fills the second field that one text may say: "1075/3SPD", "7.5/370", "DS CCWLE". The field's own
/// key, read later, wins.
template <class T>
JobKey also(JobKey key, Reading<T> PlateReadings::*field, Read<T> (*other)(const Folded&)) {
    const auto read = key.read;
    key.read = [read, field, other](FailedUnit& job, const Folded& words, const Place& at) {
        std::string expected = read(job, words, at);
        Read<T> second_value = other(words);
        if (expected.empty() && !second_value.failed() && !second_value.reading.raw.empty()) {
            store(job.plate.*field, std::move(second_value), Origin::plate, at);
        }
        return expected;
    };
    return key;
}

Read<int> speeds_of(const Folded& words) {
    return read_speed_text(words).speeds;
}
Read<Voltage> volts_of(const Folded& words) {
    return read_capacitor(words).volts;
}
Read<bool> double_shaft_of(const Folded& words) {
    return read_rotation_text(words).double_shaft ? read_as<bool>(words, true) : not_written<bool>();
}

}  // namespace

JobKeys plate_keys() {
    const GroupOf<PlateReadings> plate{"plate", Origin::plate, &FailedUnit::plate};
    using F = PlateReadings;
    return {
        row(plate, &F::family,
            {"family", "the motor's kind", "", "PSC",
             "Is there a capacitor with two brown leads, or a plug with thin wires? How many pins?"},
            read_kind<Family>, {20, 20, 0.90, families, family_known}),
        row(plate, &F::power,
            {"power", "shaft power; several where the plate lists one per tap", "hp", "1/2 hp",
             "How many horsepower does the plate say?"},
            read_powers, {110, 15, 0.70, powers}),
        following("plate.family",
                  row(plate, &F::volts,
                      {"volts", "plate voltage", "V", "208-230", "Which volts does the plate say?"},
                      Reader<std::vector<PlateVolts>>(read_volts), {50, 15, 0.70, plates})),
        row(plate, &F::phase, {"phase", "1 or 3", "phases", "1", "Single phase or three phase?"}, read_phase,
            {70, 15, 0.80, of_motor<&Motor::phase>, phase_known}),
        row(plate, &F::frequency, {"frequency", "hertz", "Hz", "60", "Which hertz does the plate say?"},
            read_frequency, {90, 15, 0.60, hertz_of_supplies, frequency_known}),
        also(row(plate, &F::speed,
                 {"speed", "full-load speed, the highest where several are listed", "rpm", "1075",
                  "Which rpm does the plate say?"},
                 read_speed, {80, 15, 0.65, speeds}),
             &F::speeds, speeds_of),
        row(plate, &F::poles,
            {"poles", "2, 4, 6, 8, 10 or 12", "poles", "6", "How many poles, or which rpm?"}, read_poles,
            {100, 15, 0.50, of_motor<&Motor::poles>, poles_known}),
        row(plate, &F::current,
            {"current", "full-load amps", "A", "FLA 3.6", "Which full-load amps does the plate say?"},
            read_plate_amps),
        row(plate, &F::service_factor,
            {"service_factor", "1 to 2", "", "1.0", "Which service factor does the plate say?"},
            read_service_factor),
        also(row(plate, &F::rotation,
                 {"rotation", "direction with its viewing end", "", "CCWLE",
                  "Which way does the shaft turn, and seen from which end: shaft end or lead end?"},
                 read_rotation, {210, 60, 0.60, rotations}),
             &F::double_shaft, double_shaft_of),
        row(plate, &F::double_shaft,
            {"double_shaft", "a shaft at both ends", "", "no", "Does a shaft come out at both ends?"},
            read_yes_no),
        row(plate, &F::shaft_diameter,
            {"shaft_diameter", "as the motor was made", "in (from 6 up: mm)", "1/2",
             "How thick is the shaft, by caliper?"},
            read_shaft_diameter, {150, 30, 0.80, of_motor<&Motor::shaft_diameter>}),
        row(plate, &F::shaft_length,
            {"shaft_length", "as the motor was made", "in (from 25 up: mm)", "5",
             "How long is the shaft, from the motor's face to its end?"},
            read_shaft_length),
        row(plate, &F::shaft_flat,
            {"shaft_flat", "length of the flat", "in (from 25 up: mm)", "3-1/2",
             "How long is the flat on the shaft?"},
            read_shaft_flat),
        row(plate, &F::second_shaft_diameter,
            {"second_shaft_diameter", "at the lead end, where a shaft comes out at both",
             "in (from 6 up: mm)", "1/2", "How thick is the shaft at the other end, by caliper?"},
            read_shaft_diameter, {152, 30, 0.80, of_motor<&Motor::second_shaft_diameter>}),
        row(plate, &F::second_shaft_length,
            {"second_shaft_length", "the same, as the motor was made", "in (from 25 up: mm)", "4",
             "How long is the shaft at the other end, from the motor's face to its end?"},
            read_shaft_length),
        row(plate, &F::body_diameter,
            {"body_diameter", "by tape or frame", "in (from 60 up: mm)", "5-5/8",
             "What is the body's diameter, by tape?"},
            read_body_diameter, {130, 60, 0.70, of_motor<&Motor::body_diameter>}),
        row(plate, &F::frame, {"frame", "frame number", "", "48Y", "Which frame number does the plate say?"},
            read_text),
        row(plate, &F::mount,
            {"mount", "how the old motor is held", "", "belly band",
             "How is it held: belly band, studs, lugs, ring, or base?"},
            read_kind<Mount>, {120, 15, 0.90, of_motor<&Motor::mount>}),
        row(plate, &F::bolt_circle,
            {"bolt_circle", "of studs or lugs", "in", "5.2", "What is the bolt circle of the studs or lugs?"},
            read_length),
        row(plate, &F::enclosure, {"enclosure", "open or closed", "", "OAO", "Is the shell open or closed?"},
            read_kind<Enclosure>),
        row(plate, &F::bearing, {"bearing", "ball or sleeve", "", "sleeve", "Ball or sleeve bearings?"},
            read_kind<Bearing>),
        row(plate, &F::ambient,
            {"ambient", "rated ambient", "C", "40 C", "Which ambient temperature does the plate say?"},
            read_ambient, {290, 15, 0.60, of_motor<&Motor::ambient>}),
        row(plate, &F::protection,
            {"protection", "overload protector", "", "thermal automatic",
             "Does the plate say thermally or impedance protected?"},
            read_kind<Protection>),
        also(also(row(plate, &F::capacitor,
                      {"capacitor", "run capacitor the plate asks for, the fan's side of a dual", "MFD",
                       "7.5/370", "Which microfarads and volts does the plate ask for?"},
                      read_capacitance),
                  &F::capacitor_volts, volts_of),
             &F::compressor_capacitor, compressor_side),
        row(plate, &F::capacitor_volts, {"capacitor_volts", "voltage rating of the capacitor", "V", "370"},
            read_capacitor_volts),
        row(plate, &F::compressor_capacitor,
            {"compressor_capacitor", "the compressor's side of a dual run capacitor, as printed on it", "MFD",
             "45 MFD", "Is it a dual capacitor? Which microfarads does its compressor side have?"},
            read_compressor_capacitance),
        row(plate, &F::speeds,
            {"speeds", "how many speeds are really used", "speeds", "3SPD",
             "How many speeds are really used?"},
            read_speeds),
        row(plate, &F::signal,
            {"signal", "what the speed leads or taps carry", "", "24 V",
             "What tells it how fast to run: line-voltage leads, 24 V taps, or a data wire? Measure it."},
            read_kind<SignalClass>, {230, 60, 0.60, signals, signal_known}),
        row(plate, &F::tap_rule,
            {"tap_rule", "what two live taps do, by the motor's sheet", "", "one tap only",
             "What does the motor's own sheet say happens when two taps are live?"},
            read_kind<TapRule>),
        quoted(row(plate, &F::program,
                   {"program", "program of a constant-airflow module", "", "PR-17",
                    "Which program number is on the module?"},
                   read_part_number, {220, 60, 0.60, programs})),
        row(plate, &F::connector,
            {"connector", "the plug", "", "5-pin", "Which plugs does it have, and how many pins?"},
            read_text),
    };
}

}  // namespace endbell::inline fields
