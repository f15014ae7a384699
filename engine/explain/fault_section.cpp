// What failed, in short: for a sheet that is worked from. The whole list of tests is add_diagnosis.
#include <algorithm>

#include "engine/explain/diagnosis_words.hpp"
#include "engine/explain/parts_of_documents.hpp"
#include "engine/explain/values.hpp"

namespace endbell::inline explain {

void add_contradictions(Document& to, const Diagnosis& d) {
    for (const std::string& both : d.contradictions)
        to.add(Warning{"NOTICE", "These readings cannot all be true: " + both +
                                     ". None of them is used: read them again."});
}

void add_fault(Document& to, const Diagnosis& d, bool named_above) {
    const bool killed = !d.replace_nothing() && d.fault != Fault::not_shown;
    to.add(Heading{killed ? "What killed the old one" : "What failed"});
    if (d.fault == Fault::not_shown) {
        to.add(Paragraph{"No reading shows it yet: that it failed is the customer's word."});
    } else if (!named_above) {
        to.add(Paragraph{fault_sentence(d.fault)});
    }
    Grid table{{"reading", "measured", "limit", "says"}, {}, ""};
    for (const Evidence& e : d.evidence) {
        const bool said = e.carries || e.verdict == Verdict::does_not_fit;
        if (!said || !e.measured.known()) continue;
        table.rows.push_back({say(e.test), say(e.measured.value), e.limit.known() ? say(e.limit.value) : "-",
                              say(TestOutcome{e.test, e.reason})});
        if (!e.source.empty()) to.source_ids.push_back(e.source);
    }
    if (!table.rows.empty()) to.add(table);
    add_contradictions(to, d);
    add_since_start_up(to, d);
    const bool over_plate = std::any_of(d.evidence.begin(), d.evidence.end(), [](const Evidence& e) {
        return e.test == Test::static_total && e.reason == TestReason::above_plate;
    });
    if (over_plate) {
        to.add(Warning{"CAUTION",
                       "The total static stands over the equipment's plate: bring it down, or the next "
                       "one works as hard."});
    } else if (d.causes.empty() && killed) {
        to.add(Paragraph{
            "No reading shows a cause outside the motor. Read volts, amps and static at start-up."});
    }
    for (const RootCause& k : d.causes) {
        const bool is_the_fault = named_above && k.cause == Cause::failed_capacitor;
        if (!is_the_fault) to.add(Warning{"CAUTION", cause_sentence(k)});
    }
}

}  // namespace endbell::inline explain
