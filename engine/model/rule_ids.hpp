// What each rule is called, for the rule itself and for every stage that looks for its finding.
#pragma once
#include <string_view>

namespace endbell::inline model::rule_id {

inline constexpr std::string_view ambient = "ambient";
inline constexpr std::string_view bearing = "bearing";
inline constexpr std::string_view body_diameter = "body-diameter";
inline constexpr std::string_view body_length = "body-length";
inline constexpr std::string_view bolt_circle = "bolt-circle";
inline constexpr std::string_view capacitor = "capacitor";
inline constexpr std::string_view circuit_ampacity = "circuit-ampacity";
inline constexpr std::string_view connector = "connector";
inline constexpr std::string_view control_power = "control-power";
inline constexpr std::string_view double_shaft = "double-shaft";
inline constexpr std::string_view drive = "drive";
inline constexpr std::string_view enclosure = "enclosure";
inline constexpr std::string_view family = "family";
inline constexpr std::string_view frame = "frame";
inline constexpr std::string_view frequency = "frequency";
inline constexpr std::string_view full_load_current = "full-load-current";
inline constexpr std::string_view inducer_assembly = "inducer-assembly";
inline constexpr std::string_view load = "load";
inline constexpr std::string_view mount = "mount";
inline constexpr std::string_view part_status = "part-status";
inline constexpr std::string_view phase = "phase";
inline constexpr std::string_view poles = "poles";
inline constexpr std::string_view position = "position";
inline constexpr std::string_view power = "power";
inline constexpr std::string_view program = "program";
inline constexpr std::string_view protection = "protection";
inline constexpr std::string_view rotation = "rotation";
inline constexpr std::string_view service_factor = "service-factor";
inline constexpr std::string_view shaft_diameter = "shaft-diameter";
inline constexpr std::string_view shaft_flat = "shaft-flat";
inline constexpr std::string_view shaft_length = "shaft-length";
inline constexpr std::string_view signal_class = "signal-class";
inline constexpr std::string_view speed = "speed";
inline constexpr std::string_view supply_voltage = "supply-voltage";
inline constexpr std::string_view tap_count = "tap-count";
inline constexpr std::string_view tap_rule = "tap-rule";
inline constexpr std::string_view wanted_part = "wanted-part";

/// No rule: what the wiring plan adds to a candidate's findings.
inline constexpr std::string_view wiring = "wiring";

}  // namespace endbell::inline model::rule_id
