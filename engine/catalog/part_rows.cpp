#include "engine/catalog/part_rows.hpp"

#include "engine/catalog/database.hpp"
#include "engine/catalog/digest.hpp"
#include "engine/fields/part_columns.hpp"
#include "engine/fields/tables.hpp"

namespace endbell::inline catalog {

namespace {

constexpr std::uint64_t every_column = ~std::uint64_t{0};

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
            if (table.columns[i].seen == Seen::by_people) columns &= ~column_bit(i);
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
    motors_.of(id, [&](const PlainStatement& row) { read_row(row, motor_columns(), motor); });
    ratings_.of(id, [&](const PlainStatement& row) {
        read_row(row, rating_columns(), motor.ratings.emplace_back());
    });
    taps_.of(id, [&](const PlainStatement& row) { read_row(row, tap_columns(), motor.taps.emplace_back()); });
    terminals_.of(id, [&](const PlainStatement& row) {
        read_row(row, terminal_columns(), motor.terminals.emplace_back());
    });
}

void PartRows::fill_module(const std::string& id, Module& module) {
    modules_.of(id, [&](const PlainStatement& row) { read_row(row, module_columns(), module); });
    fits_.of(id, [&](const PlainStatement& row) { module.fits.emplace_back(row.text(1)); });
    terminals_.of(id, [&](const PlainStatement& row) {
        read_row(row, terminal_columns(), module.terminals.emplace_back());
    });
}

void PartRows::fill_accessory(const std::string& id, Accessory& accessory) {
    cures_.of(id, [&](const PlainStatement& row) {
        read_row(row, cure_columns(), accessory.cures.emplace_back());
    });
    excludes_.of(id, [&](const PlainStatement& row) { accessory.excludes.emplace_back(row.text(1)); });
}

Part read_part(const PlainStatement& row) {
    Part part;
    read_row(row, part_columns(), part);
    if (part.kind == PartKind::motor) part.motor.emplace();
    if (part.kind == PartKind::module) part.module.emplace();
    if (part.kind == PartKind::accessory) part.accessory.emplace();
    return part;
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
