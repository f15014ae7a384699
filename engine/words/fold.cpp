#include "engine/words/fold.hpp"

#include <algorithm>
#include <array>
#include <utility>

#include "engine/base/text.hpp"
#include "engine/words/folded_line.hpp"

namespace endbell::inline words {

namespace {

using Pair = std::pair<std::string_view, std::string_view>;

// Unicode code charts. A fraction sign directly behind a digit becomes a mixed number: "1½" is "1 1/2".
constexpr std::array fractions{Pair{"\u00bd", "1/2"}, Pair{"\u00bc", "1/4"}, Pair{"\u00be", "3/4"},
                               Pair{"\u2153", "1/3"}, Pair{"\u2154", "2/3"}, Pair{"\u2155", "1/5"},
                               Pair{"\u2156", "2/5"}, Pair{"\u2159", "1/6"}, Pair{"\u215b", "1/8"},
                               Pair{"\u215c", "3/8"}, Pair{"\u215d", "5/8"}, Pair{"\u215e", "7/8"},
                               Pair{"\u2150", "1/7"}, Pair{"\u2152", "1/10"}};

constexpr std::array signs{
    Pair{"\u2044", "/"},   Pair{"\u2215", "/"},   Pair{"\u2010", "-"},   Pair{"\u2011", "-"},
    Pair{"\u2012", "-"},   Pair{"\u2013", "-"},   Pair{"\u2014", "-"},   Pair{"\u2212", "-"},
    Pair{"\u201c", "\""},  Pair{"\u201d", "\""},  Pair{"\u2033", "\""},  Pair{"\u2018", "'"},
    Pair{"\u2019", "'"},   Pair{"\u2032", "'"},   Pair{"\u00b5", "u"},   Pair{"\u03bc", "u"},
    Pair{"\u00b0", "deg"}, Pair{"\u00ba", "deg"}, Pair{"\u00d8", "ph"},  Pair{"\u00f8", "ph"},
    Pair{"\u03c6", "ph"},  Pair{"\u03a6", "ph"},  Pair{"\u2300", "dia"}, Pair{"\u00d7", "x"},
    Pair{"\u03a9", "ohm"}, Pair{"\u2126", "ohm"}, Pair{"\u221e", "inf"}, Pair{"\u00a0", " "},
    Pair{"\u2009", " "},   Pair{"\u202f", " "}};

template <std::size_t N>
const Pair* at_front(std::string_view text, const std::array<Pair, N>& table) {
    for (const Pair& pair : table) {
        if (text.substr(0, pair.first.size()) == pair.first) return &pair;
    }
    return nullptr;
}

bool is_space(char c) {
    return c == ' ' || (c >= '\t' && c <= '\r');
}

/// Writes folded text: letters small, white space as one blank between two signs.
class FoldedWriter {
  public:
    void put(char c) {
        if (!is_space(c))
            text_ += c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
        else if (!text_.empty() && text_.back() != ' ')
            text_ += ' ';
    }
    void put(std::string_view text) {
        for (const char c : text) put(c);
    }

    /// Reads one sign at the front of `rest`, beyond ASCII or not, and writes what it folds to; how many bytes it has.
    std::size_t fold_sign(std::string_view rest) {
        if (static_cast<unsigned char>(rest.front()) < 0x80) return put(rest.front()), 1;
        const Pair* fraction = at_front(rest, fractions);
        const Pair* sign = fraction ? fraction : at_front(rest, signs);
        if (fraction && ends_in_figure()) put(' ');
        if (!sign) return put(rest.front()), 1;
        put(sign->second);
        return sign->first.size();
    }

    std::size_t size() const { return text_.size(); }
    std::string finished() {
        if (!text_.empty() && text_.back() == ' ') text_.pop_back();
        return std::move(text_);
    }

  private:
    std::string text_;
    bool ends_in_figure() const { return !text_.empty() && is_digit(text_.back()); }
};

std::string tidied(std::string_view text) {
    FoldedWriter writer;
    writer.put(text);
    return writer.finished();
}

}  // namespace

Folded fold(std::string_view raw) {
    FoldedWriter writer;
    for (std::size_t i = 0; i < raw.size();) i += writer.fold_sign(raw.substr(i));
    return {std::string(raw), writer.finished()};
}

Folded Folded::left_with(std::string_view text) const {
    return {raw_, tidied(text)};
}

FoldedLine::FoldedLine(std::string_view raw) : raw_(raw) {
    FoldedWriter writer;
    for (std::size_t i = 0; i < raw_.size();) {
        const std::size_t place = writer.size();
        i += writer.fold_sign(std::string_view(raw_).substr(i));
        place_.resize(i, place);
    }
    text_ = writer.finished();
    place_.push_back(text_.size());
    for (std::size_t& place : place_)
        place = std::min(place, text_.size());  // of blanks at the end nothing is left
}

Folded FoldedLine::of(const std::vector<Piece>& pieces) const {
    std::string raw;
    std::string text;
    for (const Piece& piece : pieces) {
        if (&piece != &pieces.front()) {
            raw += piece.joint;
            text += piece.joint;
        }
        raw.append(raw_, piece.begin, piece.end - piece.begin);
        text.append(text_, place_[piece.begin], place_[piece.end] - place_[piece.begin]);
    }
    return {std::move(raw), tidied(text)};
}

std::string spelling_key(const Folded& words) {
    const std::string& text = words.text();
    std::string key;
    for (std::size_t i = 0; i < text.size(); ++i) {
        const bool joint = std::string_view(" .-/,_").find(text[i]) != std::string_view::npos;
        const bool in_figures =
            i > 0 && i + 1 < text.size() && is_digit(text[i - 1]) && is_digit(text[i + 1]);
        if (!joint || in_figures) key += text[i];
    }
    return key;
}

bool is_missing(const Folded& words) {
    static constexpr std::array<std::string_view, 16> markers{
        "n/a",   "#n/a",   "na",       "n.a.",    "-", "--",   "---",
        "tbd",   "tba",    "see note", "unknown", "?", "null", "not stated on plate",
        "#ref!", "#value!"};
    return words.text().empty() || std::find(markers.begin(), markers.end(), words.text()) != markers.end();
}

bool is_missing(std::string_view raw) {
    const std::string_view inner = trimmed(raw);
    if (inner.empty()) return true;
    // What cannot begin a marker is nearly everything: it needs no folding. Signs beyond ASCII fold to some that can.
    const char first = inner.front();
    if (static_cast<unsigned char>(first) < 0x80 &&
        std::string_view("#-?nNsStTuU").find(first) == std::string_view::npos)
        return false;
    return is_missing(fold(raw));
}

namespace {

/// Damage begins with a figure, a sign or a month, and has one letter, an exponent's, or three, a month's.
bool may_be_damaged(std::string_view text) {
    const char first = text.empty() ? '\0' : text.front();
    if (std::string_view("0123456789.,-/jfmasond").find(first) == std::string_view::npos) return false;
    int letters = 0;
    bool exponent = false;
    for (const char c : text) {
        letters += c >= 'a' && c <= 'z' ? 1 : 0;
        exponent |= c == 'e';
    }
    return letters == 3 || (letters == 1 && exponent);
}

}  // namespace

bool is_spreadsheet_damage(const Folded& words) {
    static constexpr std::array<std::string_view, 12> months{"jan", "feb", "mar", "apr", "may", "jun",
                                                             "jul", "aug", "sep", "oct", "nov", "dec"};
    const std::string& text = words.text();
    if (!may_be_damaged(text)) return false;
    for (std::string_view month : months) {
        const std::size_t at = text.find(month);
        if (at == std::string::npos) continue;
        // Digits and separators around the month, and nothing else: "2-jan", "jan-02", "2-jan-26".
        const std::string others = text.substr(0, at) + text.substr(at + month.size());
        const bool plain = others.find_first_not_of("0123456789-/ ") == std::string::npos;
        if (plain && others.find_first_of("0123456789") != std::string::npos) return true;
    }
    const std::size_t e = text.find("e+");
    return e != std::string::npos && e > 0 && is_digit(text[e - 1]) && e + 2 < text.size() &&
           text.find_first_not_of("0123456789", e + 2) == std::string::npos &&
           text.substr(0, e).find_first_not_of("0123456789.,") == std::string::npos;
}

bool is_spreadsheet_day(double number) {
    return number >= 36526 && number <= 54788;
}

}  // namespace endbell::inline words
