#include "engine/explain/cautions.hpp"
#include "engine/explain/compose.hpp"
#include "engine/explain/parts_of_documents.hpp"
#include "engine/explain/values.hpp"
#include "engine/wiring/drawing.hpp"

namespace endbell {

namespace {

bool electronic(const FailedUnit& job, const Option* option) {
    if (job.plate.family && is_electronic(*job.plate.family)) return true;
    if (option == nullptr) return false;
    const Part& part = option->candidate.part;
    return part.kind == PartKind::module ||
           (part.motor && part.motor->family && is_electronic(*part.motor->family));
}

template <class T>
void row(Pairs& pairs, const char* name, const Reading<T>& reading) {
    if (reading.raw.empty()) return;
    pairs.rows.emplace_back(name, reading.raw + (reading ? "" : " (open)"));
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

/// "Take" is said of what is to be bought, and of nothing else.
void add_pick(Document& to, const Selection& selection, const Option& option) {
    const Part& part = option.candidate.part;
    const bool take =
        selection.outcome == Outcome::something_fits && option.standing <= Verdict::fits_with_changes;
    to.add(Heading{(take ? "Take " : "Asked about, not to be bought on this sheet: ") + part_name(part)});
    Pairs pairs;
    pairs.rows.emplace_back("Part", part.id + ", " + part.description);
    pairs.rows.emplace_back("Verdict", std::string(word(option.standing)));
    pairs.rows.emplace_back("Changes", kit_text(option.kit));
    if (option.offer) {
        pairs.rows.emplace_back("Where", option.offer->branch + ", " + option.offer->seller + ", price of " +
                                             option.offer->as_of);
        if (option.offer->stock) pairs.rows.emplace_back("Stock", std::to_string(*option.offer->stock));
    }
    to.add(pairs);
}

void add_counter_checks(Document& to) {
    to.add(Heading{"Five checks before you open the box"});
    to.add(Bullets{{"Volts and phase on the new plate are those measured at the job.",
                    "Rotation is the one wanted, seen from the same end, or the motor is reversible.",
                    "The shaft's thickness and length are those of the hub.",
                    "Body and mount are those of the band or bracket that stays.",
                    "The plugs or leads are of the same kind: line leads, 24 V taps, or a module's plug."}});
    to.add(
        Paragraph{"Returns: an opened box, a cut shaft or a motor that was wired usually cannot come back. "
                  "Ask before cutting."});
}

}  // namespace

Document sheet_document(const FailedUnit& job, const Selection& selection, const Option* option,
                        Reader reader, const std::vector<OpenField>& open) {
    Document d{(reader == Reader::counter      ? "Counter ticket"
                : reader == Reader::technician ? "Work sheet"
                                               : "Estimate") +
                   (job.unit.name ? ": " + *job.unit.name : std::string()),
               {},
               selection.stamp};
    d.add(Paragraph{outcome_sentence(selection)});
    if (reader != Reader::counter) add_diagnosis(d, selection.diagnosis);
    add_old_part(d, job);
    if (option == nullptr) {
        add_questions(d, selection.questions, open);
        add_ways_out(d, selection);
        add_ledger(d, selection.ledger);
        add_fallen(d, selection.report);
        if (reader == Reader::technician) add_safety(d, electronic(job, nullptr));
        add_deference(d);
        add_sources(d);
        return d;
    }
    add_pick(d, selection, *option);
    add_kit(d, option->kit);
    d.add(Heading{"Findings that matter"});
    add_findings(d, option->candidate.findings, Verdict::fits_with_changes);
    if (reader == Reader::counter) add_counter_checks(d);
    if (reader == Reader::technician) {
        add_safety(d, electronic(job, option));
        add_air(d, option->air);
        add_wiring(d, option->wiring);
        d.add(Figure{draw_before(job), "The calls that each terminal gave the old motor, from the job."});
        add_start_up(d, job, *option);
    }
    add_ledger(d, selection.ledger);
    add_questions(d, {}, open);
    add_deference(d);
    add_sources(d);
    return d;
}

}  // namespace endbell
