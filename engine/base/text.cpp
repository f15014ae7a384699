#include "engine/base/text.hpp"

#include <algorithm>
#include <cstdint>
#include <cstdio>
#include <cstring>
#include <numeric>

#include "engine/base/utf8.hpp"

namespace endbell::inline base {

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

/// Drives a terminal, turns the order of its neighbours, or cannot be seen.
bool is_hidden(std::uint32_t code) {
    const auto within = [code](std::uint32_t low, std::uint32_t high) { return code >= low && code <= high; };
    return code < 0x20 || within(0x7f, 0x9f) || code == 0x61c || within(0x200b, 0x200f) ||
           within(0x2028, 0x202e) || within(0x2060, 0x206f) || within(0xd800, 0xdfff) || code == 0xfeff ||
           within(0xe0000, 0xe007f);
}

}  // namespace

bool is_ascii(std::string_view text) {
    std::uint64_t all = 0;  // eight bytes at once
    std::size_t i = 0;
    for (std::uint64_t eight = 0; i + sizeof eight <= text.size(); i += sizeof eight) {
        std::memcpy(&eight, text.data() + i, sizeof eight);
        all |= eight;
    }
    for (; i < text.size(); ++i) all |= static_cast<unsigned char>(text[i]);
    return (all & 0x8080808080808080ULL) == 0;
}

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
    const bool plain = std::all_of(text.begin(), text.end(), [](char c) { return c >= ' ' && c <= '~'; });
    if (plain) return std::string(text);  // nearly all
    std::string out;
    for (std::size_t i = 0; i < text.size();) {
        const CodePoint letter = code_point_at(text.substr(i));
        if (!letter.code || is_hidden(*letter.code)) {
            for (std::size_t k = 0; k < letter.bytes; ++k) {
                char escaped[8];
                std::snprintf(escaped, sizeof escaped, "\\x%02x", static_cast<unsigned char>(text[i + k]));
                out += escaped;
            }
        } else {
            out += text.substr(i, letter.bytes);
        }
        i += letter.bytes;
    }
    return out;
}

std::string_view beginning(std::string_view text, std::size_t most) {
    if (text.size() <= most) return text;  // no more letters than bytes
    std::size_t at = 0;
    for (std::size_t letters = 0; letters < most && at < text.size(); ++letters)
        at += code_point_at(text.substr(at)).bytes;
    return text.substr(0, at);
}

std::string shortened(std::string_view text, std::size_t most) {
    const std::string_view kept = beginning(text, most);
    std::size_t left_out = 0;
    for (std::size_t i = kept.size(); i < text.size(); i += code_point_at(text.substr(i)).bytes) ++left_out;
    if (left_out == 0) return std::string(text);
    return std::string(kept) + "\xe2\x80\xa6 [" + std::to_string(left_out) + " more characters]";
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

}  // namespace endbell::inline base
