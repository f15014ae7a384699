#include <algorithm>
#include <cmath>

#include "engine/diagnosis/conclude.hpp"
#include "engine/model/limit.hpp"

namespace endbell::inline diagnosis {

namespace {

constexpr Voltage dead_wire = volt(1);  // a weak signal is a finding; none at all is none

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
    if (m.amps && m.amps->highest() > ampere(0)) keys.push_back("measured.amps");
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
    if (!has_capacitor(*facts.family) && !keys.empty()) {
        keys.insert(keys.begin(), "plate.family");
        found.push_back(std::move(keys));
    }
    if (facts.phase.disagree && phase_by_construction(*facts.family))
        found.push_back({"plate.family", "plate.phase"});
}

void running_without_line(const FailedUnit& job, const Facts& facts, const Limits& limits,
                          std::vector<ContraryKeys>& found) {
    if (!facts.supply.highest || *facts.supply.highest >= limits.value(limit::voltage_absent)) return;
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

/// A motor that turns draws, and one that draws nothing moves no air.
void nothing_drawn_while_running(const FailedUnit& job, std::vector<ContraryKeys>& found) {
    const MeasuredReadings& m = job.measured;
    const bool turns = m.speed && *m.speed > rpm(0);
    const bool blows = m.airflow && *m.airflow > cfm(0);
    if (m.amps && m.amps->highest() <= ampere(0)) {
        if (turns) found.push_back({"measured.amps", "measured.speed"});
        if (blows) found.push_back({"measured.amps", "measured.airflow"});
        if (m.watts && *m.watts > watt(0)) found.push_back({"measured.amps", "measured.watts"});
    }
    if (m.watts && *m.watts <= watt(0)) {
        if (turns) found.push_back({"measured.watts", "measured.speed"});
        if (m.amps && m.amps->highest() > ampere(0)) found.push_back({"measured.watts", "measured.amps"});
    }
}

/// At its speed a motor draws about its plate: several times as much is what a standing one draws, or a clamp around two wires.
void starting_amps_at_speed(const FailedUnit& job, const Facts& facts, std::vector<ContraryKeys>& found) {
    const MeasuredReadings& m = job.measured;
    if (!m.amps || !m.speed || !job.plate.current || !facts.speed) return;
    constexpr double starting = 3.0,
                     at_speed = 0.90;  // common practice: a locked rotor draws 3 to 6 times its plate
    if (m.amps->highest() > *job.plate.current * starting && *m.speed >= *facts.speed * at_speed)
        found.push_back({"measured.amps", "measured.speed"});
}

/// A run capacitor sees up to about twice the line; more than three times is another reading.
void capacitor_against_line(const FailedUnit& job, const Facts& facts, const Limits& limits,
                            std::vector<ContraryKeys>& found) {
    const MeasuredReadings& m = job.measured;
    const std::optional<Voltage>& line = facts.supply.highest;
    constexpr double most = 3.0;  // common practice
    if (!m.capacitor_volts || !line || *line < limits.value(limit::voltage_absent)) return;
    if (*m.capacitor_volts > *line * most)
        found.push_back({"measured.capacitor_volts", "measured.line_volts"});
}

/// Microfarads by amps and volts against those by meter: 1,000,000 I / (2 pi f V).
void capacitor_two_ways(const FailedUnit& job, const Facts& facts, std::vector<ContraryKeys>& found) {
    const MeasuredReadings& m = job.measured;
    if (!m.capacitor || !m.capacitor_amps || !m.capacitor_volts || *m.capacitor_volts <= volt(0)) return;
    if (m.capacitor->in(microfarad) <= 0) return;
    const double hertz_of_line = facts.frequency.value.value_or(hertz(60)).in(hertz);
    constexpr double two_pi = 6.283185307179586, agree = 0.30;  // two meters and a clamp on small amps
    const double running =
        1e6 * m.capacitor_amps->in(ampere) / (two_pi * hertz_of_line * m.capacitor_volts->in(volt));
    if (std::abs(running / m.capacitor->in(microfarad)-1) > agree)
        found.push_back({"measured.capacitor", "measured.capacitor_amps", "measured.capacitor_volts"});
}

/// What lives on a tap is read from it, and to a common that is there.
void live_tap_without_volts(const FailedUnit& job, std::vector<ContraryKeys>& found) {
    const MeasuredReadings& m = job.measured;
    if (!m.control_volts) return;
    if (m.live_taps && !m.live_taps->empty() && *m.control_volts < dead_wire)
        found.push_back({"measured.live_taps", "measured.control_volts"});
    const Reading<bool>& common = job.controls.common_present;
    if (common && !*common && *m.control_volts >= dead_wire)
        found.push_back({"measured.control_volts", "controls.common_present"});
}

/// Far more volts than what is said to feed it can give. Far fewer are a fault that is looked for.
void line_over_supply(const Facts& facts, std::vector<ContraryKeys>& found) {
    if (!facts.supply.stated || !facts.supply.highest || facts.supply.nominal.empty()) return;
    const Voltage most = *std::max_element(facts.supply.nominal.begin(), facts.supply.nominal.end());
    constexpr double another_system = 1.5;  // 208 on 115 is 1.8, 277 on 208 is 1.3 and may be a high leg
    if (*facts.supply.highest > most * another_system)
        found.push_back({"measured.line_volts", "equipment.supply"});
}

/// What stands upstream is live where what it feeds is.
void live_without_its_feed(const FailedUnit& job, const Limits& limits, std::vector<ContraryKeys>& found) {
    const MeasuredReadings& m = job.measured;
    const Voltage least = limits.value(limit::tap_low);
    const auto dead = [](const Reading<Voltage>& read, Voltage below) { return read && *read < below; };
    const auto live = [&](const Reading<Voltage>& read) { return read && *read >= least; };
    if (dead(m.primary_volts, limits.value(limit::voltage_absent)) && live(m.transformer_volts))
        found.push_back({"measured.primary_volts", "measured.transformer_volts"});
    if (m.control_fuse_good && !*m.control_fuse_good && live(m.transformer_volts) && live(m.board_volts))
        found.push_back({"measured.control_fuse_good", "measured.board_volts"});
    if (dead(m.transformer_volts, dead_wire) && live(m.board_volts))
        found.push_back({"measured.transformer_volts", "measured.board_volts"});
    if (dead(m.board_volts, dead_wire) && live(m.control_volts))
        found.push_back({"measured.board_volts", "measured.control_volts"});
}

/// A shaft that turns free with its wheel on does not drag without it.
void stuck_without_its_wheel(const FailedUnit& job, std::vector<ContraryKeys>& found) {
    const MeasuredReadings& m = job.measured;
    if (m.spins_free && *m.spins_free && m.free_with_wheel_loose && !*m.free_with_wheel_loose)
        found.push_back({"measured.spins_free", "measured.free_with_wheel_loose"});
}

/// There is no belt to look at where the wheel sits on the shaft.
void belt_of_a_direct_drive(const FailedUnit& job, std::vector<ContraryKeys>& found) {
    if (job.measured.belt && job.unit.belt_drive.said() == false)
        found.push_back({"measured.belt", "unit.belt_drive"});
}

/// What looks clean does not hold the air back.
void looks_against_readings(const FailedUnit& job, const Limits& limits, std::vector<ContraryKeys>& found) {
    const MeasuredReadings& m = job.measured;
    if (m.filter && *m.filter == Cleanness::clean && m.filter_drop &&
        *m.filter_drop > limits.value(limit::filter_drop) * 1.5)  // a fine filter is dense; common practice
        found.push_back({"measured.filter", "measured.filter_drop"});
}

}  // namespace

std::vector<ContraryKeys> contradictions_in(const FailedUnit& job, const Facts& facts, const Limits& limits) {
    std::vector<ContraryKeys> found;
    family_against_plate(job, facts, found);
    running_without_line(job, facts, limits, found);
    standing_and_running(job, found);
    dead_tap_with_volts(job, limits, found);
    nothing_drawn_while_running(job, found);
    starting_amps_at_speed(job, facts, found);
    capacitor_against_line(job, facts, limits, found);
    capacitor_two_ways(job, facts, found);
    live_tap_without_volts(job, found);
    line_over_supply(facts, found);
    live_without_its_feed(job, limits, found);
    stuck_without_its_wheel(job, found);
    belt_of_a_direct_drive(job, found);
    looks_against_readings(job, limits, found);
    const std::vector<ContraryKeys> air = contrary_air(job, facts, limits);
    found.insert(found.end(), air.begin(), air.end());
    return found;
}

}  // namespace endbell::inline diagnosis
