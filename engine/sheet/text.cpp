#include "engine/sheet/text.hpp"

#include <algorithm>
#include <numeric>

#include "engine/base/display_width.hpp"
#include "engine/base/text.hpp"
#include "engine/sheet/escape.hpp"

namespace endbell::inline sheet {

namespace {

/// What a terminal is given of a text.
std::string shown(std::string_view text) {
    return text.size() <= longest_text ? visible(text) : visible(shortened(text, longest_text));
}

std::vector<std::string> shown(const std::vector<std::string>& row) {
    std::vector<std::string> cells;
    cells.reserve(row.size());
    for (const std::string& cell : row) cells.push_back(shown(cell));
    return cells;
}

void append_padded(std::string& to, std::string_view text, int width) {
    to += text;
    const int missing = width - display_width(text);
    if (missing > 0) to.append(static_cast<std::size_t>(missing), ' ');
}

/// What stands between spaces.
std::vector<std::string_view> words_of(std::string_view text) {
    std::vector<std::string_view> words;
    while (!text.empty()) {
        const std::size_t end = std::min(text.find(' '), text.size());
        if (end > 0) words.push_back(text.substr(0, end));
        text.remove_prefix(std::min(end + 1, text.size()));
    }
    return words;
}

/// Words folded to `width`; a word that is too long is cut.
std::vector<std::string> folded(std::string_view shown_text, int width) {
    width = std::max(width, 1);
    std::vector<std::string> lines;
    std::string line;
    int line_width = 0;
    for (std::string_view word : words_of(shown_text)) {
        int word_width = display_width(word);
        if (!line.empty() && line_width + 1 + word_width > width) {
            lines.push_back(std::move(line));
            line.clear();
        }
        while (word_width > width) {
            const std::string_view cut = fitting(word, width);
            lines.emplace_back(cut);
            word.remove_prefix(cut.size());
            word_width = display_width(word);
        }
        line_width = line.empty() ? word_width : line_width + 1 + word_width;
        if (!line.empty()) line += ' ';
        line += word;
    }
    if (!line.empty() || lines.empty()) lines.push_back(std::move(line));
    return lines;
}

std::string hanging(const std::string& lead, const std::string& text, int width) {
    std::string out;
    const int indent = display_width(lead);
    for (const std::string& line : folded(shown(text), width - indent)) {
        out += out.empty() ? lead : std::string(static_cast<std::size_t>(indent), ' ');
        out += line + "\n";
    }
    return out;
}

class TextRenderer {
  public:
    explicit TextRenderer(int width) : width_(std::max(width, 40)) {}

    std::string underlined(const std::string& text, char with) const {
        const int width = std::min(display_width(shown(text)), width_);
        return hanging("", text, width_) + std::string(static_cast<std::size_t>(width), with) + "\n";
    }
    std::string operator()(const Decision& d) const {
        std::string out = hanging(d.word + ": ", d.what, width_);
        for (const std::string& reason : d.because) out += hanging("  ", reason, width_);
        return out;
    }
    std::string operator()(const Heading& h) const { return "\n" + underlined(h.text, '-'); }
    std::string operator()(const Paragraph& p) const { return hanging("", p.text, width_); }
    std::string operator()(const Bullets& b) const {
        std::string out;
        for (const std::string& item : b.items) out += hanging("  - ", item, width_);
        return out;
    }
    std::string operator()(const Steps& steps) const {
        std::string out;
        for (std::size_t i = 0; i < steps.items.size(); ++i)
            out += hanging((i < 9 ? "  " : " ") + std::to_string(i + 1) + ". ", steps.items[i], width_);
        return out;
    }
    std::string operator()(const Pairs& pairs) const {
        int name_width = 0;
        for (const auto& row : pairs.rows) name_width = std::max(name_width, display_width(shown(row.first)));
        name_width = std::min(name_width, width_ / 2);
        std::string out;
        for (const auto& row : pairs.rows) {
            std::string lead = "  ";
            append_padded(lead, shown(row.first), name_width + 2);
            out += hanging(lead, row.second, width_);
        }
        return out;
    }
    std::string operator()(const Warning& w) const { return hanging(w.signal_word + ": ", w.text, width_); }
    std::string operator()(const Figure&) const { return ""; }
    std::string operator()(const Chart& chart) const {
        return hanging("", chart.title + ":", width_) + (*this)(chart.numbers) +
               hanging("", chart.note, width_);
    }
    std::string operator()(const Plain& plain) const {
        std::string out;
        for (const std::string& line : plain.lines) out += "  " + shown(line) + "\n";
        return out;
    }
    std::string operator()(const Grid& table) const {
        Rows rows{shown(table.header)};
        for (const auto& row : table.rows) rows.push_back(shown(row));
        const std::vector<int> widths = column_widths(rows);
        std::string out = row_text(rows.front(), widths);
        for (std::size_t c = 0; c < widths.size(); ++c) {
            if (c > 0) out += "  ";
            out.append(static_cast<std::size_t>(widths[c]), '-');
        }
        out += "\n";
        for (std::size_t r = 1; r < rows.size(); ++r) out += row_text(rows[r], widths);
        if (!table.caption.empty()) out += hanging("", table.caption, width_);
        return out;
    }

  private:
    using Rows = std::vector<std::vector<std::string>>;  // as shown

    /// Natural widths where they fit; else the widest columns give way until the row does.
    std::vector<int> column_widths(const Rows& rows) const {
        std::vector<int> widths(rows.front().size(), 1);
        std::vector<int> least(widths.size(), 1);
        for (const std::vector<std::string>& row : rows) {
            for (std::size_t c = 0; c < widths.size(); ++c) {
                widths[c] = std::max(widths[c], display_width(row[c]));
                for (const std::string_view word : words_of(row[c]))
                    least[c] = std::max(least[c], std::min(display_width(word), 24));
            }
        }
        const int room = width_ - 2 * (static_cast<int>(widths.size()) - 1);
        while (std::accumulate(widths.begin(), widths.end(), 0) > room) {
            std::size_t widest = widths.size();
            for (std::size_t c = 0; c < widths.size(); ++c) {
                if (widths[c] > least[c] && (widest == widths.size() || widths[c] > widths[widest]))
                    widest = c;
            }
            if (widest == widths.size()) break;
            --widths[widest];
        }
        return widths;
    }

    /// As many lines as the cell that folds into most; no line ends in blanks, which a diff would show.
    static std::string row_text(const std::vector<std::string>& row, const std::vector<int>& widths) {
        Rows cells;
        std::size_t height = 1;
        for (std::size_t c = 0; c < widths.size(); ++c) {
            cells.push_back(folded(row[c], widths[c]));
            height = std::max(height, cells.back().size());
        }
        std::string out;
        for (std::size_t line = 0; line < height; ++line) {
            std::string text;
            for (std::size_t c = 0; c < widths.size(); ++c) {
                if (c > 0) text += "  ";
                append_padded(text, line < cells[c].size() ? std::string_view(cells[c][line]) : "",
                              widths[c]);
            }
            text.erase(text.find_last_not_of(' ') + 1);
            out += text + "\n";
        }
        return out;
    }

    int width_;
};

}  // namespace

std::string render_text(const Document& document, int width) {
    const TextRenderer renderer(width);
    std::string out = renderer.underlined(document.title, '=');
    for (const Block& block : document.blocks) out += std::visit(renderer, block);
    if (!document.stamp.empty()) out += "\n" + hanging("", document.stamp, std::max(width, 40));
    return out;
}

}  // namespace endbell::inline sheet
