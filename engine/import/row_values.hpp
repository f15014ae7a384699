// One CSV row to the values of one table row, or to everything that is wrong with it.
#pragma once
#include <functional>
#include <string>
#include <string_view>
#include <unordered_map>
#include <vector>

#include "engine/base/problem.hpp"
#include "engine/import/check_constraints.hpp"
#include "engine/import/table_file.hpp"

namespace endbell::inline import {

/// Cells of one file that were read before, and held against the CHECKs of their columns: most columns say few
/// different things. Bounded, and given up for a column whose rows all differ.
class ReadCells {
  public:
    explicit ReadCells(const Table& table) : columns_(table.columns.size()), checks_(table) {}

    /// Of a column that the file has. Good until the next cell is read.
    const Cell& read(const TableFile& file, std::size_t column, const CsvRow& row);

  private:
    static constexpr std::size_t most_known = 500;  // of a column
    static constexpr std::size_t longest_known = 64;
    struct Hash : std::hash<std::string_view> {
        using is_transparent = void;
    };
    struct Known {
        std::unordered_map<std::string, Cell, Hash, std::equal_to<>> cells;
        const std::pair<const std::string, Cell>* before = nullptr;  // of `cells`: the last that was read
        Cell last;                                                   // one that is not kept
        std::size_t found = 0;                                       // since `cells` was last emptied
        bool open = true;
    };
    Cell fresh(const TableFile& file, std::size_t column, std::string_view raw);

    std::vector<Known> columns_;
    CheckConstraints checks_;
};

/// Sets the values, in the order of the table's columns. Problems are added for every cell that cannot be
/// read; the values mean nothing then.
void read_values(const TableFile& file, const CsvRow& row, ReadCells& cells, std::vector<Stored>& values,
                 std::vector<Problem>& problems);

/// The text that stands for a column in a row, before reading: "" when the file lacks it.
std::string_view cell_text(const TableFile& file, const CsvRow& row, std::string_view column);

/// A problem at one column of a row.
Problem problem_at(const TableFile& file, const CsvRow& row, std::string_view column, std::string expected,
                   std::string todo);

}  // namespace endbell::inline import
