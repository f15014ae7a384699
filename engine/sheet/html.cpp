#include "engine/sheet/html.hpp"

#include "engine/sheet/drawing_svg.hpp"

namespace endbell {

namespace {

// Read on a phone in one hand, on a Letter or A4 page, in the dark, without colour: a narrow table turns each
// row into a small card whose cells carry their column's name.
constexpr std::string_view style = R"(
:root{color-scheme:light dark}
*{box-sizing:border-box}
body{font:16px/1.45 system-ui,sans-serif;margin:0 auto;padding:1rem;max-width:50rem;overflow-wrap:anywhere}
h1{font-size:1.4rem;border-bottom:3px solid;padding-bottom:.3rem}
h2{font-size:1.1rem;margin:1.4rem 0 .4rem;border-bottom:1px solid}
table{border-collapse:collapse;width:100%;margin:.5rem 0}
caption{caption-side:bottom;text-align:left;font-size:.9rem;padding-top:.3rem}
th,td{border:1px solid;padding:.25rem .4rem;text-align:left;vertical-align:top}
th{font-weight:600}
dl{display:grid;grid-template-columns:minmax(6rem,30%) 1fr;gap:.1rem .8rem;margin:.5rem 0}
dt{font-weight:600}
dd{margin:0}
.said{border:2px solid;padding:.4rem .6rem;margin:.5rem 0}
.said b{letter-spacing:.05em}
figure{margin:.5rem 0;background:#fff;color:#000;padding:.3rem;overflow-x:auto}
figure svg{max-width:100%;height:auto}
pre{white-space:pre-wrap;font-size:.85rem}
footer{margin-top:2rem;font-size:.8rem;border-top:1px solid;padding-top:.4rem}
@media(max-width:560px){
 dl{display:block} dd{margin:0 0 .3rem 1rem}
 thead{position:absolute;left:-99rem}
 table,tbody,tr,td{display:block;width:100%}
 tr{border:1px solid;margin-bottom:.5rem}
 td{border:0;padding:.15rem .4rem}
 td::before{content:attr(data-of) ": ";font-weight:600}
}
@media print{
 @page{margin:14mm}
 body{font-size:10.5pt;padding:0;max-width:none;color:#000;background:#fff}
 h2{break-after:avoid} tr,.said,figure{break-inside:avoid}
}
)";

class HtmlRenderer {
  public:
    std::string operator()(const Heading& h) const { return "<h2>" + escape_html(h.text) + "</h2>\n"; }
    std::string operator()(const Paragraph& p) const { return "<p>" + escape_html(p.text) + "</p>\n"; }
    std::string operator()(const Bullets& b) const {
        std::string out = "<ul>\n";
        for (const std::string& item : b.items) out += "<li>" + escape_html(item) + "</li>\n";
        return out + "</ul>\n";
    }
    std::string operator()(const Pairs& pairs) const {
        std::string out = "<dl>\n";
        for (const auto& row : pairs.rows) {
            out += "<dt>" + escape_html(row.first) + "</dt><dd>" + escape_html(row.second) + "</dd>\n";
        }
        return out + "</dl>\n";
    }
    std::string operator()(const Grid& table) const {
        std::string out = "<table>\n";
        if (!table.caption.empty()) out += "<caption>" + escape_html(table.caption) + "</caption>\n";
        out += "<thead><tr>";
        for (const std::string& name : table.header)
            out += "<th scope=\"col\">" + escape_html(name) + "</th>";
        out += "</tr></thead>\n<tbody>\n";
        for (const auto& row : table.rows) {
            out += "<tr>";
            for (std::size_t c = 0; c < row.size(); ++c) {
                out +=
                    "<td data-of=\"" + escape_html(table.header[c]) + "\">" + escape_html(row[c]) + "</td>";
            }
            out += "</tr>\n";
        }
        return out + "</tbody>\n</table>\n";
    }
    std::string operator()(const Warning& w) const {
        return "<p class=\"said\" role=\"note\"><b>" + escape_html(w.signal_word) + "</b> " +
               escape_html(w.text) + "</p>\n";
    }
    std::string operator()(const Figure& f) const {
        return "<figure>" + to_svg(f.drawing, f.description) + "<figcaption>" +
               escape_html(f.drawing.title + ": " + f.description) + "</figcaption></figure>\n";
    }
    std::string operator()(const Plain& plain) const {
        std::string out = "<pre>";
        for (const std::string& line : plain.lines) out += escape_html(line) + "\n";
        return out + "</pre>\n";
    }
};

}  // namespace

std::string render_html(const Document& document) {
    const HtmlRenderer renderer;
    const std::string title = escape_html(document.title);
    std::string out =
        "<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\">\n"
        "<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n<title>" +
        title + "</title>\n<style>" + std::string(style) + "</style>\n</head>\n<body>\n<main>\n<h1>" + title +
        "</h1>\n";
    for (const Block& block : document.blocks) out += std::visit(renderer, block);
    out += "</main>\n";
    if (!document.stamp.empty()) out += "<footer>" + escape_html(document.stamp) + "</footer>\n";
    return out + "</body>\n</html>\n";
}

}  // namespace endbell
