// What a job says, as bytes: two jobs that say the same give the same.
#pragma once
#include <optional>
#include <string>
#include <type_traits>
#include <vector>

#include "engine/fields/bytes.hpp"
#include "engine/model/failed_unit.hpp"

namespace endbell::inline fields::bytes {

template <class T>
inline constexpr bool is_scalar = std::is_enum_v<T> || std::is_arithmetic_v<T> ||
                                  (std::is_trivially_copyable_v<T> && sizeof(T) == sizeof(double));
template <class T>
inline constexpr bool can_append = is_scalar<T>;
template <>
inline constexpr bool can_append<std::string> = true;
template <>
inline constexpr bool can_append<Terminal> = true;
template <>
inline constexpr bool can_append<LeadInUse> = true;
template <class T>
inline constexpr bool can_append<Legs<T>> = true;
template <class T>
inline constexpr bool can_append<std::vector<T>> = can_append<T>;

inline void append_value(std::string& to, const std::string& text) {
    append(to, static_cast<double>(text.size()));
    to += text;
}
inline void append_value(std::string& to, const Terminal& terminal) {
    append_value(to, terminal.name);
    append(to, terminal.call ? as_number(*terminal.call) : -1.0);
}
inline void append_value(std::string& to, const LeadInUse& in_use) {
    append(to, as_number(in_use.call));
    append(to, as_number(in_use.lead));
}
template <class T>
requires is_scalar<T>
void append_value(std::string& to, const T& scalar) {
    append(to, as_number(scalar));
}
template <class T>
void append_value(std::string& to, const std::vector<T>& list) {
    append(to, static_cast<double>(list.size()));
    for (const T& item : list) append_value(to, item);
}
template <class T>
void append_value(std::string& to, const Legs<T>& legs) {
    append_value(to, legs.each());
}
template <class T>
void append_stated(std::string& to, const std::optional<T>& value) {
    to.push_back(value ? '\1' : '\0');
    if (value) append_value(to, *value);
}

}  // namespace endbell::inline fields::bytes
