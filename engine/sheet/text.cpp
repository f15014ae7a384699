#include "engine/sheet/text.hpp"

#include <algorithm>
#include <numeric>

#include "engine/base/text.hpp"
#include "engine/sheet/escape.hpp"

namespace endbell {

namespace {

/// Characters of UTF-8 text, counting one a code point.
int width_of(std::string_view text) {
    return static_cast<int>(
        std::count_if(text.begin(), text.end(), [](char c) { return (c & 0xC0) != 0x80; }));
}

/// What a terminal is given of a text.
std::string shown(std::string_view text) {
    return visible(shortened(text, longest_text));
}

std::string padded(std::string text, int width) {
    const int missing = width - width_of(text);
    if (missing > 0) text.append(static_cast<std::size_t>(missing), ' ');
    return text;
}

/// The first `count` characters of UTF-8 text, in bytes.
std::size_t bytes_of(std::string_view text, int count) {
    std::size_t at = 0;
    while (at < text.size() && (count > 0 || (text[at] & 0xC0) == 0x80)) {
        if ((text[at] & 0xC0) != 0x80) --count;
        ++at;
    }
    return at;
}

/// Words folded to `width`; a word that is too long is cut.
std::vector<std::string> folded(const std::string& raw, int width) {
    std::vector<std::string> lines;
    std::string line;
    for (std::string word : split(shown(raw), ' ')) {
        if (word.empty()) continue;
        if (!line.empty() && width_of(line) + 1 + width_of(word) > width) {
            lines.push_back(line);
            line.clear();
        }
        while (width_of(word) > width) {
            const std::size_t cut = bytes_of(word, width);
            lines.push_back(word.substr(0, cut));
            word.erase(0, cut);
        }
        line += (line.empty() ? "" : " ") + word;
    }
    if (!line.empty() || lines.empty()) lines.push_back(line);
    return lines;
}

std::string hanging(const std::string& lead, const std::string& text, int width) {
    std::string out;
    const int indent = width_of(lead);
    for (const std::string& line : folded(text, width - indent)) {
        out += (out.empty() ? lead : std::string(static_cast<std::size_t>(indent), ' ')) + line + "\n";
    }
    return out;
}

class TextRenderer {
  public:
    explicit TextRenderer(int width) : width_(std::max(width, 40)) {}

    std::string underlined(const std::string& text, char with) const {
        const int width = std::min(width_of(shown(text)), width_);
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
        for (const auto& row : pairs.rows) name_width = std::max(name_width, width_of(shown(row.first)));
        name_width = std::min(name_width, width_ / 2);
        std::string out;
        for (const auto& row : pairs.rows) {
            out += hanging(padded("  " + shown(row.first), name_width + 4), row.second, width_);
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
        const std::vector<int> widths = column_widths(table);
        std::string out = row_text(table.header, widths);
        std::string rule;
        for (std::size_t c = 0; c < widths.size(); ++c) {
            rule += (c > 0 ? "  " : "") + std::string(static_cast<std::size_t>(widths[c]), '-');
        }
        out += rule + "\n";
        for (const auto& row : table.rows) out += row_text(row, widths);
        if (!table.caption.empty()) out += hanging("", table.caption, width_);
        return out;
    }

  private:
    /// Natural widths where they fit; else the widest columns give way until the row does.
    std::vector<int> column_widths(const Grid& table) const {
        std::vector<int> widths(table.header.size(), 1);
        std::vector<int> least(table.header.size(), 1);
        const auto grow = [&](const std::vector<std::string>& row) {
            for (std::size_t c = 0; c < widths.size(); ++c) {
                widths[c] = std::max(widths[c], width_of(shown(row[c])));
                for (const std::string& word : split(shown(row[c]), ' ')) {
                    least[c] = std::max(least[c], std::min(width_of(word), 24));
                }
            }
        };
        grow(table.header);
        for (const auto& row : table.rows) grow(row);
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

    static std::string row_text(const std::vector<std::string>& row, const std::vector<int>& widths) {
        std::vector<std::vector<std::string>> cells;
        std::size_t height = 1;
        for (std::size_t c = 0; c < widths.size(); ++c) {
            cells.push_back(folded(row[c], widths[c]));
            height = std::max(height, cells.back().size());
        }
        std::string out;
        for (std::size_t line = 0; line < height; ++line) {
            std::string text;
            for (std::size_t c = 0; c < widths.size(); ++c) {
                text += (c > 0 ? "  " : "") + padded(line < cells[c].size() ? cells[c][line] : "", widths[c]);
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

}  // namespace endbell
