#include "engine/sheet/html.hpp"

#include <algorithm>

#include "engine/base/text.hpp"
#include "engine/sheet/chart_svg.hpp"
#include "engine/sheet/drawing_svg.hpp"
#include "engine/sheet/escape.hpp"
#include "engine/sheet/style.hpp"

namespace endbell::inline sheet {

namespace {

/// Walks the blocks once. A heading opens a section that lasts until the next one; numbers give every section and
/// drawing an id of its own.
class HtmlRenderer {
  public:
    std::string operator()(const Decision& d) {
        const std::string id = opened_section();
        std::string out = "<section class=\"decision\" aria-labelledby=\"" + id + "\">\n<h2 id=\"" + id +
                          "\">" + escape_html(d.word) + "</h2>\n<p class=\"what\">" + escape_html(d.what) +
                          "</p>\n";
        if (!d.because.empty()) out += (*this)(Bullets{d.because});
        return closed(out);
    }
    std::string operator()(const Heading& h) {
        const std::string before = end();
        const std::string id = opened_section();
        heading_ = h.text;
        return before + "<section aria-labelledby=\"" + id + "\">\n<h2 id=\"" + id + "\">" +
               escape_html(h.text) + "</h2>\n";
    }
    std::string operator()(const Paragraph& p) const { return "<p>" + escape_html(p.text) + "</p>\n"; }
    std::string operator()(const Bullets& b) const { return items("ul", b.items); }
    std::string operator()(const Steps& s) const { return items("ol", s.items); }
    std::string operator()(const Pairs& pairs) const {
        if (pairs.rows.empty()) return "";
        std::string out = "<dl>\n";
        for (const auto& row : pairs.rows) {
            out += "<dt>" + escape_html(row.first) + "</dt><dd>" + escape_html(row.second) + "</dd>\n";
        }
        return out + "</dl>\n";
    }
    std::string operator()(const Grid& table) const {
        std::string out =
            "<table aria-label=\"" + escape_html(heading_.empty() ? "Table" : heading_) + "\">\n";
        if (!table.caption.empty()) out += "<caption>" + escape_html(table.caption) + "</caption>\n";
        out += "<thead><tr>";
        for (std::size_t c = 0; c < table.header.size(); ++c)
            out += "<th scope=\"col\"" + (is_amount(table, c) ? std::string(" class=\"amount\"") : "") + ">" +
                   escape_html(table.header[c]) + "</th>";
        out += "</tr></thead>\n<tbody>\n";
        for (const auto& row : table.rows) {
            out += "<tr>";
            for (std::size_t c = 0; c < row.size(); ++c) out += cell(table, c, row[c]);
            out += "</tr>\n";
        }
        return out + "</tbody>\n</table>\n";
    }
    std::string operator()(const Warning& w) const {
        return "<p class=\"said " + escape_html(w.signal_word) + "\"><b>" + escape_html(w.signal_word) +
               "</b> " + escape_html(w.text) + "</p>\n";
    }
    std::string operator()(const Figure& f) {
        const std::string name = "Wiring, " + f.drawing.title;
        return "<figure><div class=\"scroll\" tabindex=\"0\" role=\"region\" aria-label=\"" +
               escape_html(name) + "\">" + to_svg(f.drawing, f.description, next_figure()) +
               "</div><figcaption>" + escape_html(name + ": " + f.description) + "</figcaption></figure>\n";
    }
    std::string operator()(const Chart& c) {
        return "<figure class=\"chart\"><figcaption><b>" + escape_html(c.title) + "</b></figcaption>" +
               chart_svg(c, next_figure()) + "<p>" + escape_html(c.note) +
               "</p><details><summary>The same as a table</summary>\n" + (*this)(c.numbers) +
               "</details></figure>\n";
    }
    std::string operator()(const Plain& plain) const {
        std::string out = "<pre>";
        for (const std::string& line : plain.lines) out += escape_html(line) + "\n";
        return out + "</pre>\n";
    }
    /// Closes the section that is open, if one is.
    std::string end() { return open_ ? closed("") : ""; }

  private:
    static std::string items(const std::string& list, const std::vector<std::string>& all) {
        if (all.empty()) return "";
        std::string out = "<" + list + ">\n";
        for (const std::string& item : all) out += "<li>" + escape_html(item) + "</li>\n";
        return out + "</" + list + ">\n";
    }
    static bool is_amount(const Grid& table, std::size_t column) {
        return std::find(table.amounts.begin(), table.amounts.end(), column) != table.amounts.end();
    }
    /// Names of rows stand in bold type, unless one is a sentence.
    static bool has_long_names(const Grid& table) {
        return std::any_of(table.rows.begin(), table.rows.end(),
                           [](const auto& row) { return !row.empty() && row[0].size() > 24; });
    }
    /// The first cell names its row. A long word may be broken anywhere; others keep their column wide enough.
    static std::string cell(const Grid& table, std::size_t c, const std::string& text) {
        const std::string shown = escape_html(text);
        std::string kind;
        if (is_amount(table, c)) kind += " amount";
        if (c == 0 && has_long_names(table)) kind += " long";
        for (const std::string& word : split(shown, ' ')) {
            if (word.size() > 16 && kind.find("wild") == std::string::npos) kind += " wild";
        }
        const std::string more = " data-of=\"" + escape_html(table.header[c]) + "\"" +
                                 (kind.empty() ? "" : " class=\"" + kind.substr(1) + "\"");
        return c == 0 ? "<th scope=\"row\"" + more + ">" + shown + "</th>"
                      : "<td" + more + ">" + shown + "</td>";
    }
    std::string opened_section() {
        open_ = true;
        return "s" + std::to_string(++sections_);
    }
    std::string closed(const std::string& text) {
        open_ = false;
        return text + "</section>\n";
    }
    std::string next_figure() { return "f" + std::to_string(++figures_); }

    std::string heading_;
    bool open_ = false;
    int sections_ = 0, figures_ = 0;
};

}  // namespace

std::string render_html(const Document& document) {
    HtmlRenderer renderer;
    const std::string title = escape_html(document.title);
    std::string out =
        "<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\">\n"
        "<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n<title>" +
        title + "</title>\n<style>" + std::string(page_style()) +
        "</style>\n</head>\n<body>\n<header>\n<h1>" + title + "</h1>\n</header>\n<main>\n";
    for (const Block& block : document.blocks) out += std::visit(renderer, block);
    out += renderer.end() + "</main>\n";
    if (!document.stamp.empty()) out += "<footer>" + escape_html(document.stamp) + "</footer>\n";
    return out + "</body>\n</html>\n";
}

}  // namespace endbell::inline sheet
