#include "engine/words/electrical.hpp"

#include <algorithm>
#include <limits>

#include "engine/base/text.hpp"

namespace endbell::inline words {

namespace {

const Scale<VoltageDimension>& volt_scale() {
    static const Scale<VoltageDimension> scale{"volts, such as '118.4'",
                                               volt,
                                               {{"v", volt},
                                                {"vac", volt},
                                                {"volt", volt},
                                                {"volts", volt},
                                                {"vdc", volt},
                                                {"kv", Unit<VoltageDimension>{1000}},
                                                {"mv", Unit<VoltageDimension>{0.001}}},
                                               {},
                                               1000,
                                               Nought::a_value};
    return scale;
}

const Scale<CurrentDimension>& amp_scale() {
    static const Scale<CurrentDimension> scale{
        "amps, such as '3.6' or 'FLA 3.6'",
        ampere,
        {{"a", ampere}, {"amp", ampere}, {"amps", ampere}, {"ma", Unit<CurrentDimension>{0.001}}},
        {"fla", "amps", "flc", "mca", "mop", "mocp"},
        1000,
        Nought::a_value};
    return scale;
}

}  // namespace

Read<Voltage> read_voltage(const Folded& words) {
    return read_quantity(words, volt_scale());
}

Read<Voltage> read_capacitor_volts(const Folded& words) {
    auto scale = volt_scale();
    scale.expected = "a capacitor's volts, such as '370' or '440'";
    scale.nought = Nought::missing;
    return read_quantity(words, scale);
}

Read<Current> read_current(const Folded& words) {
    return read_quantity(words, amp_scale());
}

namespace {

/// One reading of `scale`, or three parted by strokes.
template <class Dimension>
Read<Legs<Quantity<Dimension>>> read_legs(const Folded& words, const Scale<Dimension>& scale,
                                          std::string_view expected) {
    using Of = Legs<Quantity<Dimension>>;
    std::string text = words.text();
    std::replace(text.begin(), text.end(), ';', '/');
    const std::vector<std::string> parts = split(text, '/');
    if (parts.size() == 1) {
        const Read<Quantity<Dimension>> one = read_quantity(words, scale);
        if (one.failed()) return unreadable<Of>(words, expected);
        if (!one.reading.value) return no_value<Of>(one);
        return read_as<Of>(words, *one.reading.value);
    }
    std::vector<Quantity<Dimension>> each;
    for (const std::string& part : parts) {
        const Read<Quantity<Dimension>> one = read_quantity(words.left_with(part), scale);
        if (!one.reading.value) return unreadable<Of>(words, expected);
        each.push_back(*one.reading.value);
    }
    if (each.size() != 3) return unreadable<Of>(words, expected);
    return read_as<Of>(words, Of(each[0], each[1], each[2]));
}

}  // namespace

Read<LineVolts> read_line_volts(const Folded& words) {
    return read_legs(words, volt_scale(), "volts, such as '118.4', or three of the legs: '460/467/450'");
}

Read<LineAmps> read_line_amps(const Folded& words) {
    return read_legs(words, amp_scale(), "amps, such as '3.6', or three of the legs: '3.6/3.5/3.7'");
}

Read<Current> read_plate_amps(const Folded& words) {
    if (is_missing(words)) return not_written<Current>();
    const std::string& text = words.text();
    const std::string key = spelling_key(words);
    if (key.starts_with("rla") || key.starts_with("lra") || key.ends_with("rla") || key.ends_with("lra")) {
        return ask<Current>(words, "RLA and LRA are a compressor's: what is the fan motor's FLA?", {});
    }
    auto scale = amp_scale();
    scale.nought = Nought::missing;
    const std::size_t first = text.find_first_of("0123456789.");
    const std::string figures = first == std::string::npos ? text : text.substr(first);
    for (char separator : {'/', '-'}) {
        const std::vector<std::string> parts = split(figures, separator);
        if (parts.size() != 2) continue;
        const auto high = read_quantity(words.left_with(parts[0]), scale);
        const auto low = read_quantity(words.left_with(parts[1]), scale);
        if (!high.reading || !low.reading) continue;
        if (*high.reading == *low.reading) return read_as<Current>(words, *high.reading.value);
        return ask<Current>(words, "two currents: at which of the plate's two voltages does this motor run?",
                            {shortest(high.reading->in(ampere)) + " A at the lower voltage",
                             shortest(low.reading->in(ampere)) + " A at the higher voltage"});
    }
    return read_quantity(words, scale);
}

Read<ApparentPower> read_apparent_power(const Folded& words) {
    return read_quantity(words, Scale<ApparentPowerDimension>{
                                    "volt-amperes, such as '40 VA'",
                                    volt_ampere,
                                    {{"va", volt_ampere}, {"kva", Unit<ApparentPowerDimension>{1000}}},
                                    {},
                                    10000,
                                    Nought::a_value});
}

Read<Resistance> read_resistance(const Folded& words) {
    const std::string key = spelling_key(words);
    static const std::vector<std::string> open{"ol",       "open",     "inf",     "infinite",
                                               "infinity", "overload", "openline"};
    if (std::find(open.begin(), open.end(), key) != open.end()) {
        return read_as<Resistance>(words, ohm(std::numeric_limits<double>::infinity()));
    }
    const Unit<ResistanceDimension> kilo{1e3};
    const Unit<ResistanceDimension> mega{1e6};
    // A meter prints M for mega and m for milli; folding has lost the case, so a milliohm is not read.
    const bool milli = words.raw().find("m\u03a9") != std::string_view::npos ||
                       words.raw().find("mohm") != std::string_view::npos ||
                       words.raw().find("m\u2126") != std::string_view::npos;
    if (milli) return unreadable<Resistance>(words, "ohm, such as '0.9', '120k' or 'OL'");
    Scale<ResistanceDimension> scale{"ohm, such as '0.9', '120k' or 'OL'",
                                     ohm,
                                     {{"ohm", ohm},
                                      {"ohms", ohm},
                                      {"r", ohm},
                                      {"k", kilo},
                                      {"kohm", kilo},
                                      {"kohms", kilo},
                                      {"kilohm", kilo},
                                      {"m", mega},
                                      {"meg", mega},
                                      {"mohm", mega},
                                      {"megohm", mega},
                                      {"megohms", mega}},
                                     {},
                                     1e12,
                                     Nought::a_value};
    scale.thousands = true;
    return read_quantity(words, scale);
}

Read<std::vector<Resistance>> read_windings(const Folded& words) {
    using List = std::vector<Resistance>;
    constexpr std::string_view expected = "three readings in ohm, pin to pin, such as '0.9; 0.9; 1.0'";
    if (is_missing(words)) return not_written<List>();
    std::string text = words.text();
    for (std::size_t at = text.find(", "); at != std::string::npos; at = text.find(", "))
        text.replace(at, 2, ";");
    std::replace(text.begin(), text.end(), '/', ';');
    List ohms;
    for (const std::string& part : split(text, ';')) {
        // Folded, a milliohm and a megohm are one word, and neither is a winding's.
        const auto one = read_resistance(words.left_with(part));
        if (!one.reading || part.find("mohm") != std::string::npos) return unreadable<List>(words, expected);
        ohms.push_back(*one.reading);
    }
    if (ohms.size() != 3) return unreadable<List>(words, expected);
    return read_as<List>(words, ohms);
}

Read<Frequency> read_frequency(const Folded& words) {
    const std::string key = spelling_key(words);
    if (key == "50/60" || key == "50/60hz" || key == "50-60" || key == "60/50" || key == "60/50hz") {
        return ask<Frequency>(words, "rated for both: which does the building have?", {"50 Hz", "60 Hz"});
    }
    constexpr std::string_view expected = "hertz: '60' or '50'";
    const Scale<FrequencyDimension> scale{
        expected,
        hertz,
        {{"hz", hertz}, {"hertz", hertz}, {"cy", hertz}, {"cps", hertz}, {"cycles", hertz}, {"~", hertz}}};
    const Read<Frequency> read = read_quantity(words, scale);
    // Public supplies have 50 or 60; a drive may run a motor from 20 to 120. A "1" beside "Hz" is a phase.
    const bool supply = read.reading && *read.reading >= hertz(20) && *read.reading <= hertz(120);
    return read.reading && !supply ? unreadable<Frequency>(words, expected) : read;
}

Read<int> read_phase(const Folded& words) {
    if (is_missing(words)) return not_written<int>();
    const std::string key = spelling_key(words);
    static const std::vector<std::string> one{"1",      "1ph",         "ph1", "1phase",   "1~",
                                              "single", "singlephase", "sph", "onephase", "phase1"};
    static const std::vector<std::string> three{"3",     "3ph",        "ph3",    "3phase",    "3~",
                                                "three", "threephase", "phase3", "polyphase", "tph"};
    if (std::find(one.begin(), one.end(), key) != one.end()) return read_as<int>(words, 1);
    if (std::find(three.begin(), three.end(), key) != three.end()) return read_as<int>(words, 3);
    return unreadable<int>(words, "the phases: '1' or '3'");
}

}  // namespace endbell::inline words
