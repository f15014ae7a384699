// engine/fields: the columns of a catalog and the keys of a job, each described once, and what of a part decides a
// rule. Here: the neutral schema as the program sees it: which tables there are and in which order they are read. What
// each column is stands in part_columns.hpp; catalog-schema/ is made from both, and a test holds it.
#pragma once
#include <optional>
#include <string_view>
#include <vector>

#include "engine/fields/column.hpp"
#include "engine/model/kinds.hpp"

namespace endbell::inline fields {

struct Table {
    std::string_view name;
    std::size_t key_columns;       // the first so many columns name a row
    std::string_view parent;       // the table that must hold this row's part_id; empty: none
    std::optional<PartKind> kind;  // the kind of part that may have such rows
    std::string_view title;
    std::string_view meaning;
    std::vector<Column> columns;
    /// As people write the sheet, where the key does not come first; else empty.
    std::vector<std::string_view> sheet_order = {};
};

/// Parents come before their children.
const std::vector<Table>& tables();

/// In their order: what these hold of a part, rules look at.
const std::vector<std::string_view>& tables_of_parts();

/// Nothing when there is no such table.
const Table* find_table(std::string_view name);
/// REQUIRES: there is one.
const Table& table_named(std::string_view name);
const Column* find_column(const Table& table, std::string_view name);

}  // namespace endbell::inline fields
