#include "engine/words/slashed.hpp"

#include <algorithm>

#include "engine/words/plate_words.hpp"
#include "engine/words/words.hpp"

namespace endbell::inline words {

namespace {

using Pieces = std::vector<Piece>;

constexpr std::size_t longest_list = 4;  // "1075/1000/900", "208/230/1/60"

/// Some recogniser takes all of it. A question about volts is about one thing; other questions may come
/// of joining two.
bool is_one_thing(const Folded& words) {
    PlateText alone;
    for (const Recogniser& recogniser : recognisers()) {
        if (!recogniser.take(words, alone)) continue;
        const PlateReadings& plate = alone.plate;
        return !plate.power.is_open() && !plate.speed.is_open() && !plate.capacitor.is_open();
    }
    return false;
}

/// "5/370": a capacitor and its volts belong together, whatever stands in front.
bool is_capacitor(const Folded& words) {
    const CapacitorText read = read_capacitor(words);
    return read.farads.reading && read.volts.reading;
}

/// What stands between the slashes of a word, and nothing where two slashes meet.
Pieces between_slashes(const FoldedLine& line, const Pieces& word) {
    Pieces cut;
    for (const Piece& piece : word) {
        std::size_t begin = piece.begin;
        for (std::size_t at = piece.begin; at <= piece.end; ++at) {
            if (at < piece.end && line.raw()[at] != '/') continue;
            cut.push_back({begin, at, '/'});
            begin = at + 1;
        }
    }
    return cut;
}

/// A fraction, "1/2", or a capacitor with its volts: the slash between the two is part of it.
bool belong_together(const FoldedLine& line, const Piece& front, const Piece& behind) {
    const Folded pair = line.of({front, behind});
    const auto whole = number_at(pair.text());
    const auto alone = number_at(line.of({front}).text());  // a one-sign fraction has no slash
    const bool fraction = whole && whole->fraction && !(alone && alone->fraction);
    return fraction || is_capacitor(pair);
}

/// The word's fractions and capacitors, and what else stands between its slashes.
std::vector<Pieces> slash_parts(const FoldedLine& line, const Pieces& word) {
    const Pieces cut = between_slashes(line, word);
    std::vector<Pieces> parts;
    for (std::size_t at = 0; at < cut.size(); ++at) {
        if (at + 1 < cut.size() && belong_together(line, cut[at], cut[at + 1])) {
            parts.push_back({cut[at], cut[at + 1]});
            ++at;
        } else if (cut[at].end > cut[at].begin) {
            parts.push_back({cut[at]});
        }
    }
    return parts;
}

}  // namespace

std::vector<Pieces> slash_pieces(const FoldedLine& line, const Pieces& word) {
    const std::vector<Pieces> parts = slash_parts(line, word);
    std::vector<Pieces> pieces;
    bool known = false;
    for (std::size_t at = 0; at < parts.size();) {
        std::size_t length = std::min(longest_list, parts.size() - at);
        Pieces list;
        bool one_thing = false;
        for (; length > 0; --length) {
            list.clear();
            for (std::size_t i = at; i < at + length; ++i)
                list.insert(list.end(), parts[i].begin(), parts[i].end());
            one_thing = is_one_thing(line.of(list));
            if (one_thing || length == 1) break;
        }
        known = known || one_thing;
        pieces.push_back(list);
        at += length;
    }
    const bool cut = pieces.size() > 1 || (known && line.of(pieces.front()).raw() != line.of(word).raw());
    return known && cut ? pieces : std::vector<Pieces>{};
}

}  // namespace endbell::inline words
