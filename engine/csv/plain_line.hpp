// Lines of a CSV file that need no parser.
#pragma once
#include <string_view>
#include <vector>

#include "engine/csv/csv_row.hpp"

namespace endbell::inline csv {

/// The cells of a line of ASCII without quotes and zero bytes that says something, as libcsv cuts them: at delimiters,
/// without the blanks around a cell. False for any other line.
bool cut_plain_line(std::string_view line, char delimiter, std::vector<CellPlace>& cells);

}  // namespace endbell::inline csv
