#include "engine/words/plate_words.hpp"

#include <algorithm>
#include <array>

#include "engine/base/text.hpp"
#include "engine/words/fold.hpp"
#include "engine/words/words.hpp"

namespace endbell::inline words {

namespace {

bool has(std::string_view text, std::string_view part) {
    return text.find(part) != std::string_view::npos;
}

/// No letters but those of `allowed` words: "1075", "208/230".
bool figures_only(std::string_view text) {
    return text.find_first_not_of("0123456789.,-/~ ") == std::string_view::npos;
}

/// Two figures with only a blank between them are two words, whatever a reader would make of them.
bool splits_figures(std::string_view text) {
    for (std::size_t i = 1; i + 1 < text.size(); ++i) {
        if (text[i] == ' ' && is_digit(text[i - 1]) && is_digit(text[i + 1])) return true;
    }
    return false;
}

bool take_capacitor(const Folded& words, PlateText& out) {
    const std::string& text = words.text();
    const CapacitorText read = read_capacitor(words);
    const bool unit = has(text, "mfd") || has(text, "uf") || has(text, "mf") || has(text, "mike") ||
                      has(text, "microfarad");
    const bool with_volts = read.volts.reading && text.find_first_of("/xv") != std::string::npos;
    if (read.farads.failed() || read.farads.reading.raw.empty() || (!unit && !with_volts)) return false;
    put(out.plate.capacitor, read.farads);
    put(out.plate.capacitor_volts, read.volts);
    const Read<Capacitance> larger = read_compressor_capacitance(words);
    if (larger.reading && read.farads.reading && *larger.reading != *read.farads.reading)
        put(out.plate.compressor_capacitor, larger);
    return true;
}

bool take_power(const Folded& words, PlateText& out) {
    const std::string key = spelling_key(words);
    const bool unit = has(key, "hp") || has(key, "horse") || key.ends_with("w") || key.ends_with("watts") ||
                      key.ends_with("watt");
    if (!unit || key.find_first_not_of("abcdefghijklmnopqrstuvwxyz") == std::string::npos) {
        if (!has(key, "horse") && !key.ends_with("hp")) return false;
    }
    // Figures behind the unit are another value's: "1-1/2hp 1725".
    for (std::string_view other : {"dia", "shaft", "body", "rpm"}) {
        if (has(key, other)) return false;
    }
    const std::size_t behind = key.find("hp");
    if (behind != std::string::npos && behind > 0 &&
        key.find_first_of("0123456789", behind) != std::string::npos)
        return false;
    // "1-5 hp" is a range to one and a slip of the pen for 1.5 to another.
    const std::string& text = words.text();
    const std::size_t dash = text.find('-');
    const bool range = dash != std::string::npos && dash > 0 &&
                       text.find('-', dash + 1) == std::string::npos && is_digit(text[dash - 1]) &&
                       is_digit(text[dash + 1]) && !has(text, "/");
    if (range)
        return put(out.plate.power,
                   ask<std::vector<Power>>(words, "a range of powers, or one with a point?", {}));
    return put(out.plate.power, read_powers(words));
}

bool take_rotation(const Folded& words, PlateText& out) {
    const RotationText read = read_rotation_text(words);
    const std::string key = spelling_key(words);
    // Words that say other things elsewhere on a plate are no direction by themselves.
    for (std::string_view word : {"right", "left", "both", "either", "bi", "counter"}) {
        if (key == word) return false;
    }
    if (!put(out.plate.rotation, read.rotation)) return false;
    if (read.double_shaft) put(out.plate.double_shaft, read_as<bool>(words, true));
    return true;
}

bool take_double_shaft(const Folded& words, PlateText& out) {
    static constexpr std::array<std::string_view, 9> spellings{"ds",          "dblshaft",  "dblshft",
                                                               "doubleshaft", "dualshaft", "thrushaft",
                                                               "2shaft",      "2shafts",   "doubleshafted"};
    if (std::find(spellings.begin(), spellings.end(), spelling_key(words)) == spellings.end()) return false;
    return put(out.plate.double_shaft, read_as<bool>(words, true));
}

bool take_shaft(const Folded& words, PlateText& out) {
    const ShaftText read = read_shaft(words);
    if (!put(out.plate.shaft_diameter, read.diameter)) return false;
    put(out.plate.shaft_length, read.length);
    put(out.plate.shaft_flat, read.flat);
    return true;
}

bool take_flat(const Folded& words, PlateText& out) {
    const std::string& text = words.text();
    if (!text.ends_with("flat") && text != "d-shaft") return false;
    if (figures_only(text.substr(0, text.size() - 4)) && text.size() > 4) {
        const std::string figure(trimmed(std::string_view(text).substr(0, text.size() - 4)));
        if (!whole_number(figure)) return false;
        return put(out.plate.shaft_flat, ask<Length>(words, "the length of the shaft, or of its flat?",
                                                     {"shaft " + figure + " in", "flat " + figure + " in"}));
    }
    return put(out.plate.shaft_flat, read_shaft_flat(words));
}

/// "1/2 dia", "shaft 1/2", `1/2"`; "5.6 body", `5.6" dia`: the size tells shaft from body.
bool take_diameter(const Folded& words, PlateText& out) {
    const std::string& text = words.text();
    const bool shaft = has(text, "shaft") || has(text, "dia") || has(text, "\"");
    const bool body = has(text, "body") || has(text, "dia") || has(text, " od");
    if (!shaft && !body) return false;
    const bool others =
        std::any_of(text.begin(), text.end(), [](char c) { return c == 'x' || c == 'v' || c == '\''; }) ||
        has(text, "hp") || has(text, "rpm");
    const Read<Length> read = read_length(words);
    if (!read.reading || others) return false;
    if (shaft && *read.reading <= inch(1.25)) return put(out.plate.shaft_diameter, read);
    if (body && *read.reading >= inch(3) && *read.reading <= inch(11))
        return put(out.plate.body_diameter, read);
    return false;
}

/// "5 long", "4-1/2 lg".
bool take_shaft_length(const Folded& words, PlateText& out) {
    const std::string& text = words.text();
    if (!text.ends_with("long") && !text.ends_with("lg")) return false;
    return put(out.plate.shaft_length, read_shaft_length(words));
}

bool is_class(const PlateVolts& v) {
    static constexpr std::array classes{115.0, 208.0, 230.0, 277.0, 460.0, 575.0};
    const auto known_class = [](Voltage one) {
        return std::find(classes.begin(), classes.end(), one.in(volt)) != classes.end();
    };
    return known_class(v.low) && known_class(v.high);
}

bool take_volts(const Folded& words, PlateText& out) {
    const std::string& text = words.text();
    if (splits_figures(text) || has(text, " or ") || has(text, " to ")) return false;
    if (text.starts_with("370") || text.starts_with("440")) return false;  // waits for a capacitor
    const Read<std::vector<PlateVolts>> read = read_plate_volts(words);
    if (read.failed() || read.reading.raw.empty()) return false;
    const bool unit = has(text, "v");
    if (read.reading && !unit && !std::all_of(read.reading->begin(), read.reading->end(), is_class))
        return false;
    return put(out.plate.volts, read);
}

bool take_signal(const Folded& words, PlateText& out) {
    const std::string key = spelling_key(words);
    if (key != "24v" && key != "24vac" && key != "lowvolt" && key != "lowvoltage" && key != "24vtaps")
        return false;
    return put(out.plate.signal, read_as<SignalClass>(words, SignalClass::control_24v));
}

bool take_phase(const Folded& words, PlateText& out) {
    const std::string key = spelling_key(words);
    if (key.size() < 2 || key == "single" || key == "three") return false;
    return put(out.plate.phase, read_phase(words));
}

bool take_frequency(const Folded& words, PlateText& out) {
    const std::string key = spelling_key(words);
    if (!has(key, "hz") && !has(key, "hertz") && !has(key, "cy") && !has(key, "cps")) return false;
    const Read<Frequency> read = read_frequency(words);
    if (read.reading && *read.reading != hertz(50) && *read.reading != hertz(60))
        return put(out.plate.frequency,
                   ask<Frequency>(words, "no supply has these hertz: which is it?", {"50", "60"}));
    return put(out.plate.frequency, read);
}

/// "1075/825": the full-load speeds of six and of eight poles in one list.
bool changes_poles(std::string_view text) {
    bool six = false, eight = false;
    for (std::size_t at = 0; at < text.size();) {
        const std::size_t end = std::min(text.find('/', at), text.size());
        const auto number = number_at(text.substr(at, end - at));
        six = six || (number && number->value >= 950 && number->value <= 1180);
        eight = eight || (number && number->value >= 780 && number->value <= 885);
        at = end + 1;
    }
    return six && eight;
}

bool take_speed(const Folded& words, PlateText& out) {
    const std::string& text = words.text();
    const SpeedText read = read_speed_text(words);
    if (read.speed.failed() || read.speed.reading.raw.empty()) return false;
    // Without its unit only a figure between the slowest and the fastest fan motor is a speed: "115 3spd" is
    // volts.
    const bool unit = has(text, "rpm") || has(text, "r/min");
    const bool plausible =
        read.speed.reading && *read.speed.reading >= rpm(700) && *read.speed.reading <= rpm(3600);
    const bool open = read.speed.reading.is_open() && (figures_only(text) || text.starts_with("v"));
    if (!unit && !plausible && !open) return false;
    if (changes_poles(text))
        return put(out.plate.speed, ask<Speed>(words, "two speeds by two pole counts, or taps of one?", {}));
    if (!put(out.plate.speed, read.speed)) return false;
    put(out.plate.speeds, read.speeds);
    return true;
}

bool take_speeds(const Folded& words, PlateText& out) {
    const std::string key = spelling_key(words);
    if (key.find_first_not_of("0123456789") == std::string::npos) return false;
    for (std::string_view word : {"single", "one", "two", "three", "four", "five"}) {
        if (key == word) return false;
    }
    return put(out.plate.speeds, read_speeds(words));
}

bool take_poles(const Folded& words, PlateText& out) {
    const std::string key = spelling_key(words);
    if (!key.ends_with("p") && !key.ends_with("pole") && !key.ends_with("poles")) return false;
    return put(out.plate.poles, read_poles(words));
}

bool take_amps(const Folded& words, PlateText& out) {
    const std::string key = spelling_key(words);
    const bool label = key.starts_with("fla") || key.starts_with("amps") || key.starts_with("flc") ||
                       key.starts_with("rla") || key.starts_with("lra");
    const bool letter = key.size() > 1 && key.front() == 'a' && is_digit(key[1]);
    const bool unit = letter || key.ends_with("a") || key.ends_with("amp") || key.ends_with("amps");
    if ((!label && !unit) || key.find_first_of("0123456789") == std::string::npos) return false;
    return put(out.plate.current, read_plate_amps(words));
}

bool take_ambient(const Folded& words, PlateText& out) {
    const std::string key = spelling_key(words);
    const auto m = measure(words.text());
    if (!m || (!has(key, "amb") && !key.ends_with("c"))) return false;
    const Read<Temperature> read = read_temperature(words, Degrees::celsius);
    if (!read.reading || *read.reading < Temperature::celsius(30) || *read.reading > Temperature::celsius(90))
        return false;
    return put(out.plate.ambient, read);
}

bool take_service_factor(const Folded& words, PlateText& out) {
    const std::string& text = words.text();
    if (!text.starts_with("sf") && !text.starts_with("s.f") && !text.starts_with("service")) return false;
    return put(out.plate.service_factor, read_service_factor(words));
}

/// Understood, but no choice depends on it.
bool take_noted(const Folded& words, PlateText&) {
    static constexpr std::array<std::string_view, 25> noted{
        "encl",     "brg",      "brgs",           "prot",          "turns",  "motor",  "mtr",
        "rot",      "insa",     "insb",           "insf",          "insh",   "cla",    "clb",
        "clf",      "clh",      "classa",         "classb",        "classf", "classh", "cont",
        "dutycont", "contduty", "continuousduty", "dutycontinuous"};
    const std::string key = spelling_key(words);
    if (key.starts_with("sfa") && key.size() > 3 &&
        key.find_first_not_of("0123456789.", 3) == std::string::npos &&
        words.text().find(' ') == std::string::npos)
        return true;
    for (std::string_view front : {"insclass", "insulclass", "insulationclass"}) {
        if (key.starts_with(front) && key.size() == front.size() + 1) return true;
    }
    return std::find(noted.begin(), noted.end(), key) != noted.end();
}

/// "BB" is a belly band to one and ball bearings to another, "SP" shaded pole or speed.
bool take_two_sided(const Folded& words, PlateText& out) {
    const std::string key = spelling_key(words);
    if (key == "bb") {
        put(out.plate.mount, ask<Mount>(words, "belly band, or ball bearings?", {"band", "ball bearings"}));
        return put(out.plate.bearing,
                   ask<Bearing>(words, "belly band, or ball bearings?", {"ball", "belly band"}));
    }
    if (key == "sp")
        return put(out.plate.family, ask<Family>(words, "shaded pole, or speed?", {"shaded pole"}));
    return false;
}

template <class E, Reading<E> PlateReadings::*Field>
bool take_kind(const Folded& words, PlateText& out) {
    static constexpr std::array<std::string_view, 10> said_elsewhere{
        "none", "all", "any", "auto", "manual", "3ph", "3phase", "threephase", "fan", "man"};
    const std::string key = spelling_key(words);
    if (std::find(said_elsewhere.begin(), said_elsewhere.end(), key) != said_elsewhere.end()) return false;
    return put(out.plate.*Field, read_kind<E>(words));
}

/// "belt", "direct drive": what the unit has, which its motor's plate seldom says.
bool take_drive(const Folded& words, PlateText& out) {
    const Read<Drive> read = read_kind<Drive>(words);
    if (!read.reading || *read.reading == Drive::either || spelling_key(words) == "direct") return false;
    return put(out.unit.belt_drive, read_as<bool>(words, *read.reading == Drive::belt));
}

bool take_load(const Folded& words, PlateText& out) {
    return put(out.unit.load, read_kind<Load>(words));
}

bool take_position(const Folded& words, PlateText& out) {
    const std::string key = spelling_key(words);
    if (key == "any" || key == "all") return false;
    return put(out.unit.shaft_points, read_kind<ShaftPosition>(words));
}

bool take_protection(const Folded& words, PlateText& out) {
    if (spelling_key(words) == "none" || spelling_key(words) == "man") return false;
    return put(out.plate.protection, read_kind<Protection>(words));
}

}  // namespace

const std::vector<Recogniser>& recognisers() {
    static const std::vector<Recogniser> list{
        {"plate.volts", take_supply_triple},
        {"plate.capacitor", take_capacitor},
        {"plate.power", take_power},
        {"plate.double_shaft", take_double_shaft},
        {"plate.rotation", take_rotation},
        {"plate.shaft_diameter", take_shaft},
        {"plate.shaft_flat", take_flat},
        {"plate.shaft_diameter", take_diameter},
        {"plate.shaft_length", take_shaft_length},
        {"plate.signal", take_signal},
        {"plate.phase", take_phase},
        {"plate.volts", take_volts},
        {"plate.frequency", take_frequency},
        {"plate.speed", take_speed},
        {"plate.speeds", take_speeds},
        {"plate.poles", take_poles},
        {"plate.frame", take_frame},
        {"plate.ambient", take_ambient},
        {"plate.service_factor", take_service_factor},
        {"noted", take_noted},
        {"plate.current", take_amps},
        {"plate.family", take_two_sided},
        {"plate.family", take_kind<Family, &PlateReadings::family>},
        {"plate.enclosure", take_kind<Enclosure, &PlateReadings::enclosure>},
        {"plate.bearing", take_kind<Bearing, &PlateReadings::bearing>},
        {"plate.mount", take_kind<Mount, &PlateReadings::mount>},
        {"unit.belt_drive", take_drive},
        {"unit.load", take_load},
        {"unit.shaft_points", take_position},
        {"plate.protection", take_protection}};
    return list;
}

bool take_old_number(const Folded& label, const Folded& number, PlateText& out) {
    static constexpr std::array<std::string_view, 7> labels{"pn", "p/n",   "part", "part#",
                                                            "mn", "model", "cat#"};
    if (std::find(labels.begin(), labels.end(), spelling_key(label)) == labels.end()) return false;
    return put(out.unit.old_part_number, read_part_number(number));
}

}  // namespace endbell::inline words
