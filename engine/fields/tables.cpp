#include "engine/fields/tables.hpp"

#include "engine/base/check.hpp"

namespace endbell::inline fields {

namespace {

constexpr auto required = Need::required;
constexpr auto optional = Need::optional;

// A column a line.
// clang-format off
const std::vector<Table>& all() {
    static const std::vector<Table> list{
        {"parts", 1, "", std::nullopt, {
            {"part_id", cells::number_text, required},
            {"kind", cells::part_kind, required},
            {"maker", cells::text, required},
            {"part_number", cells::number_text, required},
            {"status", cells::part_status, optional, "active"},
            {"description", cells::text}}},
        {"motors", 1, "parts", PartKind::motor, {
            {"part_id", cells::number_text, required},
            {"family", cells::family},
            {"loads", cells::loads},
            {"retrofit_for", cells::families},
            {"phase", cells::phase},
            {"frequency_hz", cells::hertz},
            {"poles", cells::poles},
            {"rotation", cells::rotation},
            {"rotation_viewed_from", cells::viewed_from},
            {"double_shaft", cells::yes_no},
            {"shaft_diameter_in", cells::inches},
            {"shaft_length_in", cells::inches},
            {"shaft_flat_in", cells::inches},
            {"shaft_cuttable", cells::yes_no},
            {"body_diameter_in", cells::inches},
            {"body_length_in", cells::inches},
            {"frame", cells::text},
            {"mount", cells::mount},
            {"bolt_circle_in", cells::inches},
            {"enclosure", cells::enclosure},
            {"bearing", cells::bearing},
            {"positions", cells::positions},
            {"ambient_c", cells::celsius},
            {"service_factor", cells::service_factor},
            {"protection", cells::protection},
            {"capacitor_uf", cells::microfarad},
            {"capacitor_v", cells::single_volts},
            {"speeds", cells::speeds},
            {"signal", cells::signal},
            {"tap_rule", cells::tap_rule},
            {"speed_limit_rpm", cells::rpm},
            {"program", cells::number_text},
            {"assembly", cells::number_text},
            {"connector", cells::text},
            {"efficiency", cells::efficiency},
            {"warranty_months", cells::count}}},
        {"motor_ratings", 2, "motors", PartKind::motor, {
            {"part_id", cells::number_text, required},
            {"rating", cells::count, required},
            {"power_hp", cells::horsepower},
            {"volts", cells::volts},
            {"amps", cells::amps},
            {"speed_rpm", cells::rpm},
            {"selection", cells::selection}}},
        {"taps", 2, "motors", PartKind::motor, {
            {"part_id", cells::number_text, required},
            {"tap", cells::count, required},
            {"label", cells::text},
            {"torque_ozft", cells::ounce_feet},
            {"speed_rpm", cells::rpm},
            {"signal", cells::signal},
            {"off_delay_s", cells::seconds}}},
        {"modules", 1, "parts", PartKind::module, {
            {"part_id", cells::number_text, required},
            {"program", cells::number_text},
            {"volts", cells::volts},
            {"signal", cells::signal},
            {"power_hp", cells::horsepower},
            {"warranty_months", cells::count}}},
        {"module_fits", 2, "modules", PartKind::module, {
            {"part_id", cells::number_text, required},
            {"motor", cells::number_text, required}}},
        {"terminals", 4, "parts", std::nullopt, {
            {"part_id", cells::number_text, required},
            {"connector", cells::text, optional, ""},
            {"label", cells::text, required},
            {"function", cells::terminal_function, required}}},
        {"accessories", 2, "parts", PartKind::accessory, {
            {"part_id", cells::number_text, required},
            {"cure_no", cells::count, required},
            {"cure", cells::cure, required},
            {"from_in", cells::inches},
            {"to_in", cells::inches},
            {"capacitor_uf", cells::microfarad},
            {"capacitor_v", cells::single_volts},
            {"mount", cells::mount},
            {"coil_v", cells::single_volts},
            {"power_va", cells::volt_amperes},
            {"poles", cells::count},
            {"connector_from", cells::text},
            {"connector_to", cells::text}}},
        {"accessory_excludes", 2, "parts", PartKind::accessory, {
            {"part_id", cells::number_text, required},
            {"other_part_id", cells::number_text, required}}},
        {"cross_references", 3, "", std::nullopt, {
            {"old_number", cells::number_text, required},
            {"part_id", cells::number_text, required},
            {"relation", cells::relation, required},
            {"source", cells::text, required}}},
        {"offers", 3, "parts", std::nullopt, {
            {"part_id", cells::number_text, required},
            {"branch", cells::text, optional, ""},
            {"seller", cells::text, required},
            {"price", cells::text},
            {"currency", cells::currency_code, required},
            {"core_credit", cells::text},
            {"stock", cells::count},
            {"lead_days", cells::count},
            {"as_of", cells::date, required}}},
        {"labour_tasks", 1, "", std::nullopt, {
            {"task", cells::labour_task, required},
            {"hours", cells::hours, required},
            {"source", cells::text, required}}},
        {"limits", 1, "", std::nullopt, {
            {"limit", cells::limit_id, required},
            {"value", cells::plain_number, required},
            {"set_by", cells::text, required}}},
    };
    return list;
}
// clang-format on

}  // namespace

const std::vector<Table>& tables() {
    return all();
}

const std::vector<std::string_view>& tables_of_parts() {
    static const std::vector<std::string_view> names{"parts", "motors",  "motor_ratings",
                                                     "taps",  "modules", "terminals"};
    return names;
}

const Table* find_table(std::string_view name) {
    for (const Table& table : all()) {
        if (table.name == name) return &table;
    }
    return nullptr;
}

const Table& table_named(std::string_view name) {
    const Table* found = find_table(name);
    check(found != nullptr, "every table that the store reads is one of these");
    return *found;
}

const Column* find_column(const Table& table, std::string_view name) {
    for (const Column& column : table.columns) {
        if (column.name == name) return &column;
    }
    return nullptr;
}

}  // namespace endbell::inline fields
