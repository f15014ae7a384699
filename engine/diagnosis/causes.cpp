#include "engine/diagnosis/conclude.hpp"

namespace endbell {

namespace {

/// A failed test that kills motors, and the name of the cause it shows.
struct Killer {
    std::string_view test;
    std::string_view reason;  // empty: any failing reason
    std::string_view cause;
};

constexpr Killer killers[] = {
    {test::static_total, "", "high static pressure"},
    {test::filter_drop, "", "loaded filter"},
    {test::rise, "too little air", "too little air"},
    {test::airflow, "", "too little air"},
    {test::line_volts, "too low", "low supply voltage"},
    {test::line_volts, "too high", "high supply voltage"},
    {test::live_taps, "two taps live", "two taps live"},
    {test::capacitor, "", "failed capacitor"},
    {test::amps, "", "overload"},
    {test::plate_agrees, "", "wrong motor fitted before"},
};

}  // namespace

std::vector<KillerCause> causes_in(const FailedUnit& job, const Rows& rows, const Limits& limits) {
    const double uncured = limits.value("recurrence.uncured");
    const double cured = limits.value("recurrence.cured");
    std::vector<KillerCause> causes;
    const auto add = [&](std::string_view cause, std::string job_key, std::string source) {
        for (const KillerCause& known : causes) {
            if (known.cause == cause) return;
        }
        causes.push_back({cause, std::move(job_key), std::move(source), uncured, cured});
    };
    for (const Killer& killer : killers) {
        for (const Evidence& row : rows) {
            const bool shows = row.test == killer.test && row.verdict == Verdict::does_not_fit &&
                               (killer.reason.empty() || row.reason == killer.reason);
            if (shows) add(killer.cause, row.job_key, row.source);
        }
    }
    if (job.unit.plate_trusted && !*job.unit.plate_trusted) {
        add("wrong motor fitted before", "unit.plate_trusted", "common-practice");
    }
    const bool repeated = job.measured.earlier_replacements && *job.measured.earlier_replacements > 0;
    if (repeated && causes.empty()) {
        add("lost before, cause not found", "measured.earlier_replacements", "common-practice");
    }
    return causes;
}

}  // namespace endbell
