// Lines of a CSV file that need no parser.
#pragma once
#include <string>
#include <string_view>
#include <vector>

namespace endbell {

/// ASCII that says something, without quotes and zero bytes.
bool is_plain_line(std::string_view line);

/// The cells of a plain line, as libcsv cuts them: at delimiters, without the blanks around a cell. The memory of
/// `cells` is used again.
void cut_plain_line(std::string_view line, char delimiter, std::vector<std::string>& cells);

}  // namespace endbell
