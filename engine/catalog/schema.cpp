#include "engine/catalog/schema.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "engine/base/text.hpp"

namespace endbell::inline catalog {

namespace {

constexpr std::string_view opening =
    R"sql(-- The catalog. One table here for each CSV table, with the same columns under the same names; what a column means is in
-- DICTIONARY.md. An empty cell is NULL: unknown, never a default. A constraint's name is what a person is told when a row breaks
-- it. Words are written with OR: for a list of three or more, IN builds a table of its own on every row that is inserted.
-- Made from engine/fields by the catalog's tests: change those, not this.

)sql";

constexpr std::string_view own_tables = R"sql(-- Below: the store's own. None of it comes from a CSV column.

CREATE INDEX cross_references_of_part ON cross_references (part_id);

-- One row: which generation this file is, and the fingerprint of all its rows.
CREATE TABLE generation (
    one    INTEGER NOT NULL PRIMARY KEY CHECK (one = 1),
    number INTEGER NOT NULL CHECK (number > 0),
    digest TEXT NOT NULL
) STRICT;

-- How many rows each table has and the sum of their fingerprints, so that a nightly price update need not read the rest again;
-- and the columns that its files had, with a blank between: no row knows any other.
CREATE TABLE table_digests (
    table_name TEXT NOT NULL PRIMARY KEY,
    row_count  INTEGER NOT NULL,
    row_sum    TEXT NOT NULL,
    filled     TEXT NOT NULL
) STRICT, WITHOUT ROWID;

-- Every number a part is known by, to be looked up: lines of sight key, number and part_id with a tab between, in the order
-- of their bytes, about a kilobyte of them a row. Sight key: letters and digits only, characters that are misread for each
-- other folded.
CREATE TABLE numbers (
    lines TEXT NOT NULL PRIMARY KEY
) STRICT, WITHOUT ROWID;

-- The column map that last read a file with this header.
CREATE TABLE column_maps (
    header     TEXT NOT NULL PRIMARY KEY,
    table_name TEXT NOT NULL,
    map        TEXT NOT NULL
) STRICT, WITHOUT ROWID;
)sql";

/// SQL gives this word a meaning of its own.
std::string named(std::string_view column) {
    return column == "limit" ? "\"limit\"" : std::string(column);
}

/// "{}" stands for the column.
std::string condition_of(std::string_view pattern, std::string_view column) {
    std::string text(pattern);
    for (std::size_t at = text.find("{}"); at != std::string::npos; at = text.find("{}", at + column.size()))
        text.replace(at, 2, column);
    return text;
}

std::string within(const Bounds& bounds, std::string_view column) {
    if (!bounds.above && bounds.most)
        return fmt::format("{} BETWEEN {} AND {}", column, *bounds.least, *bounds.most);
    std::string text = fmt::format("{} {} {}", column, bounds.above ? ">" : ">=", *bounds.least);
    if (bounds.most) text += fmt::format(" AND {} <= {}", column, *bounds.most);
    return text;
}

std::string one_of(const std::vector<std::string_view>& words, std::string_view column) {
    std::string text;
    for (const std::string_view word : words)
        text += fmt::format("{}{} = '{}'", text.empty() ? "" : " OR ", column, word);
    return text;
}

/// `key`: what a table adds to its first column.
std::string defined(const Column& column, const std::string& key) {
    std::string sql = fmt::format("{} {}", named(column.name), column.kind->stored);
    if (column.need == Need::required || column.when_empty) sql += " NOT NULL";
    if (column.when_empty) sql += fmt::format(" DEFAULT '{}'", *column.when_empty);
    sql += key;
    if (const auto check = check_of(column)) {
        sql += fmt::format("\n        CONSTRAINT \"{}\" CHECK {}", check->told, check->expression);
    } else if (column.kind->words != nullptr && !column.kind->several) {
        sql += fmt::format("\n        CHECK ({})", one_of(column.kind->words(), column.name));
    }
    return sql;
}

std::string key_of(const Table& table) {
    std::string sql;
    if (table.key_columns == 1) sql += " PRIMARY KEY";
    if (!table.parent.empty()) sql += fmt::format(" REFERENCES {} (part_id)", table.parent);
    return sql;
}

std::string table_sql(const Table& table) {
    std::vector<std::string> lines;
    std::vector<std::string> key;
    for (std::size_t i = 0; i < table.columns.size(); ++i) {
        lines.push_back("    " + defined(table.columns[i], i == 0 ? key_of(table) : ""));
        if (i < table.key_columns) key.push_back(named(table.columns[i].name));
    }
    if (key.size() > 1) lines.push_back("    PRIMARY KEY (" + joined(key, ", ") + ")");
    return fmt::format("\n-- {}\nCREATE TABLE {} (\n{}\n) STRICT, WITHOUT ROWID;\n", table.meaning,
                       table.name, joined(lines, ",\n"));
}

}  // namespace

const int schema_version = ENDBELL_SCHEMA_VERSION;

const std::string& schema_sql() {
    static const std::string sql = [] {
        std::string all(opening);
        all += fmt::format("PRAGMA application_id = {}; -- \"ENDL\"\n", application_id);
        all += fmt::format("PRAGMA user_version = {}; -- schema version: migrations/README.md\n",
                           schema_version);
        for (const Table& table : tables()) all += table_sql(table);
        return all + "\n" + std::string(own_tables);
    }();
    return sql;
}

std::string column_sql(const Column& column) {
    return defined(column, "");
}

std::optional<ColumnCheck> check_of(const Column& column) {
    const ValueKind& kind = *column.kind;
    if (!column.bounds.told.empty())
        return ColumnCheck{std::string(column.bounds.told), "(" + within(column.bounds, column.name) + ")"};
    if (kind.told.empty()) return std::nullopt;
    const std::string condition =
        kind.words != nullptr ? one_of(kind.words(), column.name) : condition_of(kind.condition, column.name);
    return ColumnCheck{std::string(kind.told), "(" + condition + ")"};
}

}  // namespace endbell::inline catalog
