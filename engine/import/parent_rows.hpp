// Which parts a parent table holds, asked in the order of a child's file. That is nearly always the order of the ids:
// then the rows of the parent are walked along. An id that is not close ahead is looked up.
#pragma once
#include <string>
#include <string_view>
#include <vector>

#include "engine/base/ids.hpp"
#include "engine/catalog/plain_statement.hpp"

namespace endbell::inline import {

/// The rows of a parent table that was empty, kept in memory while they come by ascending id, some 15 bytes each. A row
/// that comes otherwise ends it: then the table itself is asked.
class ParentIds {
  public:
    /// `kind`: of table parts, else empty.
    void add(std::string_view part_id, std::string_view kind);
    bool are_all() const { return ascending_; }
    const Ids& ids() const { return ids_; }
    std::string_view kind(std::size_t place) const { return kinds_[kind_of_[place]]; }

  private:
    Ids ids_;
    std::vector<unsigned char> kind_of_;  // index into kinds_
    std::vector<std::string> kinds_;
    bool ascending_ = true;
};

class ParentRows {
  public:
    /// `known`: all rows of the table, or null.
    ParentRows(SQLite::Database& db, std::string_view parent, const ParentIds* known);

    /// Moves to the row of `part_id`; false: there is none.
    bool find(std::string_view part_id);
    /// The found part's kind; only of the table parts.
    std::string_view kind() const { return known_ != nullptr ? known_->kind(place_) : rows_.text(1); }

  private:
    bool find_known(std::string_view part_id);
    void seek(std::string_view part_id);
    void step();

    const ParentIds* known_;
    std::size_t place_ = 0;  // in `known_`
    PlainStatement rows_;
    std::string sought_;   // bound to rows_
    bool more_ = false;    // rows_ stands on a row
    std::string_view id_;  // of that row
};

}  // namespace endbell::inline import
