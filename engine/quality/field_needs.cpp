#include "engine/model/rule_ids.hpp"
#include "engine/quality/quality.hpp"

namespace endbell::inline quality {

namespace {

constexpr std::string_view induction = "family IN ('shaded pole', 'capacitor run', 'three phase')";
constexpr std::string_view capacitor_run = "family = 'capacitor run'";
constexpr std::string_view constant_torque = "family = 'constant torque'";
constexpr std::string_view constant_airflow = "family = 'constant airflow'";
constexpr std::string_view inducer = "loads LIKE '%draft inducer%'";
constexpr std::string_view outdoor = "loads LIKE '%outdoor fan%'";

}  // namespace

// A need a line, in the order in which a person would check them.
// clang-format off
const std::vector<FieldNeed>& field_needs() {
    static const std::vector<FieldNeed> list{
        {rule_id::load, "motors", "loads", ""},
        {rule_id::family, "motors", "family", ""},
        {rule_id::supply_voltage, "motor_ratings", "volts", ""},
        {rule_id::supply_voltage, "modules", "volts", ""},
        {rule_id::phase, "motors", "phase", ""},
        {rule_id::frequency, "motors", "frequency_hz", ""},
        {rule_id::poles, "motors", "poles", induction},
        {rule_id::speed, "motor_ratings", "speed_rpm", ""},
        {rule_id::power, "motor_ratings", "power_hp", ""},
        {rule_id::power, "taps", "torque_ozft", constant_torque},
        {rule_id::full_load_current, "motor_ratings", "amps", ""},
        {rule_id::rotation, "motors", "rotation", ""},
        {rule_id::double_shaft, "motors", "double_shaft", ""},
        {rule_id::shaft_diameter, "motors", "shaft_diameter_in", ""},
        {rule_id::shaft_length, "motors", "shaft_length_in", ""},
        {rule_id::shaft_flat, "motors", "shaft_flat_in", ""},
        {rule_id::body_diameter, "motors", "body_diameter_in", ""},
        {rule_id::body_length, "motors", "body_length_in", ""},
        {rule_id::mount, "motors", "mount", ""},
        {rule_id::bolt_circle, "motors", "bolt_circle_in", "mount IN ('studs', 'face')"},
        {rule_id::enclosure, "motors", "enclosure", outdoor},
        {rule_id::position, "motors", "positions", ""},
        {rule_id::ambient, "motors", "ambient_c", ""},
        {rule_id::service_factor, "motors", "service_factor", induction},
        {rule_id::protection, "motors", "protection", induction},
        {rule_id::bearing, "motors", "bearing", ""},
        {rule_id::capacitor, "motors", "capacitor_uf", capacitor_run},
        {rule_id::capacitor, "motors", "capacitor_v", capacitor_run},
        {rule_id::tap_count, "motors", "speeds", ""},
        {rule_id::signal_class, "motors", "signal", ""},
        {rule_id::signal_class, "modules", "signal", ""},
        {rule_id::tap_rule, "motors", "tap_rule", constant_torque},
        {rule_id::program, "motors", "program", constant_airflow},
        {rule_id::program, "modules", "program", ""},
        {rule_id::inducer_assembly, "motors", "assembly", inducer},
        {rule_id::connector, "motors", "connector", "family IN ('constant torque', 'constant airflow', 'communicating')"},
    };
    return list;
}
// clang-format on

}  // namespace endbell::inline quality
