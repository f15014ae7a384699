#include "engine/words/number.hpp"

#include <algorithm>
#include <array>
#include <charconv>
#include <cmath>

#include "engine/base/text.hpp"
#include "engine/words/fold.hpp"

namespace endbell::inline words {

namespace {

std::size_t digits_at(std::string_view text) {
    std::size_t n = 0;
    while (n < text.size() && is_digit(text[n])) ++n;
    return n;
}

double plain(std::string_view text) {
    double value = 0;
    std::from_chars(text.data(), text.data() + text.size(), value);
    return value;
}

/// Motors of a part of a horsepower are one over these: "5/40" is two numbers.
bool is_small_rating(int denominator) {
    static constexpr std::array denominators{20, 25, 30, 35, 40, 50, 60, 70};
    return std::find(denominators.begin(), denominators.end(), denominator) != denominators.end();
}

/// "1/2" and the like. A denominator that no fraction of this trade has is two numbers: "1075/3", "45/5".
std::optional<NumberText> fraction_at(std::string_view text) {
    static constexpr std::array denominators{2, 3, 4, 5, 6, 7, 8, 10, 12, 15, 16, 32, 64};
    const std::size_t top = digits_at(text);
    if (top == 0 || top > 2 || top >= text.size() || text[top] != '/') return std::nullopt;
    const std::size_t bottom = digits_at(text.substr(top + 1));
    if (bottom == 0 || bottom > 2) return std::nullopt;
    const std::size_t length = top + 1 + bottom;
    if (length < text.size() && (text[length] == '/' || text[length] == '.')) return std::nullopt;
    const int numerator = static_cast<int>(plain(text.substr(0, top)));
    const int denominator = static_cast<int>(plain(text.substr(top + 1, bottom)));
    const bool usual =
        std::find(denominators.begin(), denominators.end(), denominator) != denominators.end() ||
        (numerator == 1 && is_small_rating(denominator));
    if (!usual || numerator < 1 || numerator >= denominator) return std::nullopt;
    NumberText number;
    number.value = static_cast<double>(numerator) / denominator;
    number.length = length;
    number.fraction = true;
    return number;
}

/// "12", "1,075", "0,5", ".5", "1,234.5". One comma before three digits may be a thousands mark.
std::optional<NumberText> decimal_at(std::string_view text) {
    NumberText number;
    std::size_t end = digits_at(text);
    number.leading_zero = end > 1 && text[0] == '0';
    std::string figures(text.substr(0, end));
    int commas = 0;
    while (end < text.size() && text[end] == ',') {
        const std::size_t behind = digits_at(text.substr(end + 1));
        if (behind == 0) break;
        const bool thousands =
            behind == 3 && !figures.empty() && (commas > 0 || (figures.size() <= 3 && figures[0] != '0'));
        if (!thousands && commas > 0) return std::nullopt;
        if (!thousands) figures += '.';
        figures += text.substr(end + 1, behind);
        end += 1 + behind;
        if (!thousands) break;
        ++commas;
    }
    const bool has_point = figures.find('.') != std::string::npos;
    if (!has_point && end < text.size() && text[end] == '.' && digits_at(text.substr(end + 1)) > 0) {
        const std::size_t behind = digits_at(text.substr(end + 1));
        figures += text.substr(end, 1 + behind);
        end += 1 + behind;
    } else {
        number.comma_unclear = commas == 1;
    }
    if (figures.empty() || figures.size() > 24) return std::nullopt;
    if (figures.front() == '.') figures.insert(0, "0");
    number.value = plain(figures);
    number.length = end;
    return number;
}

std::string without_dots(std::string_view text) {
    std::string out;
    for (char c : text) {
        if (c != ' ' && c != '.' && c != ':' && c != '=' && c != '(' && c != ')') out += c;
    }
    return out;
}

}  // namespace

std::optional<NumberText> number_at(std::string_view text) {
    if (auto fraction = fraction_at(text)) return fraction;
    auto number = decimal_at(text);
    if (!number) return std::nullopt;
    const std::size_t whole = digits_at(text);
    if (whole != number->length || whole > 2 || whole + 1 >= text.size()) return number;
    const char joint = text[whole];
    if (joint != ' ' && joint != '-') return number;
    const auto part = fraction_at(text.substr(whole + 1));
    if (!part) return number;
    number->value += part->value;
    number->length = whole + 1 + part->length;
    number->fraction = true;
    number->dashed_mixed = joint == '-';
    return number;
}

std::optional<NumberText> whole_number(std::string_view text) {
    const std::string_view inner = trimmed(text);
    const auto number = number_at(inner);
    if (!number || number->length != inner.size()) return std::nullopt;
    return number;
}

std::optional<Measure> measure(std::string_view text) {
    std::size_t start = 0;
    while (start < text.size() && !is_digit(text[start]) &&
           !((text[start] == '.' || text[start] == ',') && start + 1 < text.size() &&
             is_digit(text[start + 1]))) {
        ++start;
    }
    const auto number = number_at(text.substr(start));
    if (!number) return std::nullopt;
    Measure found;
    found.number = *number;
    std::string_view before = trimmed(text.substr(0, start));
    if (!before.empty() && (before.back() == '-' || before.back() == '+')) {
        found.negative = before.back() == '-';
        before.remove_suffix(1);
    }
    found.before = without_dots(before);
    found.after = without_dots(text.substr(start + number->length));
    return found;
}

std::string shortest(double value) {
    std::array<char, 64> text{};
    const auto end =
        std::to_chars(text.data(), text.data() + text.size(), value, std::chars_format::fixed).ptr;
    return std::string(text.data(), end);
}

std::vector<std::string> cut(std::string_view text, std::string_view separators) {
    std::vector<std::string> parts(1);
    for (std::size_t i = 0; i < text.size();) {
        const bool after_digit = !parts.back().empty() && is_digit(parts.back().back());
        const auto fraction = after_digit ? std::nullopt : fraction_at(text.substr(i));
        if (fraction) {
            parts.back() += text.substr(i, fraction->length);
            i += fraction->length;
        } else if (separators.find(text[i]) != std::string_view::npos) {
            parts.emplace_back();
            ++i;
        } else {
            parts.back() += text[i++];
        }
    }
    for (std::string& part : parts) part = std::string(trimmed(part));
    return parts;
}

}  // namespace endbell::inline words
