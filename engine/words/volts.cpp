// Plate voltages. Slash and dash both mean a span inside one class pair (208, 230) and a choice outside it.
#include <algorithm>
#include <array>

#include "engine/base/text.hpp"
#include "engine/words/electrical.hpp"

namespace endbell::inline words {

namespace {

using List = std::vector<PlateVolts>;

constexpr std::string_view expected =
    "a plate voltage such as '115', '208-230', '230/460' or '277'; 24 V is control, not supply";

/// "115 vac", "208v" without their unit; "one-ten", "1-15", "2-30" as figures.
std::string without_units(std::string text) {
    static constexpr std::array<std::pair<std::string_view, std::string_view>, 7> spoken{
        {{"one-ten", "110"},
         {"one ten", "110"},
         {"one-fifteen", "115"},
         {"two-thirty", "230"},
         {"two thirty", "230"},
         {"two-forty", "240"},
         {"two-oh-eight", "208"}}};
    for (const auto& [said, figures] : spoken) {
        const std::size_t at = text.find(said);
        if (at != std::string::npos) text.replace(at, said.size(), figures);
    }
    for (std::string_view unit : {"volts", "volt", "vac", "ac", "v"}) {
        for (std::size_t at = text.find(unit); at != std::string::npos; at = text.find(unit))
            text.replace(at, unit.size(), " ");
    }
    std::string plain;
    for (std::size_t i = 0; i < text.size(); ++i) {
        // A blank or a dot between two figures stays, so that "1 15" and "1.15" do not become 115.
        const bool gap = text[i] == ' ' || text[i] == '.';
        const std::size_t next = text.find_first_not_of(' ', i);
        const bool inside = !plain.empty() && is_digit(plain.back()) && next != std::string::npos &&
                            (is_digit(text[next]) || text[next] == '.');
        if (!gap || inside) plain += text[i];
    }
    if (plain == "1-10") return "110";
    if (plain == "1-15") return "115";
    if (plain == "1-20") return "120";
    if (plain == "2-20") return "220";
    if (plain == "2-30") return "230";
    if (plain == "2-40") return "240";
    if (plain == "2-08") return "208";
    return plain;
}

/// One group of a plate voltage, "208-230" or "115"; nothing when it is not figures between 90 and 700.
std::optional<PlateVolts> group(std::string_view text) {
    std::string dashes(text);
    std::replace(dashes.begin(), dashes.end(), '~', '-');
    const std::vector<std::string> ends = split(dashes, '-');
    if (ends.empty() || ends.size() > 2) return std::nullopt;
    std::vector<double> figures;
    for (const std::string& end : ends) {
        const auto number = whole_number(end);
        if (!number || number->fraction || number->value < 90 || number->value > 700) return std::nullopt;
        figures.push_back(nominal_volts(number->value));
    }
    if (figures.front() > figures.back()) return std::nullopt;
    return plate_volts(figures.front(), figures.back());
}

bool is_208_to_230(const PlateVolts& v) {
    return v == plate_volts(208, 230);
}

Read<List> ask_choice(const Folded& words, const List& groups) {
    std::vector<std::string> readings;
    for (const PlateVolts& v : groups) {
        readings.push_back(shortest(v.low.in(volt)) +
                           (v.low == v.high ? "" : "-" + shortest(v.high.in(volt))) + " V by lead or jumper");
    }
    readings.emplace_back("one winding for the whole span");
    return ask<List>(words,
                     "two voltages: is it reconnectable? Read the jumper or lead table, and which one is set",
                     readings);
}

/// "460-3-60", "208/230/1/60": volts, phase, hertz.
bool is_supply_triple(const std::string& text) {
    std::string plain = text;
    std::replace(plain.begin(), plain.end(), '/', '-');
    const std::vector<std::string> parts = split(plain, '-');
    if (parts.size() < 3 || !group(parts.front())) return false;
    const std::string& hertz_part = parts.back();
    const std::string& phase = parts[parts.size() - 2];
    const bool hertz_given =
        hertz_part == "60" || hertz_part == "50" || hertz_part == "60hz" || hertz_part == "50hz";
    return hertz_given && (phase == "1" || phase == "3" || phase == "1ph" || phase == "3ph");
}

/// 208/230 written with a slash is one span: joins such neighbours.
List joined_spans(const List& groups) {
    List out;
    for (const PlateVolts& v : groups) {
        const bool joins = !out.empty() && out.back() == plate_volts(208) && v == plate_volts(230);
        if (joins)
            out.back() = plate_volts(208, 230);
        else if (out.empty() || out.back() != v)
            out.push_back(v);
    }
    return out;
}

Read<List> from_groups(const Folded& words, const List& groups, std::optional<Family> family) {
    const List list = joined_spans(groups);
    if (list.size() > 3) return unreadable<List>(words, expected);
    const bool jumper = family && is_electronic(*family);
    if (list.size() == 1) {
        const PlateVolts& v = list.front();
        if (v.low == v.high || is_208_to_230(v) || v.high < 1.5 * v.low) return read_as<List>(words, list);
        return ask_choice(words, {plate_volts(v.low.in(volt)), plate_volts(v.high.in(volt))});
    }
    const bool low_pair = list == List{plate_volts(115), plate_volts(230)};
    if (low_pair && !jumper) return ask_choice(words, list);
    // A nine-lead winding halves its voltage; anything else of two classes wants its lead table read.
    for (std::size_t i = 1; i < list.size(); ++i) {
        const double ratio = list[i].high / list[i - 1].high;
        if (ratio < 1.9 || ratio > 2.1) return ask_choice(words, list);
    }
    return read_as<List>(words, list);
}

}  // namespace

double nominal_volts(double written) {
    const VoltageClass* known_class = class_of(written);
    return known_class != nullptr ? known_class->nominal.in(volt) : written;
}

Read<List> read_plate_volts(const Folded& words, std::optional<Family> family) {
    if (is_missing(words) || words.text() == "0") return not_written<List>();
    if (is_spreadsheet_damage(words)) return ask_spreadsheet<List>(words);
    std::string text = words.text();
    // The printer's own words: " or " between reconnections, " to " inside one winding's span.
    List said;
    bool plain = true;
    for (std::size_t at = text.find(" or "); at != std::string::npos; at = text.find(" or "))
        text.replace(at, 4, ";");
    const std::vector<std::string> choices = split(text, ';');
    for (const std::string& choice : choices) {
        std::string one = choice;
        const std::size_t to = one.find(" to ");
        if (to != std::string::npos) one.replace(to, 4, "-");
        const auto v = group(without_units(one));
        if (v) said.push_back(*v);
        plain = plain && v && (to != std::string::npos || choices.size() > 1);
    }
    if (plain) return read_as<List>(words, said);
    text = without_units(text);
    if (is_supply_triple(text)) {
        return ask<List>(words,
                         "volts-phase-hertz: from the motor's own plate, or from the equipment's? Write "
                         "volts and phase of the motor",
                         {"the motor's plate", "the equipment's plate"});
    }
    if (text == "440" || text == "370") {
        return ask<List>(words, "supply, or the volts of a capacitor?",
                         {text == "440" ? "460 V class supply" : "another supply", text + " V capacitor"});
    }
    List groups;
    for (const std::string& part : split(text, '/')) {
        const auto v = group(part);
        if (!v) return unreadable<List>(words, expected);
        groups.push_back(*v);
    }
    return from_groups(words, groups, family);
}

Read<PlateVolts> read_rating_volts(const Folded& words) {
    const Read<List> list = read_plate_volts(words);
    if (!list.reading) return no_value<PlateVolts>(list);
    if (list.reading->size() != 1) {
        return unreadable<PlateVolts>(words, "one voltage or one span; a second rating is a second row");
    }
    return read_as<PlateVolts>(words, list.reading->front());
}

}  // namespace endbell::inline words
