// What the readers of cells share.
#pragma once
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "engine/base/text.hpp"
#include "engine/fields/cell.hpp"
#include "engine/model/word.hpp"
#include "engine/words/read.hpp"

namespace endbell::inline fields::cells {

/// An enumeration's words, in its order.
template <class E>
std::vector<std::string_view> enum_words() {
    std::vector<std::string_view> list;
    for (const Word<E>& entry : Words<E>::table) list.push_back(entry.text);
    return list;
}

inline Cell stored(Stored value) {
    return {std::move(value)};
}
inline Cell refused(std::string expected, std::string todo) {
    return {{}, Refusal{std::move(expected), std::move(todo)}};
}

/// What came of reading a cell's text, as a cell: a question sets the row aside, an unreadable text too.
template <class T, class Convert>
Cell from_read(const Read<T>& read, Convert convert) {
    if (read.failed()) return refused(read.expected, "correct the cell");
    if (read.reading.is_open()) {
        std::string expected = "one meaning";
        if (!read.reading.readings.empty()) expected += ": " + joined(read.reading.readings, " or ");
        return refused(expected, read.reading.question);
    }
    if (!read.reading.value) return stored({});
    return stored(convert(*read.reading.value));
}

}  // namespace endbell::inline fields::cells
