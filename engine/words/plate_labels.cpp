#include "engine/words/plate_labels.hpp"

#include <algorithm>
#include <array>
#include <optional>
#include <utility>

#include "engine/words/plate_words.hpp"
#include "engine/words/words.hpp"

namespace endbell::inline words {

namespace {

enum class LabelOf { power, volts, speed, amps, frequency, phase, speeds, poles, service_factor };

std::optional<LabelOf> label_of(const Folded& word) {
    using enum LabelOf;
    static constexpr std::array<std::pair<std::string_view, LabelOf>, 26> labels{
        {{"hp", power},        {"horsepower", power}, {"v", volts},         {"volt", volts},
         {"volts", volts},     {"vac", volts},        {"rpm", speed},       {"rmin", speed},
         {"a", amps},          {"amp", amps},         {"amps", amps},       {"fla", amps},
         {"flc", amps},        {"hz", frequency},     {"hertz", frequency}, {"cy", frequency},
         {"cycle", frequency}, {"ph", phase},         {"phase", phase},     {"spd", speeds},
         {"spds", speeds},     {"speed", speeds},     {"speeds", speeds},   {"pole", poles},
         {"poles", poles},     {"sf", service_factor}}};
    const std::string key = spelling_key(word);
    const auto found =
        std::find_if(labels.begin(), labels.end(), [&](const auto& l) { return l.first == key; });
    return found != labels.end() ? std::optional(found->second) : std::nullopt;
}

bool has_digit(const Folded& word) {
    return std::any_of(word.text().begin(), word.text().end(), is_digit);
}

/// Figures and what stands between them, and no unit.
bool is_bare(const Folded& word) {
    return has_digit(word) && word.text().find_first_not_of("0123456789.,/-~") == std::string::npos;
}

bool is_whole(const Folded& word) {
    return word.text().find_first_not_of("0123456789") == std::string::npos;
}

/// Its tens are asked for, "10?5".
bool is_torn(const Folded& word) {
    return word.text().find('?') != std::string::npos && has_digit(word);
}

bool all_between(const std::vector<PlateVolts>& list, double least, double most) {
    return std::all_of(list.begin(), list.end(), [&](const PlateVolts& v) {
        return v.low.in(volt) >= least && v.high.in(volt) <= most;
    });
}

/// Sizes of motors: parts of a horsepower, whole ones and the one and a half (NEMA MG 1 10.32, from memory).
bool is_size(Power power) {
    const double hp = power.in(horsepower);
    return hp > 0 && hp <= 20 &&
           (hp <= 1 || hp == 1.5 || hp == 2 || hp == 3 || hp == 5 || hp == 7.5 || hp >= 10);
}

/// What a plate can say under this label: usual values of fan motors, common practice. Nothing of a question.
bool can_be(LabelOf label, const PlateReadings& plate) {
    switch (label) {
        case LabelOf::power:
            return plate.power && std::all_of(plate.power->begin(), plate.power->end(), is_size);
        case LabelOf::volts:
            return plate.volts ? all_between(*plate.volts, 100, 600) : plate.volts.is_open();
        case LabelOf::speed:
            return plate.speed ? *plate.speed >= rpm(300) && *plate.speed <= rpm(3600)
                               : plate.speed.is_open();
        case LabelOf::amps:
            return plate.current ? *plate.current >= ampere(0.1) && *plate.current <= ampere(30)
                                 : plate.current.is_open();
        case LabelOf::frequency:
            return plate.frequency ? *plate.frequency == hertz(50) || *plate.frequency == hertz(60)
                                   : plate.frequency.is_open();
        case LabelOf::phase:
            return plate.phase.value.has_value();
        case LabelOf::speeds:
            return plate.speeds && *plate.speeds <= 5;
        case LabelOf::poles:
            return plate.poles.value.has_value();
        case LabelOf::service_factor:
            return plate.service_factor.value.has_value();
    }
    return false;
}

std::string_view key_of(LabelOf label) {
    constexpr std::array<std::string_view, 9> keys{
        "plate.power", "plate.volts",  "plate.speed", "plate.current",       "plate.frequency",
        "plate.phase", "plate.speeds", "plate.poles", "plate.service_factor"};
    return keys[static_cast<std::size_t>(label)];
}

/// Takes the run as what its label says, where it can be that.
bool take_as(LabelOf label, const Folded& run, PlateText& out) {
    for (const Recogniser& recogniser : recognisers()) {
        if (recogniser.key != key_of(label)) continue;
        PlateText alone;
        if (recogniser.take(run, alone) && can_be(label, alone.plate)) return recogniser.take(run, out);
    }
    return false;
}

class Labels {
  public:
    Labels(const FoldedLine& line, const std::vector<PlateWord>& words, PlateText& out)
        : line_(line), words_(words), out_(out), used_(words.size(), false) {}

    std::vector<std::vector<PlateWord>> run() {
        for (std::size_t at = 0; at < words_.size(); ++at) take_name(at);
        bool more = true;
        while (more) more = settle_certain() || settle_by_habit();
        return stretches();
    }

  private:
    enum class Side { front, behind };

    std::string key(std::size_t at) const { return spelling_key(words_[at].words); }
    bool is_free(std::size_t at) const { return at < words_.size() && !used_[at]; }

    void note(std::size_t at, std::size_t length, std::string_view as) {
        std::fill_n(used_.begin() + static_cast<std::ptrdiff_t>(at), length, true);
        out_.understood.push_back({run_of(line_, words_, at, length).raw(), std::string(as)});
    }

    /// "serial no 0612345": how many words behind the label are its value, "no" and "#" with it.
    std::size_t value_behind(std::size_t at) const {
        std::size_t next = at + 1;
        if (is_free(next) && (key(next) == "no" || key(next) == "number" || key(next) == "#")) ++next;
        return is_free(next) && has_digit(words_[next].words) ? next - at : 0;
    }

    /// What is a number by its label, and no value of the motor: a serial, a type, a locked rotor, a coil's volts.
    void take_name(std::size_t at) {
        if (used_[at]) return;
        constexpr std::array<std::string_view, 11> noted{"serial", "serialno", "sn",  "ser",  "cat", "catno",
                                                         "lra",    "rla",      "sfa", "date", "mod"};
        const std::string label = key(at);
        const std::size_t behind = value_behind(at);
        if (std::find(noted.begin(), noted.end(), label) != noted.end()) {
            if (behind > 0) note(at, behind + 1, "noted");
        } else if (label == "type") {
            take_type(at);
        } else if (label == "program" || label == "prog" || label == "pgm") {
            if (behind > 0) take_number(at, behind, out_.plate.program, "plate.program");
        } else if (label == "module") {
            if (behind > 0) take_number(at, behind, out_.unit.old_module_number, "unit.old_module_number");
        } else if (label == "part" && behind == 2) {
            take_number(at, behind, out_.unit.old_part_number, "unit.old_part_number");
        } else if (label == "cap" || label == "capacitor") {
            take_capacitor_figure(at);
        } else if (label == "rise") {
            const bool temp = at > 0 && is_free(at - 1) && key(at - 1) == "temp";
            note(temp ? at - 1 : at, behind + 1 + (temp ? 1 : 0), "noted");
        } else if (label == "ton" || label == "tons") {
            if (at > 0 && is_free(at - 1) && is_bare(words_[at - 1].words)) note(at - 1, 2, "noted");
        } else if (label == "start") {
            take_start_capacitor(at);
        } else if (label == "coil" || label == "relay" || label == "contactor") {
            take_coil(at);
        }
    }

    void take_number(std::size_t at, std::size_t behind, Reading<std::string>& field, std::string_view as) {
        const Read<std::string> read = read_part_number(words_[at + behind].words);
        if (put(field, read)) note(at, behind + 1, as);
    }

    /// "cap 10": microfarads, where no unit says so.
    void take_capacitor_figure(std::size_t at) {
        const bool alone =
            is_free(at + 1) && is_bare(words_[at + 1].words) &&
            !(is_free(at + 2) && (key(at + 2) == "mfd" || key(at + 2) == "uf" || key(at + 2) == "mf"));
        if (!alone) return;
        const CapacitorText read = read_capacitor(words_[at + 1].words);
        if (!put(out_.plate.capacitor, read.farads)) return;
        put(out_.plate.capacitor_volts, read.volts);
        note(at, 2, "plate.capacitor");
    }

    /// "start cap 88-108 MFD" is not the run capacitor.
    void take_start_capacitor(std::size_t at) {
        if (!is_free(at + 1) || key(at + 1).rfind("cap", 0) != 0) return;
        std::size_t end = at + 2;
        while (is_free(end) && end < at + 5 &&
               (has_digit(words_[end].words) || key(end) == "mfd" || key(end) == "uf" || key(end) == "mf")) {
            const bool unit = !has_digit(words_[end].words) || !is_bare(words_[end].words);
            ++end;
            if (unit) break;
        }
        note(at, end - at, "noted");
    }

    /// "type FB" is a maker's letter; "type PSC" says a kind, which is read as such.
    void take_type(std::size_t at) {
        PlateText alone;
        const bool says = is_free(at + 1) &&
                          std::any_of(recognisers().begin(), recognisers().end(),
                                      [&](const auto& r) { return r.take(words_[at + 1].words, alone); });
        note(at, is_free(at + 1) && !says ? 2 : 1, "noted");
    }

    /// "24V coil", "relay 24V": the volts are the coil's.
    void take_coil(std::size_t at) {
        const auto volts = [&](std::size_t i) {
            const std::string k = is_free(i) ? key(i) : "";
            return k.size() > 1 && is_digit(k.front()) && (k.ends_with("v") || k.ends_with("vac"));
        };
        if (at > 0 && volts(at - 1)) return note(at - 1, 2, "noted");
        note(at, volts(at + 1) ? 2 : 1, "noted");
    }

    /// The run of a label and the figure at its side; "hp 1 1/2" has two words of figure.
    struct Candidate {
        std::size_t at = 0, length = 0;
        Folded run;
        bool torn = false;
    };

    std::optional<Candidate> candidate(std::size_t at, Side side, LabelOf label) const {
        const std::size_t value = side == Side::front ? at + 1 : at - 1;
        if ((side == Side::behind && at == 0) || !is_free(value)) return std::nullopt;
        // "1/2 to 1/6 hp" is one list.
        if (side == Side::behind && value > 0 && (key(value - 1) == "to" || key(value - 1) == "or"))
            return std::nullopt;
        const Folded& figure = words_[value].words;
        if (is_torn(figure))
            return Candidate{std::min(at, value), 2, run_of(line_, words_, std::min(at, value), 2), true};
        if (!is_bare(figure)) return std::nullopt;
        const bool parts = side == Side::front && label == LabelOf::power && is_free(at + 2) &&
                           is_bare(words_[at + 2].words) &&
                           words_[at + 2].words.text().find('/') != std::string::npos && is_whole(figure);
        const bool whole_in_front = side == Side::behind && label == LabelOf::power && at >= 2 &&
                                    is_free(at - 2) && figure.text().find('/') != std::string::npos &&
                                    is_whole(words_[at - 2].words);
        if (whole_in_front) {
            PlateText alone;
            Candidate both{at - 2, 3, run_of(line_, words_, at - 2, 3)};
            if (take_as(label, both.run, alone)) return both;
        }
        const std::size_t length = parts ? 3 : 2;
        std::vector<Piece> pieces;
        const auto add = [&](std::size_t i) {
            pieces.insert(pieces.end(), words_[i].pieces.begin(), words_[i].pieces.end());
        };
        for (std::size_t i = value; i < value + length - 1; ++i) add(i);
        add(at);
        PlateText alone;
        Candidate found{std::min(at, value), length, line_.of(pieces)};
        if (take_as(label, found.run, alone)) return found;
        return std::nullopt;
    }

    /// A label with one figure that it can name takes it.
    bool settle_certain() {
        bool any = false;
        for (std::size_t at = 0; at < words_.size(); ++at) {
            const auto label = used_[at] || settled(at) ? std::nullopt : label_of(words_[at].words);
            if (!label) continue;
            const auto front = candidate(at, Side::front, *label);
            const auto behind = candidate(at, Side::behind, *label);
            if (front.has_value() == behind.has_value()) continue;
            settle(at, *label, front ? Side::front : Side::behind, front ? *front : *behind);
            any = true;
        }
        return any;
    }

    /// One between two figures that it can name does as the others of its line; the first of a line has none in front.
    bool settle_by_habit() {
        for (std::size_t at = 0; at < words_.size(); ++at) {
            const auto label = used_[at] || settled(at) ? std::nullopt : label_of(words_[at].words);
            if (!label) continue;
            const Side side = fronts_ > behinds_ ? Side::front : Side::behind;
            const auto found = candidate(at, side, *label);
            if (!found) continue;
            settle(at, *label, side, *found);
            return true;
        }
        return false;
    }

    bool settled(std::size_t at) const {
        return std::find(settled_.begin(), settled_.end(), at) != settled_.end();
    }

    void settle(std::size_t at, LabelOf label, Side side, const Candidate& found) {
        settled_.push_back(at);
        side == Side::front ? ++fronts_ : ++behinds_;
        if (found.torn) {
            ask_torn_value(label, found.run);
        } else {
            take_as(label, found.run, out_);
        }
        note(found.at, found.length, key_of(label));
    }

    void ask_torn_value(LabelOf label, const Folded& run) {
        if (label == LabelOf::power) put(out_.plate.power, ask_torn<std::vector<Power>>(run));
        if (label == LabelOf::volts) put(out_.plate.volts, ask_torn<std::vector<PlateVolts>>(run));
        if (label == LabelOf::speed) put(out_.plate.speed, ask_torn<Speed>(run));
        if (label == LabelOf::amps) put(out_.plate.current, ask_torn<Current>(run));
    }

    std::vector<std::vector<PlateWord>> stretches() const {
        std::vector<std::vector<PlateWord>> left(1);
        for (std::size_t at = 0; at < words_.size(); ++at) {
            if (!used_[at])
                left.back().push_back(words_[at]);
            else if (!left.back().empty())
                left.emplace_back();
        }
        return left;
    }

    const FoldedLine& line_;
    const std::vector<PlateWord>& words_;
    PlateText& out_;
    std::vector<bool> used_;
    std::vector<std::size_t> settled_;
    int fronts_ = 0, behinds_ = 0;
};

}  // namespace

Folded run_of(const FoldedLine& line, const std::vector<PlateWord>& words, std::size_t at,
              std::size_t length) {
    if (length == 1) return words[at].words;
    std::vector<Piece> pieces;
    for (std::size_t i = at; i < at + length; ++i)
        pieces.insert(pieces.end(), words[i].pieces.begin(), words[i].pieces.end());
    return line.of(pieces);
}

std::vector<std::vector<PlateWord>> without_labelled(const FoldedLine& line,
                                                     const std::vector<PlateWord>& words, PlateText& out) {
    return Labels(line, words, out).run();
}

}  // namespace endbell::inline words
