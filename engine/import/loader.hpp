// Fills the tables of a private database from CSV files, row by row; what it cannot take it sets aside.
#pragma once
#include <SQLiteCpp/SQLiteCpp.h>

#include <functional>
#include <map>
#include <optional>
#include <span>
#include <string>
#include <tuple>
#include <vector>

#include "engine/catalog/digest.hpp"
#include "engine/import/import.hpp"
#include "engine/import/parent_rows.hpp"
#include "engine/import/read_ahead.hpp"
#include "engine/import/set_aside.hpp"
#include "engine/import/table_file.hpp"

namespace endbell::inline import {

class Loader {
  public:
    Loader(SQLite::Database& db, SetAside& set_aside, const ImportOptions& options, ImportReport& report);

    /// Files in the order of their tables: parents first. `parts_stored` is called once, when no more rows of
    /// `tables_of_parts()` come.
    void load(std::vector<TableFile>& files, const std::function<void()>& parts_stored);
    /// Of the rows accepted, by table.
    const RowSums& sums() const { return sums_; }

  private:
    struct Target;  // the prepared statements of one table
    const ParentIds* known_rows(std::string_view table) const;
    ParentIds* ids_to_know(const Table& table);

    void load_file(TableFile& file, Target& target, FileReport& counts);
    void store(const TableFile& file, std::span<ReadRow> rows, Target& target);
    void check_parent(const TableFile& file, ReadRow& read, Target& target);
    void refused_by_store(const TableFile& file, const CsvRow& row, int code, std::vector<Problem>& problems);
    void missing_parent(const TableFile& file, const CsvRow& row, std::string_view parent,
                        std::vector<Problem>& problems);
    void put_aside(const TableFile& file, const CsvRow& row, const std::vector<Problem>& problems);
    void remember_aside(const TableFile& file, const CsvRow& row);
    bool was_set_aside(std::string_view table, std::string_view part_id);
    void tell(const TableFile& file, std::uint64_t bytes_read, std::int64_t rows);

    SQLite::Database& db_;
    SetAside& set_aside_;
    const ImportOptions& options_;
    ImportReport& report_;
    RowSums sums_;
    std::map<std::string, ParentIds, std::less<>> parents_;  // of an import of all tables
    std::uint64_t bytes_in_all_ = 0;
    std::uint64_t bytes_before_ = 0;
    std::map<std::tuple<std::string, std::string, std::string>, std::int64_t> reasons_;
    /// Fingerprints of "table|part_id" set aside: only to say why a child has no parent.
    std::vector<std::uint64_t> aside_;
    bool aside_sorted_ = true;
};

}  // namespace endbell::inline import
