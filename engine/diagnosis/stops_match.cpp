#include <algorithm>
#include <array>

#include "engine/diagnosis/tests.hpp"

namespace endbell::inline diagnosis {

namespace {

/// Tests of what surrounds a motor: they serve the match and the air, and tell no dead motor from a live one.
bool is_of_surroundings(Test test) {
    constexpr std::array surroundings{
        Test::symptom,      Test::line_volts,   Test::motor_volts,   Test::legs,          Test::static_total,
        Test::filter_drop,  Test::coil_drop,    Test::iced,          Test::wheel,         Test::belt,
        Test::burner_input, Test::rise,         Test::airflow,       Test::amps,          Test::plate_agrees,
        Test::family,       Test::plate_figure, Test::supply_system, Test::changed_before};
    return std::find(surroundings.begin(), surroundings.end(), test) != surroundings.end();
}

/// Nothing is known against the motor or what feeds it: not read, or not in full.
bool is_incomplete(TestReason reason) {
    return reason == TestReason::not_measured || reason == TestReason::needs_volts_and_amps ||
           reason == TestReason::three_readings_needed || reason == TestReason::rotor_not_stated_held ||
           reason == TestReason::rotor_not_held || reason == TestReason::supply_not_stated ||
           reason == TestReason::plate_volts_unknown;
}

bool speaks_against(const Evidence& row) {
    if (is_of_surroundings(row.test)) return false;
    return row.verdict == Verdict::does_not_fit ||
           (row.verdict == Verdict::not_shown && !is_incomplete(row.reason));
}

/// Readings of the motor and of what feeds it. Those of the air say nothing of it, contradicted or not.
bool tells_of_the_motor(const std::string& key) {
    const auto readings = motor_readings();
    return std::any_of(readings.begin(), readings.end(),
                       [&](const MotorReading& reading) { return reading.job_key == key; });
}

}  // namespace

bool stops_match(const Diagnosis& d) {
    if (d.fault != Fault::not_shown) return false;
    const std::vector<std::string> again = keys_to_read_again(d);
    return std::any_of(d.evidence.begin(), d.evidence.end(), speaks_against) ||
           std::any_of(again.begin(), again.end(), tells_of_the_motor);
}

}  // namespace endbell::inline diagnosis
