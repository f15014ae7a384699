#include "engine/words/spoken.hpp"

#include <algorithm>
#include <array>
#include <optional>
#include <vector>

#include "engine/base/text.hpp"

namespace endbell::inline words {

namespace {

/// A word of a text between blanks and dashes.
struct Spoken {
    std::size_t begin = 0, end = 0;
    std::string word;
};

std::vector<Spoken> words_in(std::string_view text) {
    constexpr std::string_view joints = " -\t";
    std::vector<Spoken> words;
    for (std::size_t at = text.find_first_not_of(joints); at != std::string_view::npos;) {
        const std::size_t end = std::min(text.find_first_of(joints, at), text.size());
        words.push_back({at, end, lower(text.substr(at, end - at))});
        at = text.find_first_not_of(joints, end);
    }
    return words;
}

/// "one" to "nineteen" by their place; 0 where it is none.
int small(const std::string& word) {
    static constexpr std::array<std::string_view, 19> names{
        "one",     "two",     "three",     "four",     "five",    "six",      "seven",
        "eight",   "nine",    "ten",       "eleven",   "twelve",  "thirteen", "fourteen",
        "fifteen", "sixteen", "seventeen", "eighteen", "nineteen"};
    const auto found = std::find(names.begin(), names.end(), word);
    return found == names.end() ? 0 : static_cast<int>(found - names.begin()) + 1;
}

int tens(const std::string& word) {
    static constexpr std::array<std::string_view, 8> names{"twenty", "thirty",  "forty",  "fifty",
                                                           "sixty",  "seventy", "eighty", "ninety"};
    const auto found = std::find(names.begin(), names.end(), word);
    return found == names.end() ? 0 : 10 * (static_cast<int>(found - names.begin()) + 2);
}

struct TwoDigits {
    int value = 0;
    std::size_t words = 0;
};

/// 10 to 99, or "oh eight": the second part of a number.
std::optional<TwoDigits> second_part(const std::vector<Spoken>& words, std::size_t at) {
    if (at >= words.size()) return std::nullopt;
    const int unit = at + 1 < words.size() ? small(words[at + 1].word) : 0;
    const bool has_unit = unit > 0 && unit < 10;
    if (words[at].word == "hundred") return TwoDigits{0, 1};
    if (words[at].word == "oh" && has_unit) return TwoDigits{unit, 2};
    if (const int ten = tens(words[at].word); ten > 0)
        return has_unit ? TwoDigits{ten + unit, 2} : TwoDigits{ten, 1};
    if (const int teen = small(words[at].word); teen >= 10) return TwoDigits{teen, 1};
    return std::nullopt;
}

}  // namespace

std::string spoken_in_figures(std::string_view text) {
    const std::vector<Spoken> words = words_in(text);
    std::string out;
    std::size_t copied = 0;
    for (std::size_t at = 0; at < words.size();) {
        const int first = small(words[at].word);
        const auto second = first > 0 ? second_part(words, at + 1) : std::nullopt;
        if (!second) {
            ++at;
            continue;
        }
        out += text.substr(copied, words[at].begin - copied);
        out += std::to_string(100 * first + second->value);
        at += 1 + second->words;
        copied = words[at - 1].end;
    }
    out += text.substr(copied);
    return out;
}

}  // namespace endbell::inline words
