// Rows of CSV (RFC 4180) for spreadsheets and other programs.
#pragma once
#include <string>
#include <vector>

namespace endbell::inline csv {

/// With its line end. Cells are quoted where they must be. A text that a spreadsheet would take for a formula gets an
/// apostrophe in front, a number never does.
std::string csv_line(const std::vector<std::string>& cells);

}  // namespace endbell::inline csv
