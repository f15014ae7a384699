// What failed, in short: for a sheet that is worked from. The whole list of tests is add_diagnosis.
#include <array>

#include "engine/explain/cautions.hpp"
#include "engine/explain/parts_of_documents.hpp"
#include "engine/explain/values.hpp"

namespace endbell {

namespace {

struct Fix {
    Cause cause;
    std::string_view sentence;
};

// Source: common practice, as docs/explanation/diagnosis.md names it test by test.
constexpr std::array fixes{
    Fix{Cause::high_static,
        "Open the duct: filter, coil, closed registers, undersized return. Measure the total static again "
        "before "
        "the new part runs for good."},
    Fix{Cause::loaded_filter, "Change the filter and measure its pressure drop again."},
    Fix{Cause::too_little_air,
        "Find what holds the air back: filter, coil, wheel, duct. Then measure again."},
    Fix{Cause::low_supply,
        "Find the voltage drop: connections, wire size, transformer. Measure at the motor, running."},
    Fix{Cause::high_supply,
        "Set the equipment's taps for the supply, or call the utility. Measure at the motor, running."},
    Fix{Cause::two_taps_live,
        "Find which two calls reach the motor together, and part them before power is on."},
    Fix{Cause::failed_capacitor, "Fit a new capacitor of the plate's microfarads, at its volts or more."},
    Fix{Cause::overload,
        "Find what overloads it: wheel, pulley, static, door off, wrong speed. Measure amps, door on."},
    Fix{Cause::wrong_motor,
        "Do not copy the plate of the old motor: go by the equipment's own plate and the measured sizes."},
    Fix{Cause::not_found,
        "A motor was lost here before. Take static, volts and amps under load before the new one is left "
        "alone."}};

}  // namespace

std::string fix_sentence(Cause cause) {
    for (const Fix& fix : fixes) {
        if (fix.cause == cause) return std::string(fix.sentence);
    }
    return "Cure it before the new part is left alone.";
}

void add_fault(Document& to, const Diagnosis& d) {
    const bool killed = !d.replace_nothing() && d.fault != Fault::not_shown;
    to.add(Heading{killed ? "What killed the old one" : "What failed"});
    to.add(Paragraph{d.fault == Fault::not_shown
                         ? "No reading shows it yet: that it failed is the customer's word."
                         : "Fault: " + std::string(word(d.fault)) + "."});
    Grid table{{"reading", "measured", "limit", "says"}, {}, ""};
    for (const Evidence& e : d.evidence) {
        const bool said = e.carries || e.verdict == Verdict::does_not_fit;
        if (!said || !e.measured.known()) continue;
        table.rows.push_back({std::string(word(e.test)), say(e.measured.value),
                              e.limit.known() ? say(e.limit.value) : "-", std::string(word(e.reason))});
        if (!e.source.empty()) to.source_ids.push_back(e.source);
    }
    if (!table.rows.empty()) to.add(table);
    for (const std::string& both : d.contradictions)
        to.add(Warning{"NOTICE", "These readings cannot all be true: " + both + "."});
    if (d.causes.empty() && d.fault != Fault::not_shown)
        to.add(Paragraph{
            "No reading shows a cause outside the motor. Read volts, amps and static at start-up."});
    for (const KillerCause& k : d.causes)
        to.add(Warning{"CAUTION", "Cause: " + std::string(word(k.cause)) + " (" + k.job_key + "). " +
                                      fix_sentence(k.cause)});
}

}  // namespace endbell
