// Which parts a parent table holds, asked in the order of a child's file. That is nearly always the order of the ids:
// then the rows of the parent are walked along. An id that is not close ahead is looked up.
#pragma once
#include <string>
#include <string_view>

#include "engine/catalog/plain_statement.hpp"

namespace endbell {

class ParentRows {
  public:
    ParentRows(SQLite::Database& db, std::string_view parent);

    /// Moves to the row of `part_id`; false: there is none.
    bool find(std::string_view part_id);
    /// The found part's kind; only of the table parts.
    std::string_view kind() const { return rows_.text(1); }

  private:
    void seek(std::string_view part_id);
    void step();

    PlainStatement rows_;
    std::string sought_;   // bound to rows_
    bool more_ = false;    // rows_ stands on a row
    std::string_view id_;  // of that row
};

}  // namespace endbell
