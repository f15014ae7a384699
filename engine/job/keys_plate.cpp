#include "engine/job/key_row.hpp"

namespace endbell::inline job {

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
JobKey also(JobKey key, Reading<T> PlateFacts::*field, Read<T> (*other)(const Folded&)) {
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

Rows plate_keys() {
    const GroupOf<PlateFacts> plate{"plate", Origin::plate, &FailedUnit::plate};
    using F = PlateFacts;
    return {
        row(plate, &F::family, {"family", "the motor's kind", "", "PSC"}, read_kind<Family>),
        row(plate, &F::power,
            {"power", "shaft power; several where the plate lists one per tap", "hp", "1/2 hp"}, read_powers),
        following("plate.family", row(plate, &F::volts, {"volts", "plate voltage", "V", "208-230"},
                                      Reader<std::vector<PlateVolts>>(read_volts))),
        row(plate, &F::phase, {"phase", "1 or 3", "phases", "1"}, read_phase),
        row(plate, &F::frequency, {"frequency", "hertz", "Hz", "60"}, read_frequency),
        also(row(plate, &F::speed,
                 {"speed", "full-load speed, the highest where several are listed", "rpm", "1075"},
                 read_speed),
             &F::speeds, speeds_of),
        row(plate, &F::poles, {"poles", "2, 4, 6, 8, 10 or 12", "poles", "6"}, read_poles),
        row(plate, &F::current, {"current", "full-load amps", "A", "FLA 3.6"}, read_plate_amps),
        row(plate, &F::service_factor, {"service_factor", "1 to 2", "", "1.0"}, read_service_factor),
        also(row(plate, &F::rotation, {"rotation", "direction with its viewing end", "", "CCWLE"},
                 read_rotation),
             &F::double_shaft, double_shaft_of),
        row(plate, &F::double_shaft, {"double_shaft", "a shaft at both ends", "", "no"}, read_yes_no),
        row(plate, &F::shaft_diameter,
            {"shaft_diameter", "as the motor was made", "in (from 6 up: mm)", "1/2"}, read_shaft_diameter),
        row(plate, &F::shaft_length, {"shaft_length", "as the motor was made", "in (from 25 up: mm)", "5"},
            read_shaft_length),
        row(plate, &F::shaft_flat, {"shaft_flat", "length of the flat", "in (from 25 up: mm)", "3-1/2"},
            read_shaft_flat),
        row(plate, &F::body_diameter, {"body_diameter", "by tape or frame", "in (from 60 up: mm)", "5-5/8"},
            read_body_diameter),
        row(plate, &F::frame, {"frame", "frame number", "", "48Y"}, read_text),
        row(plate, &F::mount, {"mount", "how the old motor is held", "", "belly band"}, read_kind<Mount>),
        row(plate, &F::bolt_circle, {"bolt_circle", "of studs or lugs", "in", "5.2"}, read_length),
        row(plate, &F::enclosure, {"enclosure", "open or closed", "", "OAO"}, read_kind<Enclosure>),
        row(plate, &F::bearing, {"bearing", "ball or sleeve", "", "sleeve"}, read_kind<Bearing>),
        row(plate, &F::ambient, {"ambient", "rated ambient", "C", "40 C"}, read_ambient),
        row(plate, &F::protection, {"protection", "overload protector", "", "thermal automatic"},
            read_kind<Protection>),
        also(
            row(plate, &F::capacitor,
                {"capacitor", "run capacitor the plate asks for, the fan's side of a dual", "MFD", "7.5/370"},
                read_capacitance),
            &F::capacitor_volts, volts_of),
        row(plate, &F::capacitor_volts, {"capacitor_volts", "voltage rating of the capacitor", "V", "370"},
            read_capacitor_volts),
        row(plate, &F::speeds, {"speeds", "how many speeds are really used", "speeds", "3SPD"}, read_speeds),
        row(plate, &F::signal, {"signal", "what the speed leads or taps carry", "", "24 V"},
            read_kind<SignalClass>),
        row(plate, &F::tap_rule,
            {"tap_rule", "what two live taps do, by the motor's sheet", "", "one tap only"},
            read_kind<TapRule>),
        quoted(row(plate, &F::program, {"program", "program of a constant-airflow module", "", "PR-17"},
                   read_part_number)),
        row(plate, &F::connector, {"connector", "the plug", "", "5-pin"}, read_text),
    };
}

}  // namespace endbell::inline job
