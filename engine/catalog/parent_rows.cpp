#include "engine/catalog/parent_rows.hpp"

#include "engine/catalog/database.hpp"

namespace endbell {

namespace {

/// Steps that cost as much as one look-up.
constexpr int most_steps = 8;

}  // namespace

ParentRows::ParentRows(SQLite::Database& db, std::string_view parent)
    : rows_(db, "SELECT part_id" + std::string(parent == "parts" ? ", kind" : "") + " FROM " +
                    quoted(parent) + " WHERE part_id >= ? ORDER BY part_id") {}

bool ParentRows::find(std::string_view part_id) {
    if (!more_ || part_id < rows_.text(0)) seek(part_id);
    for (int steps = 0; more_ && rows_.text(0) < part_id; ++steps) {
        if (steps < most_steps)
            more_ = rows_.step();
        else
            seek(part_id);
    }
    return more_ && rows_.text(0) == part_id;
}

void ParentRows::seek(std::string_view part_id) {
    sought_ = part_id;
    rows_.restart(sought_);
    more_ = rows_.step();
}

}  // namespace endbell
