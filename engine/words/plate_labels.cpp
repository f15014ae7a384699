#include "engine/words/plate_labels.hpp"

#include <algorithm>
#include <array>
#include <optional>
#include <utility>

#include "engine/model/power_sizes.hpp"
#include "engine/words/plate_words.hpp"
#include "engine/words/words.hpp"

namespace endbell::inline words {

namespace {

/// What a label names: the key, whether a value read there can be one of a fan motor (usual values, common practice; of a
/// question nothing), and the question where a digit of it is torn.
struct LabelledKey {
    std::string_view key;
    bool (*can_be)(const PlateReadings&);
    void (*ask_torn)(const Folded& run, PlateReadings&);
};

template <auto Field>
void ask_whole(const Folded& run, PlateReadings& plate) {
    using T = typename decltype((plate.*Field).value)::value_type;
    put(plate.*Field, ask_torn<T>(run));
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

/// Parts of a horsepower, and the sizes above one that are made.
bool is_size(Power power) {
    const double hp = power.in(horsepower);
    const bool standard =
        std::find(standard_powers.begin(), standard_powers.end(), hp) != standard_powers.end();
    return hp > 0 && hp <= 20 && (hp <= 1 || standard || hp == 7.5 || hp >= 10);
}

template <class T>
bool is_between(const Reading<T>& reading, T least, T most) {
    return reading ? *reading >= least && *reading <= most : reading.is_open();
}

using P = PlateReadings;
constexpr LabelledKey power{
    "plate.power",
    [](const P& p) { return p.power && std::all_of(p.power->begin(), p.power->end(), is_size); },
    ask_whole<&P::power>};
constexpr LabelledKey volts{
    "plate.volts", [](const P& p) { return p.volts ? all_between(*p.volts, 100, 600) : p.volts.is_open(); },
    ask_whole<&P::volts>};
constexpr LabelledKey speed{
    "plate.speed", [](const P& p) { return is_between(p.speed, rpm(300), rpm(3600)); }, ask_whole<&P::speed>};
constexpr LabelledKey amps{"plate.current",
                           [](const P& p) { return is_between(p.current, ampere(0.1), ampere(30)); },
                           ask_whole<&P::current>};
constexpr LabelledKey frequency{
    "plate.frequency",
    [](const P& p) {
        return p.frequency ? *p.frequency == hertz(50) || *p.frequency == hertz(60) : p.frequency.is_open();
    },
    ask_whole<&P::frequency>};
constexpr LabelledKey phase{"plate.phase", [](const P& p) { return p.phase.value.has_value(); },
                            ask_whole<&P::phase>};
constexpr LabelledKey speeds{"plate.speeds", [](const P& p) { return p.speeds && *p.speeds <= 5; },
                             ask_whole<&P::speeds>};
constexpr LabelledKey poles{"plate.poles", [](const P& p) { return p.poles.value.has_value(); },
                            ask_whole<&P::poles>};
constexpr LabelledKey service_factor{"plate.service_factor",
                                     [](const P& p) { return p.service_factor.value.has_value(); },
                                     ask_whole<&P::service_factor>};

const LabelledKey* label_of(const Folded& word) {
    static constexpr std::array<std::pair<std::string_view, const LabelledKey*>, 26> labels{
        {{"hp", &power},        {"horsepower", &power}, {"v", &volts},         {"volt", &volts},
         {"volts", &volts},     {"vac", &volts},        {"rpm", &speed},       {"rmin", &speed},
         {"a", &amps},          {"amp", &amps},         {"amps", &amps},       {"fla", &amps},
         {"flc", &amps},        {"hz", &frequency},     {"hertz", &frequency}, {"cy", &frequency},
         {"cycle", &frequency}, {"ph", &phase},         {"phase", &phase},     {"spd", &speeds},
         {"spds", &speeds},     {"speed", &speeds},     {"speeds", &speeds},   {"pole", &poles},
         {"poles", &poles},     {"sf", &service_factor}}};
    const std::string key = spelling_key(word);
    const auto found =
        std::find_if(labels.begin(), labels.end(), [&](const auto& l) { return l.first == key; });
    return found != labels.end() ? found->second : nullptr;
}

/// Who reads the run as what its label names; null: nobody does, or it cannot be that.
const Recogniser* reader_of(const LabelledKey& label, const Folded& run) {
    for (const Recogniser& recogniser : recognisers()) {
        if (recogniser.key != label.key) continue;
        PlateText alone;
        if (recogniser.take(run, alone) && label.can_be(alone.plate)) return &recogniser;
    }
    return nullptr;
}

bool is_farads(std::string_view key) {
    return key == "mfd" || key == "uf" || key == "mf";
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
            is_free(at + 1) && is_bare(words_[at + 1].words) && !(is_free(at + 2) && is_farads(key(at + 2)));
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
        while (is_free(end) && end < at + 5 && (has_digit(words_[end].words) || is_farads(key(end)))) {
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
        const auto has_volts = [&](std::size_t i) {
            const std::string k = is_free(i) ? key(i) : "";
            return k.size() > 1 && is_digit(k.front()) && (k.ends_with("v") || k.ends_with("vac"));
        };
        if (at > 0 && has_volts(at - 1)) return note(at - 1, 2, "noted");
        note(at, has_volts(at + 1) ? 2 : 1, "noted");
    }

    /// A label with the figure at one of its sides, figure first.
    struct Candidate {
        Side side;
        std::size_t at, length;  // of both, in the line
        Folded run;
        const Recogniser* reader;  // null: a digit of the figure is torn
    };

    /// `count` bare words from `at` on are one figure: "1 1/2" is of two.
    bool is_figure(std::size_t at, std::size_t count) const {
        if (!is_free(at) || !is_free(at + count - 1)) return false;
        const Folded& last = words_[at + count - 1].words;
        const bool parts =
            count == 1 || (is_whole(words_[at].words) && last.text().find('/') != std::string::npos);
        return is_bare(last) && parts;
    }

    std::optional<Candidate> candidate(std::size_t at, Side side, const LabelledKey& label) const {
        for (const std::size_t count : {2U, 1U}) {
            if ((count == 2 && &label != &power) || (side == Side::behind && at < count)) continue;
            const std::size_t first = side == Side::front ? at + 1 : at - count;
            const std::size_t begin = std::min(at, first);
            // "1/2 to 1/6 hp" is one list.
            const bool listed =
                side == Side::behind && first > 0 && (key(first - 1) == "to" || key(first - 1) == "or");
            if (listed) continue;
            if (count == 1 && is_free(first) && is_torn(words_[first].words))
                return Candidate{side, begin, 2, run_of(line_, words_, begin, 2), nullptr};
            if (!is_figure(first, count)) continue;
            std::vector<PlateWord> both(words_.begin() + static_cast<std::ptrdiff_t>(first),
                                        words_.begin() + static_cast<std::ptrdiff_t>(first + count));
            both.push_back(words_[at]);
            const Folded run = run_of(line_, both, 0, both.size());
            if (const Recogniser* reader = reader_of(label, run))
                return Candidate{side, begin, count + 1, run, reader};
        }
        return std::nullopt;
    }

    /// A label with one figure that it can name takes it.
    bool settle_certain() {
        bool any = false;
        for (std::size_t at = 0; at < words_.size(); ++at) {
            const LabelledKey* label = used_[at] ? nullptr : label_of(words_[at].words);
            if (label == nullptr) continue;
            const auto front = candidate(at, Side::front, *label);
            const auto behind = candidate(at, Side::behind, *label);
            if (front.has_value() == behind.has_value()) continue;
            settle(*label, front ? *front : *behind);
            any = true;
        }
        return any;
    }

    /// One between two figures that it can name does as the others of its line; where they do not tell, both are said and so
    /// neither decides.
    bool settle_by_habit() {
        for (std::size_t at = 0; at < words_.size(); ++at) {
            const LabelledKey* label = used_[at] ? nullptr : label_of(words_[at].words);
            if (label == nullptr) continue;
            const auto front = candidate(at, Side::front, *label);
            const auto behind = candidate(at, Side::behind, *label);
            if (!front || !behind) continue;
            if (fronts_ != behinds_ || belongs_elsewhere(*front)) {
                settle(*label, fronts_ > behinds_ ? *front : *behind);
            } else {
                take(*label, *behind);
                take(*label, *front);
                note(behind->at, front->at + front->length - behind->at, label->key);
            }
            return true;
        }
        return false;
    }

    /// A figure with a unit of its own behind it, "1 hp 10 MFD", or a fraction, which is a power or a shaft.
    bool belongs_elsewhere(const Candidate& front) const {
        const std::size_t next = front.at + front.length;
        const bool unit = is_free(next) && (label_of(words_[next].words) != nullptr || is_farads(key(next)));
        return unit || words_[next - 1].words.text().find('/') != std::string::npos;
    }

    void settle(const LabelledKey& label, const Candidate& found) {
        ++(found.side == Side::front ? fronts_ : behinds_);
        take(label, found);
        note(found.at, found.length, label.key);
    }

    void take(const LabelledKey& label, const Candidate& found) {
        if (found.reader == nullptr) {
            label.ask_torn(found.run, out_.plate);
        } else {
            found.reader->take(found.run, out_);
        }
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
