// Two things of a plate with a shape of their own: a frame, and the volts, phases and hertz of a supply in one word.
#include <algorithm>
#include <array>

#include "engine/words/plate_words.hpp"
#include "engine/words/words.hpp"

namespace endbell::inline words {

namespace {

std::string upper(std::string text) {
    std::transform(text.begin(), text.end(), text.begin(),
                   [](char c) { return c >= 'a' && c <= 'z' ? static_cast<char>(c - 'a' + 'A') : c; });
    return text;
}

/// Two or three figures and at most three letters: "48y", "143t".
bool is_frame(std::string_view key) {
    const std::size_t figures = std::min(key.find_first_not_of("0123456789"), key.size());
    return figures >= 2 && figures <= 3 && key.size() - figures <= 3 &&
           key.substr(figures).find_first_of("0123456789") == std::string_view::npos;
}

}  // namespace

bool take_frame(const Folded& words, PlateText& out) {
    static constexpr std::array<std::string_view, 18> frames{"42",  "42y",  "42yz", "42z",  "42fr",  "48",
                                                             "48y", "48yz", "48z",  "48fr", "48yfr", "48yzfr",
                                                             "56y", "56yz", "56z",  "56fr", "56yfr", "56zfr"};
    std::string key = spelling_key(words);
    bool labelled = key.ends_with("frame");
    for (std::string_view label : {"nema", "frame", "fr"}) {
        if (!key.starts_with(label)) continue;
        key.erase(0, label.size());
        labelled = true;
    }
    if (labelled && is_frame(key)) return put(out.plate.frame, read_as<std::string>(words, upper(key)));
    if (key.ends_with("frame")) key.resize(key.size() - 3);
    if (key == "56") {
        return put(out.plate.frame,
                   ask<std::string>(words, "a 56 frame, or a body of 5.6 inches?", {"56", "body 5.6 in"}));
    }
    if (std::find(frames.begin(), frames.end(), key) == frames.end()) return false;
    if (key.ends_with("fr")) key.resize(key.size() - 2);
    return put(out.plate.frame, read_as<std::string>(words, upper(key)));
}

// The hertz are the same for both.
bool take_supply_triple(const Folded& words, PlateText& out) {
    const std::string& text = words.text();
    const std::size_t first = text.find('-');
    const std::size_t second = text.find('-', first == std::string::npos ? first : first + 1);
    if (second == std::string::npos) return false;
    const std::string volts = text.substr(0, first), phase = text.substr(first + 1, second - first - 1),
                      hz = text.substr(second + 1);
    if ((phase != "1" && phase != "3") || (hz != "50" && hz != "60")) return false;
    if (read_plate_volts(fold(volts)).failed()) return false;
    const std::string question = "the motor's own plate, or what the unit is fed with?";
    put(out.plate.volts, ask<std::vector<PlateVolts>>(words, question, {volts + " V"}));
    put(out.plate.phase, ask<int>(words, question, {phase}));
    return put(out.plate.frequency, read_frequency(fold(hz)));
}

}  // namespace endbell::inline words
