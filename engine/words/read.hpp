// What came of reading a text. Four outcomes, told apart by the caller without looking at the text again:
//     not written      a blank cell, "N/A": an empty Reading
//     a value          reading.value
//     open             reading.question, with the meanings the text may have in reading.readings
//     unreadable       failed(); `expected` says what would have been read
#pragma once
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "engine/model/reading.hpp"
#include "engine/words/fold.hpp"

namespace endbell::inline words {

template <class T>
struct Read {
    Reading<T> reading;
    std::string expected;  // empty unless the text is unreadable
    bool failed() const { return !expected.empty(); }
};

template <class T>
Read<T> not_written() {
    return {};
}

template <class T>
Read<T> read_as(const Folded& words, T value) {
    Read<T> read;
    read.reading.raw = words.raw();
    read.reading.value = std::move(value);
    return read;
}

template <class T>
Read<T> ask(const Folded& words, const std::string& question, const std::vector<std::string>& readings) {
    Read<T> read;
    read.reading.raw = words.raw();
    read.reading.question = question;
    read.reading.readings = readings;
    return read;
}

template <class T>
Read<T> unreadable(const Folded& words, std::string_view expected) {
    Read<T> read;
    read.reading.raw = words.raw();
    read.expected = std::string(expected);
    return read;
}

/// A question mark, three dots or "torn" beside what could be read: "4?1-3K", "1/2 hp ...", "PR-1 (worn off)".
bool is_partly_read(const Folded& words);

/// Open: nothing of a value that was read in part decides.
template <class T>
Read<T> ask_torn(const Folded& words) {
    return ask<T>(
        words,
        "part of it could not be read: what does the whole say, or what do the equipment's papers say?", {});
}

/// The same outcome for another type: everything but the value.
template <class T, class U>
Read<T> no_value(const Read<U>& other) {
    Read<T> read;
    read.reading.raw = other.reading.raw;
    read.reading.question = other.reading.question;
    read.reading.readings = other.reading.readings;
    read.expected = other.expected;
    return read;
}

}  // namespace endbell::inline words
