// The figures of the two charts, and the same figures as tables.
#include <algorithm>
#include <cmath>

#include "engine/base/text.hpp"
#include "engine/cost/over_years.hpp"
#include "engine/explain/parts_of_documents.hpp"
#include "engine/explain/values.hpp"

namespace endbell::inline explain {

namespace {

constexpr std::size_t most_lines = 4;  // more cannot be told apart without colour

Money money_of(double minor, const Currency& currency) {
    return Money(std::llround(minor), currency);
}

/// Whole units, half away from zero: a chart is not read to the cent.
std::string rounded(const Money& money) {
    const auto parts = static_cast<std::int64_t>(std::llround(std::pow(10.0, money.currency().digits)));
    const std::string text = to_text(money.scaled(1, parts).times(parts));
    return money.currency().digits > 0 ? text.substr(0, text.rfind('.')) : text;
}

struct Drawable {
    std::string letter;
    const CostOption* option;
    std::vector<double> spent;
};

/// Ways that can stand on one scale: where the power of some is known, those without it are left out.
std::vector<Drawable> drawable(const Ledger& ledger, const std::vector<std::size_t>& ways, double escalation,
                               std::vector<std::string>& left_out) {
    const bool with_energy = !ways.empty() && ledger.options[ways.front()].energy_cost.has_value();
    std::vector<Drawable> all;
    for (std::size_t n = 0; n < ways.size(); ++n) {
        const CostOption& o = ledger.options[ways[n]];
        std::vector<double> spent = spent_by_year(o, escalation);
        if (spent.empty() || o.energy_cost.has_value() != with_energy || all.size() == most_lines) {
            left_out.push_back(way_letter(n));
        } else {
            all.push_back({way_letter(n), &o, std::move(spent)});
        }
    }
    return all;
}

}  // namespace

std::string way_letter(std::size_t n) {
    return std::string(1, static_cast<char>('A' + n));
}

void add_cost_chart(Document& to, const FailedUnit& job, const Ledger& ledger,
                    const std::vector<std::size_t>& ways) {
    const double escalation =
        job.shop.energy_escalation ? static_cast<double>(job.shop.energy_escalation->millionths) / 1e6 : 0.0;
    std::vector<std::string> left_out;
    const std::vector<Drawable> lines = drawable(ledger, ways, escalation, left_out);
    if (lines.empty()) {
        to.add(Paragraph{"Cost over the years cannot be drawn: no option has both a total and a life."});
        return;
    }
    const bool with_energy = lines.front().option->energy_cost.has_value();
    const Currency currency = lines.front().option->today->currency();
    Chart chart;
    chart.title = "Paid in all by the end of each year";
    YearLines drawn{std::string(currency.code), {}};
    std::size_t longest = 0;
    for (const Drawable& line : lines) {
        YearLine drawn_line{line.letter, rounded(money_of(line.spent.back(), currency)), {}};
        for (double minor : line.spent) drawn_line.values.push_back(minor / std::pow(10.0, currency.digits));
        longest = std::max(longest, line.spent.size());
        chart.description += (chart.description.empty() ? "" : "; ") + line.letter + " starts at " +
                             rounded(money_of(line.spent.front(), currency)) + " and comes to " +
                             drawn_line.last + " after " + std::to_string(line.spent.size() - 1) + " years";
        drawn.lines.push_back(std::move(drawn_line));
    }
    chart.description += ".";
    chart.note = "Each line ends with its option's life. Today's money, " +
                 std::string(with_energy ? "power included" : "power not known and left out") + ".";
    if (!left_out.empty()) chart.note += " Not drawn: " + joined(left_out, ", ") + ".";
    chart.numbers.header.push_back("year");
    for (const Drawable& line : lines) {
        chart.numbers.amounts.push_back(chart.numbers.header.size());
        chart.numbers.header.push_back(line.letter);
    }
    for (std::size_t year = 0; year < longest; ++year) {
        const bool told = year < 2 || year % 3 == 0 || year + 1 == longest ||
                          std::any_of(lines.begin(), lines.end(),
                                      [&](const Drawable& l) { return year + 1 == l.spent.size(); });
        if (!told) continue;
        std::vector<std::string> row{year == 0 ? "today" : std::to_string(year)};
        for (const Drawable& line : lines)
            row.push_back(year < line.spent.size() ? rounded(money_of(line.spent[year], currency)) : "ended");
        chart.numbers.rows.push_back(std::move(row));
    }
    chart.drawn = std::move(drawn);
    to.add(chart);
}

void add_air_chart(Document& to, const AirPlan& air) {
    Chart chart;
    chart.title = "Air of each call against what it needs";
    WindowBars drawn{"cfm", {}};
    chart.numbers.header = {"call", "tap", "air, cfm", "needs, cfm", "inside"};
    for (const CallAir& call : air.calls) {
        const TapAir* got = air_of(air, call.call);
        if (got == nullptr || !got->airflow.known()) continue;
        const EstimatedNumber moved = got->airflow.in(cfm);
        const double low = call.low.in(cfm), high = call.high.in(cfm);
        const bool window = high > 0;
        const std::string tap = call.tap ? "tap " + std::to_string(*call.tap) : "programmed";
        const std::string flow = say_number(moved.value, 0) +
                                 (moved.plus_minus > 0 ? " +/-" + say_number(moved.plus_minus, 0) : "");
        const std::string needs = window ? say_number(low, 0) + "-" + say_number(high, 0) : "not known";
        const bool inside = window && moved.value >= low && moved.value <= high;
        drawn.bars.push_back({std::string(word(call.call)) + ", " + tap, flow + ", needs " + needs, low, high,
                              moved.value, moved.plus_minus});
        chart.description += (chart.description.empty() ? "" : "; ") + std::string(word(call.call)) + " on " +
                             tap + " gets " + flow + " cfm and needs " + needs;
        chart.numbers.rows.push_back({std::string(word(call.call)), tap, flow, needs,
                                      !window  ? "not known"
                                      : inside ? "yes"
                                               : "NO"});
    }
    if (drawn.bars.empty()) {
        to.add(Paragraph{air.lacking.empty()
                             ? "No airflow is drawn (" + std::string(word(air.method)) + ")."
                             : "No airflow is drawn: it needs " + joined(air.lacking, ", ") + "."});
        return;
    }
    chart.description += ".";
    chart.note = "Box: what the call needs. Dot: what it gets; the bar through it: what that may be off by.";
    chart.drawn = std::move(drawn);
    to.add(chart);
}

}  // namespace endbell::inline explain
