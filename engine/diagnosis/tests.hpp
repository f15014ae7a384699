// The tests of a diagnosis: each sets one reading against one threshold. A group a function; together they
// follow the test sequence of the service manuals (line, signal, shaft, insulation, windings), then the rest.
#pragma once
#include <span>
#include <string_view>
#include <vector>

#include "engine/diagnosis/diagnosis.hpp"

namespace endbell::inline diagnosis {

using EvidenceRows = std::vector<Evidence>;

void test_symptoms(const FailedUnit& job, EvidenceRows& rows);
void test_line(const FailedUnit& job, const Facts& facts, const Limits& limits, EvidenceRows& rows);
void test_signal(const FailedUnit& job, const Facts& facts, const Limits& limits, EvidenceRows& rows);
void test_controls(const FailedUnit& job, const Limits& limits, EvidenceRows& rows);
void test_shaft(const FailedUnit& job, EvidenceRows& rows);
void test_windings(const FailedUnit& job, const Facts& facts, const Limits& limits, EvidenceRows& rows);
void test_signs(const FailedUnit& job, EvidenceRows& rows);
void test_capacitor(const FailedUnit& job, const Facts& facts, const Limits& limits, EvidenceRows& rows);
void test_air(const FailedUnit& job, const Facts& facts, const Limits& limits, EvidenceRows& rows);
void test_current(const FailedUnit& job, const Facts& facts, const Limits& limits, EvidenceRows& rows);

/// A row that no reading has settled yet; `asks` defaults to the reading itself.
Evidence open_row(Test test, std::string job_key, std::string source);

/// Readings are decimal: a value written exactly at a limit counts as at it, whatever binary fractions say.
bool at_most(double value, double limit);
bool at_least(double value, double limit);

/// Somebody said it.
template <auto Field>
bool is_read(const FailedUnit& job) {
    return static_cast<bool>(job.measured.*Field);
}

/// A reading that tells a dead motor from a live one: of the motor, or of what feeds and calls it.
struct MotorReading {
    std::string_view job_key;
    bool (*is_read)(const FailedUnit&);
};
std::span<const MotorReading> motor_readings();

bool has_symptom(const FailedUnit& job, Symptom symptom);
bool has_sign(const FailedUnit& job, Sign sign);
/// Motor, module, board or gas valve stood in water: no reading of it is judged.
bool is_flooded(const FailedUnit& job);
/// Duct readings belong to an indoor blower only.
bool moves_duct_air(const FailedUnit& job);

}  // namespace endbell::inline diagnosis
