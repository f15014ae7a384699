// The neutral schema as the program sees it: which tables there are, in which order they are read, and what
// reads each column. catalog-schema/ says what every column means; a test holds the three against each other.
#pragma once
#include <optional>
#include <string_view>
#include <vector>

#include "engine/fields/cell.hpp"
#include "engine/model/kinds.hpp"

namespace endbell::inline fields {

enum class Need { optional, required };

struct Column {
    std::string_view name;
    Cell (*read)(std::string_view text);
    Need need = Need::optional;
    /// Stored when the cell is empty; nothing: stored as unknown.
    std::string_view when_empty = {};
};

struct Table {
    std::string_view name;
    std::size_t key_columns;       // the first so many columns name a row
    std::string_view parent;       // the table that must hold this row's part_id; empty: none
    std::optional<PartKind> kind;  // the kind of part that may have such rows
    std::vector<Column> columns;
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
