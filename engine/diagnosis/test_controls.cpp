// What stands between the thermostat and the motor: each a reading that says good or bad of one thing.
#include "engine/diagnosis/tests.hpp"
#include "engine/model/limit.hpp"

namespace endbell::inline diagnosis {

namespace {

void contact(Test test, std::string_view key, const Reading<bool>& holds, TestReason good, TestReason bad,
             EvidenceRows& rows) {
    if (!holds) return;
    Evidence row = open_row(test, std::string(key), "common-practice");
    row.verdict = *holds ? Verdict::fits : Verdict::does_not_fit;
    row.reason = *holds ? good : bad;
    row.measured = {*holds, Origin::measured};
    rows.push_back(std::move(row));
}

/// Volts that are there or not: below `least` nothing hangs on them.
void volts(Test test, std::string_view key, const Reading<Voltage>& read, const LimitOf<Voltage>& least,
           std::string_view source, const Limits& limits, EvidenceRows& rows) {
    if (!read) return;
    Evidence row = open_row(test, std::string(key), std::string(source));
    row.measured = {*read, Origin::measured};
    row.limit = {limits.value(least), Origin::assumed};
    row.limit_id = least.text;
    const bool good = at_least(read->in(volt), limits.value(least).in(volt));
    row.verdict = good ? Verdict::fits : Verdict::does_not_fit;
    row.reason = good ? TestReason::live : TestReason::no_voltage;
    rows.push_back(std::move(row));
}

}  // namespace

void test_controls(const FailedUnit& job, const Limits& limits, EvidenceRows& rows) {
    const MeasuredReadings& m = job.measured;
    using enum TestReason;
    contact(Test::thermostat, "measured.thermostat_calls", m.thermostat_calls, calls, no_call, rows);
    contact(Test::float_switch, "measured.float_switch_closed", m.float_switch_closed, closed, open, rows);
    contact(Test::door_switch, "measured.door_switch_closed", m.door_switch_closed, closed, open, rows);
    contact(Test::control_fuse, "measured.control_fuse_good", m.control_fuse_good, good, open, rows);
    volts(Test::primary, "measured.primary_volts", m.primary_volts, limit::voltage_live, "common-practice",
          limits, rows);
    volts(Test::transformer, "measured.transformer_volts", m.transformer_volts, limit::tap_low, "tap-window",
          limits, rows);
    volts(Test::board_output, "measured.board_volts", m.board_volts, limit::tap_low, "tap-window", limits,
          rows);
}

}  // namespace endbell::inline diagnosis
