#include "engine/catalog/digest.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cstring>

#include "engine/base/hash.hpp"
#include "engine/base/text.hpp"
#include "engine/catalog/database.hpp"
#include "engine/catalog/plain_statement.hpp"
#include "engine/catalog/schema.hpp"

namespace endbell::inline catalog {

namespace {

/// The values of a row as bytes that no other row has: each is told by its kind, and a text by its length too.
class RowBytes {
  public:
    explicit RowBytes(std::string& room) : bytes_(room) { bytes_.clear(); }
    void add_unknown() { bytes_ += '\0'; }
    void add(std::int64_t number) { append('\1', number); }
    void add(double number) { append('\2', number == 0 ? 0.0 : number); }  // -0 is stored as 0
    void add(std::string_view text) {
        append('\3', text.size());
        bytes_ += text;
    }
    std::uint64_t hash() const { return hash_of(bytes_); }

  private:
    template <class Number>
    void append(char kind, Number number) {
        char bytes[sizeof number];
        std::memcpy(bytes, &number, sizeof number);
        bytes_ += kind;
        bytes_.append(bytes, sizeof number);
    }
    std::string& bytes_;
};

std::string names_of(const Table& table, std::uint64_t columns) {
    std::vector<std::string> names;
    for (std::size_t i = 0; i < table.columns.size(); ++i) {
        if ((columns & column_bit(i)) != 0) names.emplace_back(table.columns[i].name);
    }
    return joined(names, " ");
}

std::uint64_t columns_named(const Table& table, std::string_view names) {
    const std::vector<std::string> known = split(names, ' ');
    std::uint64_t columns = 0;
    for (std::size_t i = 0; i < table.columns.size(); ++i) {
        if (std::find(known.begin(), known.end(), table.columns[i].name) != known.end())
            columns |= column_bit(i);
    }
    return columns;
}

RowSum sum_of(SQLite::Database& db, const Table& table) {
    PlainStatement rows(db, select_all(table, ""));
    const int columns = static_cast<int>(table.columns.size());
    RowSum all;
    std::string room;
    while (rows.step()) {
        RowBytes bytes(room);
        for (int i = 0; i < columns; ++i) {
            const int type = rows.type(i);
            if (type != SQLITE_NULL) all.filled |= column_bit(static_cast<std::size_t>(i));
            switch (type) {
                case SQLITE_NULL:
                    bytes.add_unknown();
                    break;
                case SQLITE_INTEGER:
                    bytes.add(rows.whole(i));
                    break;
                case SQLITE_FLOAT:
                    bytes.add(rows.real(i));
                    break;
                default:
                    bytes.add(rows.text(i));
            }
        }
        all.add(bytes.hash());
    }
    return all;
}

}  // namespace

std::uint64_t row_fingerprint(std::span<const Stored> values, std::string& room) {
    RowBytes bytes(room);
    for (const Stored& value : values) {
        if (const auto* text = std::get_if<std::string>(&value)) {
            bytes.add(std::string_view(*text));
        } else if (const auto* whole = std::get_if<std::int64_t>(&value)) {
            bytes.add(*whole);
        } else if (const auto* real = std::get_if<double>(&value)) {
            bytes.add(*real);
        } else {
            bytes.add_unknown();
        }
    }
    return bytes.hash();
}

RowSums no_rows() {
    RowSums sums;
    for (const Table& table : tables()) sums[std::string(table.name)];
    return sums;
}

RowSums written_sums(SQLite::Database& db) {
    RowSums sums = no_rows();
    SQLite::Statement rows(db, "SELECT table_name, row_count, row_sum, filled FROM table_digests");
    while (rows.executeStep()) {
        const auto known = sums.find(rows.getColumn(0).getString());
        if (known == sums.end()) continue;
        known->second.rows = rows.getColumn(1).getInt64();
        known->second.sum = std::strtoull(rows.getColumn(2).getText(), nullptr, 16);
        known->second.filled = columns_named(*find_table(known->first), rows.getColumn(3).getString());
    }
    return sums;
}

RowSums computed_sums(SQLite::Database& db) {
    RowSums sums = no_rows();
    for (auto& [name, sum] : sums) sum = sum_of(db, *find_table(name));
    return sums;
}

bool has_sums_of_today(SQLite::Database& db) {
    return db.execAndGet("PRAGMA user_version").getInt() == schema_version;
}

bool are_written(const RowSums& computed, SQLite::Database& db) {
    const RowSums written = written_sums(db);
    const bool all_there = std::all_of(computed.begin(), computed.end(), [&](const auto& entry) {
        const RowSum& told = written.find(entry.first)->second;
        return entry.second.rows == told.rows && (entry.second.filled & ~told.filled) == 0;
    });
    return all_there && (!has_sums_of_today(db) || digest_of(computed) == read_generation(db).digest);
}

std::string digest_of(const RowSums& sums) {
    std::string all;
    for (const auto& [name, sum] : sums)
        all += fmt::format("{}={}:{};", name, sum.rows, in_hexadecimal(sum.sum));
    return fingerprint(all);
}

std::string write_digest(SQLite::Database& db, int number, const RowSums& sums) {
    SQLite::Statement write(db, "INSERT OR REPLACE INTO table_digests VALUES (?, ?, ?, ?)");
    for (const auto& [name, sum] : sums) {
        write.bind(1, name);
        write.bind(2, sum.rows);
        write.bind(3, in_hexadecimal(sum.sum));
        write.bind(4, names_of(*find_table(name), sum.filled));
        write.exec();
        write.reset();
    }
    std::string digest = digest_of(sums);
    SQLite::Statement generation(db, "INSERT OR REPLACE INTO generation VALUES (1, ?, ?)");
    generation.bind(1, number);
    generation.bind(2, digest);
    generation.exec();
    if (!has_sums_of_today(db)) db.exec(fmt::format("PRAGMA user_version = {}", schema_version));
    return digest;
}

GenerationRow read_generation(SQLite::Database& db) {
    SQLite::Statement row(db, "SELECT number, digest FROM generation WHERE one = 1");
    if (!row.executeStep()) throw SQLite::Exception("the generation row is missing", SQLITE_CORRUPT);
    return {row.getColumn(0).getInt(), row.getColumn(1).getString()};
}

}  // namespace endbell::inline catalog
