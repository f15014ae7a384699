// What the index keeps of one member of a motor, as bytes.
#pragma once
#include <optional>
#include <string>
#include <string_view>
#include <type_traits>
#include <vector>

#include "engine/fields/bytes.hpp"
#include "engine/model/part.hpp"

namespace endbell::inline fields {

struct PartField {
    std::string_view column;  // "motors.rotation": also how a rule names it
    /// The field of a motor or module, into empty bytes. Sorts as its values do; unknown sorts first. Nothing but the
    /// field decides.
    void (*take)(const Part&, std::string& bytes);
    /// Writes what `take` gave into a part of the same kind that has none of it.
    void (*put)(std::string_view, Part&);
};

namespace detail {
template <class T>
T inside(const std::optional<T>&);
template <class T>
std::vector<T> inside(const std::vector<T>&);
}  // namespace detail
/// What `Member` of a motor holds when it is stated; of a list, the list.
template <auto Member>
using Stated = decltype(detail::inside(std::declval<Motor>().*Member));

/// A scalar, whole.
template <auto Member>
PartField kept_whole() {
    return {"",
            [](const Part& p, std::string& bytes) {
                if (p.motor && (*p.motor).*Member)
                    bytes::append(bytes, bytes::as_number(*((*p.motor).*Member)));
            },
            [](std::string_view bytes, Part& p) {
                if (!bytes.empty())
                    (*p.motor).*Member = bytes::from_number<Stated<Member>>(bytes::number_at(bytes, 0));
            }};
}

/// A list of words, a byte a word.
template <auto Member>
PartField kept_list() {
    return {"",
            [](const Part& p, std::string& bytes) {
                if (!p.motor) return;
                for (const auto word : (*p.motor).*Member) bytes.push_back(static_cast<char>(word));
            },
            [](std::string_view bytes, Part& p) {
                using Listed = typename Stated<Member>::value_type;
                for (const char word : bytes) ((*p.motor).*Member).push_back(static_cast<Listed>(word));
            }};
}

/// Of a scalar, only that it is stated.
template <auto Member>
PartField kept_whether() {
    return {"",
            [](const Part& p, std::string& bytes) {
                if (p.motor && (*p.motor).*Member) bytes = "\1";
            },
            [](std::string_view bytes, Part& p) {
                if (!bytes.empty()) (*p.motor).*Member = Stated<Member>{};
            }};
}

template <class T>
inline constexpr bool is_list = false;
template <class T>
inline constexpr bool is_list<std::vector<T>> = true;

/// As the type of the member asks; nothing of texts, which each have their own way of being alike.
template <auto Member>
std::optional<PartField> index_field() {
    if constexpr (std::is_same_v<Stated<Member>, std::string>) {
        return std::nullopt;
    } else if constexpr (is_list<Stated<Member>>) {
        return kept_list<Member>();
    } else {
        return kept_whole<Member>();
    }
}

}  // namespace endbell::inline fields
