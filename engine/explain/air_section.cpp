// What stands below the taps of an air plan: heat and rise, what each choice costs, static over the plate, what was assumed.
#include "engine/base/text.hpp"
#include "engine/explain/air_words.hpp"
#include "engine/explain/parts_of_documents.hpp"
#include "engine/explain/values.hpp"

namespace endbell::inline explain {

namespace {

std::string named(Call call) {
    return std::string(word(call));
}

std::string with_spread(const EstimatedNumber& e, int decimals) {
    if (!e.known) return "-";
    std::string out = say_number(e.value, decimals);
    if (e.plus_minus > 0) out += " +/-" + say_number(e.plus_minus, decimals);
    return out + (e.assumed ? " (a)" : "");
}

/// A change, with its sign.
std::string changed(double by, int decimals) {
    const std::string text = say_number(by, decimals);
    return by > 0 && text != "0" ? "+" + text : text;
}

/// By what the old motor's work was judged. A plate is an upper bound that nothing measured.
void add_duty(Document& to, const DuctPoint& point) {
    if (!point.torque.known()) return;
    const bool guess = point.torque_from == TorqueSource::plate_power;
    to.add(Paragraph{"Old motor's duty: " + with_spread(point.torque.in(ounce_foot), 1) + " oz-ft" +
                     (point.speed.known() ? " at " + with_spread(point.speed.in(rpm), 0) + " rpm" : "") +
                     ", by " + std::string(word(*point.torque_from)) +
                     (guess ? ": nothing measured tells it" : "") +
                     (point.torque_with ? " and " + std::string(word(*point.torque_with)) : "") + "."});
}

void add_heats(Document& to, const AirPlan& air) {
    Grid table{{"call", "heat, Btu/h", "if", "window, cfm", "rise to expect, F"}, {}, ""};
    bool open = false;
    for (const CallAir& call : air.calls) {
        open = open || call.heats.size() > 1;
        for (const CallHeat& heat : call.heats) {
            table.rows.push_back({named(call.call), say_number(heat.output.heat.in(btu_per_hour), 0),
                                  say(heat.output),
                                  say_number(heat.low.in(cfm), 0) + "-" + say_number(heat.high.in(cfm), 0),
                                  with_spread(heat.expected_rise.in(fahrenheit_degree), 0)});
        }
    }
    if (table.rows.empty()) return;
    if (open) table.caption = "Of two outputs either may be: the window of a call holds for both.";
    to.add(table);
}

void add_place(Document& to, const AirPlan& air) {
    if (std::abs(air.density_ratio - 1) > 0.005) {
        to.add(Paragraph{"The air here has " + say_number(air.density_ratio, 3) +
                         " of the density of standard air: windows in cfm a ton and the cfm of a rise are " +
                         say_number(1 / air.density_ratio, 3) + " times those of standard air."});
    }
    if (air.motor_share < 1) {
        to.add(Paragraph{"Thin air cools a motor less: its load is judged by " +
                         say_number(air.motor_share * 100, 0) + " % of its rating."});
    }
}

/// What a served call gets, beside its window.
void add_served(Document& to, const AirPlan& air) {
    Bullets list;
    for (const CallAir& call : air.calls) {
        const TapAir* tap = air_of(air, call.call);
        if (tap == nullptr) continue;
        std::string text;
        if (call.cfm_per_ton) text += ", " + say_number(*call.cfm_per_ton, 0) + " cfm a ton of standard air";
        if (tap->input_power.known() && tap->airflow.value() > Airflow())
            text += ", " + say_number(tap->input_power.value().in(watt) / tap->airflow.value().in(cfm), 2) +
                    " W per cfm";
        if (tap->load.known) text += ", " + say_number(tap->load.value * 100, 0) + " % of its rating";
        if (call.zone_static)
            text += ", " + say(Value(*call.zone_static)) + " with the least open zone alone";
        if (call.plate_least) text += "; the plate asks for at least " + say(Value(*call.plate_least));
        if (!text.empty()) list.items.push_back(named(call.call) + ": " + text.substr(2));
    }
    if (!list.items.empty()) to.add(list);
}

/// Sound follows speed, moisture taken from the air falls as airflow rises.
void add_trades(Document& to, const AirPlan& air) {
    Grid table{{"call", "instead tap", "cfm", "static in. w.c.", "watts", "sound, dB", "so"}, {}, ""};
    for (const CallAir& call : air.calls) {
        for (const TapTrade& t : call.trades) {
            const bool more = t.airflow > Airflow();
            std::string so = t.overloads   ? "overloads the motor"
                             : t.in_window ? "also in the window"
                                           : "out of the window";
            if (call.cfm_per_ton) so += more ? ", takes less moisture out" : ", takes more moisture out";
            table.rows.push_back({named(call.call), std::to_string(t.tap), changed(t.airflow.in(cfm), 0),
                                  t.static_total ? changed(t.static_total->in(inch_water), 2) : "-",
                                  t.input_power ? changed(t.input_power->in(watt), 0) : "-",
                                  changed(t.decibels, 1), so});
        }
    }
    if (table.rows.empty()) return;
    table.caption = "What the next tap down and the next tap up would change. Sound by the fan sound law.";
    to.add(table);
}

void add_static_over(Document& to, const AirPlan& air) {
    if (!air.static_over) return;
    const StaticOverPlate& over = *air.static_over;
    std::string cures;
    for (const StaticCure cure : over.cures) cures += (cures.empty() ? "" : "; ") + say(cure);
    to.add(Warning{"CAUTION",
                   "Static of " + say(Value(over.found)) +
                       (over.call ? " on call " + named(*over.call) : std::string(" as measured")) +
                       " is over the " + say(Value(over.most)) +
                       (over.plate_says ? " of the equipment's plate" : " that plates usually allow") +
                       ". To bring it down, in this order: " + cures + "."});
}

void add_size(Document& to, const AirPlan& air) {
    if (!air.small_load) return;
    to.add(Paragraph{
        "The hardest call takes " + say_number(*air.small_load * 100, 0) +
        " % of this motor's rating: it is larger than this duct needs. That does no harm by itself; it costs "
        "more to buy, draws more when it starts, and runs low on its efficiency curve."});
}

void add_efficiency(Document& to, const AirPlan& air) {
    std::string taps;
    std::optional<EfficiencySource> from;
    for (const TapAir& tap : air.taps) {
        if (!tap.efficiency.known) continue;
        from = tap.efficiency_from;
        taps += (taps.empty() ? "" : ", ") + std::string("tap ") + std::to_string(tap.tap) + " " +
                say_number(tap.efficiency.value * 100, 0) + " %";
    }
    if (from)
        to.add(Paragraph{"Efficiency at these loads, by " + std::string(word(*from)) + ": " + taps + "."});
}

void add_fan_energy(Document& to, const AirPlan& air) {
    if (!air.fan_energy) return;
    const FanEnergy& energy = *air.fan_energy;
    std::string text =
        "Fan energy, for information: " + say_number(energy.rating, 0) + " W per 1,000 cfm on this duct";
    if (energy.most)
        text += " (a new furnace of its class, " + std::string(word(*energy.furnace)) + ": at most " +
                say_number(*energy.most, 0) + " on the test's duct; from memory)";
    to.add(Paragraph{text + ", " + say_number(energy.a_year.in(kilowatt_hour), 0) +
                     " kWh in a year of the test's hours. No rule binds a replacement motor to it."});
}

}  // namespace

void add_air_choices(Document& to, const AirPlan& air) {
    add_trades(to, air);
    add_size(to, air);
    add_efficiency(to, air);
    add_fan_energy(to, air);
    if (!air.computed || air.assumed.empty()) return;
    Bullets list;
    for (const std::string& name : air.assumed) {
        const std::string changes = what_it_changes(name);
        list.items.push_back(name + (changes.empty() ? "" : ": " + changes));
    }
    to.add(Paragraph{"What was assumed, and what it would change:"});
    to.add(list);
}

/// What each call needs and gets, then what each tap was worked out to do; what was assumed is never left unsaid.
void add_air(Document& to, const AirPlan& air) {
    to.add(Heading{"Air"});
    if (!air.calls.empty()) {
        Grid calls{{"call", "tap", "window, cfm", "target", "from", "met"}, {}, ""};
        for (const CallAir& c : air.calls) {
            const bool window = c.high > Airflow();
            std::string met = c.met ? (c.assured ? "yes, over the whole range" : "yes")
                                    : (c.unmet_reason ? "no: " + std::string(word(*c.unmet_reason)) : "no");
            if (c.provisional) met += "; provisional: " + std::string(word(*c.provisional));
            for (CallCaution caution : c.cautions) met += ", " + std::string(word(caution));
            calls.rows.push_back(
                {std::string(word(c.call)), c.tap ? std::to_string(*c.tap) : "-",
                 window ? say_number(c.low.in(cfm), 0) + "-" + say_number(c.high.in(cfm), 0) : "not known",
                 window ? say_number(c.target.in(cfm), 0) : "-",
                 std::string(word(c.basis)) + (c.hard ? " (hard)" : ""), met});
        }
        to.add(calls);
    }
    if (air.computed && !air.taps.empty()) {
        Grid taps{{"tap", "cfm", "static in. w.c.", "rpm", "shaft hp", "watts", "amps", "bound by"},
                  {},
                  "(a): assumed in part. Check it at start-up."};
        for (const TapAir& t : air.taps) {
            taps.rows.push_back(
                {std::to_string(t.tap), with_spread(t.airflow.in(cfm), 0),
                 with_spread(t.static_total.in(inch_water), 2), with_spread(t.speed.in(rpm), 0),
                 with_spread(t.shaft_power.in(horsepower), 2), with_spread(t.input_power.in(watt), 0),
                 with_spread(t.line_current.in(ampere), 1),
                 std::string(word(t.bound)) + (t.bound && t.caution ? ", " : "") +
                     std::string(word(t.caution))});
        }
        to.add(taps);
    }
    add_duty(to, air.point);
    add_heats(to, air);
    add_place(to, air);
    add_served(to, air);
    add_static_over(to, air);
    if (!air.lacking.empty()) {
        to.add(Paragraph{std::string(air.computed ? "More could be said with: "
                                                  : "The airflow of each tap is not computed. It needs: ") +
                         joined(air.lacking, ", ") + "."});
    } else if (!air.computed) {
        to.add(Paragraph{"No airflow is computed (" + std::string(word(air.method)) + ")."});
    }
    if (air.computed)
        to.add(Paragraph{"Method: " + std::string(word(air.method)) + "." +
                         (air.assumed.empty() ? "" : " Assumed: " + joined(air.assumed, ", ") + ".")});
    if (air.duct_first)
        to.add(Warning{"CAUTION",
                       "The measured static pressure is above the limit: the duct is the first repair."});
}

}  // namespace endbell::inline explain
