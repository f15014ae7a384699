#include <algorithm>
#include <cmath>
#include <utility>

#include "engine/diagnosis/tests.hpp"

namespace endbell::inline diagnosis {

namespace {
constexpr double decimal_slack = 1e-9;  // relative; far below the last digit of any meter

using M = MeasuredReadings;
constexpr MotorReading of_the_motor[] = {
    {"measured.control_volts", is_read<&M::control_volts>},
    {"measured.live_taps", is_read<&M::live_taps>},
    {"measured.windings", is_read<&M::windings>},
    {"measured.winding_to_shell", is_read<&M::winding_to_shell>},
    {"measured.spins_free", is_read<&M::spins_free>},
    {"measured.shaft_play", is_read<&M::shaft_play>},
    {"measured.capacitor", is_read<&M::capacitor>},
    {"measured.capacitor_volts", is_read<&M::capacitor_volts>},
    {"measured.capacitor_amps", is_read<&M::capacitor_amps>},
    {"measured.capacitor_bulged", is_read<&M::capacitor_bulged>},
    {"measured.free_with_wheel_loose", is_read<&M::free_with_wheel_loose>},
    {"measured.fuse_drop", is_read<&M::fuse_drop>},
    {"measured.contactor_drop", is_read<&M::contactor_drop>},
    {"measured.transformer_volts", is_read<&M::transformer_volts>},
    {"measured.board_volts", is_read<&M::board_volts>},
    {"measured.primary_volts", is_read<&M::primary_volts>},
    {"measured.thermostat_calls", is_read<&M::thermostat_calls>},
    {"measured.float_switch_closed", is_read<&M::float_switch_closed>},
    {"measured.door_switch_closed", is_read<&M::door_switch_closed>},
    {"measured.control_fuse_good", is_read<&M::control_fuse_good>},
    {"measured.under_water", is_read<&M::under_water>},
};
}  // namespace

std::span<const MotorReading> motor_readings() {
    return of_the_motor;
}

Evidence open_row(Test test, std::string job_key, std::string source) {
    Evidence row;
    row.test = test;
    row.asks = job_key;
    row.job_key = std::move(job_key);
    row.reason = TestReason::not_measured;
    row.source = std::move(source);
    return row;
}

bool at_most(double value, double limit) {
    return value <= limit + decimal_slack * std::abs(limit);
}
bool at_least(double value, double limit) {
    return value >= limit - decimal_slack * std::abs(limit);
}

bool has_symptom(const FailedUnit& job, Symptom symptom) {
    const auto& stated = job.measured.symptoms;
    return stated && std::count(stated->begin(), stated->end(), symptom) > 0;
}

bool moves_duct_air(const FailedUnit& job) {
    return !job.unit.load || *job.unit.load == Load::indoor_blower;
}

}  // namespace endbell::inline diagnosis
