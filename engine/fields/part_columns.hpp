// The columns of every table, one function a table; tables.cpp puts them together.
#pragma once
#include <vector>

#include "engine/fields/column.hpp"
#include "engine/model/part.hpp"

namespace endbell::inline fields {

/// What several tables have: the part that a row is of, and its maker's warranty.
inline Column part_id(std::string_view meaning = "The part that this row belongs to.") {
    return column(kinds::part_number, {.name = "part_id",
                                       .title = "Part",
                                       .meaning = meaning,
                                       .example = "T-050-115",
                                       .need = Need::required});
}
/// The same where rows are read one after the other for the part that is asked for.
template <class Row>
RowColumn<Row> owned_by(std::string_view meaning = "The part that this row belongs to.") {
    return {part_id(meaning)};
}
inline Column warranty() {
    return {.name = "warranty_months",
            .title = "Warranty",
            .meaning = "Maker's warranty.",
            .example = "24",
            .bounds = between(0, 600, "0 to 600 months"),
            .seen = Seen::by_people,
            .unit = "months",
            .spellings = {"24"}};
}

const RowColumns<Part>& part_columns();
const RowColumns<Motor>& motor_columns();
const RowColumns<Rating>& rating_columns();
const RowColumns<Tap>& tap_columns();
const RowColumns<PartTerminal>& terminal_columns();
const RowColumns<Module>& module_columns();
const RowColumns<CureRow>& cure_columns();

std::vector<Column> module_fit_columns();
std::vector<Column> exclude_columns();
std::vector<Column> reference_columns();
std::vector<Column> offer_columns();
std::vector<Column> labour_columns();
std::vector<Column> limit_columns();

/// The present row as a `Row`. Throws what the store throws on a value that no import can have written.
template <class Row>
void read_row(const StoredRow& stored, const RowColumns<Row>& columns, Row& into) {
    RowReader reader(stored);
    for (std::size_t i = 0; i < columns.size(); ++i) {
        reader.go_to(static_cast<int>(i));
        if (columns[i].take != nullptr) columns[i].take(reader, into);
    }
}

}  // namespace endbell::inline fields
