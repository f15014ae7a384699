// Parts from the rows of their tables.
#pragma once
#include <SQLiteCpp/SQLiteCpp.h>

#include <cstdint>
#include <functional>
#include <string>
#include <string_view>

#include "engine/catalog/plain_statement.hpp"
#include "engine/model/catalog.hpp"

namespace endbell::inline catalog {

enum class PartReading {
    of_one_part,
    of_all,
    to_match  // of all, and of their columns those that rules look at and some row knows
};

/// The rows of one table, either of one part or of all parts in ascending order of part_id.
class Rows {
  public:
    Rows(SQLite::Database& db, std::string_view table, PartReading reading, std::uint64_t columns,
         const std::string& condition = "");

    /// Visits the rows of `part_id`. Of all parts: ids must ascend from call to call.
    template <class Visit>
    void of(const std::string& part_id, Visit visit) {
        if (of_one_part_ || !begun_) {
            first_ = part_id;
            rows_.restart(first_);
            more_ = rows_.step();
        }
        begun_ = true;
        while (more_) {
            const int order = of_one_part_ ? 0 : rows_.text(0).compare(part_id);
            if (order > 0) return;
            if (order == 0) visit(rows_);
            more_ = rows_.step();
        }
    }

  private:
    PlainStatement rows_;
    bool of_one_part_;
    std::string first_;  // of the ids that are asked for
    bool begun_ = false;
    bool more_ = false;
};

/// A row of `parts`, with an empty motor, module or accessory to be filled.
Part read_part(const PlainStatement& row);

/// Everything that hangs on a part.
class PartRows {
  public:
    PartRows(SQLite::Database& db, PartReading reading);
    void fill(Part& part);

    /// Whole parts of a range, ascending by id. `condition` is SQL that begins with AND, or empty.
    static void each(SQLite::Database& db, PartReading reading, const IdRange& range,
                     const std::string& condition, const std::function<void(const Part&)>& visit);

  private:
    class Columns;
    PartRows(SQLite::Database& db, PartReading reading, const Columns& columns);
    void fill_motor(const std::string& id, Motor& motor);
    void fill_module(const std::string& id, Module& module);
    void fill_accessory(const std::string& id, Accessory& accessory);

    Rows motors_, ratings_, taps_, terminals_, modules_, fits_, cures_, excludes_;
};

}  // namespace endbell::inline catalog
