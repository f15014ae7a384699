// What a reader made of a text, in words of the test's own: "0.5 hp", "? a | b", "missing", "unreadable".
#pragma once
#include <fmt/format.h>

#include <string>

#include "engine/base/text.hpp"
#include "engine/words/words.hpp"

namespace endbell::test {

/// Six significant figures, as a reader of the table would write them.
inline std::string figure(double value) {
    return fmt::format("{:.6g}", value);
}

template <class T, class Show>
std::string outcome(const Read<T>& read, Show show) {
    if (read.failed()) return "unreadable";
    if (read.reading.is_open()) {
        const std::string readings = joined(read.reading.readings, " | ");
        return readings.empty() ? "?" : "? " + readings;
    }
    if (!read.reading.value) return read.reading.raw.empty() ? "missing" : "lost";
    return (read.reading.origin == Origin::guessed ? "guessed " : "") + show(*read.reading.value);
}

template <class T, class Show>
std::string outcome(const Reading<T>& reading, Show show) {
    Read<T> read;
    read.reading = reading;
    return outcome(read, show);
}

template <class D>
std::string outcome_in(const Read<Quantity<D>>& read, Unit<D> unit, const char* name) {
    return outcome(read, [&](Quantity<D> q) { return figure(q.in(unit)) + " " + name; });
}

template <class E>
std::string outcome_word(const Read<E>& read) {
    return outcome(read, [](E e) { return std::string(word(e)); });
}

inline std::string outcome_volts(const Read<std::vector<PlateVolts>>& read) {
    return outcome(read, [](const std::vector<PlateVolts>& list) {
        std::string text;
        for (const PlateVolts& v : list) {
            text += (text.empty() ? "" : " or ") + figure(v.low.in(volt));
            if (v.high != v.low) text += "-" + figure(v.high.in(volt));
        }
        return text;
    });
}

}  // namespace endbell::test
