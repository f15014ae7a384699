// The estimate: the ways out with their prices and lives, what today's price is made of, what was assumed, and how
// long it stands.
#include <algorithm>

#include "engine/base/text.hpp"
#include "engine/explain/findings.hpp"
#include "engine/explain/parts_of_documents.hpp"
#include "engine/explain/values.hpp"
#include "engine/words/write.hpp"

namespace endbell::inline explain {

namespace {

constexpr std::size_t most_ways = 6;

std::string years(Period life) {
    return life > Period() ? say_number(life.in(calendar_year), 0) + " y" : "not known";
}

/// The way that is recommended first, then the ledger's own order.
std::vector<std::size_t> ways_to_show(const Ledger& ledger, const std::string& part_id) {
    std::vector<std::size_t> ways;
    for (std::size_t i = 0; i < ledger.options.size(); ++i) {
        if (ledger.options[i].part_id == part_id) ways.push_back(i);
    }
    for (std::size_t i = 0; i < ledger.options.size() && ways.size() < most_ways; ++i) {
        if (ledger.options[i].part_id != part_id) ways.push_back(i);
    }
    return ways;
}

/// Lettered: a customer names the option that is wanted.
void add_ways(Document& to, const Ledger& ledger, const std::vector<std::size_t>& ways) {
    to.add(Heading{"Your options"});
    Grid table{{"option", "way", "today", "power a year", "life", "cost a year", "loses or leaves"},
               {},
               "",
               {2, 3, 4, 5}};
    for (std::size_t n = 0; n < ways.size(); ++n) {
        const CostOption& o = ledger.options[ways[n]];
        table.rows.push_back({way_letter(n),
                              std::string(word(o.way)) + (o.part_id.empty() ? "" : " " + o.part_id),
                              total_text(o), price_text(o.energy_cost), years(o.life), price_text(o.per_year),
                              o.loses.empty() ? "-" : listed(o.loses)});
    }
    table.caption = "Cost a year: today's price spread over the life, with power and expected loss.";
    if (ledger.options.size() > ways.size())
        table.caption +=
            " " + std::to_string(ledger.options.size() - ways.size()) + " more: ask with compare.";
    to.add(table);
    for (std::size_t i : ways) {
        const CostOption& o = ledger.options[i];
        if (!o.lacking.empty())
            to.add(Paragraph{"No total for " + std::string(word(o.way)) + " " + o.part_id +
                             " yet: it needs " + joined(o.lacking, ", ") + "."});
    }
    if (!ways.empty()) add_recurrence(to, ledger.options[ways.front()]);
}

/// Of the recommended option alone: the others are compared by their totals.
void add_invoice(Document& to, const CostOption& o) {
    if (o.lines.empty()) return;
    to.add(Heading{"What option A is made of"});
    Grid table{{"line", "what", "amount"}, {}, "", {2}};
    for (const CostLine& line : o.lines) {
        const std::string count = line.count > 1 ? std::to_string(line.count) + " x " : "";
        const std::string hours =
            line.thousandth_hours > 0 ? ", " + say_number(line.thousandth_hours / 1000.0, 2) + " h" : "";
        table.rows.push_back({std::string(word(line.kind)),
                              line.subject().empty() ? "-" : count + std::string(line.subject()) + hours,
                              to_text(line.amount) + (line.stale ? " (old price)" : "")});
    }
    table.rows.push_back({o.today ? "total" : "total so far", "-", total_text(o)});
    to.add(table);
}

void add_assumptions(Document& to, const FailedUnit& job, const Ledger& ledger, const CostOption* first,
                     const Option& option) {
    to.add(Heading{"What was assumed"});
    Bullets list;
    if (first != nullptr) {
        if (first->life > Period())
            list.items.push_back("Life of " + years(first->life) +
                                 (job.equipment.remaining_years
                                      ? ": no longer than the equipment's own rest of life."
                                      : ", a middle figure for its kind."));
        if (std::any_of(first->energy_lines.begin(), first->energy_lines.end(),
                        [](const EnergyLine& e) { return e.hours_assumed; }))
            list.items.push_back(
                "Running hours a year, where the job gives none, are those of the federal fan "
                "rating (from memory).");
        if (!first->not_counted.empty())
            list.items.push_back("Not counted: " + listed(first->not_counted) + ".");
    }
    if (ledger.rate_kind)
        list.items.push_back("Discount rate " + say_number(ledger.discount_rate * 100, 2) + " % a year, " +
                             std::string(word(*ledger.rate_kind)) + " (" + ledger.rate_source + ").");
    if (!ledger.lacking.empty())
        list.items.push_back("No cost a year without: " + joined(ledger.lacking, ", ") + ".");
    if (!option.air.assumed.empty())
        list.items.push_back("Airflow: assumed " + joined(option.air.assumed, ", ") +
                             "; checked at start-up.");
    list.items.push_back("Nothing hidden is broken: what opening the unit shows is priced when it is seen.");
    to.add(list);
}

void add_expiry(Document& to, const FailedUnit& job, const CostOption* first) {
    to.add(Heading{"How long it stands"});
    Pairs pairs;
    pairs.rows.emplace_back("Priced on",
                            job.shop.as_of ? write(*job.shop.as_of) : "no date given in the job");
    const bool dated = first != nullptr && first->good_until;
    pairs.rows.emplace_back("Good until", dated ? write(*first->good_until) +
                                                      "; after that its oldest price is too old (price.age)"
                                                : "not known: a price has no date");
    pairs.rows.emplace_back("Accepted", "________________________   date ________");
    to.add(pairs);
}

}  // namespace

void add_estimate(Document& to, const FailedUnit& job, const Selection& selection, const Option& option) {
    const Ledger& ledger = selection.ledger;
    const std::vector<std::size_t> ways = ways_to_show(ledger, option.candidate.part.id);
    const CostOption* first = cost_of(ledger, option.candidate.part.id);
    if (ways.empty()) {
        to.add(Paragraph{"No way out has a price in this catalog and job."});
    } else {
        add_ways(to, ledger, ways);
        to.add(Heading{"Cost and air, drawn"});
        add_cost_chart(to, job, ledger, ways);
        add_air_chart(to, option.air);
    }
    add_fault(to, selection.diagnosis);
    if (first != nullptr) add_invoice(to, *first);
    add_assumptions(to, job, ledger, first, option);
    add_expiry(to, job, first);
}

}  // namespace endbell::inline explain
