#include "engine/base/display_width.hpp"

#include <algorithm>
#include <cstdint>

#include "engine/base/utf8.hpp"
#include "engine/base/width_table.hpp"

namespace endbell::inline base {

namespace {

int columns_of(const CodePoint& letter) {
    if (!letter.code || *letter.code < width_table.front().first) return 1;
    const auto behind =
        std::upper_bound(width_table.begin(), width_table.end(), *letter.code,
                         [](std::uint32_t code, const WidthRange& range) { return code < range.first; });
    const WidthRange& range = *(behind - 1);
    return *letter.code <= range.last ? range.columns : 1;
}

}  // namespace

int display_width(std::string_view utf8) {
    int columns = 0;
    while (!utf8.empty()) {
        const CodePoint letter = code_point_at(utf8);
        columns += columns_of(letter);
        utf8.remove_prefix(letter.bytes);
    }
    return columns;
}

std::string_view fitting(std::string_view utf8, int columns) {
    std::size_t at = 0;
    bool lettered = false;  // one that takes room is in
    while (at < utf8.size()) {
        const CodePoint letter = code_point_at(utf8.substr(at));
        const int own = columns_of(letter);
        if (own > columns && lettered) break;
        columns -= own;
        lettered = lettered || own > 0;
        at += letter.bytes;
    }
    return utf8.substr(0, at);
}

}  // namespace endbell::inline base
