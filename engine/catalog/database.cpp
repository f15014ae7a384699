#include "engine/catalog/database.hpp"

#include <fmt/format.h>
#include <sqlite3.h>

#include <algorithm>
#include <string_view>
#include <vector>

namespace endbell::inline catalog {

namespace {

/// SQLite reads "file:" names as URIs: every byte that is not plain is written as %XX.
std::string uri(const std::filesystem::path& file, std::string_view query) {
    std::string name = "file:";
    for (const char c : std::filesystem::absolute(file).string()) {
        const bool plain = (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9') ||
                           c == '/' || c == '.' || c == '-' || c == '_';
        name += plain ? std::string(1, c)
                      : fmt::format("%{:02x}", static_cast<unsigned>(static_cast<unsigned char>(c)));
    }
    return name + "?" + std::string(query);
}

/// SQLite counts its memory under a lock that every thread waits for, and nobody here asks for the count. Heeded only before
/// its first use in the program; a connection serves one thread and needs no lock of its own (OPEN_NOMUTEX).
void without_locks() {
    [[maybe_unused]] static const int once = sqlite3_config(SQLITE_CONFIG_MEMSTATUS, 0);
}

/// Nothing in a file from somewhere else may run code or reach other files.
void harden(SQLite::Database& db) {
    sqlite3* handle = db.getHandle();
    sqlite3_db_config(handle, SQLITE_DBCONFIG_DEFENSIVE, 1, nullptr);
    sqlite3_db_config(handle, SQLITE_DBCONFIG_TRUSTED_SCHEMA, 0, nullptr);
    sqlite3_db_config(handle, SQLITE_DBCONFIG_ENABLE_FKEY, 1, nullptr);
    sqlite3_db_config(handle, SQLITE_DBCONFIG_ENABLE_VIEW, 0, nullptr);
    sqlite3_db_config(handle, SQLITE_DBCONFIG_ENABLE_TRIGGER, 0, nullptr);
    sqlite3_db_config(handle, SQLITE_DBCONFIG_DQS_DDL, 0, nullptr);
    sqlite3_db_config(handle, SQLITE_DBCONFIG_DQS_DML, 0, nullptr);
    sqlite3_limit(handle, SQLITE_LIMIT_LENGTH, 16 * 1024 * 1024);
    sqlite3_limit(handle, SQLITE_LIMIT_ATTACHED, 0);
    db.exec("PRAGMA cell_size_check = ON");
}

Problem not_a_catalog(const std::filesystem::path& file, std::string value, std::string expected,
                      std::string todo) {
    return {{file.string(), 0, 0}, "catalog", std::move(value), std::move(expected), std::move(todo)};
}

/// The statements of schema_sql() that make something, each as SQLite keeps it: from CREATE up to its semicolon.
std::vector<std::string_view> expected_schema() {
    std::vector<std::string_view> statements;
    const std::string_view sql = schema_sql();
    for (std::size_t at = 0; (at = sql.find("\nCREATE ", at)) != std::string_view::npos;) {
        const std::size_t end = sql.find(';', ++at);
        statements.push_back(sql.substr(at, end - at));
    }
    std::sort(statements.begin(), statements.end());
    return statements;
}

/// Indices that SQLite makes for keys have no statement of their own.
bool has_expected_schema(SQLite::Database& db) {
    const std::vector<std::string_view> expected = expected_schema();
    SQLite::Statement rows(db, "SELECT sql FROM sqlite_schema WHERE sql IS NOT NULL ORDER BY sql");
    std::size_t next = 0;
    while (rows.executeStep()) {
        if (next == expected.size() || rows.getColumn(0).getString() != expected[next++]) return false;
    }
    return next == expected.size();
}

std::vector<std::string> sorted_lines(SQLite::Database& db, const char* sql) {
    SQLite::Statement rows(db, sql);
    std::vector<std::string> lines;
    while (rows.executeStep()) lines.push_back(rows.getColumn(0).getString());
    std::sort(lines.begin(), lines.end());
    return lines;
}

/// A column that came to a table after the catalog was written: unknown in every row.
struct LaterColumn {
    const Table& table;
    const Column& column;
};

std::vector<LaterColumn> later_columns(SQLite::Database& db) {
    std::vector<LaterColumn> later;
    for (const Table& table : tables()) {
        SQLite::Statement rows(db, "SELECT name FROM pragma_table_info(?)");
        rows.bind(1, std::string(table.name));
        std::vector<std::string> there;
        while (rows.executeStep()) there.push_back(rows.getColumn(0).getString());
        for (const Column& column : table.columns) {
            const bool may_be_unknown = column.need == Need::optional && !column.when_empty;
            if (may_be_unknown && std::find(there.begin(), there.end(), column.name) == there.end())
                later.push_back({table, column});
        }
    }
    return later;
}

/// The same tables with the same columns but for later ones and nothing beside them, in whatever text and order: an older
/// program laid its statements out otherwise. Checks of values are not compared: a finished catalog is asked for none.
bool has_expected_shape(SQLite::Database& db, const std::vector<LaterColumn>& later) {
    SQLite::Database expected(":memory:", SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE);
    expected.exec(schema_sql());
    for (const LaterColumn& l : later)
        expected.exec(
            fmt::format("ALTER TABLE {} DROP COLUMN {}", quoted(l.table.name), quoted(l.column.name)));
    const auto equal = [&](const char* sql) { return sorted_lines(db, sql) == sorted_lines(expected, sql); };
    return equal("SELECT type || ' ' || name || ' ' || tbl_name FROM sqlite_schema") &&
           equal(
               "SELECT format('%s %d %d %s %s %d %d %d', t.name, t.wr, t.strict, c.name, c.type, "
               "c.\"notnull\", c.pk, c.hidden) "
               "FROM pragma_table_list t, pragma_table_xinfo(t.name) c WHERE t.schema = 'main'");
}

/// Where a catalog may not be changed, a view shows the later columns of a table under its name.
void show_later_columns(SQLite::Database& db, const std::vector<LaterColumn>& later) {
    if (!later.empty()) db.exec("PRAGMA temp_store = MEMORY");
    for (std::size_t i = 0; i < later.size();) {
        const Table& table = later[i].table;
        std::string unknown;
        for (; i < later.size() && &later[i].table == &table; ++i)
            unknown += ", NULL AS " + quoted(later[i].column.name);
        db.exec(fmt::format("CREATE TEMP VIEW {0} AS SELECT stored.*{1} FROM main.{0} AS stored",
                            quoted(table.name), unknown));
    }
}

/// The columns that it does not have yet.
std::vector<LaterColumn> check_is_catalog(SQLite::Database& db, const std::filesystem::path& file) {
    const int id = db.execAndGet("PRAGMA application_id").getInt();
    if (id != application_id) {
        throw BadData(
            not_a_catalog(file, "", "a catalog of this program", "make one with 'endbell catalog import'"));
    }
    const int version = db.execAndGet("PRAGMA user_version").getInt();
    if (version < oldest_schema_version || version > schema_version) {
        throw BadData(not_a_catalog(
            file, fmt::format("schema version {}", version), fmt::format("schema version {}", schema_version),
            version > schema_version ? "use a newer program" : "import the tables again"));
    }
    if (has_expected_schema(db)) return {};
    std::vector<LaterColumn> later = later_columns(db);
    if (!has_expected_shape(db, later)) {
        throw BadData(not_a_catalog(file, "",
                                    fmt::format("exactly the tables of schema version {}", schema_version),
                                    "somebody changed this file: import the tables again"));
    }
    return later;
}

/// A writer whose file is thrown away unless it finishes: the disk is only asked to be safe once, at the end.
/// No rollback journal: a row that breaks a constraint is refused before anything is written, and nothing else is ever
/// taken back. Parents are asked by the loader, and CHECKs by the readers of cells. One thread at a time uses the file: no locks (OPEN_NOMUTEX).
void set_for_filling(SQLite::Database& db) {
    db.exec("PRAGMA foreign_keys = OFF");
    db.exec("PRAGMA journal_mode = MEMORY");  // where OFF is not allowed: newer SQLite, in its defensive mode
    db.exec("PRAGMA journal_mode = OFF");
    db.exec("PRAGMA synchronous = OFF");
    db.exec("PRAGMA ignore_check_constraints = ON");
    db.exec("PRAGMA secure_delete = OFF");  // what moves within the file need not be wiped where it was
    db.exec("PRAGMA locking_mode = EXCLUSIVE");
    db.exec("PRAGMA cache_size = -8192");
    map_pages(db);  // parents are read again for their children
}

}  // namespace

SQLite::Database open_finished(const std::filesystem::path& file) {
    std::error_code failed;
    if (!std::filesystem::is_regular_file(file, failed)) {
        throw BadData(not_a_catalog(file, "", "a catalog file", "make one with 'endbell catalog import'"));
    }
    return guarded(file, [&] {
        without_locks();
        SQLite::Database db(uri(file, "mode=ro&immutable=1"),
                            SQLite::OPEN_READONLY | SQLite::OPEN_URI | SQLite::OPEN_NOMUTEX);
        harden(db);
        // In KiB: the upper pages of the tables; the rest is seldom read twice.
        db.exec("PRAGMA cache_size = -512");
        // One transaction for all: the file is not looked at anew for each statement, and may still grow at its end.
        db.exec("BEGIN");
        show_later_columns(db, check_is_catalog(db, file));
        return db;
    });
}

void map_pages(SQLite::Database& db) {
    db.exec("PRAGMA mmap_size = 134217728");
}

SQLite::Database make_new(const std::filesystem::path& file) {
    return guarded(file, [&] {
        without_locks();
        SQLite::Database db(file.string(),
                            SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE | SQLite::OPEN_NOMUTEX);
        harden(db);
        db.exec("PRAGMA page_size = 16384");  // fewer pages to write, to split, and to look up a part in
        set_for_filling(db);
        db.exec(schema_sql());
        return db;
    });
}

SQLite::Database open_private(const std::filesystem::path& file) {
    return guarded(file, [&] {
        SQLite::Database db(file.string(), SQLite::OPEN_READWRITE | SQLite::OPEN_NOMUTEX);
        harden(db);
        set_for_filling(db);
        for (const LaterColumn& l : check_is_catalog(db, file))
            db.exec(fmt::format("ALTER TABLE {} ADD COLUMN {}", quoted(l.table.name), column_sql(l.column)));
        return db;
    });
}

BadData as_bad_data(const std::filesystem::path& file, const SQLite::Exception& failure) {
    switch (failure.getErrorCode()) {
        case SQLITE_NOTADB:
            return BadData(not_a_catalog(file, "", "a catalog of this program", "check the path"));
        case SQLITE_FULL:
            return BadData(not_a_catalog(file, "", "room on the disk",
                                         "free some space and import again; the old catalog is whole"));
        case SQLITE_CANTOPEN:
        case SQLITE_PERM:
        case SQLITE_READONLY:
            return BadData(
                not_a_catalog(file, "", "a place that may be written", "check the folder's permissions"));
        case SQLITE_IOERR:
            return BadData(
                not_a_catalog(file, failure.getErrorStr(), "a disk that reads and writes", "check the disk"));
        default:
            return BadData(not_a_catalog(file, failure.getErrorStr(), "an undamaged catalog",
                                         "restore an earlier generation, or import again"));
    }
}

std::string quoted(std::string_view name) {
    return "\"" + std::string(name) + "\"";
}

std::string column_list(const Table& table) {
    std::string list;
    for (const Column& column : table.columns) list += (list.empty() ? "" : ", ") + quoted(column.name);
    return list;
}

std::string select_all(const Table& table, std::string_view rest) {
    return "SELECT " + column_list(table) + " FROM " + quoted(table.name) + " " + std::string(rest);
}

std::string in_order(const Table& table) {
    std::string order;
    for (std::size_t i = 0; i < table.key_columns; ++i)
        order += (i == 0 ? "ORDER BY " : ", ") + quoted(table.columns[i].name);
    return order;
}

Stored column_value(const SQLite::Column& column) {
    if (column.isNull()) return {};
    if (column.isInteger()) return std::int64_t{column.getInt64()};
    if (column.isFloat()) return column.getDouble();
    return column.getString();
}

void bind_value(SQLite::Statement& statement, int index, const Stored& value) {
    if (const auto* number = std::get_if<std::int64_t>(&value)) {
        statement.bind(index, *number);
    } else if (const auto* real = std::get_if<double>(&value)) {
        statement.bind(index, *real);
    } else if (const auto* text = std::get_if<std::string>(&value)) {
        statement.bindNoCopy(index, *text);
    } else {
        statement.bind(index);
    }
}

std::string to_text(const Stored& value) {
    if (const auto* number = std::get_if<std::int64_t>(&value)) return fmt::format("{}", *number);
    if (const auto* real = std::get_if<double>(&value)) return fmt::format("{:.12g}", *real);
    if (const auto* text = std::get_if<std::string>(&value)) return *text;
    return "";
}

}  // namespace endbell::inline catalog
