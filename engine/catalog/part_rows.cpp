#include "engine/catalog/part_rows.hpp"

#include <algorithm>
#include <array>

#include "engine/catalog/database.hpp"
#include "engine/catalog/digest.hpp"
#include "engine/catalog/row_reader.hpp"
#include "engine/fields/tables.hpp"

namespace endbell::inline catalog {

namespace {

constexpr std::uint64_t every_column = ~std::uint64_t{0};

/// What no rule looks at (tested: the fields of all rules are the same without it).
constexpr std::array passed_over = std::to_array<std::string_view>(
    {"parts.maker", "parts.part_number", "parts.status", "parts.description", "motors.frame",
     "motors.bearing", "motors.efficiency", "taps.label", "taps.speed_rpm", "taps.signal",
     "motors.service_factor", "taps.off_delay_s", "terminals.label", "terminals.connector",
     "motors.warranty_months", "modules.warranty_months"});

/// The columns of a row in their places, those without their bit as NULL.
std::string sql_of(std::string_view name, std::uint64_t columns, const std::string& rest) {
    const Table& table = table_named(name);
    if (columns == every_column) return select_all(table, rest);
    std::string list;
    for (std::size_t i = 0; i < table.columns.size(); ++i) {
        const bool wanted = (columns & column_bit(i)) != 0;
        list += (list.empty() ? "" : ", ") + (wanted ? quoted(table.columns[i].name) : "NULL");
    }
    return "SELECT " + list + " FROM " + quoted(name) + " " + rest;
}

PlainStatement selecting(SQLite::Database& db, std::string_view name, std::uint64_t columns,
                         const std::string& rest) {
    PlainStatement rows(db, sql_of(name, columns, rest));
    rows.tell_known(columns);
    return rows;
}

}  // namespace

/// Which columns of a table are to be read.
class PartRows::Columns {
  public:
    Columns(SQLite::Database& db, PartReading reading) : to_match_(reading == PartReading::to_match) {
        if (to_match_) sums_ = written_sums(db);
    }
    std::uint64_t of(std::string_view name) const {
        if (!to_match_) return every_column;
        std::uint64_t columns = sums_.find(name)->second.filled;
        const Table& table = table_named(name);
        for (std::size_t i = 0; i < table.columns.size(); ++i) {
            const std::string column = std::string(name) + "." + std::string(table.columns[i].name);
            if (std::find(passed_over.begin(), passed_over.end(), column) != passed_over.end())
                columns &= ~column_bit(i);
        }
        return columns;
    }

  private:
    bool to_match_;
    RowSums sums_;
};

Rows::Rows(SQLite::Database& db, std::string_view table, PartReading reading, std::uint64_t columns,
           const std::string& condition)
    : rows_(selecting(db, table, columns,
                      (reading == PartReading::of_one_part ? "WHERE part_id = ? " : "WHERE part_id >= ? ") +
                          condition + in_order(table_named(table)))),
      of_one_part_(reading == PartReading::of_one_part) {}

PartRows::PartRows(SQLite::Database& db, PartReading reading) : PartRows(db, reading, Columns(db, reading)) {}

PartRows::PartRows(SQLite::Database& db, PartReading reading, const Columns& columns)
    : motors_(db, "motors", reading, columns.of("motors")),
      ratings_(db, "motor_ratings", reading, columns.of("motor_ratings")),
      taps_(db, "taps", reading, columns.of("taps")),
      // Of terminals a rule only asks whether there is one for the run signal: most of all rows are terminals.
      terminals_(db, "terminals", reading, columns.of("terminals"),
                 reading == PartReading::to_match ? "AND function = 'run signal' " : ""),
      modules_(db, "modules", reading, columns.of("modules")),
      fits_(db, "module_fits", reading, columns.of("module_fits"),
            reading == PartReading::to_match ? "AND FALSE " : ""),
      cures_(db, "accessories", reading, columns.of("accessories")),
      excludes_(db, "accessory_excludes", reading, columns.of("accessory_excludes")) {}

void PartRows::fill(Part& part) {
    if (part.motor) fill_motor(part.id, *part.motor);
    if (part.module) fill_module(part.id, *part.module);
    if (part.accessory) fill_accessory(part.id, *part.accessory);
}

void PartRows::fill_motor(const std::string& id, Motor& motor) {
    motors_.of(id, [&](const PlainStatement& row) { read_motor(row, motor); });
    ratings_.of(id, [&](const PlainStatement& row) { motor.ratings.push_back(read_rating(row)); });
    taps_.of(id, [&](const PlainStatement& row) { motor.taps.push_back(read_tap(row)); });
    terminals_.of(id, [&](const PlainStatement& row) { motor.terminals.push_back(read_terminal(row)); });
}

void PartRows::fill_module(const std::string& id, Module& module) {
    modules_.of(id, [&](const PlainStatement& row) { read_module(row, module); });
    fits_.of(id, [&](const PlainStatement& row) { module.fits.emplace_back(row.text(1)); });
    terminals_.of(id, [&](const PlainStatement& row) { module.terminals.push_back(read_terminal(row)); });
}

void PartRows::fill_accessory(const std::string& id, Accessory& accessory) {
    cures_.of(id, [&](const PlainStatement& row) { accessory.cures.push_back(read_cure(row)); });
    excludes_.of(id, [&](const PlainStatement& row) { accessory.excludes.emplace_back(row.text(1)); });
}

void PartRows::each(SQLite::Database& db, PartReading reading, const IdRange& range,
                    const std::string& condition, const std::function<void(const Part&)>& visit) {
    const Columns columns(db, reading);
    PlainStatement all =
        selecting(db, "parts", columns.of("parts"), "WHERE part_id >= ? " + condition + "ORDER BY part_id");
    PartRows rows(db, reading, columns);
    all.restart(range.from);
    while (all.step()) {
        Part part = read_part(all);
        if (!range.holds(part.id)) return;
        rows.fill(part);
        visit(part);
    }
}

}  // namespace endbell::inline catalog
