#include "engine/explain/start_up.hpp"

#include <algorithm>
#include <optional>

#include "engine/explain/air_words.hpp"
#include "engine/explain/parts_of_documents.hpp"
#include "engine/explain/values.hpp"
#include "engine/wiring/commissioning.hpp"

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

/// One line, or one for each of three legs.
std::vector<StartUpLine> lines_of(StartUpQuantity what, const std::string& expected, bool legs) {
    if (!legs) return {{std::nullopt, what, 0, expected}};
    std::vector<StartUpLine> lines;
    for (int leg = 1; leg <= 3; ++leg) lines.push_back({std::nullopt, what, leg, expected});
    return lines;
}

}  // namespace

std::vector<StartUpReading> start_up_readings(const FailedUnit& job, const Selection& selection,
                                              const Option& option) {
    using enum StartUpQuantity;
    std::vector<StartUpReading> readings;
    const auto add = [&readings](const std::string& what, const std::string& expected,
                                 std::vector<StartUpLine> lines = {}) {
        readings.push_back({what, expected, std::move(lines)});
    };
    const bool legs = has_three_legs(selection.facts, &option.candidate.part);
    add("rotation, from the shaft end",
        job.plate.rotation ? say(Value(*job.plate.rotation)) : "as the wheel or blade needs");
    const std::string volts = "plate, within 10 %";
    add(std::string("line volts at the motor, running") + (legs ? ", each pair" : ""), volts,
        lines_of(line_volts, volts, legs));
    const std::optional<std::string> most = most_amps(job, option);
    const std::string limit =
        most ? "at most " + *most : "the new motor's plate and the equipment's: read both";
    add(std::string("amps, door on") + (legs ? ", each leg" : ""), limit, lines_of(amps, limit, legs));
    const bool blower = !job.unit.load.said() || *job.unit.load.said() == Load::indoor_blower;
    bool by_call = false;
    for (const CallAir& call : option.air.calls) {
        if (!call.tap) continue;
        for (const TapAir& tap : option.air.taps) {
            if (tap.tap != *call.tap) continue;
            by_call = true;
            const std::string air = expected(tap.airflow.in(cfm), 0, "cfm") + ", window " + window_text(call);
            add("call " + std::string(word(call.call)) + ", tap " + std::to_string(tap.tap) + ": airflow",
                air, {{call.call, airflow, 0, air}});
            const std::string pressure = expected(tap.static_total.in(inch_water), 2, "in. w.c.");
            const std::string turns = expected(tap.speed.in(rpm), 0, "rpm");
            const std::string current = expected(tap.line_current.in(ampere), 1, "A");
            add("  its total static", pressure, {{call.call, static_total, 0, pressure}});
            add("  its rpm", turns, {{call.call, speed, 0, turns}});
            add("  its amps", current, {{call.call, amps, 0, current}});
        }
        for (const CallHeat& heat : call.heats) {
            if (!heat.expected_rise.known()) continue;
            const std::string rises = expected(heat.expected_rise.in(fahrenheit_degree), 0, "F degrees");
            std::vector<StartUpLine> lines;
            if (&heat == &call.heats.front()) lines.push_back({call.call, rise, 0, rises});
            add("  its temperature rise" + (call.heats.size() > 1 ? ", " + say(heat.output) : std::string()),
                rises, std::move(lines));
        }
        if (call.rise_low && call.rise_high)
            add("  the plate's rise", say(Value(*call.rise_low)) + " to " + say(Value(*call.rise_high)));
    }
    if (blower && !by_call) {
        const std::string plate = "the plate's most";
        add("total static", plate, {{std::nullopt, static_total, 0, plate}});
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
        const std::string rises =
            say(Value(*job.equipment.rise_low)) + " to " + say(Value(*job.equipment.rise_high));
        add("temperature rise", rises, {{std::nullopt, rise, 0, rises}});
    }
    return readings;
}

std::string start_up_form(const FailedUnit& job, const Selection& selection, const Option& option) {
    StartUpRecord head;
    const auto text = [](const Reading<std::string>& reading) { return reading ? *reading : std::string(); };
    head.program = selection.stamp;
    head.name = text(job.unit.name);
    head.equipment_model = text(job.unit.equipment_model);
    head.equipment_serial = text(job.unit.equipment_serial);
    head.part = option.candidate.part.id;
    std::vector<StartUpLine> lines;
    for (const StartUpReading& reading : start_up_readings(job, selection, option))
        lines.insert(lines.end(), reading.lines.begin(), reading.lines.end());
    // Those of the unit before those of its calls: each group stands once.
    std::stable_partition(lines.begin(), lines.end(), [](const StartUpLine& l) { return !l.call; });
    return write_start_up(head, lines);
}

namespace {

struct SinceWords {
    StartUpQuantity what;
    const char* name;
    const char* unit;
    int decimals;
    const char* higher;
    const char* lower;
};

// What a change most often comes of. Source: common practice.
constexpr auto since_words = std::to_array<SinceWords>({
    {StartUpQuantity::line_volts, "Line volts", "V", 0, "the supply has changed: read it without the motor",
     "a connection, a contactor or the supply has weakened: read the drop across each"},
    {StartUpQuantity::amps, "Amps", "A", 2,
     "it works harder: speed tap, wheel, bearing, low volts, or a door left off",
     "it moves less air: filter, coil, duct or a dirty wheel"},
    {StartUpQuantity::static_total, "Static", "in. w.c.", 2,
     "filter, coil or duct has closed up: measure the drop of each",
     "a duct has come open, a door is off, or the wheel moves less air: look at its blades"},
    {StartUpQuantity::speed, "Speed", "rpm", 0,
     "it meets less air: filter, coil or duct; or another tap is live",
     "capacitor, volts, bearing or another tap: read them in this order"},
    {StartUpQuantity::airflow, "Airflow", "cfm", 0, "another tap is live, or a filter or register is gone",
     "filter, coil, wheel, duct or tap: read the static with it"},
    {StartUpQuantity::rise, "Temperature rise", "F degrees", 0,
     "less air or more fire: static and filter first, then clock the meter",
     "more air or less fire: look at tap and burner"},
});

}  // namespace

std::string sentence(const SinceStartUp& since) {
    const auto* words = std::find_if(since_words.begin(), since_words.end(),
                                     [&](const SinceWords& w) { return w.what == since.what; });
    std::string text = words->name;
    if (since.leg > 0) text += " of leg " + std::to_string(since.leg);
    text += " " + say_number(since.then, words->decimals) + " " + words->unit + " at start-up";
    if (since.call) text += " (" + std::string(word(*since.call)) + ")";
    text += ", " + say_number(since.now, words->decimals) + " now";
    switch (since.change) {
        case StartUpChange::as_then:
            return text + ": no change that counts.";
        case StartUpChange::higher:
            return text + ": " + words->higher + ".";
        case StartUpChange::lower:
            return text + ": " + words->lower + ".";
    }
    return text;
}

void add_since_start_up(Document& to, const Diagnosis& d) {
    if (d.since_start_up.empty()) return;
    to.add(Heading{"Since start-up"});
    Bullets list;
    for (const SinceStartUp& since : d.since_start_up) list.items.push_back(sentence(since));
    to.add(list);
}

void add_start_up(Document& to, const FailedUnit& job, const Selection& selection, const Option& option) {
    to.add(Heading{"Start-up"});
    Grid table{
        {"reading", "expected", "1st", "2nd", "3rd"},
        {},
        "Rotation first: stop at once if it turns the wrong way. Each is read three times, or until two "
        "agree; `endbell start-up --record` makes a file of it."};
    constexpr const char* room = "_____";
    for (const StartUpReading& reading : start_up_readings(job, selection, option)) {
        if (reading.lines.size() < 2) {
            table.rows.push_back({reading.what, reading.expected, room, reading.lines.empty() ? "" : room,
                                  reading.lines.empty() ? "" : room});
            continue;
        }
        for (const StartUpLine& line : reading.lines)
            table.rows.push_back(
                {reading.what + " " + std::to_string(line.leg), line.expected, room, room, room});
    }
    to.add(table);
}

Document start_up_document(const FailedUnit& job, const Selection& selection, const Option& option) {
    Document d{"Start-up of " + part_name(option.candidate.part), {}, selection.stamp};
    add_start_up(d, job, selection, option);
    return d;
}

}  // namespace endbell::inline explain
