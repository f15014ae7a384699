#include "engine/words/plate_text.hpp"

#include <algorithm>
#include <array>
#include <cmath>

#include "engine/base/text.hpp"
#include "engine/words/plate_labels.hpp"
#include "engine/words/plate_words.hpp"
#include "engine/words/slashed.hpp"
#include "engine/words/spoken.hpp"
#include "engine/words/words.hpp"

namespace endbell::inline words {

namespace {

constexpr std::size_t longest_run = 5;  // "1/2 dia x 6 lg", "7.5 MFD 370 V AC"
constexpr std::size_t longest_text = 48;

PlateWord word_of(const FoldedLine& line, std::vector<Piece> pieces) {
    pieces.front().joint = ' ';
    Folded words = line.of(pieces);
    return {std::move(pieces), std::move(words)};
}

bool is_letter(char c) {
    return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z');
}

/// "115V-1PH-60HZ": a dash behind the unit of one figure and in front of the figure of another unit.
bool ends_a_figure(std::string_view raw, std::size_t dash) {
    if (dash == 0 || dash + 1 >= raw.size() || !is_letter(raw[dash - 1]) || !is_digit(raw[dash + 1]))
        return false;
    std::size_t unit = dash;
    while (unit > 0 && is_letter(raw[unit - 1])) --unit;
    if (unit == 0 || !is_digit(raw[unit - 1])) return false;
    std::size_t other = dash + 1;
    while (other < raw.size() && (is_digit(raw[other]) || raw[other] == '.')) ++other;
    return other < raw.size() && is_letter(raw[other]) && (raw[other] | 0x20) != (raw[unit] | 0x20);
}

/// White space, a bar, a semicolon; a colon or an equals sign; a comma but within a figure, "1,075".
bool separates(std::string_view raw, std::size_t at) {
    const char c = raw[at];
    if (std::string_view(" \t\n\v\f\r;|:=").find(c) != std::string_view::npos) return true;
    if (c == '-') return ends_a_figure(raw, at);
    const bool in_figure = at > 0 && at + 1 < raw.size() && is_digit(raw[at - 1]) && is_digit(raw[at + 1]);
    return c == ',' && !in_figure;
}

std::vector<PlateWord> words_of(const FoldedLine& line) {
    const std::string& raw = line.raw();
    std::vector<PlateWord> words;
    for (std::size_t begin = 0; begin < raw.size();) {
        std::size_t end = begin;
        while (end < raw.size() && !separates(raw, end)) ++end;
        const bool says =
            end > begin && raw.substr(begin, end - begin).find_first_not_of("/-") != std::string::npos;
        if (says) words.push_back(word_of(line, {{begin, end}}));
        begin = end + 1;
    }
    return words;
}

struct Run {
    std::size_t length = 0;
    std::string_view key;
};

/// "hp" and its like belong to the figure in front of them: in "1/2 x 5 1/2 hp" the shaft ends at the 5.
bool is_unit(const Folded& word) {
    static constexpr std::array<std::string_view, 23> units{
        "ph",  "phase", "hp",   "horse", "horsepower", "w",   "watts", "kw", "v",    "vac",  "volts", "volt",
        "rpm", "a",     "amps", "amp",   "hz",         "mfd", "uf",    "mf", "mike", "pole", "poles"};
    return std::find(units.begin(), units.end(), spelling_key(word)) != units.end();
}

/// The longest run at `start` that some recogniser takes; length 0 when none does.
Run take_run(const FoldedLine& line, const std::vector<PlateWord>& words, std::size_t start, PlateText& out) {
    for (std::size_t length = std::min(longest_run, words.size() - start); length > 0; --length) {
        const Folded run = run_of(line, words, start, length);
        const bool unit_next = start + length < words.size() && is_unit(words[start + length].words);
        // On a plate with its labels in front, "hp 1/2 volts 230", the next word is the next label.
        const bool labelled = is_unit(words[start].words);
        const bool cuts_unit_off = length > 1 && is_digit(run.raw().back()) && unit_next && !labelled;
        if (cuts_unit_off || run.raw().size() > longest_text) continue;
        for (const Recogniser& recogniser : recognisers()) {
            if (recogniser.take(run, out)) return {length, recogniser.key};
        }
        if (length == 2 && take_old_number(words[start].words, words[start + 1].words, out))
            return {length, "unit.old_part_number"};
    }
    return {};
}

bool is_length(const Folded& words) {
    const auto m = measure(words.text());
    return m && !m->after.empty() && m->before.empty() && read_length(words).reading;
}

/// `5.6"`, "5-5/8 in": how many words from `at` are a length with its unit and nothing else.
std::size_t length_words(const FoldedLine& line, const std::vector<PlateWord>& words, std::size_t at) {
    if (is_length(words[at].words)) return 1;
    const bool unit_apart = at + 1 < words.size() && !is_unit(words[at + 1].words) &&
                            whole_number(words[at].words.text()) && is_length(run_of(line, words, at, 2));
    return unit_apart ? 2 : 0;
}

/// "1/2", ".5": a power, or a shaft diameter.
bool is_bare_fraction(const Folded& word) {
    const auto number = whole_number(word.text());
    return number && number->value > 0 && number->value < 1.6 && (number->fraction || number->value < 1);
}

/// "370", "440V": a capacitor's volts where there is a capacitor.
bool is_capacitor_figure(const Folded& word) {
    const std::string key = spelling_key(word);
    return key == "370" || key == "370v" || key == "370vac" || key == "440" || key == "440v" ||
           key == "440vac";
}

constexpr double thinnest_shaft = 3.0 / 16;  // inches; of fan motors, common practice

/// Shafts come in sixteenths: a third, a fifth or a sixth is a power.
bool can_be_a_shaft(double size) {
    const double sixteenths = size * 16;
    return size >= thinnest_shaft && std::abs(sixteenths - std::round(sixteenths)) < 1e-9;
}

void place_fraction(const Folded& word, PlateText& out) {
    const bool power_open = !out.plate.power;
    const bool is_shaft = can_be_a_shaft(whole_number(word.text())->value);
    const bool shaft_open = !out.plate.shaft_diameter && is_shaft;
    if (power_open && !is_shaft && whole_number(word.text())->fraction) {
        out.plate.power = read_powers(fold(word.text() + " hp")).reading;
        out.plate.power.raw = word.raw();
        out.plate.power.origin = Origin::plate;
        out.understood.push_back({word.raw(), "plate.power"});
        return;
    }
    if (!power_open && !shaft_open) {
        out.not_understood.push_back(word.raw());
        return;
    }
    const std::string question = "horsepower, or the diameter of the shaft?";
    const std::vector<std::string> meanings{word.raw() + " hp", "shaft " + word.raw() + " in"};
    if (power_open) {
        out.plate.power = ask<std::vector<Power>>(word, question, meanings).reading;
        out.plate.power.origin = Origin::plate;
    }
    if (shaft_open) {
        out.plate.shaft_diameter = ask<Length>(word, question, meanings).reading;
        out.plate.shaft_diameter.origin = Origin::plate;
    }
    out.understood.push_back({word.raw(), power_open ? "plate.power" : "plate.shaft_diameter"});
}

/// The size of a body where the shaft's length is written, else a question about both.
void place_length(const Folded& words, PlateText& out) {
    const std::string& text = words.raw();
    PlateReadings& plate = out.plate;
    const Read<Length> read = read_length(words);
    const Length length = *read.reading;
    const bool body_written = !plate.body_diameter.raw.empty();
    const bool shaft_written = !plate.shaft_length.raw.empty();
    if (length <= inch(1.25) && plate.shaft_diameter.raw.empty()) {
        plate.shaft_diameter = read.reading;
        plate.shaft_diameter.origin = Origin::plate;
        out.understood.push_back({text, "plate.shaft_diameter"});
    } else if (length < inch(3) || length > inch(11) || (body_written && shaft_written)) {
        out.not_understood.push_back(text);
    } else if (plate.shaft_length) {
        plate.body_diameter = read.reading;
        plate.body_diameter.origin = Origin::plate;
        out.understood.push_back({text, "plate.body_diameter"});
    } else if (body_written) {
        plate.shaft_length =
            ask<Length>(words, "the length of the shaft, or of something else?", {"shaft " + text + " long"})
                .reading;
        plate.shaft_length.origin = Origin::plate;
        out.understood.push_back({text, "plate.shaft_length"});
    } else {
        plate.body_diameter = ask<Length>(words, "the diameter of the body, or the length of the shaft?",
                                          {"body " + text, "shaft " + text + " long"})
                                  .reading;
        plate.body_diameter.origin = Origin::plate;
        if (!shaft_written) plate.shaft_length = plate.body_diameter;
        out.understood.push_back({text, "plate.body_diameter"});
    }
}

void place_capacitor_figure(const Folded& word, PlateText& out) {
    if (out.plate.capacitor.raw.empty()) {
        auto read = read_plate_volts(word);
        if (!read.reading.is_open() || !out.plate.volts.raw.empty()) {
            out.not_understood.push_back(word.raw());
            return;
        }
        out.plate.volts = read.reading;
        out.plate.volts.origin = Origin::plate;
        out.understood.push_back({word.raw(), "plate.volts"});
        return;
    }
    if (out.plate.capacitor_volts.raw.empty()) {
        out.plate.capacitor_volts = read_capacitor_volts(word).reading;
        out.plate.capacitor_volts.origin = Origin::plate;
        out.understood.push_back({word.raw(), "plate.capacitor_volts"});
        return;
    }
    out.not_understood.push_back(word.raw());
}

/// A bare 50 or 60 is the hertz to most, and a frame or a size to some.
void place_hertz(const Folded& word, PlateText& out) {
    if (!out.plate.frequency.raw.empty()) {
        out.not_understood.push_back(word.raw());
        return;
    }
    out.plate.frequency =
        ask<Frequency>(word, "the hertz of its supply, or something else?", {word.raw() + " Hz"}).reading;
    out.plate.frequency.origin = Origin::plate;
    out.understood.push_back({word.raw(), "plate.frequency"});
}

/// A three-phase motor has no run capacitor: one of the two words is wrong.
void doubt_phase(PlateReadings& plate) {
    if (!plate.phase || *plate.phase != 3 || plate.capacitor.raw.empty()) return;
    plate.phase.value.reset();
    plate.phase.question = "three phase, and yet a capacitor: which is right?";
    plate.phase.readings = {"1", "3"};
}

/// Reads words in their order; what hangs on the other words waits until all have been read.
class PlateReader {
  public:
    explicit PlateReader(std::string_view text) : line_(text) {}

    PlateText all() {
        for (const std::vector<PlateWord>& stretch : without_labelled(line_, words_of(line_), out_))
            read(stretch);
        for (const Folded& word : capacitor_figures_) place_capacitor_figure(word, out_);
        for (const Folded& length : lengths_) place_length(length, out_);
        for (const Folded& word : fractions_) place_fraction(word, out_);
        for (const Folded& word : hertz_) place_hertz(word, out_);
        doubt_phase(out_.plate);
        return std::move(out_);
    }

  private:
    FoldedLine line_;
    PlateText out_;
    std::vector<Folded> fractions_;
    std::vector<Folded> capacitor_figures_;
    std::vector<Folded> lengths_;
    std::vector<Folded> hertz_;

    void read(const std::vector<PlateWord>& words) {
        for (std::size_t at = 0; at < words.size();) at += read_at(words, at);
    }

    /// How many words it took.
    std::size_t read_at(const std::vector<PlateWord>& words, std::size_t at) {
        if (const Run run = take_run(line_, words, at, out_); run.length > 0) {
            out_.understood.push_back({run_of(line_, words, at, run.length).raw(), std::string(run.key)});
            return run.length;
        }
        // Each piece by itself: "208-230/60/1 1/4HP" holds no 1 1/4.
        if (const auto pieces = slash_pieces(line_, words[at].pieces); !pieces.empty()) {
            for (const std::vector<Piece>& piece : pieces) read({word_of(line_, piece)});
            return 1;
        }
        if (const std::size_t length = length_words(line_, words, at); length > 0) {
            lengths_.push_back(run_of(line_, words, at, length));
            return length;
        }
        const Folded& word = words[at].words;
        if (is_bare_fraction(word))
            fractions_.push_back(word);
        else if (is_capacitor_figure(word))
            capacitor_figures_.push_back(word);
        else if (word.text() == "50" || word.text() == "60")
            hertz_.push_back(word);
        else
            out_.not_understood.push_back(word.raw());
        return 1;
    }
};

}  // namespace

PlateText read_plate(std::string_view text) {
    return PlateReader(spoken_in_figures(text)).all();
}

}  // namespace endbell::inline words
