#include "engine/words/plate_text.hpp"

#include <algorithm>
#include <array>

#include "engine/base/text.hpp"
#include "engine/words/plate_words.hpp"
#include "engine/words/slashed.hpp"
#include "engine/words/words.hpp"

namespace endbell::inline words {

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

/// `5.6"`, "5-5/8 in": how many words from `at` are a length with its unit and nothing else.
std::size_t length_words(const std::vector<std::string>& words, std::size_t at) {
    const auto is_length = [](const std::string& text) {
        const auto m = measure(folded(text));
        return m && !m->after.empty() && m->before.empty() && read_length(text).reading;
    };
    if (is_length(words[at])) return 1;
    const bool unit_apart = at + 1 < words.size() && !is_unit(words[at + 1]) &&
                            whole_number(folded(words[at])) && is_length(words[at] + " " + words[at + 1]);
    return unit_apart ? 2 : 0;
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

constexpr double thinnest_shaft = 3.0 / 16;  // inches; of fan motors, common practice

void place_fraction(const std::string& word, PlateText& out) {
    const bool power_open = !out.plate.power;
    const bool shaft_open = !out.plate.shaft_diameter && whole_number(folded(word))->value >= thinnest_shaft;
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

/// The size of a body where the shaft's length is written, else a question about both.
void place_length(const std::string& text, PlateText& out) {
    PlateFacts& plate = out.plate;
    const Read<Length> read = read_length(text);
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
            ask<Length>(text, "the length of the shaft, or of something else?", {"shaft " + text + " long"})
                .reading;
        plate.shaft_length.origin = Origin::plate;
        out.understood.push_back({text, "plate.shaft_length"});
    } else {
        plate.body_diameter = ask<Length>(text, "the diameter of the body, or the length of the shaft?",
                                          {"body " + text, "shaft " + text + " long"})
                                  .reading;
        plate.body_diameter.origin = Origin::plate;
        if (!shaft_written) plate.shaft_length = plate.body_diameter;
        out.understood.push_back({text, "plate.body_diameter"});
    }
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

/// Reads words in their order; what hangs on the other words waits until all have been read.
class PlateReader {
  public:
    void read(const std::vector<std::string>& words) {
        for (std::size_t at = 0; at < words.size();) at += read_at(words, at);
    }

    PlateText finished() {
        for (const std::string& word : capacitor_figures_) place_capacitor_figure(word, out_);
        for (const std::string& length : lengths_) place_length(length, out_);
        for (const std::string& word : fractions_) place_fraction(word, out_);
        doubt_phase(out_.plate);
        return std::move(out_);
    }

  private:
    PlateText out_;
    std::vector<std::string> fractions_;
    std::vector<std::string> capacitor_figures_;
    std::vector<std::string> lengths_;

    /// How many words it took.
    std::size_t read_at(const std::vector<std::string>& words, std::size_t at) {
        const std::string& word = words[at];
        const auto run_of = [&](std::size_t length) {
            return joined(std::vector<std::string>(words.begin() + static_cast<std::ptrdiff_t>(at),
                                                   words.begin() + static_cast<std::ptrdiff_t>(at + length)),
                          " ");
        };
        if (const Run run = take_run(words, at, out_); run.length > 0) {
            out_.understood.push_back({run_of(run.length), std::string(run.key)});
            return run.length;
        }
        // Each piece by itself: "208-230/60/1 1/4HP" holds no 1 1/4.
        if (const auto pieces = slash_pieces(word); !pieces.empty()) {
            for (const std::string& piece : pieces) read({piece});
            return 1;
        }
        if (const std::size_t length = length_words(words, at); length > 0) {
            lengths_.push_back(run_of(length));
            return length;
        }
        if (is_bare_fraction(word))
            fractions_.push_back(word);
        else if (is_capacitor_figure(word))
            capacitor_figures_.push_back(word);
        else
            out_.not_understood.push_back(word);
        return 1;
    }
};

}  // namespace

PlateText read_plate(std::string_view text) {
    PlateReader reader;
    reader.read(words_of(text));
    return reader.finished();
}

}  // namespace endbell::inline words
