// SQLite's statement with nothing around it, for rows by the million: SQLiteCpp counts references for every cell.
#pragma once
#include <SQLiteCpp/SQLiteCpp.h>
#include <sqlite3.h>

#include <cstdint>
#include <memory>
#include <string>
#include <string_view>
#include <utility>
#include <variant>

#include "engine/base/text.hpp"
#include "engine/fields/cell.hpp"
#include "engine/fields/row_reader.hpp"

namespace endbell::inline catalog {

/// Of an argument of a function that SQL calls; nothing of NULL.
inline std::string_view argument_text(sqlite3_value* argument) {
    const auto* bytes = reinterpret_cast<const char*>(sqlite3_value_text(argument));
    return bytes != nullptr ? std::string_view(bytes) : std::string_view();
}

/// Throws SQLite::Exception, as of a damaged file.
[[noreturn]] inline void damaged_value(std::string_view value) {
    throw SQLite::Exception("a value that no import writes: '" + visible(beginning(value, 40)) + "'",
                            SQLITE_CORRUPT);
}

class PlainStatement final : public StoredRow {
  public:
    /// `sql` is prepared when it is first used: one answer needs few of a catalog's statements.
    PlainStatement(SQLite::Database& db, std::string sql) : db_(db.getHandle()), sql_(std::move(sql)) {}

    /// Moves to the next row; false at the end. Throws SQLite::Exception.
    bool step() {
        const int code = sqlite3_step(get());
        if (code != SQLITE_ROW && code != SQLITE_DONE) throw SQLite::Exception(db_, code);
        return code == SQLITE_ROW;
    }
    /// Begins again with `text`, which stays where it is, as the only parameter.
    void restart(std::string_view text) {
        sqlite3_reset(get());
        sqlite3_bind_text(get(), 1, text.data(), static_cast<int>(text.size()), SQLITE_STATIC);
    }
    void restart_with(const Stored& value) {
        if (const auto* text = std::get_if<std::string>(&value)) return restart(*text);
        sqlite3_reset(get());
        if (const auto* whole = std::get_if<std::int64_t>(&value)) {
            sqlite3_bind_int64(get(), 1, *whole);
        } else if (const auto* real = std::get_if<double>(&value)) {
            sqlite3_bind_double(get(), 1, *real);
        } else {
            sqlite3_bind_null(get(), 1);
        }
    }
    /// Throws SQLite::Exception where `sql` cannot be prepared.
    sqlite3_stmt* get() {
        if (!statement_) {
            sqlite3_stmt* prepared = nullptr;
            const int code = sqlite3_prepare_v2(db_, sql_.c_str(), -1, &prepared, nullptr);
            statement_.reset(prepared);
            if (code != SQLITE_OK) throw SQLite::Exception(db_, code);
        }
        return statement_.get();
    }

    /// The columns without their bit are NULL in every row: they need not be asked for.
    void tell_known(std::uint64_t columns) { known_ = columns; }

    /// Of the present row, until the next step.
    bool is_null(int column) const override { return type(column) == SQLITE_NULL; }
    int type(int column) const {
        return is_known(column) ? sqlite3_column_type(statement_.get(), column) : SQLITE_NULL;
    }
    std::int64_t whole(int column) const override { return sqlite3_column_int64(statement_.get(), column); }
    double real(int column) const override { return sqlite3_column_double(statement_.get(), column); }
    std::string_view text(int column) const override {
        if (!is_known(column)) return {};
        const auto* bytes = reinterpret_cast<const char*>(sqlite3_column_text(statement_.get(), column));
        return {bytes, bytes == nullptr
                           ? 0
                           : static_cast<std::size_t>(sqlite3_column_bytes(statement_.get(), column))};
    }

    [[noreturn]] void damaged(std::string_view value) const override { damaged_value(value); }

  private:
    bool is_known(int column) const { return column >= 64 || (known_ >> column & 1U) != 0; }

    struct Finalize {
        void operator()(sqlite3_stmt* statement) const { sqlite3_finalize(statement); }
    };
    sqlite3* db_;
    std::string sql_;
    std::uint64_t known_ = ~std::uint64_t{0};
    std::unique_ptr<sqlite3_stmt, Finalize> statement_;
};

}  // namespace endbell::inline catalog
