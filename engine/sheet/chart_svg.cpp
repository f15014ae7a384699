#include "engine/sheet/chart_svg.hpp"

#include <algorithm>
#include <array>
#include <cmath>

#include <fmt/format.h>

#include "engine/sheet/drawing_svg.hpp"
#include "engine/sheet/escape.hpp"

namespace endbell::inline sheet {

namespace {

constexpr double width = 360;  // of every chart: a phone shows it without scaling

/// A round step that cuts 0 to `most` into five parts or fewer.
double step_for(double most) {
    const double ten = std::pow(10.0, std::floor(std::log10(std::max(most, 1.0) / 5)));
    for (double factor : {1.0, 2.0, 2.5, 5.0, 10.0}) {
        if (most / (factor * ten) <= 5) return factor * ten;
    }
    return 10 * ten;
}

/// "12,500".
std::string thousands(double number) {
    std::string digits = fmt::format("{:.0f}", number);
    for (int at = static_cast<int>(digits.size()) - 3; at > 0; at -= 3)
        digits.insert(static_cast<std::size_t>(at), ",");
    return digits;
}

std::string line(double x1, double y1, double x2, double y2, const char* more = "class=\"axis\"") {
    return fmt::format("<line x1=\"{:.1f}\" y1=\"{:.1f}\" x2=\"{:.1f}\" y2=\"{:.1f}\" {}/>\n", x1, y1, x2, y2,
                       more);
}

std::string text(double x, double y, const std::string& words, const char* anchor, bool strong = false) {
    return fmt::format("<text x=\"{:.1f}\" y=\"{:.1f}\" text-anchor=\"{}\"{}>{}</text>\n", x, y, anchor,
                       strong ? " class=\"strong\"" : "", escape_html(words));
}

constexpr const char* ink = "stroke=\"currentColor\" stroke-width=\"1.5\"";

// ---- lines over years

constexpr std::array dashes{"", "7 3", "2 3", "9 3 2 3"};

/// Circle, square, triangle, diamond.
std::string mark(std::size_t which, double x, double y) {
    constexpr std::array shapes{"M-4 0A4 4 0 1 0 4 0A4 4 0 1 0-4 0Z", "M-3.5-3.5H3.5V3.5H-3.5Z",
                                "M0-4.5L4.5 3.5H-4.5Z", "M0-5L5 0L0 5L-5 0Z"};
    return fmt::format("<path class=\"box\" transform=\"translate({:.1f} {:.1f})\" d=\"{}\"/>\n", x, y,
                       shapes[which % shapes.size()]);
}

class YearsDrawing {
  public:
    explicit YearsDrawing(const YearLines& chart) : chart_(chart) {
        for (const YearLine& l : chart.lines) {
            years_ = std::max(years_, l.values.size() - 1);
            most_ = std::max(most_, *std::max_element(l.values.begin(), l.values.end()));
        }
        step_ = step_for(most_);
        top_value_ = step_ * std::ceil(most_ / step_);
    }

    std::string drawn() const {
        std::string out = axes();
        for (std::size_t i = 0; i < chart_.lines.size(); ++i) out += way(i);
        return out + labels();
    }
    static constexpr double height = 250;

  private:
    static constexpr double left = 46, right = 262, top = 24, bottom = 216;

    double x(std::size_t year) const {
        return left + (right - left) * static_cast<double>(year) /
                          static_cast<double>(std::max<std::size_t>(years_, 1));
    }
    double y(double value) const { return bottom - (bottom - top) * value / top_value_; }

    std::string axes() const {
        std::string out = text(left, 12, chart_.unit, "end");
        for (double value = 0; value <= top_value_ + step_ / 2; value += step_)
            out +=
                line(left, y(value), right, y(value)) + text(left - 6, y(value) + 4, thousands(value), "end");
        const std::size_t every = years_ > 10 ? 5 : years_ > 5 ? 2 : 1;
        for (std::size_t year = 0; year <= years_; year += every)
            out += text(x(year), bottom + 16, year == 0 ? "today" : std::to_string(year), "middle");
        return out + text((left + right) / 2, bottom + 31, "years from now", "middle");
    }

    /// Marks stand on other years for each line, so that lines that lie together can still be told apart.
    std::string way(std::size_t i) const {
        const YearLine& l = chart_.lines[i];
        std::string points, marks;
        for (std::size_t year = 0; year < l.values.size(); ++year) {
            points += fmt::format("{}{:.1f},{:.1f}", year == 0 ? "" : " ", x(year), y(l.values[year]));
            const bool last = year + 1 == l.values.size();
            if (last || (year > 0 && year % 4 == i % 4)) marks += mark(i, x(year), y(l.values[year]));
        }
        return fmt::format("<polyline points=\"{}\" fill=\"none\" {} stroke-dasharray=\"{}\"/>\n", points,
                           ink, *dashes[i % dashes.size()] == 0 ? "none" : dashes[i % dashes.size()]) +
               marks;
    }

    /// Each line is named to the right of its end; names that would touch are pushed apart, lowest line first.
    std::string labels() const {
        std::vector<std::size_t> order(chart_.lines.size());
        for (std::size_t i = 0; i < order.size(); ++i) order[i] = i;
        const auto end = [this](std::size_t i) { return y(chart_.lines[i].values.back()); };
        std::stable_sort(order.begin(), order.end(),
                         [&](std::size_t a, std::size_t b) { return end(a) > end(b); });
        std::string out;
        double free = bottom + 4;
        for (std::size_t i : order) {
            const YearLine& l = chart_.lines[i];
            const double at = std::min(end(i), free);
            free = at - 14;
            out += line(x(l.values.size() - 1) + 5, end(i), right + 12, at);
            out += text(right + 14, at + 4, l.name + " " + l.last, "start", true);
        }
        return out;
    }

    const YearLines& chart_;
    std::size_t years_ = 0;
    double most_ = 0, step_ = 1, top_value_ = 1;
};

// ---- windows

constexpr double row = 46;

double height_of(const WindowBars& chart) {
    return row * static_cast<double>(chart.bars.size()) + 36;
}

std::string drawn(const WindowBars& chart) {
    double most = 1;
    for (const WindowBar& b : chart.bars) most = std::max({most, b.high, b.value + b.plus_minus});
    const double step = step_for(most);
    const double end = step * std::ceil(most / step);
    const auto x = [end](double value) { return 8 + (width - 24) * std::clamp(value / end, 0.0, 1.0); };
    const double floor = row * static_cast<double>(chart.bars.size()) + 4;
    std::string out;
    for (double value = 0; value <= end + step / 2; value += step)
        out += line(x(value), floor, x(value), floor + 5) +
               text(x(value), floor + 17, thousands(value), "middle");
    out += line(x(0), floor, x(end), floor) + text(x(0), floor + 30, chart.unit, "start");
    for (std::size_t i = 0; i < chart.bars.size(); ++i) {
        const WindowBar& b = chart.bars[i];
        const double head = row * static_cast<double>(i) + 13, middle = head + 16;
        out += text(8, head, b.name, "start", true) + text(width - 8, head, b.said, "end");
        if (b.high > 0)
            out += fmt::format(
                "<rect class=\"window\" x=\"{:.1f}\" y=\"{:.1f}\" width=\"{:.1f}\" height=\"14\"/>\n",
                x(b.low), middle - 7, x(b.high) - x(b.low));
        const double from = x(b.value - b.plus_minus), to = x(b.value + b.plus_minus);
        out += line(from, middle, to, middle, ink) + line(from, middle - 4, from, middle + 4, ink) +
               line(to, middle - 4, to, middle + 4, ink) +
               fmt::format("<circle cx=\"{:.1f}\" cy=\"{:.1f}\" r=\"4\" fill=\"currentColor\"/>\n",
                           x(b.value), middle);
    }
    return out;
}

}  // namespace

std::string chart_svg(const Chart& chart, const std::string& id) {
    std::string inside;
    double height = 0;
    if (const auto* lines = std::get_if<YearLines>(&chart.drawn)) {
        inside = YearsDrawing(*lines).drawn();
        height = YearsDrawing::height;
    } else {
        inside = drawn(std::get<WindowBars>(chart.drawn));
        height = height_of(std::get<WindowBars>(chart.drawn));
    }
    return svg_head(width, height, chart.title, chart.description, id, "") + inside + "</svg>\n";
}

}  // namespace endbell::inline sheet
