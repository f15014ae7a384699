#include "engine/csv/csv_write.hpp"

#include <csv.h>

#include <algorithm>
#include <string_view>

namespace endbell::inline csv {

namespace {

/// "-12.50" is one, "-1-2" is not.
bool is_number(std::string_view text) {
    if (!text.empty() && text.front() == '-') text.remove_prefix(1);
    const bool digits = !text.empty() && text.find_first_not_of("0123456789.") == std::string_view::npos;
    return digits && std::count(text.begin(), text.end(), '.') <= 1;
}

bool looks_like_a_formula(std::string_view text) {
    return !text.empty() && std::string_view("=+-@\t\r").find(text.front()) != std::string_view::npos &&
           !is_number(text);
}

std::string csv_cell(const std::string& text) {
    std::string safe = looks_like_a_formula(text) ? "'" + text : text;
    if (safe.find_first_of(",\"\r\n") == std::string::npos) return safe;
    std::string quoted(2 * safe.size() + 2, '\0');  // were every byte a quote
    quoted.resize(csv_write(quoted.data(), quoted.size(), safe.data(), safe.size()));
    return quoted;
}

}  // namespace

std::string csv_line(const std::vector<std::string>& cells) {
    std::string line;
    for (std::size_t i = 0; i < cells.size(); ++i) line += (i > 0 ? "," : "") + csv_cell(cells[i]);
    return line + "\r\n";
}

}  // namespace endbell::inline csv
