#include "engine/import/batch_insert.hpp"

#include <fmt/format.h>

#include "engine/catalog/database.hpp"

namespace endbell::inline import {

struct BatchRows {
    std::string name;
    std::string declaration;
    std::span<const ReadRow> rows;
    std::size_t at = 0;

    void find() {
        while (at < rows.size() && !rows[at].problems.empty()) ++at;
    }
};

namespace {

struct Instance {
    sqlite3_vtab base{};
    BatchRows* source = nullptr;
};

BatchRows& rows_of(sqlite3_vtab_cursor* cursor) {
    return *reinterpret_cast<Instance*>(cursor->pVtab)->source;
}

int connect(sqlite3* db, void* source, int, const char* const*, sqlite3_vtab** made, char**) {
    auto* from = static_cast<BatchRows*>(source);
    const int code = sqlite3_declare_vtab(db, from->declaration.c_str());
    if (code != SQLITE_OK) return code;
    auto* instance = new Instance;
    instance->source = from;
    *made = &instance->base;
    return SQLITE_OK;
}

int disconnect(sqlite3_vtab* table) {
    delete reinterpret_cast<Instance*>(table);
    return SQLITE_OK;
}

int plan(sqlite3_vtab*, sqlite3_index_info*) {
    return SQLITE_OK;
}

int open(sqlite3_vtab*, sqlite3_vtab_cursor** made) {
    *made = new sqlite3_vtab_cursor{};
    return SQLITE_OK;
}

int close(sqlite3_vtab_cursor* cursor) {
    delete cursor;
    return SQLITE_OK;
}

int first(sqlite3_vtab_cursor* cursor, int, const char*, int, sqlite3_value**) {
    rows_of(cursor).find();
    return SQLITE_OK;
}

int next(sqlite3_vtab_cursor* cursor) {
    ++rows_of(cursor).at;
    rows_of(cursor).find();
    return SQLITE_OK;
}

int at_end(sqlite3_vtab_cursor* cursor) {
    const BatchRows& source = rows_of(cursor);
    return source.at >= source.rows.size() ? 1 : 0;
}

/// The row stays where it is until it is stored: no copies.
int column(sqlite3_vtab_cursor* cursor, sqlite3_context* context, int index) {
    const BatchRows& source = rows_of(cursor);
    const Stored& value = source.rows[source.at].values[static_cast<std::size_t>(index)];
    if (const auto* text = std::get_if<std::string>(&value)) {
        sqlite3_result_text(context, text->data(), static_cast<int>(text->size()), SQLITE_STATIC);
    } else if (const auto* whole = std::get_if<std::int64_t>(&value)) {
        sqlite3_result_int64(context, *whole);
    } else if (const auto* real = std::get_if<double>(&value)) {
        sqlite3_result_double(context, *real);
    }
    return SQLITE_OK;
}

int row_number(sqlite3_vtab_cursor* cursor, sqlite3_int64* number) {
    *number = static_cast<sqlite3_int64>(rows_of(cursor).at);
    return SQLITE_OK;
}

const sqlite3_module& module() {
    static const sqlite3_module made = [] {
        sqlite3_module m{};
        m.xConnect =
            connect;  // without xCreate: it is there under the module's name, and nowhere in the file
        m.xBestIndex = plan;
        m.xDisconnect = disconnect;
        m.xOpen = open;
        m.xClose = close;
        m.xFilter = first;
        m.xNext = next;
        m.xEof = at_end;
        m.xColumn = column;
        m.xRowid = row_number;
        return m;
    }();
    return made;
}

}  // namespace

BatchInsert::BatchInsert(SQLite::Database& db, const Table& table, std::span<const std::size_t> fed)
    : rows_(std::make_unique<BatchRows>()), db_(db) {
    rows_->name = fmt::format("rows of {}", table.name);
    rows_->declaration = fmt::format("CREATE TABLE rows ({})", column_list(table));
    const int code =
        sqlite3_create_module_v2(db.getHandle(), rows_->name.c_str(), &module(), rows_.get(), nullptr);
    if (code != SQLITE_OK) throw SQLite::Exception(db.getHandle(), code);
    std::string columns;
    for (const std::size_t i : fed)
        columns += (columns.empty() ? "" : ", ") + endbell::quoted(table.columns[i].name);
    insert_ = std::make_unique<PlainStatement>(
        db, fmt::format("INSERT OR FAIL INTO {} ({}) SELECT {} FROM {}", endbell::quoted(table.name), columns,
                        columns, endbell::quoted(rows_->name)));
}

BatchInsert::~BatchInsert() {
    insert_.reset();
    sqlite3_create_module_v2(db_.getHandle(), rows_->name.c_str(), nullptr, nullptr, nullptr);
}

BatchInsert::StoredRows BatchInsert::store(std::span<const ReadRow> rows, std::size_t first_row) {
    rows_->rows = rows;
    rows_->at = first_row;
    const int result = sqlite3_step(insert_->get());
    const int code = result == SQLITE_DONE ? SQLITE_OK : db_.getExtendedErrorCode();
    if (code != SQLITE_OK && (code & 0xff) != SQLITE_CONSTRAINT)
        throw SQLite::Exception(db_.getHandle(), result);
    sqlite3_reset(insert_->get());  // what it refused is still to be asked of the connection
    return {code == SQLITE_OK ? rows.size() : rows_->at, code};
}

}  // namespace endbell::inline import
