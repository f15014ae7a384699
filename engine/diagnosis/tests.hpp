// The tests of a diagnosis: each sets one reading against one threshold. A group a function; together they
// follow the test sequence of the service manuals (line, signal, shaft, insulation, windings), then the rest.
#pragma once
#include <string_view>
#include <vector>

#include "engine/diagnosis/diagnosis.hpp"

namespace endbell {

using Rows = std::vector<Evidence>;

/// The ids of the tests.
namespace test {
inline constexpr std::string_view symptom = "symptom";
inline constexpr std::string_view line_volts = "line volts";
inline constexpr std::string_view control_volts = "control volts";
inline constexpr std::string_view live_taps = "live taps";
inline constexpr std::string_view spins_free = "spins free";
inline constexpr std::string_view shaft_play = "shaft play";
inline constexpr std::string_view winding_to_shell = "winding to shell";
inline constexpr std::string_view winding_open = "winding open";
inline constexpr std::string_view winding_most = "winding ohms";
inline constexpr std::string_view winding_balance = "winding balance";
inline constexpr std::string_view winding_spread = "winding spread";
inline constexpr std::string_view capacitor = "capacitor";
inline constexpr std::string_view static_total = "static total";
inline constexpr std::string_view filter_drop = "filter drop";
inline constexpr std::string_view rise = "temperature rise";
inline constexpr std::string_view airflow = "airflow per ton";
inline constexpr std::string_view amps = "running amps";
inline constexpr std::string_view plate_agrees = "plate against unit";
inline constexpr std::string_view family = "motor family";
}  // namespace test

void test_symptoms(const FailedUnit& job, Rows& rows);
void test_line(const FailedUnit& job, const Limits& limits, Rows& rows);
void test_signal(const FailedUnit& job, const Limits& limits, Rows& rows);
void test_shaft(const FailedUnit& job, Rows& rows);
void test_windings(const FailedUnit& job, const Limits& limits, Rows& rows);
void test_capacitor(const FailedUnit& job, const Limits& limits, Rows& rows);
void test_air(const FailedUnit& job, const Limits& limits, Rows& rows);
void test_current(const FailedUnit& job, const Limits& limits, Rows& rows);

/// A row that no reading has settled yet; `asks` defaults to the reading itself.
Evidence open_row(std::string_view test, std::string job_key, std::string source);

/// Readings are decimal: a value written exactly at a limit counts as at it, whatever binary fractions say.
bool at_most(double value, double limit);
bool at_least(double value, double limit);

/// Induction motors take their speed from the line; the signal, if any, works a relay elsewhere.
constexpr bool is_induction(Family family) {
    return !is_electronic(family);
}
/// A module that comes off. READ in equipment manuals for the constant-airflow kind and its serial and pulse
/// kin.
constexpr bool is_two_piece(Family family) {
    return family == Family::constant_airflow || family == Family::communicating;
}
bool has_symptom(const FailedUnit& job, Symptom symptom);
/// Duct readings belong to an indoor blower only.
bool moves_duct_air(const FailedUnit& job);

}  // namespace endbell
