#include "engine/sheet/drawing_svg.hpp"

#include <algorithm>

#include <fmt/format.h>

#include "engine/sheet/escape.hpp"

namespace endbell::inline sheet {

namespace {

constexpr double paper_width = 660;  // A4 between margins of 12 mm is 703 px at 96 to the inch

const char* word_of(Anchor anchor) {
    return anchor == Anchor::start ? "start" : anchor == Anchor::middle ? "middle" : "end";
}

}  // namespace

std::string svg_head(double width, double height, const std::string& title, const std::string& description,
                     const std::string& id, const std::string& more) {
    return fmt::format(
        "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 {:g} {:g}\" role=\"img\" "
        "aria-labelledby=\"{}-t {}-d\"{}>\n<title id=\"{}-t\">{}</title>\n<desc id=\"{}-d\">{}</desc>\n",
        width, height, id, id, more, id, escape_html(title), id, escape_html(description));
}

// A narrow screen shows it at three quarters of its size and scrolls; anything smaller is not legible. Paper
// always takes it whole.
std::string to_svg(const Drawing& d, const std::string& description, const std::string& id) {
    const double least = std::min(d.width * 0.75, paper_width);
    std::string out =
        svg_head(d.width, d.height, "Wiring, " + d.title, description, id,
                 fmt::format(" width=\"100%\" style=\"max-width:{:g}px;min-width:{:g}px\"", d.width, least));
    for (const DrawnBox& b : d.boxes) {
        out += fmt::format("<rect class=\"box\" x=\"{:g}\" y=\"{:g}\" width=\"{:g}\" height=\"{:g}\"/>\n",
                           b.x, b.y, b.width, b.height);
    }
    for (const DrawnLine& l : d.lines) {
        out += fmt::format(
            "<line x1=\"{:g}\" y1=\"{:g}\" x2=\"{:g}\" y2=\"{:g}\" stroke=\"currentColor\" "
            "stroke-width=\"1.5\"/>\n",
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

}  // namespace endbell::inline sheet
