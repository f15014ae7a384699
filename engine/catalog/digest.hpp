// The fingerprint of a catalog's content: the same rows give the same digest, in whatever order and spelling
// they came. Each row has a fingerprint of its own, and a table's is their sum: rows can be added without reading the
// others, and no order has to be made. Against accidents: it is no seal.
#pragma once
#include <SQLiteCpp/SQLiteCpp.h>

#include <cstdint>
#include <functional>
#include <map>
#include <span>
#include <string>

#include "engine/fields/cell.hpp"

namespace endbell::inline catalog {

/// `room` keeps its memory from row to row.
std::uint64_t row_fingerprint(std::span<const Stored> values, std::string& room);

struct RowSum {
    std::int64_t rows = 0;
    std::uint64_t sum = 0;  // of their fingerprints, modulo 2^64
    /// A bit for each column, in their order, that a row may know: not part of the digest.
    std::uint64_t filled = 0;

    void add(std::uint64_t fingerprint) {
        ++rows;
        sum += fingerprint;
    }
};

/// Of a table's columns, the one with this index.
constexpr std::uint64_t column_bit(std::size_t column) {
    return std::uint64_t{1} << column;
}

/// By table, every table.
using RowSums = std::map<std::string, RowSum, std::less<>>;
RowSums no_rows();
/// As write_digest left them: see has_sums_of_today.
RowSums written_sums(SQLite::Database& db);
/// From the rows themselves, without looking at what was written.
RowSums computed_sums(SQLite::Database& db);

/// Whether the sums are of the hash that this program computes. A catalog of schema version 1 has others: its rows are
/// those of today, and it is answered from, but only an import or `restore` makes its sums anew.
bool has_sums_of_today(SQLite::Database& db);

/// Whether the rows are those that write_digest was told of; by their numbers alone where the sums are of an older hash.
bool are_written(const RowSums& computed, SQLite::Database& db);

std::string digest_of(const RowSums& sums);

/// Writes the sums, `number` as the generation's number, and the digest, which it gives back. REQUIRES: all sums are of
/// today's hash.
std::string write_digest(SQLite::Database& db, int number, const RowSums& sums);

struct GenerationRow {
    int number = 0;
    std::string digest;
};
/// Throws BadData through `guarded` when the row is missing.
GenerationRow read_generation(SQLite::Database& db);

}  // namespace endbell::inline catalog
