#include "engine/catalog/digest.hpp"

#include <fmt/format.h>
#include <sqlite3.h>

#include <algorithm>
#include <memory>

#include "engine/base/text.hpp"
#include "engine/catalog/database.hpp"

namespace endbell {

namespace {

/// FNV-1a, 64 bit, a piece at a time. A fingerprint against accidents, not a seal.
class Fnv {
  public:
    void add(std::string_view bytes) {
        for (const char c : bytes) {
            hash_ ^= static_cast<unsigned char>(c);
            hash_ *= 0x100000001b3ULL;
        }
    }
    std::string text() const { return fmt::format("{:016x}", hash_); }

  private:
    std::uint64_t hash_ = 0xcbf29ce484222325ULL;
};

/// Adds the cells of one column, each as `to_text` writes it. A column's numbers repeat: the last one written is
/// kept.
class ColumnText {
  public:
    void add(Fnv& hash, sqlite3_stmt* row, int column) {
        switch (sqlite3_column_type(row, column)) {
            case SQLITE_NULL:
                hash.add("\x1d");
                break;
            case SQLITE_INTEGER:
                hash.add(written(std::int64_t{sqlite3_column_int64(row, column)}));
                break;
            case SQLITE_FLOAT:
                hash.add(written(sqlite3_column_double(row, column)));
                break;
            default: {
                const auto* bytes = static_cast<const char*>(sqlite3_column_blob(row, column));
                hash.add({bytes, static_cast<std::size_t>(sqlite3_column_bytes(row, column))});
            }
        }
        hash.add("\x1f");
    }

  private:
    std::string_view written(const Stored& number) {
        if (number != number_) text_ = to_text(number);
        number_ = number;
        return text_;
    }
    Stored number_;
    std::string text_;
};

ContentDigest of_table(SQLite::Database& db, const Table& table) {
    sqlite3_stmt* prepared = nullptr;
    int code = sqlite3_prepare_v2(db.getHandle(), select_all(table, in_order(table)).c_str(), -1, &prepared,
                                  nullptr);
    const std::unique_ptr<sqlite3_stmt, int (*)(sqlite3_stmt*)> rows(prepared, sqlite3_finalize);
    if (code != SQLITE_OK) throw SQLite::Exception(db.getHandle(), code);
    Fnv hash;
    ContentDigest result;
    std::vector<ColumnText> columns(table.columns.size());
    while ((code = sqlite3_step(prepared)) == SQLITE_ROW) {
        for (std::size_t i = 0; i < columns.size(); ++i) columns[i].add(hash, prepared, static_cast<int>(i));
        hash.add("\x1e");
        ++result.rows;
    }
    if (code != SQLITE_DONE) throw SQLite::Exception(db.getHandle(), code);
    result.digest = hash.text();
    return result;
}

}  // namespace

ContentDigest write_digest(SQLite::Database& db, int number, const std::vector<std::string>& changed) {
    for (const Table& table : tables()) {
        const bool fresh =
            changed.empty() || std::find(changed.begin(), changed.end(), table.name) != changed.end();
        if (!fresh) continue;
        const ContentDigest content = of_table(db, table);
        SQLite::Statement write(db, "INSERT OR REPLACE INTO table_digests VALUES (?, ?, ?)");
        write.bind(1, std::string(table.name));
        write.bind(2, content.rows);
        write.bind(3, content.digest);
        write.exec();
    }
    ContentDigest all;
    Fnv hash;
    SQLite::Statement rows(db, "SELECT table_name, digest, row_count FROM table_digests ORDER BY table_name");
    while (rows.executeStep()) {
        hash.add(rows.getColumn(0).getString() + "=" + rows.getColumn(1).getString() + ";");
        all.rows += rows.getColumn(2).getInt64();
    }
    all.digest = hash.text();
    SQLite::Statement write(db, "INSERT OR REPLACE INTO generation VALUES (1, ?, ?)");
    write.bind(1, number);
    write.bind(2, all.digest);
    write.exec();
    return all;
}

ContentDigest compute_digest(SQLite::Database& db) {
    std::vector<std::string> names;
    for (const Table& table : tables()) names.emplace_back(table.name);
    std::sort(names.begin(), names.end());
    ContentDigest all;
    Fnv hash;
    for (const std::string& name : names) {
        const ContentDigest content = of_table(db, *find_table(name));
        hash.add(name + "=" + content.digest + ";");
        all.rows += content.rows;
    }
    all.digest = hash.text();
    return all;
}

GenerationRow read_generation(SQLite::Database& db) {
    SQLite::Statement row(db, "SELECT number, digest FROM generation WHERE one = 1");
    if (!row.executeStep()) throw SQLite::Exception("the generation row is missing", 11);  // SQLITE_CORRUPT
    return {row.getColumn(0).getInt(), row.getColumn(1).getString()};
}

}  // namespace endbell
