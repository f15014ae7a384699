// The CHECKs of schema.sql, asked of one value. A value that held once need not be asked about in every row that has it:
// no CHECK looks at more than its own column (tested).
#pragma once
#include <SQLiteCpp/SQLiteCpp.h>

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "engine/catalog/plain_statement.hpp"
#include "engine/fields/tables.hpp"

namespace endbell::inline import {

struct ColumnCheck {
    std::string claim;       // what a person is told when a value breaks it: the constraint's name
    std::string expression;  // in SQL, of the column
};

/// What schema.sql asks of a column; nothing where it asks for nothing. Of its words it asks without a name: the
/// column's reader gives no others.
std::optional<ColumnCheck> check_of(const Table& table, std::string_view column);

class ColumnChecks {
  public:
    explicit ColumnChecks(const Table& table);

    bool has(std::size_t column) const { return of_column_[column].has_value(); }
    /// The claim that the value breaks; empty: none. `column` counts as in the table. Throws SQLite::Exception.
    std::string broken(std::size_t column, const Stored& value);

  private:
    struct Asked {
        std::string claim;
        PlainStatement statement;
    };
    SQLite::Database db_;  // holds nothing: SQLite reads the expressions
    std::vector<std::optional<Asked>> of_column_;
};

}  // namespace endbell::inline import
