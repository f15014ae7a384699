#include "engine/diagnosis/conclude.hpp"
#include "engine/model/limit.hpp"

namespace endbell::inline diagnosis {

namespace {

/// Fields that only a motor with a run capacitor has.
ContraryKeys capacitor_keys(const FailedUnit& job, const Facts& facts) {
    ContraryKeys keys;
    if (facts.capacitor) keys.push_back("plate.capacitor");
    if (job.measured.capacitor) keys.push_back("measured.capacitor");
    if (job.measured.capacitor_volts) keys.push_back("measured.capacitor_volts");
    if (job.measured.capacitor_amps) keys.push_back("measured.capacitor_amps");
    if (job.measured.capacitor_bulged && *job.measured.capacitor_bulged)
        keys.push_back("measured.capacitor_bulged");
    return keys;
}

/// Readings that a motor gives only while it runs.
ContraryKeys running_keys(const FailedUnit& job) {
    const MeasuredReadings& m = job.measured;
    ContraryKeys keys;
    if (m.amps && m.amps->in(ampere) > 0) keys.push_back("measured.amps");
    if (m.speed && m.speed->in(rpm) > 0) keys.push_back("measured.speed");
    if (m.watts && m.watts->in(watt) > 0) keys.push_back("measured.watts");
    if (m.capacitor_volts && m.capacitor_volts->in(volt) > 0) keys.push_back("measured.capacitor_volts");
    return keys;
}

bool is_running_symptom(Symptom s) {
    return s == Symptom::runs_slow || s == Symptom::runs_on_after_call || s == Symptom::runs_backwards ||
           s == Symptom::rocks_then_starts;
}

bool any_running_symptom(const FailedUnit& job) {
    if (!job.measured.symptoms) return false;
    for (Symptom s : *job.measured.symptoms) {
        if (is_running_symptom(s)) return true;
    }
    return false;
}

void family_against_plate(const FailedUnit& job, const Facts& facts, std::vector<ContraryKeys>& found) {
    if (!facts.family) return;
    ContraryKeys keys = capacitor_keys(job, facts);
    if (!facts.family.is(Family::capacitor_run) && !keys.empty()) {
        keys.insert(keys.begin(), "plate.family");
        found.push_back(std::move(keys));
    }
    if (facts.phase.disagree && phase_by_construction(*facts.family))
        found.push_back({"plate.family", "plate.phase"});
}

void running_without_line(const FailedUnit& job, const Facts& facts, const Limits& limits,
                          std::vector<ContraryKeys>& found) {
    if (!facts.supply.reading || *facts.supply.reading >= limits.value(limit::voltage_absent)) return;
    // Of a motor that stands, running readings are those of its last good run.
    ContraryKeys keys = behaviour_of(job) == Behaviour::does_not_start ? ContraryKeys{} : running_keys(job);
    if (any_running_symptom(job) || has_symptom(job, Symptom::hums)) keys.push_back("measured.symptoms");
    if (keys.empty()) return;
    keys.insert(keys.begin(), "measured.line_volts");
    found.push_back(std::move(keys));
}

void standing_and_running(const FailedUnit& job, std::vector<ContraryKeys>& found) {
    const bool stands = has_symptom(job, Symptom::no_run);
    const bool both_rocks =
        has_symptom(job, Symptom::rocks_then_starts) && has_symptom(job, Symptom::rocks_never_starts);
    // Two lines of the same list: the key is named once.
    if ((stands && any_running_symptom(job)) || both_rocks) found.push_back({"measured.symptoms"});
}

void dead_tap_with_volts(const FailedUnit& job, const Limits& limits, std::vector<ContraryKeys>& found) {
    const MeasuredReadings& m = job.measured;
    const bool none_live = m.live_taps && m.live_taps->empty();
    if (none_live && m.control_volts && *m.control_volts >= limits.value(limit::tap_low)) {
        found.push_back({"measured.live_taps", "measured.control_volts"});
    }
}

}  // namespace

std::vector<ContraryKeys> contradictions_in(const FailedUnit& job, const Facts& facts, const Limits& limits) {
    std::vector<ContraryKeys> found;
    family_against_plate(job, facts, found);
    running_without_line(job, facts, limits, found);
    standing_and_running(job, found);
    dead_tap_with_volts(job, limits, found);
    const std::vector<ContraryKeys> air = contrary_air(job, facts, limits);
    found.insert(found.end(), air.begin(), air.end());
    return found;
}

}  // namespace endbell::inline diagnosis
