#include "engine/catalog/digest.hpp"

#include <fmt/format.h>

#include <algorithm>

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

ContentDigest of_table(SQLite::Database& db, const Table& table) {
    SQLite::Statement rows(db, select_all(table, in_order(table)));
    Fnv hash;
    ContentDigest result;
    const int columns = static_cast<int>(table.columns.size());
    while (rows.executeStep()) {
        for (int i = 0; i < columns; ++i) {
            const Stored value = column_value(rows.getColumn(i));
            hash.add(std::holds_alternative<std::monostate>(value) ? std::string("\x1d") : to_text(value));
            hash.add("\x1f");
        }
        hash.add("\x1e");
        ++result.rows;
    }
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
