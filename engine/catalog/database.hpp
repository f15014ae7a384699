// The catalog's file: how it is opened, and what every SQLite failure becomes. Only this folder includes
// SQLite.
#pragma once
#include <SQLiteCpp/SQLiteCpp.h>

#include <filesystem>
#include <string>
#include <string_view>

#include "engine/base/problem.hpp"
#include "engine/catalog/schema.hpp"

namespace endbell::inline catalog {

inline constexpr int oldest_schema_version = 1;  // that is still read: migrations/README.md

/// Opens a finished catalog for reading. The file is never changed in place, so it is opened as immutable: no
/// lock, no journal. Throws BadData unless it is a catalog: application id, schema version, and exactly the
/// tables of schema_sql(), no view or trigger beside them.
SQLite::Database open_finished(const std::filesystem::path& file);

/// Makes an empty catalog at `file`, to be filled by one writer that nobody reads yet.
SQLite::Database make_new(const std::filesystem::path& file);
/// Opens a private copy for filling.
SQLite::Database open_private(const std::filesystem::path& file);

/// For a connection that reads much: the first 128 MB of its file are read where the system holds them. More would only
/// look like memory that is taken.
void map_pages(SQLite::Database& db);

/// What a failure of SQLite on `file` is to the user.
BadData as_bad_data(const std::filesystem::path& file, const SQLite::Exception& failure);

template <class Work>
auto guarded(const std::filesystem::path& file, Work work) {
    try {
        return work();
    } catch (const SQLite::Exception& failure) {
        throw as_bad_data(file, failure);
    }
}

/// "\"a\",\"b\"": the columns of a table, quoted, in their order.
std::string column_list(const Table& table);
std::string quoted(std::string_view name);
/// SELECT of all columns; `rest` follows ("WHERE part_id = ?").
std::string select_all(const Table& table, std::string_view rest);
/// "ORDER BY" the columns that name a row.
std::string in_order(const Table& table);

Stored column_value(const SQLite::Column& column);
void bind_value(SQLite::Statement& statement, int index, const Stored& value);
/// For a person: "", "5", "0.5", the text.
std::string to_text(const Stored& value);

}  // namespace endbell::inline catalog
