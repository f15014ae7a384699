// Many rows by one statement. For SQLite the rows are a table of their own (a virtual table, read where they stand in
// memory): begun once, it keeps its place in the table that it fills, and rows in ascending order are only appended.
#pragma once
#include <cstddef>
#include <memory>
#include <span>

#include "engine/catalog/plain_statement.hpp"
#include "engine/fields/tables.hpp"
#include "engine/import/read_ahead.hpp"

namespace endbell::inline import {

struct BatchRows;  // the rows as SQLite sees them

class BatchInsert {
  public:
    /// Fills the columns of `table` that `fed` counts; the others are unknown in all rows. One at a time on a connection
    /// for the same table.
    BatchInsert(SQLite::Database& db, const Table& table, std::span<const std::size_t> fed);
    ~BatchInsert();
    BatchInsert(const BatchInsert&) = delete;
    BatchInsert& operator=(const BatchInsert&) = delete;

    struct StoredRows {
        std::size_t end = 0;  // rows before it are stored
        int refusal =
            0;  // SQLite's extended code for the constraint that row `end` breaks; 0: all are stored
    };
    /// Stores the rows from `first` on that have no problems, up to one that a constraint refuses.
    StoredRows store(std::span<const ReadRow> rows, std::size_t first);

  private:
    std::unique_ptr<BatchRows> rows_;
    SQLite::Database& db_;
    std::unique_ptr<PlainStatement> insert_;
};

}  // namespace endbell::inline import
