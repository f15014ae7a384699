#include <optional>

#include "engine/diagnosis/conclude.hpp"
#include "engine/model/limit.hpp"

namespace endbell::inline diagnosis {

namespace {

/// A failed test by which motors are lost, and the root cause that it shows.
struct CauseTest {
    Test test;
    std::optional<TestReason> reason;  // none: any failing reason
    Cause cause;
};

constexpr CauseTest cause_tests[] = {
    {Test::static_total, {}, Cause::high_static},
    {Test::filter_drop, {}, Cause::loaded_filter},
    {Test::rise, TestReason::too_little_air, Cause::too_little_air},
    {Test::airflow, {}, Cause::too_little_air},
    {Test::line_volts, TestReason::too_low, Cause::low_supply},
    {Test::line_volts, TestReason::too_high, Cause::high_supply},
    {Test::legs, {}, Cause::lost_leg},
    {Test::motor_volts, {}, Cause::wrong_motor},
    {Test::live_taps, TestReason::two_taps_live, Cause::two_taps_live},
    {Test::capacitor, {}, Cause::failed_capacitor},
    {Test::amps, TestReason::over_plate, Cause::overload},
    {Test::amps, TestReason::lost_leg, Cause::lost_leg},
    {Test::plate_agrees, {}, Cause::wrong_motor},
};

/// The key that says that a motor or a module was lost here before.
std::optional<std::string> lost_before(const FailedUnit& job) {
    const auto& lost = job.measured.earlier_replacements;
    if (lost && *lost > 0) return "measured.earlier_replacements";
    if (const auto& changed = job.unit.changed_before) {
        for (const ChangedPart part : *changed) {
            if (part == ChangedPart::motor || part == ChangedPart::module) return "unit.changed_before";
        }
    }
    return std::nullopt;
}

}  // namespace

std::vector<RootCause> causes_in(const FailedUnit& job, const Facts& facts, const EvidenceRows& rows,
                                 const Limits& limits) {
    const double uncured = limits.value(limit::recurrence_uncured);
    const double cured = limits.value(limit::recurrence_cured);
    std::vector<RootCause> causes;
    const auto add = [&](Cause cause, std::string job_key, std::string source) {
        for (const RootCause& known : causes) {
            if (known.cause == cause) return;
        }
        causes.push_back({cause, std::move(job_key), std::move(source), uncured, cured});
    };
    for (const CauseTest& test : cause_tests) {
        for (const Evidence& row : rows) {
            const bool shows = row.test == test.test && row.verdict == Verdict::does_not_fit &&
                               (!test.reason || row.reason == *test.reason);
            const bool by_lost_leg = test.cause == Cause::low_supply && failed(rows, Test::legs);
            if (shows && !by_lost_leg) add(test.cause, row.job_key, row.source);
        }
    }
    if (has_sign(job, Sign::wet)) add(Cause::water, "measured.signs", "common-practice");
    if (!facts.plate_trusted) {
        add(Cause::wrong_motor, "unit.plate_trusted", "common-practice");
    }
    if (const auto key = lost_before(job); key && causes.empty())
        add(Cause::not_found, *key, "common-practice");
    return causes;
}

}  // namespace endbell::inline diagnosis
