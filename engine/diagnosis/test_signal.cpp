#include <fmt/format.h>

#include <algorithm>
#include <optional>

#include "engine/diagnosis/tests.hpp"
#include "engine/model/limit.hpp"

namespace endbell::inline diagnosis {

namespace {

/// The voltages that make a motor of this signal class run, and where they come from.
struct SignalWindow {
    PlateVolts volts;
    std::string limit_id;
    std::string source;
};

SignalWindow window(const Limits& limits, const LimitOf<Voltage>& low, const LimitOf<Voltage>& high) {
    return {
        {limits.value(low), limits.value(high)}, std::string(low.text), std::string(limits.row(low).source)};
}

/// What a family takes by construction is the motor's own line: a reading of the call is judged as it comes.
std::optional<SignalWindow> window_of(const Facts& facts, const Limits& limits) {
    if (!facts.signal || facts.signal.because == Because::family) return std::nullopt;
    switch (*facts.signal) {
        case SignalClass::control_24v:
            return window(limits, limit::tap_low, limit::tap_high);
        case SignalClass::serial:
            return window(limits, limit::serial_low, limit::serial_high);
        case SignalClass::pulse:
            return window(limits, limit::pulse_low, limit::pulse_high);
        case SignalClass::line_signal: {
            // Unless somebody said otherwise, the lead is switched from the motor's own line.
            const bool stated = facts.output && !facts.output.because;
            if (!stated && (!facts.volts || facts.volts->empty())) return std::nullopt;
            const double band = limits.value(limit::voltage_band);
            const PlateVolts line = stated ? PlateVolts{*facts.output, *facts.output} : facts.volts->front();
            return SignalWindow{plate_volts(line.low.in(volt) * (1 - band), line.high.in(volt) * (1 + band)),
                                std::string(limit::voltage_band.text), "mg1-12.44"};
        }
        case SignalClass::switched_line:
            return window(limits, limit::tap_low, limit::tap_high);  // the relay's 24 V call
    }
    return std::nullopt;
}

void settle(Evidence& row, const SignalWindow& window, double volts) {
    const bool low = !at_least(volts, window.volts.low.in(volt));
    const bool high = !at_most(volts, window.volts.high.in(volt));
    row.verdict = low || high ? Verdict::does_not_fit : Verdict::fits;
    row.reason = low ? TestReason::too_low : high ? TestReason::too_high : TestReason::in_window;
    row.limit = {window.volts, Origin::assumed};
    row.limit_id = window.limit_id;
    row.source = window.source;
}

/// Without a signal class only two readings speak: a dead one, and one that only a 24 V tap would show.
void settle_unclassed(Evidence& row, const Facts& facts, const Limits& limits, double volts) {
    const SignalWindow taps = window(limits, limit::tap_low, limit::tap_high);
    const bool may_be_24v = !facts.family.is(Family::communicating);
    if (volts < limits.value(limit::serial_low).in(volt)) {
        settle(row, window(limits, limit::serial_low, limit::serial_high), volts);
    } else if (may_be_24v && at_most(volts, taps.volts.high.in(volt))) {
        settle(row, taps, volts);
    } else {
        row.reason = TestReason::signal_unknown;
        row.asks = "plate.signal";
    }
}

/// An ac tap that reads dc or pulses has another signal class on it than is thought: neither good nor bad.
bool of_another_class(const Facts& facts, ControlVoltsKind kind) {
    if (!facts.signal || facts.signal.because == Because::family) return false;
    const bool dc_command = facts.signal.is(SignalClass::serial) || facts.signal.is(SignalClass::pulse);
    return dc_command == (kind == ControlVoltsKind::ac);
}

/// A dc command a little over the printed window of one manual is no control fault: another program, another window.
/// Common practice; from 30 V up it is no class 2 signal at all.
void look_over_the_window(Evidence& row, const FailedUnit& job, const Facts& facts, const Limits& limits,
                          double volts) {
    const bool dc_command = facts.signal.is(SignalClass::serial) || facts.signal.is(SignalClass::pulse);
    if (row.reason != TestReason::too_high || !dc_command ||
        !at_most(volts, limits.value(limit::class2_volts).in(volt)))
        return;
    row.reason = TestReason::over_the_window;
    const bool program = job.plate.program && facts.control_kind;
    row.verdict = program ? Verdict::fits_with_changes : Verdict::not_shown;
    row.asks = facts.control_kind ? "plate.program" : "measured.control_kind";
}

Evidence control_row(const FailedUnit& job, const Facts& facts, const Limits& limits) {
    Evidence row = open_row(Test::control_volts, "measured.control_volts", "tap-window");
    const auto& reading = job.measured.control_volts;
    if (!reading) return row;
    row.measured = {*reading, Origin::measured};
    const bool dead = *reading < limits.value(limit::serial_low);
    const DerivedFact<ControlVoltsKind>& kind = facts.control_kind;
    if (kind.disagree && !dead) {
        row.reason = TestReason::kind_unclear;
        row.asks = "measured.control_kind";
    } else if (kind && !dead && of_another_class(facts, *kind)) {
        row.reason = TestReason::another_signal;
        row.asks = "plate.signal";
    } else if (kind && !dead && !facts.signal && *kind != ControlVoltsKind::ac) {
        row.reason = TestReason::signal_unknown;
        row.asks = "plate.signal";
    } else if (const auto known_window = window_of(facts, limits)) {
        settle(row, *known_window, reading->in(volt));
        look_over_the_window(row, job, facts, limits, reading->in(volt));
    } else {
        settle_unclassed(row, facts, limits, reading->in(volt));
    }
    return row;
}

Evidence taps_row(const FailedUnit& job) {
    Evidence row = open_row(Test::live_taps, "measured.live_taps", "tap-rule");
    const std::vector<int>& taps = *job.measured.live_taps;
    const TapRule rule = job.plate.tap_rule ? *job.plate.tap_rule : TapRule::not_stated;
    row.measured = {fmt::format("{}", fmt::join(taps, ", ")), Origin::measured};
    row.limit = {std::string(word(rule)), Origin::plate};
    if (taps.empty()) {
        row.verdict = Verdict::does_not_fit;
        row.reason = TestReason::no_tap_live;
    } else if (taps.size() == 1) {
        row.verdict = Verdict::fits;
        row.reason = TestReason::one_tap_live;
    } else if (rule == TapRule::one_tap_only) {
        row.verdict = Verdict::does_not_fit;
        row.reason = TestReason::two_taps_live;
    } else if (rule == TapRule::highest_tap_wins) {
        row.verdict = Verdict::fits_with_changes;
        row.reason = TestReason::highest_tap_runs;
    } else {
        row.reason = TestReason::priority_not_stated;
        row.asks = "plate.tap_rule";
    }
    return row;
}

}  // namespace

void test_signal(const FailedUnit& job, const Facts& facts, const Limits& limits, EvidenceRows& rows) {
    // An induction motor takes no signal of its own: a reading says something of the call, its absence
    // nothing.
    const bool takes_signal = facts.family && is_electronic(*facts.family);
    if (takes_signal || job.measured.control_volts) rows.push_back(control_row(job, facts, limits));
    if (job.measured.live_taps) rows.push_back(taps_row(job));
}

}  // namespace endbell::inline diagnosis
