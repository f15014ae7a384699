#include <algorithm>
#include <cmath>

#include "engine/diagnosis/conclude.hpp"

namespace endbell::inline diagnosis {

namespace {

/// One line of the order in which readings are taken: questions first, then live readings, then the lockout
/// and what follows it. The order is the test sequence of the service manuals; seconds are common practice
/// and leave out the lockout and its wait.
struct Stop {
    std::string_view job_key;
    Test test;
    int seconds;
    bool power_off;
};

constexpr Stop round_trip[] = {
    {"plate.family", Test::family, 60, false},
    {"measured.symptoms", Test::symptom, 30, false},
    {"plate.volts", Test::line_volts, 30, false},
    {"measured.line_volts", Test::line_volts, 60, false},
    {"plate.signal", Test::control_volts, 60, false},
    {"measured.control_volts", Test::control_volts, 60, false},
    {"plate.tap_rule", Test::live_taps, 60, false},
    {"measured.live_taps", Test::live_taps, 90, false},
    {"plate.current", Test::amps, 30, false},
    {"measured.amps", Test::amps, 60, false},
    {"measured.filter_drop", Test::filter_drop, 120, false},
    {"measured.static_supply", Test::static_total, 180, false},
    {"measured.static_return", Test::static_total, 180, false},
    {"measured.static_total", Test::static_total, 300, false},
    {"plate.frequency", Test::capacitor, 30, false},
    {"measured.capacitor_volts", Test::capacitor, 90, false},
    {"measured.capacitor_amps", Test::capacitor, 90, false},
    {"measured.spins_free", Test::spins_free, 30, true},
    {"measured.shaft_play", Test::shaft_play, 30, true},
    {"measured.winding_to_shell", Test::winding_to_shell, 90, true},
    {"measured.rotor_held", Test::winding_balance, 30, true},
    {"measured.windings", Test::winding_balance, 180, true},
    {"measured.windings", Test::winding_open, 180, true},
    {"plate.capacitor", Test::capacitor, 30, true},
    {"measured.capacitor", Test::capacitor, 120, true},
};

void add(std::vector<Test>& list, std::initializer_list<Test> tests) {
    for (Test test : tests) {
        if (std::find(list.begin(), list.end(), test) == list.end()) list.push_back(test);
    }
}

/// What must be good before a motor that does not do its work is itself at fault.
void add_for_no_work(Family family, std::vector<Test>& needed) {
    add(needed, {Test::line_volts});
    if (is_electronic(family)) add(needed, {Test::control_volts});
    // One piece, line and tap good and no run: the motor, whatever its windings read.
    if (family != Family::constant_torque) add(needed, {Test::spins_free});
    if (family == Family::capacitor_run) add(needed, {Test::capacitor});
    if (is_two_piece(family)) add(needed, {Test::winding_to_shell, Test::winding_balance});
}

/// A thermal limit inside the winding opens when hot and closes when cold: an open reading waits for that.
bool waits_for_cold(const FailedUnit& job) {
    if (!job.measured.windings || !has_symptom(job, Symptom::trips_hot)) return false;
    const auto& ohms = *job.measured.windings;
    return std::any_of(ohms.begin(), ohms.end(), [](Resistance r) { return std::isinf(r.in(ohm)); });
}

bool asks_for(const EvidenceRows& rows, Test test, std::string_view job_key) {
    return std::any_of(rows.begin(), rows.end(), [&](const Evidence& row) {
        return row.test == test && row.verdict == Verdict::not_shown && row.asks == job_key;
    });
}

}  // namespace

std::vector<Test> needed_tests(const FailedUnit& job, const Facts& facts) {
    std::vector<Test> needed;
    if (!facts.family) {
        add(needed, {Test::line_volts, Test::spins_free});
        return needed;
    }
    const Family family = *facts.family;
    const Behaviour behaviour = behaviour_of(job);
    if (behaviour == Behaviour::normal) return needed;
    if (waits_for_cold(job)) add(needed, {Test::winding_open});
    if (behaviour != Behaviour::runs_badly || has_symptom(job, Symptom::runs_slow))
        add_for_no_work(family, needed);
    if (behaviour != Behaviour::runs_badly) return needed;

    // Running badly: what is fed to it, what it turns, and the duct it blows into.
    const bool air = has_symptom(job, Symptom::weak_air);
    const bool hot = has_symptom(job, Symptom::trips_hot);
    const bool noise = has_symptom(job, Symptom::noisy);
    if (hot || air) add(needed, {Test::line_volts});
    if (hot) add(needed, {Test::amps});
    if (hot || noise) add(needed, {Test::spins_free});
    if (noise) add(needed, {Test::shaft_play});
    if (air && is_electronic(family)) add(needed, {Test::control_volts});
    if (family == Family::capacitor_run && !noise) add(needed, {Test::capacitor});
    if (moves_duct_air(job)) add(needed, {Test::static_total});
    if (moves_duct_air(job) && air) add(needed, {Test::filter_drop});
    return needed;
}

MissingReading read_again(const std::string& job_key) {
    for (const Stop& stop : round_trip) {
        if (stop.job_key == job_key) return {job_key, Test::read_again, stop.seconds, stop.power_off};
    }
    return {job_key, Test::read_again, 60, false};  // of a running motor or from a plate: nothing is opened
}

std::vector<MissingReading> missing_readings(const FailedUnit& job, const Facts& facts,
                                             const EvidenceRows& rows) {
    const auto needed = needed_tests(job, facts);
    std::vector<MissingReading> missing;
    for (const Stop& stop : round_trip) {
        const bool open_family = stop.test == Test::family && !facts.family;
        const bool open_symptom = stop.test == Test::symptom && behaviour_of(job) == Behaviour::not_stated;
        const bool open_test = std::find(needed.begin(), needed.end(), stop.test) != needed.end() &&
                               asks_for(rows, stop.test, stop.job_key);
        if (open_family || open_symptom || open_test) {
            missing.push_back({std::string(stop.job_key), stop.test, stop.seconds, stop.power_off});
        }
    }
    return missing;
}

}  // namespace endbell::inline diagnosis
