#include "engine/base/text.hpp"

#include <algorithm>
#include <cstdint>
#include <cstdio>
#include <numeric>

namespace endbell {

namespace {

bool is_space(char c) {
    return c == ' ' || c == '\t' || c == '\r' || c == '\n' || c == '\v' || c == '\f';
}
bool is_upper(char c) {
    return c >= 'A' && c <= 'Z';
}
bool is_lower(char c) {
    return c >= 'a' && c <= 'z';
}
bool is_digit(char c) {
    return c >= '0' && c <= '9';
}

struct CodePoint {
    int value = -1;  // -1: no UTF-8
    std::size_t bytes = 1;
};

/// REQUIRES: text is not empty. Overlong forms and surrogates are no UTF-8.
CodePoint code_point(std::string_view text) {
    const auto byte = [&](std::size_t i) { return static_cast<int>(static_cast<unsigned char>(text[i])); };
    const int lead = byte(0);
    if (lead < 0x80) return {lead, 1};
    const std::size_t length = lead >= 0xf0 ? 4 : lead >= 0xe0 ? 3 : 2;
    if (lead < 0xc2 || lead > 0xf4 || text.size() < length) return {};
    int value = lead & (0xff >> (length + 1));
    for (std::size_t i = 1; i < length; ++i) {
        if ((byte(i) & 0xc0) != 0x80) return {};
        value = value << 6 | (byte(i) & 0x3f);
    }
    const bool overlong = (length == 3 && value < 0x800) || (length == 4 && value < 0x10000);
    const bool surrogate = value >= 0xd800 && value < 0xe000;
    if (overlong || surrogate || value > 0x10ffff) return {};
    return {value, length};
}

/// The controls C0, DEL and C1; the line and paragraph separators; the marks that turn the direction of text.
bool drives_a_terminal(int c) {
    return c < 0x20 || (c >= 0x7f && c < 0xa0) || c == 0x61c || c == 0x200e || c == 0x200f ||
           (c >= 0x2028 && c <= 0x202e) || (c >= 0x2066 && c <= 0x2069);
}

}  // namespace

std::string_view trimmed(std::string_view text) {
    while (!text.empty() && is_space(text.front())) text.remove_prefix(1);
    while (!text.empty() && is_space(text.back())) text.remove_suffix(1);
    return text;
}

std::string lower(std::string_view ascii) {
    std::string out(ascii);
    for (char& c : out) {
        if (is_upper(c)) c = static_cast<char>(c - 'A' + 'a');
    }
    return out;
}

std::vector<std::string> split(std::string_view text, char separator) {
    std::vector<std::string> parts;
    std::size_t start = 0;
    for (std::size_t i = 0; i <= text.size(); ++i) {
        if (i < text.size() && text[i] != separator) continue;
        parts.emplace_back(text.substr(start, i - start));
        start = i + 1;
    }
    return parts;
}

std::string joined(const std::vector<std::string>& parts, std::string_view separator) {
    std::string out;
    for (std::size_t i = 0; i < parts.size(); ++i) {
        if (i > 0) out += separator;
        out += parts[i];
    }
    return out;
}

std::string number_key(std::string_view part_number) {
    std::string key;
    for (char c : part_number) {
        if (is_digit(c) || is_upper(c)) key += c;
        if (is_lower(c)) key += static_cast<char>(c - 'a' + 'A');
    }
    return key;
}

std::string visible(std::string_view text) {
    std::string out;
    while (!text.empty()) {
        const CodePoint first = code_point(text);
        const std::string_view bytes = text.substr(0, first.bytes);
        text.remove_prefix(first.bytes);
        if (first.value >= 0 && !drives_a_terminal(first.value)) {
            out += bytes;
            continue;
        }
        for (const char byte : bytes) {
            char escaped[8];
            std::snprintf(escaped, sizeof escaped, "\\x%02x",
                          static_cast<unsigned>(static_cast<unsigned char>(byte)));
            out += escaped;
        }
    }
    return out;
}

int edit_distance(std::string_view a, std::string_view b) {
    std::vector<int> before_last(b.size() + 1), last(b.size() + 1), row(b.size() + 1);
    std::iota(row.begin(), row.end(), 0);
    for (std::size_t i = 1; i <= a.size(); ++i) {
        before_last.swap(last);
        last.swap(row);
        row[0] = static_cast<int>(i);
        for (std::size_t j = 1; j <= b.size(); ++j) {
            row[j] = std::min({last[j] + 1, row[j - 1] + 1, last[j - 1] + (a[i - 1] == b[j - 1] ? 0 : 1)});
            const bool exchanged = i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1];
            if (exchanged) row[j] = std::min(row[j], before_last[j - 2] + 1);
        }
    }
    return row[b.size()];
}

std::string nearest(std::string_view wanted, const std::vector<std::string>& known) {
    const std::string key = lower(wanted);
    std::string best;
    int best_distance = std::max(1, static_cast<int>(wanted.size()) / 3) + 1;
    for (const std::string& word : known) {
        const int distance = edit_distance(key, lower(word));
        if (distance < best_distance) {
            best_distance = distance;
            best = word;
        }
    }
    return best;
}

std::string fingerprint(std::string_view bytes) {
    std::uint64_t hash = 0xcbf29ce484222325ULL;
    for (char c : bytes) {
        hash ^= static_cast<unsigned char>(c);
        hash *= 0x100000001b3ULL;
    }
    char text[17];
    std::snprintf(text, sizeof text, "%016llx", static_cast<unsigned long long>(hash));
    return text;
}

}  // namespace endbell
