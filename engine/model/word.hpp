// Named values and the one word each of them has in files, sheets and JSON.
#pragma once
#include <array>
#include <optional>
#include <string_view>

namespace endbell::inline model {

template <class E>
struct Word {
    E value;
    std::string_view text;
};

/// Beside each enumeration, in its own namespace, stands `constexpr auto words_of(E)`: an array of Word<E>, one a value.
template <class E>
requires requires {
    words_of(E{});
}
struct Words {
    static constexpr auto table = words_of(E{});
};

template <class E>
constexpr std::string_view word(E value) {
    for (const Word<E>& entry : Words<E>::table) {
        if (entry.value == value) return entry.text;
    }
    return "?";
}
/// What is not said has no word: the empty text.
template <class E>
constexpr std::string_view word(const std::optional<E>& value) {
    return value ? word(*value) : std::string_view();
}

/// The value whose word is exactly `text`; empty for any other spelling.
template <class E>
constexpr std::optional<E> from_word(std::string_view text) {
    for (const Word<E>& entry : Words<E>::table) {
        if (entry.text == text) return entry.value;
    }
    return std::nullopt;
}

}  // namespace endbell::inline model
