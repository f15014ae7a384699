// Part numbers as people copy them: with or without dashes, and with characters that look alike taken for
// each other.
#pragma once
#include <SQLiteCpp/SQLiteCpp.h>

#include <string>
#include <string_view>

#include "engine/catalog/plain_statement.hpp"

namespace endbell::inline catalog {

/// number_key() with the characters that are misread for each other folded to one: O Q D 0, I L 1, S 5, B 8,
/// Z 2, G 6.
std::string sight_key(std::string_view number);

/// Makes number_key(text) known to SQL on this connection.
void register_number_key(SQLite::Database& db);

/// The table `numbers`, for looking up.
class Numbers {
  public:
    /// Of `db`, which must stay.
    explicit Numbers(SQLite::Database& db);

    /// Visits every number with this sight key and the id of the part that is known by it, in their order; both are good
    /// until the visit ends. A number that is an old one belongs to the part that a cross reference names, whether or not it
    /// is in the catalog.
    template <class Visit>
    void each(std::string_view sight_key, Visit visit) {
        rows_.restart(sight_key);
        each_line(rows_, [&](std::string_view key, std::string_view number, std::string_view part_id) {
            if (key == sight_key) visit(number, part_id);
        });
    }
    /// Visits all of them, ascending by sight key, with it.
    template <class Visit>
    void each_of_all(Visit visit) {
        PlainStatement all(db_, "SELECT lines FROM numbers ORDER BY lines");
        each_line(all, visit);
    }

  private:
    template <class Visit>
    static void each_line(PlainStatement& rows, Visit visit) {
        while (rows.step()) {
            std::string_view lines = rows.text(0);
            while (!lines.empty()) {
                const std::string_view key = take(lines, '\t');
                const std::string_view number = take(lines, '\t');
                const std::string_view part_id = take(lines, '\n');
                visit(key, number, part_id);
            }
        }
    }
    static std::string_view take(std::string_view& text, char end);
    SQLite::Database& db_;
    PlainStatement rows_;
};

/// Fills the table `numbers` from parts (id and number) and cross_references (old number).
void rebuild_numbers(SQLite::Database& db);

}  // namespace endbell::inline catalog
