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
    if (!more_ || part_id < id_) seek(part_id);
    for (int steps = 0; more_ && id_ < part_id; ++steps) {
        if (steps < most_steps)
            step();
        else
            seek(part_id);
    }
    return more_ && id_ == part_id;
}

void ParentRows::step() {
    more_ = rows_.step();
    if (more_) id_ = rows_.text(0);
}

void ParentRows::seek(std::string_view part_id) {
    sought_ = part_id;
    rows_.restart(sought_);
    step();
}

}  // namespace endbell
