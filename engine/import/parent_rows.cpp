#include "engine/import/parent_rows.hpp"

#include <algorithm>

#include "engine/catalog/database.hpp"

namespace endbell::inline import {

namespace {

/// Steps that cost as much as one look-up.
constexpr int most_steps = 8;

}  // namespace

void ParentIds::add(std::string_view part_id, std::string_view kind) {
    ascending_ = ascending_ && (ids_.size() == 0 || ids_[ids_.size() - 1] < part_id);
    if (!ascending_) return;
    ids_.push_back(part_id);
    auto known = std::find(kinds_.begin(), kinds_.end(), kind);
    if (known == kinds_.end()) known = kinds_.emplace(known, kind);
    kind_of_.push_back(static_cast<unsigned char>(known - kinds_.begin()));
}

ParentRows::ParentRows(SQLite::Database& db, std::string_view parent, const ParentIds* known)
    : known_(known),
      rows_(db, "SELECT part_id" + std::string(parent == "parts" ? ", kind" : "") + " FROM " +
                    quoted(parent) + " WHERE part_id >= ? ORDER BY part_id") {}

bool ParentRows::find(std::string_view part_id) {
    if (known_ != nullptr) return find_known(part_id);
    if (!more_ || part_id < id_) seek(part_id);
    for (int steps = 0; more_ && id_ < part_id; ++steps) {
        if (steps < most_steps)
            step();
        else
            seek(part_id);
    }
    return more_ && id_ == part_id;
}

bool ParentRows::find_known(std::string_view part_id) {
    const Ids& ids = known_->ids();
    for (int steps = 0; steps < most_steps && place_ < ids.size(); ++steps, ++place_) {
        const int order = ids[place_].compare(part_id);
        if (order == 0) return true;
        if (order > 0) break;
    }
    std::size_t first = 0, end = ids.size();
    while (first < end) {
        const std::size_t middle = first + (end - first) / 2;
        if (ids[middle] < part_id)
            first = middle + 1;
        else
            end = middle;
    }
    place_ = first;
    return place_ < ids.size() && ids[place_] == part_id;
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

}  // namespace endbell::inline import
