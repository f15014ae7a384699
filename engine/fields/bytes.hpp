// Values as bytes that sort as the values do, for telling what is alike to a rule.
#pragma once
#include <array>
#include <bit>
#include <cstdint>
#include <cstring>
#include <string>
#include <string_view>
#include <type_traits>

#include "engine/base/ensure.hpp"

namespace endbell::inline fields::bytes {

/// From the machine's order of bytes to high byte first, and back.
inline std::uint64_t high_first(std::uint64_t bits) {
    return std::endian::native == std::endian::little ? __builtin_bswap64(bits) : bits;
}

/// Sign flipped, the rest too where negative, high byte first.
inline std::array<char, 8> of(double value) {
    const auto bits = std::bit_cast<std::uint64_t>(value);
    return std::bit_cast<std::array<char, 8>>(high_first(bits ^ ((bits >> 63) != 0 ? ~0ull : 1ull << 63)));
}

inline void append(std::string& to, double value) {
    const std::array<char, 8> bytes = of(value);
    to.append(bytes.data(), bytes.size());
}

inline double number_at(std::string_view from, std::size_t at) {
    ensure(at + 8 <= from.size(), "a number has eight bytes");
    std::uint64_t bits = 0;
    std::memcpy(&bits, from.data() + at, sizeof bits);
    bits = high_first(bits);
    bits ^= (bits >> 63) != 0 ? 1ull << 63 : ~0ull;
    return std::bit_cast<double>(bits);
}

// Scalars: quantities and temperatures are one double each, words and whole numbers become one.
template <class T>
double as_number(const T& value) {
    if constexpr (std::is_enum_v<T> || std::is_arithmetic_v<T>) {
        return static_cast<double>(value);
    } else {
        return std::bit_cast<double>(value);
    }
}
template <class T>
T from_number(double value) {
    if constexpr (std::is_same_v<T, bool>) {
        return value != 0;
    } else if constexpr (std::is_enum_v<T>) {
        return static_cast<T>(static_cast<int>(value));
    } else if constexpr (std::is_arithmetic_v<T>) {
        return static_cast<T>(value);
    } else {
        return std::bit_cast<T>(value);
    }
}

}  // namespace endbell::inline fields::bytes
