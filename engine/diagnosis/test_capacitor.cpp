#include <cmath>
#include <optional>

#include "engine/diagnosis/tests.hpp"
#include "engine/model/limit.hpp"

namespace endbell::inline diagnosis {

namespace {

constexpr double two_pi = 6.283185307179586;

/// Good within the part's own tolerance, marginal within the working rule, else to be replaced.
void judge(Evidence& row, Capacitance found, const Facts& facts, const Limits& limits) {
    // An open capacitor reads nothing whatever its plate says; 1 % of a microfarad is below every meter's
    // zero.
    if (found.in(microfarad) < 0.01 || std::isinf(found.in(microfarad))) {
        row.verdict = Verdict::does_not_fit;
        row.reason = found.in(microfarad) < 0.01 ? TestReason::open : TestReason::over_range;
        return;
    }
    if (!facts.capacitor) {
        row.reason = TestReason::plate_capacitor_unknown;
        row.asks = "plate.capacitor";
        return;
    }
    const double off = std::abs(found / *facts.capacitor - 1.0);
    row.limit = {*facts.capacitor, facts.capacitor.origin};
    const bool good = at_most(off, limits.value(limit::capacitor_part));
    const bool usable = at_most(off, limits.value(limit::capacitor_replace));
    row.verdict = good ? Verdict::fits : usable ? Verdict::fits_with_changes : Verdict::does_not_fit;
    row.reason = good ? TestReason::good : usable ? TestReason::marginal : TestReason::replace;
    row.limit_id = (good ? limit::capacitor_part : limit::capacitor_replace).text;
}

Evidence metered_row(const FailedUnit& job, const Facts& facts, const Limits& limits) {
    Evidence row = open_row(Test::capacitor, "measured.capacitor", "capacitor-practice");
    row.measured = {*job.measured.capacitor, Origin::measured};
    judge(row, *job.measured.capacitor, facts, limits);
    return row;
}

/// Running: volts across its terminals, amps in the start lead. C = I / (2 pi f V).
Evidence running_row(const FailedUnit& job, const Facts& facts, const Limits& limits) {
    Evidence row = open_row(Test::capacitor, "measured.capacitor_amps", "capacitor-formula");
    const auto& volts = job.measured.capacitor_volts;
    const auto& amps = job.measured.capacitor_amps;
    const DerivedFact<Frequency>& line = facts.frequency;
    if (!volts || !amps) {
        row.asks = volts ? "measured.capacitor_amps" : "measured.capacitor_volts";
        row.reason = TestReason::needs_volts_and_amps;
    } else if (!line) {
        row.asks = "plate.frequency";
        row.reason = TestReason::plate_hertz_unknown;
    } else if (volts->in(volt) <= 0) {
        row.asks = "measured.capacitor_volts";
        row.reason = TestReason::no_volts_across;
    } else {
        const double f = line->in(hertz);
        const Capacitance found = microfarad(1e6 * amps->in(ampere) / (two_pi * f * volts->in(volt)));
        row.measured = {found, line.because ? Origin::implied : Origin::measured};
        judge(row, found, facts, limits);
    }
    return row;
}

Evidence bulged_row(bool by_sign) {
    const char* key = by_sign ? "measured.signs" : "measured.capacitor_bulged";
    Evidence row = open_row(Test::capacitor, key, "capacitor-practice");
    row.verdict = Verdict::does_not_fit;
    row.reason = TestReason::bulged;
    row.measured = {true, Origin::measured};
    return row;
}

}  // namespace

void test_capacitor(const FailedUnit& job, const Facts& facts, const Limits& limits, EvidenceRows& rows) {
    const MeasuredReadings& m = job.measured;
    const auto& family = facts.family;
    // No other kind has a capacitor; a reading on one is named as a contradiction instead.
    if (family && !has_capacitor(*family)) return;
    const bool swollen = family && has_sign(job, Sign::swollen);
    const bool bulged = (m.capacitor_bulged && *m.capacitor_bulged) || swollen;
    const bool any = m.capacitor || m.capacitor_volts || m.capacitor_amps || bulged;
    if (m.capacitor) rows.push_back(metered_row(job, facts, limits));
    if (m.capacitor_volts || m.capacitor_amps) rows.push_back(running_row(job, facts, limits));
    if (bulged) rows.push_back(bulged_row(!m.capacitor_bulged));
    if (!any && family) rows.push_back(open_row(Test::capacitor, "measured.capacitor", "capacitor-practice"));
}

}  // namespace endbell::inline diagnosis
