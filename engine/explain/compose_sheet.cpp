// The three sheets: the decision first, then what its reader works from.
#include <algorithm>

#include "engine/base/text.hpp"
#include "engine/explain/cautions.hpp"
#include "engine/explain/compose.hpp"
#include "engine/explain/diagnosis_words.hpp"
#include "engine/explain/inducer_words.hpp"
#include "engine/explain/parts_of_documents.hpp"
#include "engine/explain/values.hpp"
#include "engine/wiring/commissioning.hpp"

namespace endbell::inline explain {

namespace {

constexpr std::size_t most_reasons = 8;  // on a sheet; match tells them all

template <class T>
void row(Pairs& pairs, const char* name, const Reading<T>& reading) {
    if (reading.raw.empty()) return;
    pairs.rows.emplace_back(name, shortened(reading.raw, 160) + (reading ? "" : " (open)"));
}

void add_old_part(Document& to, const FailedUnit& job) {
    Pairs pairs;
    row(pairs, "Turns", job.unit.load);
    row(pairs, "Old number", job.unit.old_part_number);
    row(pairs, "Kind", job.plate.family);
    row(pairs, "Power", job.plate.power);
    row(pairs, "Volts", job.plate.volts);
    row(pairs, "Speed", job.plate.speed);
    row(pairs, "Amps", job.plate.current);
    row(pairs, "Rotation", job.plate.rotation);
    row(pairs, "Shaft", job.plate.shaft_diameter);
    row(pairs, "Shaft length", job.plate.shaft_length);
    row(pairs, "Body", job.plate.body_diameter);
    row(pairs, "Mount", job.plate.mount);
    row(pairs, "Capacitor", job.plate.capacitor);
    row(pairs, "Program", job.plate.program);
    if (pairs.rows.empty()) return;
    to.add(Heading{"The old one, as read"});
    to.add(pairs);
}

const char* title_of(SheetKind kind) {
    return kind == SheetKind::counter      ? "Counter ticket"
           : kind == SheetKind::technician ? "Work sheet"
                                           : "Estimate";
}

/// What nobody replaces: the fault, what cures it, and the proof that it was that; on one page.
void add_repair(Document& to, const FailedUnit& job, const Selection& selection, SheetKind kind) {
    const std::vector<SiteCheck> owed = checks_owed(job, selection, nullptr);
    if (kind == SheetKind::technician) add_safety(to, owed, asks_live(selection.diagnosis));
    add_fault(to, selection.diagnosis, true);
    add_repair_part(to, selection);
    add_next_tests(to, selection.diagnosis);
    if (kind == SheetKind::technician) add_proving(to, owed);
    if (kind == SheetKind::estimate) add_ledger(to, selection.ledger);
}

/// Before a part is bought, or in its place, the fault is narrowed down.
bool narrows_down(const Selection& selection) {
    return selection.outcome == Outcome::undecided || selection.outcome == Outcome::do_not_replace;
}

/// No part to take: what stands in the way, what to read next, and what would rescue it.
void add_no_part(Document& to, const FailedUnit& job, const Selection& selection, SheetKind kind,
                 const std::vector<OpenField>& open) {
    const std::vector<SiteCheck> owed = checks_owed(job, selection, nullptr);
    if (kind == SheetKind::technician) add_safety(to, owed, asks_live(selection.diagnosis));
    add_fault(to, selection.diagnosis);
    if (narrows_down(selection)) add_next_tests(to, selection.diagnosis);
    add_plate_doubt(to, selection.facts);
    add_named_for_model(to, selection);
    add_questions(to, selection.questions, open);
    if (selection.outcome == Outcome::nothing_fits || job.unit.load.said() == Load::draft_inducer)
        add_ask_the_maker(to, job, selection.facts);
    add_ways_out(to, selection);
    if (kind == SheetKind::technician) add_proving(to, owed);
    if (kind == SheetKind::estimate) add_ledger(to, selection.ledger);
    add_fallen(to, selection.report, most_reasons);
}

}  // namespace

std::vector<SiteCheck> checks_owed(const FailedUnit& job, const Selection& s, const Option* option) {
    if (option != nullptr && option->wiring.possible && !option->wiring.checks.empty())
        return option->wiring.checks;
    return checks_of(s.job(job), s.facts, option != nullptr ? &option->candidate.part : nullptr);
}

bool asks_live(const Diagnosis& d) {
    const auto live = [](Danger danger) { return danger == Danger::live || danger == Danger::control_24v; };
    return std::any_of(d.missing.begin(), d.missing.end(),
                       [&](const MissingReading& m) { return live(m.danger); }) ||
           std::any_of(d.next.begin(), d.next.end(), [&](const NextTest& n) { return live(n.danger); });
}

/// "Take" is said of what is to be bought, and of nothing else.
void add_decision(Document& to, const Selection& s, const Option* option) {
    const std::string outcome = outcome_sentence(s);
    if (option == nullptr) {
        const char* word = s.outcome == Outcome::undecided        ? "Undecided"
                           : s.outcome == Outcome::nothing_fits   ? "Nothing fits"
                           : s.outcome == Outcome::do_not_replace ? "Do not replace it"
                                                                  : "No part";
        const std::string what = s.outcome == Outcome::undecided        ? "Take the readings below first"
                                 : s.outcome == Outcome::do_not_replace ? fault_title(s.diagnosis.fault)
                                                                        : "No part of this catalog";
        to.add(Decision{word, what, {outcome}});
        return;
    }
    const Part& part = option->candidate.part;
    const bool take = s.outcome == Outcome::something_fits && option->standing <= Verdict::fits_with_changes;
    Decision d{take ? "Take" : "Asked about, not to be bought on this sheet", part_name(part), {}};
    d.because.push_back(part.id + ": " + shortened(part.description, 160));
    d.because.push_back(
        "Verdict: " + std::string(word(option->standing)) +
        (option->kit.remedies.empty() ? "; nothing is added." : "; add " + kit_text(option->kit) + "."));
    const CostOption* cost = cost_of(s.ledger, part.id);
    if (cost != nullptr) {
        d.because.push_back(
            "Today " + total_text(*cost) +
            (cost->per_year ? "; " + to_text(*cost->per_year) + " a year over its life" : "") + ".");
    }
    d.because.push_back(outcome);
    to.add(d);
}

Document sheet_document(const FailedUnit& job, const Selection& selection, const Option* option,
                        SheetKind kind, const std::vector<OpenField>& open) {
    Document d{title_of(kind) + (job.unit.name ? ": " + shortened(*job.unit.name, 100) : std::string()),
               {},
               selection.stamp};
    add_decision(d, selection, option);
    const bool stays = option == nullptr && selection.outcome == Outcome::do_not_replace;
    if (stays) {
        add_repair(d, job, selection, kind);
    } else if (option == nullptr) {
        add_no_part(d, job, selection, kind, open);
    } else if (kind == SheetKind::counter) {
        add_contradictions(d, selection.diagnosis);
        add_counter_ticket(d, job, selection, *option);
    } else if (kind == SheetKind::technician) {
        add_work_sheet(d, job, selection, *option, open);
    } else {
        add_estimate(d, job, selection, *option);
    }
    if (option != nullptr && narrows_down(selection)) add_next_tests(d, selection.diagnosis);
    if (option != nullptr && kind != SheetKind::technician) add_questions(d, {}, open);
    // What stays where it is needs no order: its sheet is one page.
    if (!stays && (kind != SheetKind::counter || option == nullptr)) add_old_part(d, job);
    add_deference(d);
    add_sources(d);
    return d;
}

}  // namespace endbell::inline explain
