#include "engine/catalog/quality.hpp"

namespace endbell {

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
        {"load", "motors", "loads", ""},
        {"family", "motors", "family", ""},
        {"supply-voltage", "motor_ratings", "volts", ""},
        {"supply-voltage", "modules", "volts", ""},
        {"phase", "motors", "phase", ""},
        {"frequency", "motors", "frequency_hz", ""},
        {"poles", "motors", "poles", induction},
        {"speed", "motor_ratings", "speed_rpm", ""},
        {"power", "motor_ratings", "power_hp", ""},
        {"power", "taps", "torque_ozft", constant_torque},
        {"full-load-current", "motor_ratings", "amps", ""},
        {"rotation", "motors", "rotation", ""},
        {"double-shaft", "motors", "double_shaft", ""},
        {"shaft-diameter", "motors", "shaft_diameter_in", ""},
        {"shaft-length", "motors", "shaft_length_in", ""},
        {"shaft-flat", "motors", "shaft_flat_in", ""},
        {"body-diameter", "motors", "body_diameter_in", ""},
        {"body-length", "motors", "body_length_in", ""},
        {"mount", "motors", "mount", ""},
        {"bolt-circle", "motors", "bolt_circle_in", "mount IN ('studs', 'face')"},
        {"enclosure", "motors", "enclosure", outdoor},
        {"position", "motors", "positions", ""},
        {"ambient", "motors", "ambient_c", ""},
        {"service-factor", "motors", "service_factor", induction},
        {"protection", "motors", "protection", induction},
        {"bearing", "motors", "bearing", ""},
        {"capacitor", "motors", "capacitor_uf", capacitor_run},
        {"capacitor", "motors", "capacitor_v", capacitor_run},
        {"tap-count", "motors", "speeds", ""},
        {"signal-class", "motors", "signal", ""},
        {"signal-class", "modules", "signal", ""},
        {"tap-rule", "motors", "tap_rule", constant_torque},
        {"program", "motors", "program", constant_airflow},
        {"program", "modules", "program", ""},
        {"inducer-assembly", "motors", "assembly", inducer},
        {"connector", "motors", "connector", "family IN ('constant torque', 'constant airflow', 'communicating')"},
    };
    return list;
}
// clang-format on

}  // namespace endbell
