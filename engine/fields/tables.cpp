#include "engine/fields/tables.hpp"

#include "engine/base/ensure.hpp"
#include "engine/fields/part_columns.hpp"

namespace endbell::inline fields {

namespace {

/// What a table needs of its columns.
template <class Row>
std::vector<Column> plain(const RowColumns<Row>& columns) {
    return {columns.begin(), columns.end()};
}

}  // namespace

const std::vector<Table>& tables() {
    static const std::vector<Table> all{
        {"parts", 1, "", std::nullopt, "Parts",
         "Everything that can be bought: one row a part, whatever its kind.", plain(part_columns())},
        {"motors", 1, "parts", PartKind::motor, "Motors",
         "What a motor is and how it is held: one row for each part of kind motor. An empty cell is unknown, "
         "which is never a pass and never a fail.",
         plain(motor_columns())},
        {"motor_ratings", 2, "motors", PartKind::motor, "Motor ratings",
         "Power, voltage, current and speed that belong together. A motor for two voltages, or of several "
         "powers, has several rows.",
         plain(rating_columns())},
        {"taps", 2, "motors", PartKind::motor, "Taps",
         "Speeds that a motor can be set to: speed leads of an induction motor, taps of an electronic one.",
         plain(tap_columns())},
        {"modules", 1, "parts", PartKind::module, "Modules",
         "Control halves of constant-airflow motors: one row for each part of kind module.",
         plain(module_columns())},
        {"module_fits", 2, "modules", PartKind::module, "Module fits", "Motors that a module belongs to.",
         module_fit_columns()},
        {"terminals",
         4,
         "parts",
         std::nullopt,
         "Terminals",
         "Where wires land on a part. Wiring comes from here, never from the colour of a wire.",
         plain(terminal_columns()),
         {"part_id", "label", "function", "connector"}},
        {"accessories", 2, "parts", PartKind::accessory, "Accessories",
         "What an accessory puts right, one row a cure. Sizes are those of the cure: a bushing goes from the "
         "shaft to the bore.",
         plain(cure_columns())},
        {"accessory_excludes", 2, "parts", PartKind::accessory, "Accessory excludes",
         "Parts that cannot be used together with an accessory.", exclude_columns()},
        {"cross_references", 3, "", std::nullopt, "Cross references",
         "What became of old numbers. Each row is a claim with its source; rules still check the fit.",
         reference_columns()},
        {"offers",
         3,
         "parts",
         std::nullopt,
         "Offers",
         "Prices, with seller, branch and date. A table of its own: it may be replaced alone every night.",
         offer_columns(),
         {"part_id", "seller", "branch", "price", "currency", "core_credit", "stock", "lead_days", "as_of"}},
        {"labour_tasks", 1, "", std::nullopt, "Labour tasks",
         "Hours that the shop takes for a piece of work.", labour_columns()},
        {"limits", 1, "", std::nullopt, "Limits",
         "Rows of the program's own limits that this shop tightens. Loosening one is refused.",
         limit_columns()},
    };
    return all;
}

const std::vector<std::string_view>& tables_of_parts() {
    static const std::vector<std::string_view> names{"parts", "motors",  "motor_ratings",
                                                     "taps",  "modules", "terminals"};
    return names;
}

const Table* find_table(std::string_view name) {
    for (const Table& table : tables()) {
        if (table.name == name) return &table;
    }
    return nullptr;
}

const Table& table_named(std::string_view name) {
    const Table* found = find_table(name);
    ensure(found != nullptr, "every table that the store reads is one of these");
    return *found;
}

const Column* find_column(const Table& table, std::string_view name) {
    for (const Column& column : table.columns) {
        if (column.name == name) return &column;
    }
    return nullptr;
}

}  // namespace endbell::inline fields
