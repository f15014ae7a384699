// The counter ticket: what to pick, how it differs from the old part, what to look at before the box is opened.
#include "engine/base/text.hpp"
#include "engine/explain/findings.hpp"
#include "engine/explain/parts_of_documents.hpp"
#include "engine/explain/questions.hpp"
#include "engine/explain/repair_words.hpp"
#include "engine/explain/values.hpp"
#include "engine/words/write.hpp"

namespace endbell::inline explain {

namespace {

constexpr std::size_t longest_words = 160;  // of catalog text in a cell

std::string spaced(std::string_view id) {
    std::string text(id);
    for (char& c : text) {
        if (c == '-') c = ' ';
    }
    return text;
}

/// What the customer pays for a part of this way; the shop's cost is nobody's business at the counter.
std::string sold_at(const CostOption* cost, const std::string& part_id,
                    const std::string& otherwise = "not known") {
    if (cost == nullptr) return otherwise;
    for (const CostLine& line : cost->lines) {
        if (is_part(line.kind) && line.part_id == part_id)
            return to_text(line.amount) + (line.stale ? " (old price)" : "");
    }
    return otherwise;
}

std::string place_of(const std::optional<Offer>& offer) {
    if (!offer) return "no offer";
    std::string text = offer->branch;
    if (offer->stock) text += ": " + std::to_string(*offer->stock) + " in stock";
    if (offer->lead_days && (!offer->stock || *offer->stock == 0))
        text += ", " + std::to_string(*offer->lead_days) + " days";
    return shortened(text, longest_words);
}

/// One line for each thing to fetch, with a box to tick; one other kit, should something be gone.
void add_pick_list(Document& to, const Selection& selection, const Option& option) {
    const Part& part = option.candidate.part;
    const CostOption* cost = cost_of(selection.ledger, part.id);
    to.add(Heading{"Pick list"});
    Grid table{{"picked", "count", "part", "for", "where", "price"}, {}, "", {5}};
    table.rows.push_back({"[  ]", "1", part.id + ", " + part_name(part),
                          shortened(part.description, longest_words), place_of(option.offer),
                          sold_at(cost, part.id)});
    for (const KitPart& p : option.kit.parts) {
        table.rows.push_back({"[  ]", std::to_string(p.count), p.part_id, remedies_text(option.kit, p.cures),
                              place_of(p.offer), sold_at(cost, p.part_id)});
    }
    table.caption =
        option.kit.parts.empty() ? "Nothing is added to it." : "Prices are for the count beside them.";
    to.add(table);
    for (int i : option.kit.uncured)
        to.add(Warning{"NOTICE", "Nothing in this catalog gives " +
                                     say(option.kit.remedies[static_cast<std::size_t>(i)]) + "."});
    std::string work;
    for (const KitWork& w : option.kit.work) {
        const std::string task(word(w.task));
        if (work.find(task) == std::string::npos) work += (work.empty() ? "" : ", ") + task;
    }
    if (!work.empty()) to.add(Paragraph{"Work that goes with it: " + work + "."});
    for (const RunnerUp& r : option.kit.runners_up) {
        to.add(Paragraph{"If a part is gone, this also does: " + joined(r.part_ids, ", ") + "."});
        break;
    }
    if (option.offer && option.offer->as_of)
        to.add(Paragraph{
            "Price and stock as of " + write(*option.offer->as_of) +
            (cost != nullptr && cost->good_until ? ", good until " + write(*cost->good_until) : "") + "."});
}

/// What is bought, and the other way to put a dual capacitor right.
void add_repair_rows(Grid& table, const KitChoice& kit, const CostOption* cost) {
    for (const KitPart& p : kit.parts) {
        const bool offered = p.offer && p.offer->price;
        const std::string price =
            sold_at(cost, p.part_id, offered ? to_text(*p.offer->price) + " before markup" : "not known");
        table.rows.push_back({"[  ]", std::to_string(p.count), p.part_id, remedies_text(kit, p.cures),
                              place_of(p.offer), price});
    }
}

std::string said(const Datum& datum) {
    return datum.known() ? shortened(say(datum), longest_words) : "-";
}

void add_differences(Document& to, const Candidate& candidate) {
    to.add(Heading{"What differs from the old part"});
    Grid table{{"field", "old or wanted", "this part", "so"}, {}, ""};
    std::string same;
    for (const Finding& f : candidate.findings) {
        if (f.rule == rule_id::wanted_part) continue;  // what failed is no field of a part
        const bool both = f.wanted.known() && f.offered.known();
        const std::string old = said(f.wanted), now = said(f.offered);
        if (f.verdict == Verdict::fits && !f.caution && (!both || old == now)) {
            if (both) same += (same.empty() ? "" : ", ") + spaced(f.rule);
            continue;
        }
        std::string so(word(f.reason));
        for (const Remedy& remedy : f.remedies) so += "; add " + say(remedy);
        table.rows.push_back({spaced(f.rule), old, now, so});
    }
    if (table.rows.empty()) {
        to.add(Paragraph{"Nothing."});
    } else {
        to.add(table);
    }
    if (!same.empty()) to.add(Paragraph{"The same: " + same + "."});
}

/// "1/2 in on the part, 1/2 in wanted": the two sides of a rule, for somebody with the box in hand.
std::string sides(const Candidate& candidate, std::string_view rule) {
    for (const Finding& f : candidate.findings) {
        if (f.rule != rule) continue;
        if (!f.wanted.known() && !f.offered.known()) return "";
        return " Part: " + said(f.offered) + "; wanted: " + said(f.wanted) + ".";
    }
    return "";
}

void add_counter_checks(Document& to, const Candidate& c) {
    to.add(Heading{"Five checks before you open the box"});
    if (c.part.kind == PartKind::module) {
        to.add(Steps{{"The program on the label is the one of the old module." + sides(c, rule_id::program),
                      "Volts on the label are those measured at the job." + sides(c, rule_id::supply_voltage),
                      "The motor half it goes on is the one at the job, and it tested good.",
                      "The plugs are of the same kind and count of pins." + sides(c, rule_id::connector),
                      "The label's number is the one on this ticket."}});
        return;
    }
    to.add(
        Steps{{"Volts and phase on the new plate are those measured at the job." +
                   sides(c, rule_id::supply_voltage),
               "Rotation is the one wanted, seen from the same end, or the motor is reversible." +
                   sides(c, rule_id::rotation),
               "The shaft's thickness and length are those of the hub." + sides(c, rule_id::shaft_diameter),
               "Body and mount are those of the band or bracket that stays." + sides(c, rule_id::mount),
               "The plugs or leads are of the same kind: line leads or 24 V taps." +
                   sides(c, rule_id::signal_class)}});
}

}  // namespace

void add_repair_part(Document& to, const Selection& selection) {
    if (!selection.repair) return;
    const Repair& repair = *selection.repair;
    to.add(Heading{"What is bought instead"});
    if (!repair.asks.empty()) {
        to.add(Paragraph{"A " + std::string(word(repair.cure)) + ", and which one is open. Read first:"});
        Bullets list;
        for (const std::string& key : repair.asks) list.items.push_back(question_for(key) + " [" + key + "]");
        to.add(list);
    } else if (!repair.complete()) {
        to.add(Paragraph{"Nothing in this catalog gives " + say(repair.kit.remedies.front()) + "."});
    } else {
        Grid table{{"picked", "count", "part", "for", "where", "price"}, {}, "", {5}};
        add_repair_rows(table, repair.kit, cost_of(selection.ledger, repair.kit.parts.front().part_id));
        to.add(table);
    }
    to.add(Pairs{{{"Terminals", say(repair.landing)}, {"Test", proof_of(repair.cure)}}});
    if (repair.other && repair.other->complete() && !repair.other->parts.empty()) {
        to.add(Paragraph{"Or, in its place:"});
        Grid table{{"picked", "count", "part", "for", "where", "price"}, {}, "", {5}};
        add_repair_rows(table, *repair.other, nullptr);
        to.add(table);
        to.add(Paragraph{"Terminals then: " + say(*repair.other_landing)});
    }
    if (!repair.may_ask.empty())
        to.add(Paragraph{
            "A capacitor of three terminals serves the compressor too, and other ways are open then: " +
            question_for(repair.may_ask) + " [" + repair.may_ask + "]"});
}

void add_counter_ticket(Document& to, const FailedUnit& job, const Selection& selection,
                        const Option& option) {
    add_pick_list(to, selection, option);
    add_differences(to, option.candidate);
    add_counter_checks(to, option.candidate);
    const std::optional<Offer>& offer = option.offer;
    if (!offer || !offer->stock || *offer->stock == 0) add_ask_the_maker(to, job, selection.facts);
    to.add(Heading{"Returns"});
    to.add(
        Paragraph{"An opened box, a cut shaft or a motor that was wired usually cannot come back. Ask before "
                  "cutting. Ticket date: " +
                  std::string("________") + "  Sold by: ________________"});
}

}  // namespace endbell::inline explain
