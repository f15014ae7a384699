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

}  // namespace

/// Rotation first, then volts and amps, then each call by itself: what hurts most is read first.
void add_start_up(Document& to, const FailedUnit& job, const Option& option) {
    to.add(Heading{"Start-up"});
    Grid table{
        {"reading", "expected", "found"}, {}, "Rotation first: stop at once if it turns the wrong way."};
    const auto add = [&table](const std::string& what, const std::string& expected) {
        table.rows.push_back({what, expected, "________"});
    };
    add("rotation, from the shaft end",
        job.plate.rotation ? say(Value(*job.plate.rotation)) : "as the wheel or blade needs");
    add("line volts at the motor, running", "plate, within 10 %");
    if (job.equipment.fan_amps) add("amps, door on", "at most " + say(Value(*job.equipment.fan_amps)));
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
        if (call.expected_rise.known()) {
            add("  its temperature rise", expected(call.expected_rise.in(fahrenheit_degree), 0, "F degrees"));
        }
    }
    if (job.equipment.rise_low && job.equipment.rise_high) {
        add("temperature rise",
            say(Value(*job.equipment.rise_low)) + " to " + say(Value(*job.equipment.rise_high)));
    }
    to.add(table);
}

}  // namespace endbell::inline explain
