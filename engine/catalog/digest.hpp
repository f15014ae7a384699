// The fingerprint of a catalog's content: the same rows give the same digest, in whatever order and spelling
// they came.
#pragma once
#include <SQLiteCpp/SQLiteCpp.h>

#include <cstdint>
#include <string>
#include <vector>

namespace endbell {

struct ContentDigest {
    std::string digest;
    std::int64_t rows = 0;
};

/// Recomputes table_digests and generation for the tables of `changed` (empty: all), and writes them.
/// `number` becomes the generation's number.
ContentDigest write_digest(SQLite::Database& db, int number, const std::vector<std::string>& changed = {});

/// From the rows themselves, without looking at what was written.
ContentDigest compute_digest(SQLite::Database& db);

struct GenerationRow {
    int number = 0;
    std::string digest;
};
/// Throws BadData through `guarded` when the row is missing.
GenerationRow read_generation(SQLite::Database& db);

}  // namespace endbell
