#include "engine/explain/start_up.hpp"

#include <algorithm>
#include <optional>

#include "engine/explain/air_words.hpp"
#include "engine/explain/parts_of_documents.hpp"
#include "engine/explain/values.hpp"

namespace endbell::inline explain {

namespace {

std::string expected(const EstimatedNumber& e, int decimals, const char* unit) {
    if (!e.known) return "not known";
    return say_number(e.value, decimals) +
           (e.plus_minus > 0 ? " +/-" + say_number(e.plus_minus, decimals) : "") + " " + unit +
           (e.assumed ? " (assumed in part)" : "");
}

std::string window_text(const CallAir& call) {
    return call.high > Airflow() ? say_number(call.low.in(cfm), 0) + "-" + say_number(call.high.in(cfm), 0)
                                 : "not known";
}

/// The lower of the new part's plate and the equipment's: the one protects the motor, the other its circuit.
std::optional<std::string> most_amps(const FailedUnit& job, const Option& option) {
    const std::optional<Current>& plate = option.rated_amps;
    const std::optional<Current> unit = job.equipment.fan_amps.said();
    if (!plate && !unit) return std::nullopt;
    if (plate && (!unit || *plate <= *unit)) return say(Value(*plate)) + " (the new motor's plate)";
    return say(Value(*unit)) + " (the equipment's plate)" +
           (plate ? "" : "; the new motor's plate too, read it");
}

}  // namespace

std::vector<StartUpReading> start_up_readings(const FailedUnit& job, const Option& option) {
    std::vector<StartUpReading> readings;
    const auto add = [&readings](const std::string& what, const std::string& expected) {
        readings.push_back({what, expected});
    };
    add("rotation, from the shaft end",
        job.plate.rotation ? say(Value(*job.plate.rotation)) : "as the wheel or blade needs");
    add("line volts at the motor, running", "plate, within 10 %");
    if (const auto most = most_amps(job, option)) add("amps, door on", "at most " + *most);
    for (const CallAir& call : option.air.calls) {
        if (!call.tap) continue;
        for (const TapAir& tap : option.air.taps) {
            if (tap.tap != *call.tap) continue;
            add("call " + std::string(word(call.call)) + ", tap " + std::to_string(tap.tap) + ": airflow",
                expected(tap.airflow.in(cfm), 0, "cfm") + ", window " + window_text(call));
            add("  its total static, rpm, amps", expected(tap.static_total.in(inch_water), 2, "in. w.c.") +
                                                     ", " + expected(tap.speed.in(rpm), 0, "rpm") + ", " +
                                                     expected(tap.line_current.in(ampere), 1, "A"));
        }
        for (const CallHeat& heat : call.heats) {
            if (!heat.expected_rise.known()) continue;
            add("  its temperature rise" + (call.heats.size() > 1 ? ", " + say(heat.output) : std::string()),
                expected(heat.expected_rise.in(fahrenheit_degree), 0, "F degrees"));
        }
        if (call.rise_low && call.rise_high)
            add("  the plate's rise", say(Value(*call.rise_low)) + " to " + say(Value(*call.rise_high)));
    }
    const auto decides = [&](const CallAir& call) {
        return call.heats.size() > 1 && call.basis == WindowBasis::temperature_rise;
    };
    if (std::any_of(option.air.calls.begin(), option.air.calls.end(), decides))
        add("heat input by the clock at the gas meter", "decides between the outputs above");
    const bool said = std::any_of(option.air.calls.begin(), option.air.calls.end(), [](const CallAir& call) {
        return call.tap && call.rise_low && call.rise_high;
    });
    if (!said && job.equipment.rise_low && job.equipment.rise_high) {
        add("temperature rise",
            say(Value(*job.equipment.rise_low)) + " to " + say(Value(*job.equipment.rise_high)));
    }
    return readings;
}

void add_start_up(Document& to, const FailedUnit& job, const Option& option) {
    to.add(Heading{"Start-up"});
    Grid table{
        {"reading", "expected", "found"}, {}, "Rotation first: stop at once if it turns the wrong way."};
    for (const StartUpReading& reading : start_up_readings(job, option))
        table.rows.push_back({reading.what, reading.expected, "________"});
    to.add(table);
}

}  // namespace endbell::inline explain
