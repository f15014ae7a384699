#include "engine/words/plate_text.hpp"

#include <algorithm>
#include <array>

#include "engine/base/text.hpp"
#include "engine/words/plate_words.hpp"
#include "engine/words/words.hpp"

namespace endbell {

namespace {

constexpr std::size_t longest_run = 5;  // "1/2 dia x 6 lg", "7.5 MFD 370 V AC"
constexpr std::size_t longest_text = 48;

/// Words between white space; a comma, colon, equals sign, semicolon or bar at the end separates too.
std::vector<std::string> words_of(std::string_view text) {
    std::vector<std::string> words;
    std::string flat(text);
    std::replace_if(
        flat.begin(), flat.end(), [](char c) { return (c >= '\t' && c <= '\r') || c == ';' || c == '|'; },
        ' ');
    for (std::string& word : split(flat, ' ')) {
        while (!word.empty() && std::string_view(",:=").find(word.back()) != std::string_view::npos)
            word.pop_back();
        if (!word.empty()) words.push_back(std::move(word));
    }
    return words;
}

struct Run {
    std::size_t length = 0;
    std::string_view key;
};

/// "hp" and its like belong to the figure in front of them: in "1/2 x 5 1/2 hp" the shaft ends at the 5.
bool is_unit(const std::string& word) {
    static constexpr std::array<std::string_view, 23> units{
        "ph",  "phase", "hp",   "horse", "horsepower", "w",   "watts", "kw", "v",    "vac",  "volts", "volt",
        "rpm", "a",     "amps", "amp",   "hz",         "mfd", "uf",    "mf", "mike", "pole", "poles"};
    return std::find(units.begin(), units.end(), spelling_key(word)) != units.end();
}

/// The longest run at `start` that some recogniser takes; length 0 when none does.
Run take_run(const std::vector<std::string>& words, std::size_t start, PlateText& out) {
    for (std::size_t length = std::min(longest_run, words.size() - start); length > 0; --length) {
        const std::vector<std::string> run(words.begin() + static_cast<std::ptrdiff_t>(start),
                                           words.begin() + static_cast<std::ptrdiff_t>(start + length));
        const char last = run.back().back();
        const bool unit_next = start + length < words.size() && is_unit(words[start + length]);
        // On a plate with its labels in front, "hp 1/2 volts 230", the next word is the next label.
        const bool labelled = is_unit(run.front());
        const bool cuts_unit_off = length > 1 && last >= '0' && last <= '9' && unit_next && !labelled;
        if (cuts_unit_off) continue;
        const std::string text = joined(run, " ");
        if (text.size() > longest_text) continue;
        for (const Recogniser& recogniser : recognisers()) {
            if (recogniser.take(text, out)) return {length, recogniser.key};
        }
    }
    return {};
}

/// "1/2", ".5": a power, or a shaft diameter.
bool is_bare_fraction(const std::string& word) {
    const auto number = whole_number(folded(word));
    return number && number->value > 0 && number->value < 1.6 && (number->fraction || number->value < 1);
}

/// "370", "440V": a capacitor's volts where there is a capacitor.
bool is_capacitor_figure(const std::string& word) {
    const std::string key = spelling_key(word);
    return key == "370" || key == "370v" || key == "370vac" || key == "440" || key == "440v" ||
           key == "440vac";
}

void place_fraction(const std::string& word, PlateText& out) {
    const bool power_open = !out.plate.power;
    const bool shaft_open = !out.plate.shaft_diameter;
    if (!power_open && !shaft_open) {
        out.not_understood.push_back(word);
        return;
    }
    const std::string question = "horsepower, or the diameter of the shaft?";
    if (power_open) {
        out.plate.power =
            ask<std::vector<Power>>(word, question, {word + " hp", "shaft " + word + " in"}).reading;
        out.plate.power.origin = Origin::plate;
    }
    if (shaft_open) {
        out.plate.shaft_diameter =
            ask<Length>(word, question, {word + " hp", "shaft " + word + " in"}).reading;
        out.plate.shaft_diameter.origin = Origin::plate;
    }
    out.understood.push_back({word, power_open ? "plate.power" : "plate.shaft_diameter"});
}

void place_capacitor_figure(const std::string& word, PlateText& out) {
    if (out.plate.capacitor.raw.empty()) {
        auto read = read_plate_volts(word);
        if (!read.reading.is_open() || !out.plate.volts.raw.empty()) {
            out.not_understood.push_back(word);
            return;
        }
        out.plate.volts = read.reading;
        out.plate.volts.origin = Origin::plate;
        out.understood.push_back({word, "plate.volts"});
        return;
    }
    if (out.plate.capacitor_volts.raw.empty()) {
        out.plate.capacitor_volts = read_capacitor_volts(word).reading;
        out.plate.capacitor_volts.origin = Origin::plate;
        out.understood.push_back({word, "plate.capacitor_volts"});
        return;
    }
    out.not_understood.push_back(word);
}

/// A three-phase motor has no run capacitor: one of the two words is wrong.
void doubt_phase(PlateFacts& plate) {
    if (!plate.phase || *plate.phase != 3 || plate.capacitor.raw.empty()) return;
    plate.phase.value.reset();
    plate.phase.question = "three phase, and yet a capacitor: which is right?";
    plate.phase.readings = {"1", "3"};
}

}  // namespace

PlateText read_plate(std::string_view text) {
    PlateText out;
    std::vector<std::string> fractions;
    std::vector<std::string> capacitor_figures;
    const std::vector<std::string> words = words_of(text);
    for (std::size_t at = 0; at < words.size();) {
        const Run run = take_run(words, at, out);
        if (run.length > 0) {
            const std::vector<std::string> taken(
                words.begin() + static_cast<std::ptrdiff_t>(at),
                words.begin() + static_cast<std::ptrdiff_t>(at + run.length));
            out.understood.push_back({joined(taken, " "), std::string(run.key)});
            at += run.length;
            continue;
        }
        // What a word means may hang on the others: these wait until all have been read.
        if (is_bare_fraction(words[at]))
            fractions.push_back(words[at]);
        else if (is_capacitor_figure(words[at]))
            capacitor_figures.push_back(words[at]);
        else
            out.not_understood.push_back(words[at]);
        ++at;
    }
    for (const std::string& word : capacitor_figures) place_capacitor_figure(word, out);
    for (const std::string& word : fractions) place_fraction(word, out);
    doubt_phase(out.plate);
    return out;
}

}  // namespace endbell
