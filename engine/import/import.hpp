// engine/import: sheets of rows to a new generation of the catalog; what cannot be taken is set aside with its reason.
//
// A generation is a whole file. An import builds the next one beside the catalog, brings it safely to the
// disk, and renames it over the catalog: a reader sees the old generation or the new one, whatever is killed,
// and an open reader keeps the one that it began with. The alternative, several generations in one file,
// would let a damaged page take all of them, would need every query to say which generation it means, and
// would keep writers and readers waiting for each other.
#pragma once
#include <cstdint>
#include <filesystem>
#include <functional>
#include <string>
#include <string_view>
#include <vector>

#include "engine/base/problem.hpp"
#include "engine/model/word.hpp"

namespace endbell::inline import {

enum class ImportMode {
    whole,   // the files are the catalog: what they do not hold is gone
    tables,  // each table given replaces the old one whole; the others stay (a nightly price list)
    rows     // rows are added to the tables as they are (set-aside rows, mended)
};

struct ImportProgress {
    std::string_view stage;  // "rows", "digest", "numbers", "swap"
    std::string file;
    std::uint64_t bytes_read = 0;
    std::uint64_t bytes_in_all = 0;
    std::int64_t rows = 0;
};

struct ImportOptions {
    ImportMode mode = ImportMode::whole;
    bool dry_run = false;  // everything but the swap: the same counts and messages
    bool strict = false;   // one row set aside, and the old generation stays
    std::filesystem::path
        columns;  // a column map; empty: headers are neutral, or remembered from an earlier import
    std::filesystem::path set_aside;  // folder for set-aside rows; empty: they are only reported
    std::size_t most_problems = 200;  // how many are told one by one; all are counted
    std::function<void(const ImportProgress&)> progress;  // may throw: the old generation is whole then
    /// Asked often while a statement runs long; true ends the import with BadData.
    std::function<bool()> stopped;
    /// Both are called with the file that may become the catalog, which another thread may then read through a connection of
    /// its own until the import returns: `parts_stored` when `tables_of_parts()` are complete, and their digests are in it,
    /// unless it is known already that nothing will be replaced; `rows_stored`, after it, when all rows are, the digest is,
    /// and the catalog will be replaced. Only the search keys of numbers are still written then.
    std::function<void(const std::filesystem::path&)> parts_stored, rows_stored;
    /// Called at each point where being killed matters, with its name: "begun", "rows written", "file
    /// closed", "on disk", "old kept", "swapped". For tests.
    std::function<void(std::string_view)> at_write_point;
};

struct FileReport {
    std::string file;
    std::string table;
    std::string encoding;
    char delimiter = ',';
    std::string columns;  // "neutral", "mapped" or "remembered"
    std::int64_t rows_in = 0;
    std::int64_t accepted = 0;
    std::int64_t set_aside = 0;  // rows_in == accepted + set_aside, always
    std::string set_aside_file;  // empty: none was written
};

/// How often one thing was expected and not found.
struct ReasonCount {
    std::string table;
    std::string column;
    std::string expected;
    std::int64_t rows = 0;
};

enum class ImportOutcome { replaced, unchanged, dry_run, refused };
constexpr auto words_of(ImportOutcome) {
    return std::array{Word<ImportOutcome>{ImportOutcome::replaced, "replaced"},
                      Word<ImportOutcome>{ImportOutcome::unchanged, "unchanged"},
                      Word<ImportOutcome>{ImportOutcome::dry_run, "dry run"},
                      Word<ImportOutcome>{ImportOutcome::refused, "refused"}};
}

struct ImportReport {
    std::vector<FileReport> files;
    std::int64_t rows_in = 0;
    std::int64_t accepted = 0;
    std::int64_t set_aside = 0;
    std::vector<Problem> problems;     // the first ones, in order of files and lines
    std::int64_t problem_count = 0;    // all of them; a row may have several
    std::vector<ReasonCount> reasons;  // commonest first, at most 100
    ImportOutcome outcome = ImportOutcome::replaced;
    int old_generation = 0;  // 0: there was none
    std::string old_digest;
    int generation = 0;  // the catalog's now; on a dry run and when refused, what it would have been
    std::string digest;  // fingerprint of all accepted rows, whatever their order and spelling
};

/// Reads CSV files, and every *.csv of folders, into `catalog`. A file feeds the table it is named after, up
/// to the first dot ("offers.csv", "offers.east.csv"), or the one that a column map says. Rows that cannot be
/// read are set aside, and so are rows of parts that were. When the new content equals the old and no
/// column map is new, the catalog is left as it is ("unchanged"). Throws BadData for what concerns a whole
/// file: unreadable, unknown or missing columns, no such table, a catalog that is damaged or is none, no room
/// on the disk. The old generation is whole then.
ImportReport import_catalog(const std::vector<std::filesystem::path>& paths,
                            const std::filesystem::path& catalog, const ImportOptions& options = {});

}  // namespace endbell::inline import
