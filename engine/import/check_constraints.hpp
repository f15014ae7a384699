// The CHECKs of the store, asked of one value. A value that held once need not be asked about in every row that has it:
// no CHECK looks at more than its own column (tested).
#pragma once
#include <SQLiteCpp/SQLiteCpp.h>

#include <optional>
#include <string>
#include <vector>

#include "engine/catalog/plain_statement.hpp"
#include "engine/catalog/schema.hpp"

namespace endbell::inline import {

class CheckConstraints {
  public:
    explicit CheckConstraints(const Table& table);

    bool has(std::size_t column) const { return of_column_[column].has_value(); }
    /// What is told of the constraint that the value breaks; empty: none. `column` counts as in the table. Throws
    /// SQLite::Exception.
    std::string broken(std::size_t column, const Stored& value);

  private:
    struct Asked {
        std::string told;
        PlainStatement statement;
    };
    SQLite::Database db_;  // holds nothing: SQLite reads the expressions
    std::vector<std::optional<Asked>> of_column_;
};

}  // namespace endbell::inline import
