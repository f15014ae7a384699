// What is set before power, in sentences: what is done, and what happens otherwise.
#include "engine/explain/values.hpp"
#include "engine/explain/wiring_words.hpp"

namespace endbell::inline explain {

namespace {

std::string volts_of(const Setting& s) {
    return s.volts ? say(Value(*s.volts)) : "the supply's volts";
}

// Voltage doubler: a two-piece motor's manual, as named in docs/explanation/wiring-proof.md.
std::string say_jumper(const Setting& s) {
    switch (s.done) {
        case SettingDone::in:
            return "Voltage jumper IN: the supply is " + volts_of(s) +
                   ". Left out, the motor is weak or does not start. Never apply voltage to the jumper's "
                   "pins.";
        case SettingDone::out:
            return "Voltage jumper OUT: the supply is " + volts_of(s) +
                   ". Left in, it doubles the input, and the module is destroyed at first power.";
        default:
            return "Voltage jumper: not to be set before the supply is known [measured.line_volts, "
                   "equipment.supply]. IN at "
                   "115-120 V, OUT at 208-240 V; left in at 230 V it destroys the module at first power. "
                   "Other "
                   "volts need a part that is listed for them.";
    }
}

std::string say_plug(const Setting& s) {
    if (s.done == SettingDone::ask)
        return "Voltage plug: not to be chosen before the supply is known [measured.line_volts, "
               "equipment.supply]. The "
               "wrong one destroys the motor or leaves it weak.";
    return "Voltage plug: the one for " + volts_of(s) +
           ", before power. The other destroys the motor or leaves it weak.";
}

std::string say_leads(const Setting& s) {
    switch (s.done) {
        case SettingDone::low:
            return "Dual-voltage leads: LOW connection, for " + volts_of(s) +
                   ", by the motor's own diagram. On HIGH it is weak or does not start.";
        case SettingDone::high:
            return "Dual-voltage leads: HIGH connection, for " + volts_of(s) +
                   ", by the motor's own diagram. On LOW it burns out.";
        case SettingDone::set:
            return "Dual-voltage leads: connection for " + volts_of(s) + ", by the motor's own diagram.";
        default:
            return "Dual-voltage leads: not to be connected before the supply is known [measured.line_volts, "
                   "equipment.supply]. LOW on the higher volts burns it out.";
    }
}

std::string say_rotation(const Setting& s) {
    const bool by_leads = s.what == SettingKind::rotation_leads;
    const std::string how =
        by_leads ? "exchange two of this motor's three leads at the load side if it turns the other way, "
                   "never two of the unit's supply"
                 : "by its reversing plug or leads";
    if (s.done == SettingDone::clockwise)
        return "Rotation: clockwise seen from the shaft end, counterclockwise from the lead end; " + how +
               ".";
    if (s.done == SettingDone::counterclockwise)
        return "Rotation: counterclockwise seen from the shaft end, clockwise from the lead end; " + how +
               ".";
    return "Rotation: which way is not said [plate.rotation]. Read it from the housing or blade, and bump "
           "the motor "
           "before the panel is on; " +
           how + ".";
}

std::string say_capacitor(const Setting& s) {
    if (s.done == SettingDone::removed)
        return "Take the old run capacitor out: an electronic motor must not see it.";
    return "Capacitor: " + (s.capacitor ? say(Value(*s.capacitor)) : "of the motor's plate") +
           (s.capacitor_volts ? ", " + say(Value(*s.capacitor_volts)) + " or more" : "") +
           ", the new motor's value and not the old one's.";
}

}  // namespace

std::string say(const Setting& s) {
    switch (s.what) {
        case SettingKind::jumper:
            return say_jumper(s);
        case SettingKind::plug:
            return say_plug(s);
        case SettingKind::leads:
            return say_leads(s);
        case SettingKind::power:
            return "Horsepower lead: the connection for " +
                   (s.power ? say(Value(*s.power)) : "the power wanted") + ", by the motor's own diagram.";
        case SettingKind::rotation:
        case SettingKind::rotation_leads:
            return say_rotation(s);
        case SettingKind::speed:
            return "Speed: by lead " + s.lead + ". Each other speed lead is capped by itself.";
        case SettingKind::overload:
            return "Overload: " +
                   (s.amps ? "set heater or dial to the new motor's " + say(Value(*s.amps))
                           : std::string("set heater or dial to the new motor's plate amps, which the "
                                         "catalog does not list")) +
                   ". The old setting belongs to the old motor.";
        case SettingKind::capacitor:
            return say_capacitor(s);
    }
    return {};
}

}  // namespace endbell::inline explain
