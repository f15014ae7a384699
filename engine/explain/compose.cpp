#include "engine/explain/compose.hpp"

#include <algorithm>

#include "engine/base/text.hpp"
#include "engine/explain/diagnosis_words.hpp"
#include "engine/explain/findings.hpp"
#include "engine/explain/inducer_words.hpp"
#include "engine/explain/parts_of_documents.hpp"
#include "engine/explain/values.hpp"
#include "engine/select/still_open.hpp"

namespace endbell::inline explain {

namespace {

std::string stock_text(const std::optional<Offer>& offer) {
    if (!offer) return "no offer";
    if (offer->stock && *offer->stock > 0) return std::to_string(*offer->stock) + " at " + offer->branch;
    if (offer->lead_days) return std::to_string(*offer->lead_days) + " days, " + offer->branch;
    return "not known";
}

void add_options(Document& to, const Selection& selection, int top) {
    if (selection.options.empty()) return;
    to.add(Heading{selection.outcome == Outcome::do_not_replace ? "If it must be replaced all the same"
                                                                : "What can take its place"});
    Grid table{{"#", "part", "verdict", "changes", "today", "stock"}, {}, ""};
    for (std::size_t i = 0; i < selection.options.size() && static_cast<int>(i) < top; ++i) {
        const Option& o = selection.options[i];
        const CostOption* cost = cost_of(selection.ledger, o.candidate.part.id);
        table.rows.push_back({std::to_string(i + 1), o.candidate.part.id + " " + part_name(o.candidate.part),
                              std::string(word(o.standing)), kit_text(o.kit),
                              cost != nullptr ? total_text(*cost) : "not known", stock_text(o.offer)});
    }
    to.add(table);
    if (static_cast<int>(selection.options.size()) > top) {
        to.add(Paragraph{std::to_string(selection.options.size() - static_cast<std::size_t>(top)) +
                         " more: ask with --top."});
    }
}

/// The first option is the ranking's; others may suit somebody better.
void add_named_picks(Document& to, const Selection& s) {
    Pairs pairs;
    const auto add = [&](const char* who, const std::optional<int>& i) {
        if (i) pairs.rows.emplace_back(who, s.options[static_cast<std::size_t>(*i)].candidate.part.id);
    };
    add("All in stock now", s.picks.in_stock);
    add("Lowest cost a year", s.picks.cheapest_per_year);
    add("Closest to the original", s.picks.closest);
    if (!pairs.rows.empty()) to.add(pairs);
}

void add_not_shown(Document& to, const MatchReport& report) {
    const int count = report.open;
    if (count == 0) return;
    to.add(Paragraph{std::to_string(count) + (count == 1 ? " part is" : " parts are") +
                     " not shown to fit: a field of the job or of the part is unknown. Unknown is neither a "
                     "pass nor a fail."});
}

void add_cross_references(Document& to, const Candidate& candidate) {
    for (const CrossReference& reference : candidate.cross_references) {
        to.add(Paragraph{"Cross reference: " + candidate.part.id + " " +
                         std::string(word(reference.relation)) + " " + reference.old_number + ", says " +
                         reference.source + ". A claim, still checked by every rule."});
    }
}

std::string title_of(const FailedUnit& job, const char* what) {
    return std::string(what) + (job.unit.name ? ": " + *job.unit.name : std::string());
}

}  // namespace

Document match_document(const FailedUnit& job, const Selection& selection, const std::vector<OpenField>& open,
                        int top) {
    Document d{title_of(job, "What goes in its place"), {}, selection.stamp};
    d.add(Paragraph{outcome_sentence(selection)});
    if (selection.diagnosis.fault != Fault::not_shown || !selection.diagnosis.causes.empty()) {
        add_diagnosis(d, selection.diagnosis);
    } else {
        add_contradictions(d, selection.diagnosis);
        if (selection.outcome == Outcome::undecided && !selection.diagnosis.nothing_measured)
            add_next_tests(d, selection.diagnosis);
    }
    add_options(d, selection, top);
    add_named_picks(d, selection);
    if (!selection.options.empty()) {
        const CostOption* first = cost_of(selection.ledger, selection.options.front().candidate.part.id);
        if (first != nullptr) add_recurrence(d, *first);
    }
    if (selection.pick) {
        const Option& pick = selection.options[static_cast<std::size_t>(*selection.pick)];
        d.add(Heading{"What to know of " + pick.candidate.part.id});
        add_cross_references(d, pick.candidate);
        add_findings(d, pick.candidate.findings, Verdict::fits_with_changes);
    }
    add_not_shown(d, selection.report);
    add_plate_doubt(d, selection.facts);
    add_named_for_model(d, selection);
    add_questions(d, selection.questions, open);
    add_ways_out(d, selection);
    add_fallen(d, selection.report);
    add_sources(d);
    return d;
}

Document why_document(const Candidate& candidate, const Diagnosis& diagnosis, const std::string& stamp) {
    Document d{
        "What every rule found about " + candidate.part.id + " " + part_name(candidate.part), {}, stamp};
    d.add(Paragraph{"Verdict: " + std::string(word(candidate.verdict)) + ". The worst finding decides."});
    add_contradictions(d, diagnosis);
    add_cross_references(d, candidate);
    Grid table{{"rule", "verdict", "wanted", "offered", "limit", "reason", "source"},
               {},
               "(!) fits, and must be said."};
    for (const Finding& f : candidate.findings) {
        std::string reason(word(f.reason));
        for (const Remedy& remedy : f.remedies) reason += "; cure: " + say(remedy);
        table.rows.push_back({std::string(f.rule), std::string(word(f.verdict)) + (f.caution ? " (!)" : ""),
                              say(f.wanted), say(f.offered), f.limit.known() ? say(f.limit) : "-", reason,
                              std::string(f.source.empty() ? "-" : f.source)});
        if (!f.source.empty()) d.source_ids.emplace_back(f.source);
    }
    d.add(table);
    std::sort(d.source_ids.begin(), d.source_ids.end());
    d.source_ids.erase(std::unique(d.source_ids.begin(), d.source_ids.end()), d.source_ids.end());
    add_sources(d);
    return d;
}

namespace {

std::string said(const DecisiveAnswer& answer) {
    std::string text;
    for (const DecisiveAnswer::Said& one : answer.said)
        text += (text.empty() ? "" : " and ") + one.job_key + " = " + one.answer +
                (one.up_to.empty() ? "" : " to " + one.up_to);
    return text;
}

std::string what_then(const Upshot& then, const Upshot& now) {
    std::string text(word(then.outcome));
    if (then.fault != now.fault) text += "; fault: " + std::string(word(then.fault));
    if (then.culprit) text += " (" + std::string(word(*then.culprit)) + ")";
    if (!then.pick.empty()) text += "; take " + then.pick;
    return text;
}

/// What is decided stands, and what could still turn it: the first answer of each kind that would.
void add_decisive_answers(Document& to, const Selection& selection) {
    const StillOpen& open = *selection.still_open;
    to.add(Paragraph{outcome_sentence(selection) + " These readings are still open, and can change it:"});
    Grid table{{"if the answer is", "then"}, {}, ""};
    constexpr std::size_t told = 20;
    for (const DecisiveAnswer& answer : open.answers) {
        if (table.rows.size() == told) break;
        table.rows.push_back({said(answer), what_then(answer.then, upshot_of(selection))});
    }
    const std::size_t left_out = open.answers.size() - table.rows.size();
    if (left_out > 0) table.caption = "So can " + std::to_string(left_out) + " more answers.";
    to.add(table);
}

/// Whether anything else could turn the answer, as far as it was tried.
void add_still_open(Document& to, const Selection& selection) {
    const StillOpen& open = *selection.still_open;
    if (!open.answers.empty()) return add_decisive_answers(to, selection);
    if (open.nothing_more()) {
        to.add(Paragraph{"Nothing more: no reading that is still open can change the decision. " +
                         outcome_sentence(selection)});
        to.add(Paragraph{std::to_string(open.tried) + " answers to open keys were tried."});
        return;
    }
    to.add(Paragraph{outcome_sentence(selection) +
                     " Whether a reading that is still open can change it is not known: of more answers than "
                     "anybody waits for " +
                     std::to_string(open.tried) + " were tried, and none does."});
}

}  // namespace

Document ask_document(const Selection& selection, const std::vector<OpenField>& open) {
    Document d{"What to measure next", {}, selection.stamp};
    if (!selection.questions.empty() || !open.empty()) {
        add_plate_doubt(d, selection.facts);
        add_contradictions(d, selection.diagnosis);
        add_named_for_model(d, selection);
        add_questions(d, selection.questions, open);
    }
    if (selection.still_open) add_still_open(d, selection);
    return d;
}

Document diagnosis_document(const Diagnosis& diagnosis, const std::vector<OpenField>& open,
                            const std::string& stamp) {
    Document d{"What failed, and why", {}, stamp};
    if (diagnosis.replace_nothing()) d.add(Paragraph{keep_sentence(diagnosis.fault)});
    add_diagnosis(d, diagnosis);
    add_questions(d, {}, open);
    add_sources(d);
    return d;
}

Document wiring_document(const FailedUnit& job, const Selection& selection, const Option& option) {
    Document d{"Wiring of " + option.candidate.part.id + " " + part_name(option.candidate.part),
               {},
               selection.stamp};
    add_contradictions(d, selection.diagnosis);
    add_air(d, option.air);
    add_air_choices(d, option.air);
    add_wiring(d, option.wiring);
    add_checks(d, option.wiring);
    add_start_up(d, job, selection, option);
    return d;
}

Document cost_document(const Selection& selection) {
    Document d{"What each way out costs", {}, selection.stamp};
    d.add(Paragraph{outcome_sentence(selection)});
    add_contradictions(d, selection.diagnosis);
    add_ledger(d, selection.ledger);
    return d;
}

namespace {

/// The fact that a row bounds, and where its volts are read.
std::string bounded_by(const Limit& row) {
    std::string fact(row.bounds);
    if (row.volts_at != VoltagePoint::none) fact += " (" + std::string(word(row.volts_at)) + ")";
    return fact;
}

}  // namespace

Document rules_document(const Limits& limits, const std::string& only_rule) {
    Document d{"Rules and limits in force", {}, ""};
    Grid table{{"rule", "claim", "weight", "sources"}, {}, ""};
    for (const Rule& rule : all_rules()) {
        if (!only_rule.empty() && rule.id != only_rule) continue;
        std::string from;
        for (std::string_view id : rule.sources)
            from += (from.empty() ? "" : "; ") + source(id).title + " (" +
                    std::string(word(source(id).basis)) + ")";
        table.rows.push_back(
            {std::string(rule.id), std::string(rule.claim), std::string(word(rule.weight)), from});
    }
    d.add(table);
    Grid rows{{"limit", "value", "may be", "bounds", "meaning", "source", "set by"}, {}, ""};
    for (const Limit& row : limits.rows()) {
        bool wanted = only_rule.empty();
        for (const Rule& rule : all_rules()) {
            if (rule.id != only_rule) continue;
            for (const LimitId& read : rule.limits) wanted = wanted || read.text == row.id;
        }
        if (!wanted) continue;
        const Source& from = source(row.source);
        rows.rows.push_back({std::string(row.id), say_number(row.value, 4) + " " + std::string(row.unit),
                             row.stricter == Stricter::lower ? "lowered" : "raised", bounded_by(row),
                             std::string(row.meaning),
                             from.title + " (" + std::string(word(from.basis)) + ")",
                             row.set_by.empty() ? "the program" : row.set_by});
    }
    d.add(Heading{"Limits"});
    d.add(rows);
    return d;
}

}  // namespace endbell::inline explain
