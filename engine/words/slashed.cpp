#include "engine/words/slashed.hpp"

#include <algorithm>

#include "engine/base/text.hpp"
#include "engine/words/plate_words.hpp"
#include "engine/words/words.hpp"

namespace endbell::inline words {

namespace {

constexpr std::size_t longest_list = 4;  // "1075/1000/900", "208/230/1/60"

/// Some recogniser takes all of `text`. A question about volts is about one thing; other questions may come
/// of joining two.
bool is_one_thing(const std::string& text) {
    PlateText alone;
    for (const Recogniser& recogniser : recognisers()) {
        if (!recogniser.take(text, alone)) continue;
        const PlateFacts& plate = alone.plate;
        return !plate.power.is_open() && !plate.speed.is_open() && !plate.capacitor.is_open();
    }
    return false;
}

/// "5/370": a capacitor and its volts belong together, whatever stands in front.
bool is_capacitor(const std::string& text) {
    const CapacitorText read = read_capacitor(text);
    return read.farads.reading && read.volts.reading;
}

/// Where the fraction at `at` ends, or its capacitor; else the next slash, or the end of the word.
std::size_t part_end(const std::string& word, std::size_t at) {
    const std::size_t first = word.find('/', at);
    if (first == std::string::npos) return word.size();
    const std::size_t second = std::min(word.find('/', first + 1), word.size());
    const std::string pair = word.substr(at, second - at);
    const auto whole = number_at(folded(pair));
    const auto front = number_at(folded(word.substr(at, first - at)));  // a one-sign fraction has no slash
    const bool fraction = whole && whole->fraction && !(front && front->fraction);
    return fraction || is_capacitor(pair) ? second : first;
}

std::vector<std::string> slash_parts(const std::string& word) {
    std::vector<std::string> parts;
    for (std::size_t at = 0; at < word.size();) {
        const std::size_t end = part_end(word, at);
        if (end > at) parts.push_back(word.substr(at, end - at));
        at = end + 1;
    }
    return parts;
}

}  // namespace

std::vector<std::string> slash_pieces(const std::string& word) {
    const std::vector<std::string> parts = slash_parts(word);
    std::vector<std::string> pieces;
    bool known = false;
    for (auto at = parts.begin(); at != parts.end();) {
        std::size_t length = std::min(longest_list, static_cast<std::size_t>(parts.end() - at));
        std::string piece;
        bool one_thing = false;
        for (; length > 0; --length) {
            piece = joined(std::vector<std::string>(at, at + static_cast<std::ptrdiff_t>(length)), "/");
            one_thing = is_one_thing(piece);
            if (one_thing || length == 1) break;
        }
        known = known || one_thing;
        pieces.push_back(piece);
        at += static_cast<std::ptrdiff_t>(length);
    }
    const bool cut = pieces.size() > 1 || (known && pieces.front() != word);
    return known && cut ? pieces : std::vector<std::string>{};
}

}  // namespace endbell::inline words
