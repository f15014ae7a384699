// One column of the catalog, once: the store, its checks, the reader of a row, the index, the table descriptor, the
// dictionary and an import all come from what stands here.
#pragma once
#include <optional>
#include <string>
#include <string_view>
#include <type_traits>
#include <utility>
#include <vector>

#include "engine/fields/index_field.hpp"
#include "engine/fields/row_reader.hpp"
#include "engine/fields/value_kind.hpp"

namespace endbell::inline fields {

enum class Need { optional, required };

/// What the store refuses beyond the kind's own words, and how that is told: "a shaft diameter above zero, at most 3 in".
struct Bounds {
    std::string_view told = {};
    std::optional<double> least = {};  // allowed itself, unless `above`
    std::optional<double> most = {};
    bool above = false;
};
constexpr Bounds above_zero(std::string_view told, std::optional<double> most = {}) {
    return {told, 0, most, true};
}
constexpr Bounds at_least(double least, std::string_view told) {
    return {told, least, {}, false};
}
constexpr Bounds between(double least, double most, std::string_view told) {
    return {told, least, most, false};
}

/// Who looks at a column: of what only people read, the index reads nothing.
enum class Seen { by_rules, by_people };

struct Column {
    std::string_view name;     // "shaft_flat_in"
    std::string_view title;    // "Flat"
    std::string_view meaning;  // a sentence or two
    std::string_view example;  // reads to a value
    Need need = Need::optional;
    Bounds bounds = {};
    Seen seen = Seen::by_rules;
    std::string_view unit = {};                       // where the kind has none: "months"
    std::vector<std::string_view> spellings = {};     // in place of the kind's
    std::optional<std::string_view> when_empty = {};  // stored for an empty cell; nothing: stored as unknown
    const ValueKind* kind = nullptr;

    Cell read(std::string_view cleaned) const { return kind->read(cleaned); }
};

/// A column of rows that become a `Row`.
template <class Row>
struct RowColumn : Column {
    /// Takes the present row's value into its place; null: passed over.
    void (*take)(RowReader&, Row&) = nullptr;
    /// What the index keeps of it by itself. Other ways are in part_fields.cpp.
    std::optional<PartField> index = {};
};
template <class Row>
using RowColumns = std::vector<RowColumn<Row>>;

inline Column column(const ValueKind& kind, Column facts) {
    facts.kind = &kind;
    return facts;
}
/// A key, or a column that the one before it has read.
template <class Row>
RowColumn<Row> unread(const ValueKind& kind, Column facts) {
    return {column(kind, std::move(facts))};
}
template <class Row>
RowColumn<Row> read_by(void (*take)(RowReader&, Row&), const ValueKind& kind, Column facts) {
    return {column(kind, std::move(facts)), take};
}

namespace detail {
template <class Row, class T>
Row row_of(T Row::*);
}  // namespace detail

/// A column that is the member `Member` of its row; the type of the member says how the stored value is taken.
template <auto Member, class Row = decltype(detail::row_of(Member))>
RowColumn<Row> member(const ValueKind& kind, Column facts) {
    RowColumn<Row> made{column(kind, std::move(facts)),
                        [](RowReader& row, Row& into) { row.take(into.*Member); }};
    if constexpr (std::is_same_v<Row, Motor>) {
        if (made.seen == Seen::by_rules) made.index = index_field<Member>();
    }
    return made;
}
/// A motor's column of which rules ask only whether it is stated.
template <auto Member>
RowColumn<Motor> whether(const ValueKind& kind, Column facts) {
    RowColumn<Motor> made = member<Member>(kind, std::move(facts));
    made.index = kept_whether<Member>();
    return made;
}

}  // namespace endbell::inline fields
