#include "engine/import/check_constraints.hpp"

#include <fmt/format.h>

#include "engine/catalog/database.hpp"

namespace endbell::inline import {

CheckConstraints::CheckConstraints(const Table& table)
    : db_(":memory:", SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE | SQLite::OPEN_NOMUTEX) {
    for (const Column& column : table.columns) {
        of_column_.emplace_back();
        if (auto asked = check_of(column)) {
            of_column_.back().emplace(
                Asked{std::move(asked->told),
                      PlainStatement(db_, fmt::format("SELECT {} FROM (SELECT ? AS {})", asked->expression,
                                                      endbell::quoted(column.name)))});
        }
    }
}

std::string CheckConstraints::broken(std::size_t column, const Stored& value) {
    std::optional<Asked>& asked = of_column_[column];
    if (!asked || std::holds_alternative<std::monostate>(value)) return "";
    asked->statement.restart_with(value);
    // As SQLite has it: a CHECK is broken by what is false, not by what is unknown.
    const bool holds =
        asked->statement.step() && (asked->statement.is_null(0) || asked->statement.whole(0) != 0);
    return holds ? "" : asked->told;
}

}  // namespace endbell::inline import
