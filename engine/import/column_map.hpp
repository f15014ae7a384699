// How a supplier's own layout turns into neutral columns: a TOML file, one [tables.NAME] a table.
//
//     [tables.offers]
//     file = "pricelist.csv"              # which file; else the one named after the table or with these headers
//     encoding = "Windows-1252"           # only where finding out fails
//     delimiter = ";"
//     ignore = ["Remarks"]                # headers that nobody needs
//     [tables.offers.columns]
//     part_id = "Item"                    # neutral column = their header
//     price = { from = "Net", decimal = "comma" }
//     power_hp = { from = "Power", unit = "kW" }
//     as_of = { from = "Date", date = "d.m.y" }
//     status = { from = "State", words = { "run out" = "discontinued" } }
//     currency = { value = "EUR" }        # the same for every row
//
// Headers that are neutral column names need no line.
#pragma once
#include <filesystem>
#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "engine/csv/csv_file.hpp"

namespace endbell::inline import {

struct ColumnSource {
    std::string from;  // their header; empty: `value` for every row
    std::string value;
    std::string unit;  // put behind a cell that is a bare number
    std::string date;  // "d.m.y", "m/d/y" or "y-m-d": the order of day, month and year
    bool decimal_comma = false;
    std::map<std::string, std::string> words;  // their word, lower case -> ours

    /// Nothing to change in a cell.
    bool takes_as_is() const { return unit.empty() && date.empty() && !decimal_comma && words.empty(); }
};

struct TableMap {
    std::string table;
    std::string file;
    CsvHints hints;
    std::vector<std::string> ignore;
    std::map<std::string, ColumnSource> columns;  // by neutral column
};

struct ColumnMap {
    std::string text;  // the TOML, as it was written
    std::vector<TableMap> tables;
};

/// Throws BadData with the place of every mistake; `name` is what to call the text.
ColumnMap parse_column_map(std::string_view toml, const std::string& name);
ColumnMap read_column_map(const std::filesystem::path& file);

/// A cell as the neutral column would have it written.
std::string translated(const ColumnSource& source, std::string_view cell);

/// By what a header's column map is remembered.
struct HeaderPrint {
    std::string today;
    std::string before;  // as catalogs of schema version 1 have it, and all that were made from them
};
/// The same header gives the same fingerprints whatever the encoding, the delimiter and the case.
HeaderPrint header_print(const std::vector<std::string>& header);

}  // namespace endbell::inline import
