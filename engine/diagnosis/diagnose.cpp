#include <algorithm>
#include <optional>

#include "engine/base/text.hpp"
#include "engine/diagnosis/conclude.hpp"
#include "engine/diagnosis/tree.hpp"

namespace endbell::inline diagnosis {

namespace {

constexpr std::string_view contrary_to = " and ";  // between keys that cannot all be true

bool nothing_measured(const FailedUnit& job) {
    const auto readings = motor_readings();
    return std::none_of(readings.begin(), readings.end(),
                        [&](const MotorReading& reading) { return reading.is_read(job); });
}

EvidenceRows run_tests(const FailedUnit& job, const Facts& facts, const Limits& limits) {
    EvidenceRows rows;
    test_symptoms(job, rows);
    test_signs(job, rows);
    if (is_flooded(job)) return rows;  // no reading of what stood in water is judged
    test_line(job, facts, limits, rows);
    test_signal(job, facts, limits, rows);
    test_controls(job, limits, rows);
    test_shaft(job, rows);
    test_windings(job, facts, limits, rows);
    test_capacitor(job, facts, limits, rows);
    test_air(job, facts, limits, rows);
    test_current(job, facts, limits, rows);
    return rows;
}

bool takes_part(const std::vector<ContraryKeys>& contradictions, std::string_view key) {
    return std::any_of(contradictions.begin(), contradictions.end(), [&](const ContraryKeys& keys) {
        return std::find(keys.begin(), keys.end(), key) != keys.end();
    });
}

/// A contradiction is settled by reading again whatever takes part in it: that comes first within a class of danger.
std::vector<MissingReading> to_take(const std::vector<ContraryKeys>& contradictions,
                                    const std::vector<MissingReading>& lacking) {
    std::vector<MissingReading> all;
    const auto add = [&](MissingReading reading) {
        for (const MissingReading& known : all) {
            if (known.job_key == reading.job_key) return;
        }
        all.push_back(std::move(reading));
    };
    for (const ContraryKeys& keys : contradictions) {
        for (const std::string& key : keys) add(read_again(key));
    }
    for (const MissingReading& reading : lacking) add(reading);
    std::stable_sort(all.begin(), all.end(),
                     [](const MissingReading& a, const MissingReading& b) { return a.danger < b.danger; });
    return all;
}

void mark_carrying(const Conclusion& conclusion, EvidenceRows& rows) {
    const auto& tests = conclusion.stands_on;
    for (Evidence& row : rows) {
        const bool named = std::find(tests.begin(), tests.end(), row.test) != tests.end();
        row.carries = named && row.verdict != Verdict::not_shown;
    }
}

}  // namespace

std::optional<FailedUnit> settled(const FailedUnit& job, const Facts& facts, const Limits& limits) {
    const std::vector<ContraryKeys> contradictions = contradictions_in(job, facts, limits);
    if (contradictions.empty()) return std::nullopt;
    return without_contrary(job, contradictions);
}

std::vector<std::string> keys_to_read_again(const Diagnosis& diagnosis) {
    std::vector<std::string> again;
    for (const std::string& keys : diagnosis.contradictions) {
        for (std::size_t at = 0; at < keys.size();) {
            const std::size_t end = std::min(keys.find(contrary_to, at), keys.size());
            const std::string key = keys.substr(at, end - at);
            if (std::find(again.begin(), again.end(), key) == again.end()) again.push_back(key);
            at = end + contrary_to.size();
        }
    }
    return again;
}

Diagnosis diagnose(const FailedUnit& stated, const Facts& stated_facts, const Limits& limits) {
    const auto contradictions = contradictions_in(stated, stated_facts, limits);
    std::optional<FailedUnit> settled;  // most jobs contradict themselves nowhere, and are not copied
    std::optional<Facts> settled_facts;
    if (!contradictions.empty()) {
        settled = without_contrary(stated, contradictions);
        settled_facts = facts_of(*settled, limits);
    }
    const FailedUnit& job = settled ? *settled : stated;
    const Facts& facts = settled ? *settled_facts : stated_facts;
    EvidenceRows rows = run_tests(job, facts, limits);
    for (Evidence& row : rows) {
        if (takes_part(contradictions, row.job_key)) row.reason = TestReason::contradicted;
    }
    const Conclusion conclusion = conclude(job, facts, rows);
    mark_carrying(conclusion, rows);

    Diagnosis result;
    result.fault = conclusion.fault;
    result.source = conclusion.source;
    result.nothing_measured = nothing_measured(stated);
    result.motor_half_proven_good = motor_half_good(facts, rows);
    result.causes = causes_in(job, facts, rows, limits);
    for (const ContraryKeys& keys : contradictions)
        result.contradictions.push_back(joined(keys, std::string(contrary_to)));
    if (result.fault == Fault::not_shown)
        result.missing = to_take(contradictions, missing_readings(job, facts, rows));
    result.culprit = culprit_of(result.fault, job, facts, rows, limits);
    result.next = next_tests({job, facts, rows}, result.fault, result.culprit, result.missing);
    result.since_start_up = since_start_up(job, limits);
    result.evidence = std::move(rows);
    return result;
}

}  // namespace endbell::inline diagnosis
