#include "engine/import/column_checks.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "engine/base/check.hpp"
#include "engine/catalog/database.hpp"

namespace endbell::inline import {

namespace {

/// The definition of a column in schema.sql: all behind its name, to the next line that begins as far to the left.
std::string_view definition(const Table& table, std::string_view column) {
    const std::string_view sql = schema_sql();
    const std::size_t begin = sql.find(fmt::format("CREATE TABLE {} (", table.name));
    check(begin != std::string_view::npos, "schema.sql makes every table");
    const std::string_view body = sql.substr(begin, sql.find("\n) STRICT", begin) - begin);
    std::size_t at = std::string_view::npos;
    for (const std::string& name : {fmt::format("\n    {} ", column), fmt::format("\n    \"{}\" ", column)})
        at = std::min(at, body.find(name));
    check(at != std::string_view::npos, "schema.sql has every column");
    std::size_t end = at;
    do {
        end = body.find("\n    ", end + 1);
    } while (end != std::string_view::npos && body.substr(end + 5, 1) == " ");
    return body.substr(at, end - at);
}

/// From an opening bracket to the one that closes it.
std::string_view bracketed(std::string_view text) {
    int depth = 0;
    for (std::size_t i = 0; i < text.size(); ++i) {
        depth += text[i] == '(' ? 1 : text[i] == ')' ? -1 : 0;
        if (depth == 0) return text.substr(0, i + 1);
    }
    return {};
}

}  // namespace

std::optional<ColumnCheck> check_of(const Table& table, std::string_view column) {
    const std::string_view text = definition(table, column);
    constexpr std::string_view named = "CONSTRAINT \"";
    const std::size_t name = text.find(named);
    if (name == std::string_view::npos) return std::nullopt;
    const std::string_view behind = text.substr(name + named.size());
    const std::size_t bracket = behind.find("CHECK (");
    check(bracket != std::string_view::npos, "what schema.sql names is a CHECK");
    return ColumnCheck{std::string(behind.substr(0, behind.find('"'))),
                       std::string(bracketed(behind.substr(bracket + 6)))};
}

ColumnChecks::ColumnChecks(const Table& table)
    : db_(":memory:", SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE | SQLite::OPEN_NOMUTEX) {
    for (const Column& column : table.columns) {
        of_column_.emplace_back();
        if (auto asked = check_of(table, column.name)) {
            of_column_.back().emplace(
                Asked{std::move(asked->claim),
                      PlainStatement(db_, fmt::format("SELECT {} FROM (SELECT ? AS {})", asked->expression,
                                                      endbell::quoted(column.name)))});
        }
    }
}

std::string ColumnChecks::broken(std::size_t column, const Stored& value) {
    std::optional<Asked>& asked = of_column_[column];
    if (!asked || std::holds_alternative<std::monostate>(value)) return "";
    asked->statement.restart_with(value);
    // As SQLite has it: a CHECK is broken by what is false, not by what is unknown.
    const bool holds =
        asked->statement.step() && (asked->statement.is_null(0) || asked->statement.whole(0) != 0);
    return holds ? "" : asked->claim;
}

}  // namespace endbell::inline import
