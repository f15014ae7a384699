#include "engine/catalog/plain_line.hpp"

#include <algorithm>

#include "engine/base/text.hpp"

namespace endbell {

bool is_plain_line(std::string_view line) {
    constexpr std::size_t none = std::string_view::npos;
    return line.find('"') == none && line.find('\0') == none && is_ascii(line) &&
           line.find_first_not_of(" \t") != none;
}

void cut_plain_line(std::string_view line, char delimiter, std::vector<std::string>& cells) {
    const auto is_blank = [delimiter](char c) { return (c == ' ' || c == '\t') && c != delimiter; };
    std::size_t count = 0;
    for (bool more = true; more; ++count) {
        const std::size_t end = std::min(line.find(delimiter), line.size());
        more = end < line.size();
        std::string_view cell = line.substr(0, end);
        line.remove_prefix(more ? end + 1 : end);
        while (!cell.empty() && is_blank(cell.front())) cell.remove_prefix(1);
        while (!cell.empty() && is_blank(cell.back())) cell.remove_suffix(1);
        if (count == cells.size()) cells.emplace_back();
        if (cells[count] != cell) cells[count].assign(cell);  // often what stood there before
    }
    cells.resize(count);
}

}  // namespace endbell
