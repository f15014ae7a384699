#include "engine/catalog/digest.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <bit>
#include <cstring>

#include "engine/base/text.hpp"
#include "engine/catalog/database.hpp"
#include "engine/catalog/plain_statement.hpp"

namespace endbell::inline catalog {

namespace {

/// The steps that XXH64 takes for what is left of a text, eight bytes at a time, and its last mixing.
class RowHash {
  public:
    void add_unknown() { take(0); }
    void add(std::int64_t number) {
        take(1);
        take(static_cast<std::uint64_t>(number));
    }
    void add(double number) {
        take(2);
        take(std::bit_cast<std::uint64_t>(number == 0 ? 0.0 : number));  // -0 is stored as 0
    }
    void add(std::string_view text) {
        take(3 + text.size());
        const char* at = text.data();
        std::size_t left = text.size();
        for (; left >= 8; left -= 8, at += 8) take(word<std::uint64_t>(at));
        std::uint64_t rest = 0;
        if (left >= 4) {  // two words that may overlap are as good as the bytes one by one
            rest = word<std::uint32_t>(at) | std::uint64_t{word<std::uint32_t>(at + left - 4)} << 32U;
        } else if (left > 0) {
            rest = word<std::uint8_t>(at) | std::uint64_t{word<std::uint8_t>(at + left / 2)} << 8U |
                   std::uint64_t{word<std::uint8_t>(at + left - 1)} << 16U;
        }
        if (left > 0) take(rest);
    }
    std::uint64_t value() const {
        std::uint64_t h = hash_;
        h = (h ^ (h >> 33U)) * prime2;
        h = (h ^ (h >> 29U)) * prime3;
        return h ^ (h >> 32U);
    }

  private:
    static constexpr std::uint64_t prime1 = 0x9E3779B185EBCA87;
    static constexpr std::uint64_t prime2 = 0xC2B2AE3D27D4EB4F;
    static constexpr std::uint64_t prime3 = 0x165667B19E3779F9;
    static constexpr std::uint64_t prime4 = 0x85EBCA77C2B2AE63;
    static constexpr std::uint64_t prime5 = 0x27D4EB2F165667C5;

    template <class W>
    static W word(const char* bytes) {
        W w = 0;
        std::memcpy(&w, bytes, sizeof w);
        return w;
    }
    void take(std::uint64_t w) {
        hash_ ^= std::rotl(w * prime2, 31) * prime1;
        hash_ = std::rotl(hash_, 27) * prime1 + prime4;
    }
    std::uint64_t hash_ = prime5;
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
    while (rows.step()) {
        RowHash hash;
        for (int i = 0; i < columns; ++i) {
            const int type = rows.type(i);
            if (type != SQLITE_NULL) all.filled |= column_bit(static_cast<std::size_t>(i));
            switch (type) {
                case SQLITE_NULL:
                    hash.add_unknown();
                    break;
                case SQLITE_INTEGER:
                    hash.add(rows.whole(i));
                    break;
                case SQLITE_FLOAT:
                    hash.add(rows.real(i));
                    break;
                default:
                    hash.add(rows.text(i));
            }
        }
        all.add(hash.value());
    }
    return all;
}

}  // namespace

std::uint64_t row_fingerprint(std::span<const Stored> values) {
    RowHash hash;
    for (const Stored& value : values) {
        if (const auto* text = std::get_if<std::string>(&value)) {
            hash.add(std::string_view(*text));
        } else if (const auto* whole = std::get_if<std::int64_t>(&value)) {
            hash.add(*whole);
        } else if (const auto* real = std::get_if<double>(&value)) {
            hash.add(*real);
        } else {
            hash.add_unknown();
        }
    }
    return hash.value();
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

bool are_written(const RowSums& computed, SQLite::Database& db) {
    const RowSums written = written_sums(db);
    const bool all_filled = std::all_of(computed.begin(), computed.end(), [&](const auto& entry) {
        return (entry.second.filled & ~written.find(entry.first)->second.filled) == 0;
    });
    return all_filled && digest_of(computed) == read_generation(db).digest;
}

std::string digest_of(const RowSums& sums) {
    std::string all;
    for (const auto& [name, sum] : sums) all += fmt::format("{}={}:{:016x};", name, sum.rows, sum.sum);
    return fingerprint(all);
}

std::string write_digest(SQLite::Database& db, int number, const RowSums& sums) {
    SQLite::Statement write(db, "INSERT OR REPLACE INTO table_digests VALUES (?, ?, ?, ?)");
    for (const auto& [name, sum] : sums) {
        write.bind(1, name);
        write.bind(2, sum.rows);
        write.bind(3, fmt::format("{:016x}", sum.sum));
        write.bind(4, names_of(*find_table(name), sum.filled));
        write.exec();
        write.reset();
    }
    const std::string digest = digest_of(sums);
    SQLite::Statement generation(db, "INSERT OR REPLACE INTO generation VALUES (1, ?, ?)");
    generation.bind(1, number);
    generation.bind(2, digest);
    generation.exec();
    return digest;
}

GenerationRow read_generation(SQLite::Database& db) {
    SQLite::Statement row(db, "SELECT number, digest FROM generation WHERE one = 1");
    if (!row.executeStep()) throw SQLite::Exception("the generation row is missing", SQLITE_CORRUPT);
    return {row.getColumn(0).getInt(), row.getColumn(1).getString()};
}

}  // namespace endbell::inline catalog
