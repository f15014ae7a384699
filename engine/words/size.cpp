#include "engine/words/size.hpp"

#include <algorithm>

#include "engine/base/text.hpp"

namespace endbell::inline words {

namespace {

Scale<LengthDimension> length_scale(std::string_view expected) {
    return {expected,
            inch,
            {{"\"", inch},
             {"in", inch},
             {"inch", inch},
             {"inches", inch},
             {"''", inch},
             {"mm", millimetre},
             {"cm", Unit<LengthDimension>{10.0 / 25.4}},
             {"m", Unit<LengthDimension>{1000.0 / 25.4}},
             {"ft", foot},
             {"'", foot},
             {"feet", foot},
             {"foot", foot}},
            {"dia", "diameter", "od", "lg", "long", "length", "shaft", "body", "bore", "bc", "boltcircle",
             "flat"},
            100};
}

std::string text_of(double value, std::string_view unit) {
    return shortest(value) + " " + std::string(unit);
}

/// Bare numbers: inches up to `inches`, millimetres from `millimetres`, a question between.
Read<Length> read_bare(const Folded& words, std::string_view expected, double inches, double millimetres) {
    Read<Length> read = read_quantity(words, length_scale(expected));
    const auto m = measure(words.text());
    const auto bare_words = length_scale(expected).labels;
    const auto is_bare = [&](const std::string& word) {
        return word.empty() || std::find(bare_words.begin(), bare_words.end(), word) != bare_words.end();
    };
    if (!m || !is_bare(m->before) || !is_bare(m->after)) return read;
    const double number = m->number.value;
    if (number <= inches || m->number.comma_unclear || m->negative) return read;
    if (is_spreadsheet_day(number)) return ask_spreadsheet<Length>(words);
    if (number > 1000) return unreadable<Length>(words, expected);
    if (number >= millimetres) return read_as<Length>(words, millimetre(number));
    return ask<Length>(words, "inches or millimetres?", {text_of(number, "in"), text_of(number, "mm")});
}

}  // namespace

Read<Length> read_length(const Folded& words) {
    return read_quantity(words, length_scale("a length, such as '1/2', '5-5/8 in' or '143 mm'"));
}

Read<Length> read_shaft_diameter(const Folded& words) {
    Read<Length> read = read_bare(words, "a shaft diameter, such as '1/2', '.500' or '12.7 mm'", 2, 6);
    if (read.reading && *read.reading > inch(3))
        return unreadable<Length>(words, "a shaft diameter, up to 3 inches");
    return read;
}

Read<Length> read_shaft_length(const Folded& words) {
    return read_bare(words, "a shaft length, such as '5', '4-1/2' or '127 mm'", 20, 25);
}

Read<Length> read_shaft_flat(const Folded& words) {
    const std::string key = spelling_key(words);
    if (key == "fullflat" || key == "full" || key == "dshaft" || key == "d" || key == "flat") {
        return ask<Length>(words, "how long is the flat, in inches?", {});
    }
    return read_shaft_length(words);
}

Read<Length> read_body_diameter(const Folded& words) {
    const std::string key = spelling_key(words);
    static const std::vector<std::string> frames{"42",   "42y",    "42yz",   "48",   "48y", "48yz",
                                                 "48fr", "nema48", "48z",    "56",   "56y", "56z",
                                                 "56fr", "nema56", "nema42", "42fr", "42z"};
    if (std::find(frames.begin(), frames.end(), key) != frames.end()) {
        const bool is_56 = key.find("56") != std::string::npos;
        const bool is_42 = key.find("42") != std::string::npos;
        return ask<Length>(words, "a frame number is no diameter: what does a tape across the body say?",
                           {is_56   ? "5.6 in, the point lost"
                            : is_42 ? "about 5.0 in"
                                    : "about 5.6 in"});
    }
    return read_bare(words, "a body diameter, such as '5.6', '5-5/8' or '143 mm'", 14, 60);
}

Read<Length> read_altitude(const Folded& words) {
    auto scale = length_scale("an altitude, such as '5000 ft' or '1500 m'");
    scale.bare = foot;
    scale.most = 20000;
    scale.nought = Nought::a_value;
    scale.thousands = true;
    return read_quantity(words, scale);
}

namespace {

/// Both sides of " x " or " by ", the words "dia", "lg", "shaft" left on.
std::optional<std::pair<std::string, std::string>> sides(const std::string& text) {
    for (std::string_view joint : {" x ", " by ", "x"}) {
        const std::size_t at = text.find(joint);
        if (at == std::string::npos || at == 0) continue;
        return std::pair{std::string(trimmed(std::string_view(text).substr(0, at))),
                         std::string(trimmed(std::string_view(text).substr(at + joint.size())))};
    }
    return std::nullopt;
}

ShaftText unreadable_shaft(const Folded& words) {
    const auto no = unreadable<Length>(words, "a shaft, such as '1/2 x 5' (diameter x length, inches)");
    return {no, no, no};
}

}  // namespace

ShaftText read_shaft(const Folded& words) {
    if (is_missing(words)) return {};
    std::string text = words.text();
    const std::size_t flat_at = text.find("flat");
    const bool flat = flat_at != std::string::npos;
    if (flat) text = std::string(trimmed(text.erase(flat_at, 4)));
    const auto both = sides(text);
    if (!both) return unreadable_shaft(words);
    auto smaller = read_length(words.left_with(both->first));
    auto larger = read_length(words.left_with(both->second));
    if (smaller.reading && larger.reading && *larger.reading < *smaller.reading) std::swap(smaller, larger);
    if (!smaller.reading || !larger.reading) return unreadable_shaft(words);
    // Figures that cannot be inches are millimetres on both sides: "12.7 x 127".
    Length diameter = *smaller.reading;
    Length length = *larger.reading;
    const bool unit_written = text.find_first_of("\"'") != std::string::npos ||
                              text.find("in") != std::string::npos || text.find("mm") != std::string::npos ||
                              text.find("cm") != std::string::npos;
    if (!unit_written && diameter >= inch(6) && length >= inch(25)) {
        diameter = millimetre(diameter.in(inch));
        length = millimetre(length.in(inch));
    }
    if (diameter > inch(3) || length > inch(40)) return unreadable_shaft(words);
    ShaftText shaft{read_as<Length>(words, diameter), read_as<Length>(words, length), not_written<Length>()};
    if (flat) {
        const std::string figure = shortest(length.in(inch)) + " in";
        shaft.length = ask<Length>(words, "the length of the shaft, or of its flat?",
                                   {"shaft " + figure, "flat " + figure});
        shaft.flat = shaft.length;
    }
    return shaft;
}

}  // namespace endbell::inline words
