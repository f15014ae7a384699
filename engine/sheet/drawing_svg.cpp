#include "engine/sheet/drawing_svg.hpp"

#include <algorithm>

#include <fmt/format.h>

#include "engine/sheet/escape.hpp"

namespace endbell {

namespace {

constexpr double paper_width = 660;  // A4 between margins of 14 mm is 687 px at 96 to the inch

const char* word_of(Anchor anchor) {
    return anchor == Anchor::start ? "start" : anchor == Anchor::middle ? "middle" : "end";
}

}  // namespace

// A narrow screen shows it at three quarters of its size and scrolls; anything smaller is not legible. Paper
// always takes it whole.
std::string to_svg(const Drawing& d, const std::string& description) {
    const double least = std::min(d.width * 0.75, paper_width);
    std::string out = fmt::format(
        "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 {:g} {:g}\" width=\"100%\" role=\"img\" "
        "aria-label=\"{}\" style=\"max-width:{:g}px;min-width:{:g}px\">\n",
        d.width, d.height, escape_html(description), d.width, least);
    for (const DrawnBox& b : d.boxes) {
        out += fmt::format(
            "<rect x=\"{:g}\" y=\"{:g}\" width=\"{:g}\" height=\"{:g}\" fill=\"#fff\" stroke=\"#000\"/>\n",
            b.x, b.y, b.width, b.height);
    }
    for (const DrawnLine& l : d.lines) {
        out += fmt::format(
            "<line x1=\"{:g}\" y1=\"{:g}\" x2=\"{:g}\" y2=\"{:g}\" stroke=\"#000\" stroke-width=\"1.5\"/>\n",
            l.x1, l.y1, l.x2, l.y2);
    }
    for (const DrawnText& t : d.texts) {
        out += fmt::format(
            "<text x=\"{:g}\" y=\"{:g}\" font-family=\"monospace\" font-size=\"{:g}\" "
            "text-anchor=\"{}\"{}>{}</text>\n",
            t.x, t.y, t.size, word_of(t.anchor), t.bold ? " font-weight=\"bold\"" : "", escape_html(t.text));
    }
    return out + "</svg>\n";
}

}  // namespace endbell
