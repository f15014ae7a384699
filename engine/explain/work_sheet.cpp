// The technician's sheet: what to read, in which order to work, what goes where, what it must do when it runs.
#include "engine/base/text.hpp"
#include "engine/explain/cautions.hpp"
#include "engine/explain/diagnosis_words.hpp"
#include "engine/explain/drawing.hpp"
#include "engine/explain/findings.hpp"
#include "engine/explain/parts_of_documents.hpp"
#include "engine/explain/questions.hpp"
#include "engine/explain/site_words.hpp"
#include "engine/explain/wiring_words.hpp"

namespace endbell::inline explain {

namespace {

/// With room to write: the sheet goes to where the readings are taken, and comes back.
void add_readings(Document& to, const Diagnosis& d, const std::vector<OpenField>& open) {
    to.add(Heading{"Readings to take"});
    Grid table{{"reading", "how", "found"}, {}, ""};
    for (const MissingReading& m : d.missing)
        table.rows.push_back({question_for(m.job_key) + " [" + m.job_key + "]",
                              m.power_off() ? "locked out, five minutes waited" : "power on: keep clear",
                              "________"});
    for (const OpenField& field : open)
        table.rows.push_back({field.question + " [" + field.job_key + "]",
                              "'" + shortened(field.raw, 60) + "' does not decide", "________"});
    if (table.rows.empty()) {
        to.add(Paragraph{"None is open. The start-up form below asks for the rest."});
        return;
    }
    to.add(table);
}

/// What the unit owes, with the work between what comes before and what comes after.
void add_order_of_work(Document& to, const Diagnosis& d, const Option& option,
                       const std::vector<SiteCheck>& checks) {
    Steps steps;
    for (const SiteCheck check : checks) {
        if (is_before_the_work(check)) steps.items.push_back(say(check));
    }
    steps.items.push_back("Block the wheel or blade. Write down where each wire lands before one is moved.");
    for (const RootCause& k : d.causes) steps.items.push_back(cure_step(k.cause));
    const bool module = option.candidate.part.kind == PartKind::module;
    steps.items.push_back(
        module ? "Part the old module from the motor half. Look for water and burns."
               : "Take the old motor out. Clean the wheel or blade; look at hub and set screw.");
    for (const Remedy& remedy : option.kit.remedies) steps.items.push_back("Kit: " + say(remedy) + ".");
    steps.items.push_back(module
                              ? "Mount the new module. Plug in the motor half first, line and control last."
                              : "Mount the new motor. Turn by hand: nothing scrapes, nothing binds.");
    if (option.module)
        steps.items.push_back("Join the new module to the motor half first, line and control last.");
    for (const Setting& setting : option.wiring.settings) steps.items.push_back(say(setting));
    steps.items.push_back(option.wiring.possible
                              ? "Wire it as the wiring table says. Land every wire before power is on."
                              : "Wire it by the equipment's own diagram.");
    for (const SiteCheck check : checks) {
        if (!is_before_the_work(check)) steps.items.push_back(say(check));
    }
    to.add(Heading{"Order of work"});
    to.add(steps);
}

}  // namespace

void add_work_sheet(Document& to, const FailedUnit& job, const Selection& selection, const Option& option,
                    const std::vector<OpenField>& open) {
    const std::vector<SiteCheck> owed = checks_owed(job, selection, &option);
    add_safety(to, owed, asks_live(selection.diagnosis));
    add_fault(to, selection.diagnosis);
    add_readings(to, selection.diagnosis, open);
    add_order_of_work(to, selection.diagnosis, option, owed);
    add_kit(to, option.kit);
    add_air(to, option.air);
    add_wiring(to, option.wiring);
    to.add(Figure{draw_before(job, selection.facts),
                  "The calls that each terminal gave the old motor, from the job."});
    add_start_up(to, job, selection, option);
    to.add(Heading{"Findings that matter"});
    add_findings(to, option.candidate.findings, Verdict::fits_with_changes);
}

}  // namespace endbell::inline explain
