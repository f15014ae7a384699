// A CSV file that feeds one table: which cell of a row belongs to which column.
#pragma once
#include <filesystem>
#include <functional>
#include <optional>
#include <string>
#include <vector>

#include "engine/base/problem.hpp"
#include "engine/csv/csv_file.hpp"
#include "engine/fields/tables.hpp"
#include "engine/import/column_map.hpp"

namespace endbell::inline import {

/// Where one neutral column gets its text from.
struct Feed {
    std::size_t cell = 0;  // index into the row; meaningless when `source` is a constant
    std::string header;    // as the file spells it
    ColumnSource source;
    bool present = false;  // false: the file does not have this column
};

struct TableFile {
    std::filesystem::path path;
    const Table* table = nullptr;
    CsvFile csv;
    std::vector<Feed> feeds;       // one for each column of the table, in its order
    std::vector<std::size_t> fed;  // columns whose value is not unknown in every row
    std::string columns;           // "neutral", "mapped" or "remembered"
    HeaderPrint header_print;
};

/// A map that an earlier import used for a header with this fingerprint: the table, and the TOML.
struct RememberedMap {
    std::string table;
    std::string toml;
};
using Recall = std::function<std::optional<RememberedMap>(const HeaderPrint&)>;

/// Opens all files and settles all columns. Throws BadData with every problem of every file: no such table, a
/// header that is no column, a required column that is missing, one that is there twice.
std::vector<TableFile> open_tables(const std::vector<std::filesystem::path>& paths,
                                   const std::optional<ColumnMap>& map, const Recall& recall);

}  // namespace endbell::inline import
