#include "engine/quality/quality.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <map>
#include <set>

#include "engine/base/text.hpp"
#include "engine/catalog/database.hpp"
#include "engine/catalog/digest.hpp"
#include "engine/catalog/numbers.hpp"
#include "engine/catalog/stored_catalog.hpp"
#include "engine/model/limit.hpp"
#include "engine/words/write.hpp"

namespace endbell::inline quality {

namespace {

/// One question to the tables. Its rows are: part_id, what was found, what the other side says.
struct Doubt {
    std::string_view kind;
    std::string_view table;
    std::string_view column;
    std::string_view sql;
};

// hp = ozft * rpm / 16 / 5252.113 (33,000 ft-lb/min over 2 pi). 15 % covers rounded plate figures: common
// practice.
//
// nec_amps: NEC Table 430.248 (single phase) and 430.250 (three phase), the 230 V column, read in third-party
// copies; other voltages carry the same power, so amps go with 230 / V. The table is for general-purpose
// motors: an air-over motor of that power draws less, an electronic one may draw more. Doubted is only what
// is above twice the table, or below the shaft power divided by the volts, which no motor can be
// (conservation of energy, a power factor of one).
//
// Frames: NEMA MG 1 table of dimensions, read in third-party copies: shaft of 42 is 3/8, of 48 1/2, of 56 5/8
// in. A letter Y or Z behind the number means a special mounting or shaft, so those are not doubted.
const std::vector<Doubt>& doubts() {
    static const std::vector<Doubt> list{
        {"power", "taps", "torque_ozft",
         "WITH top AS (SELECT part_id, max(torque_ozft) AS torque, speed_rpm AS speed FROM taps WHERE "
         "speed_rpm IS NOT NULL GROUP BY part_id), "
         "rated AS (SELECT part_id, max(power_hp) AS power FROM motor_ratings GROUP BY part_id) "
         "SELECT part_id, torque * speed / 16 / 5252.113, power FROM top JOIN rated USING (part_id) "
         "WHERE abs(torque * speed / 16 / 5252.113 - power) > 0.15 * power ORDER BY part_id"},
        {"current", "motor_ratings", "amps",
         "WITH nec (phase, power, amps) AS (VALUES (1, 0.1666, 2.2), (1, 0.25, 2.9), (1, 0.3333, 3.6), (1, "
         "0.5, 4.9), (1, 0.75, 6.9), "
         "(1, 1.0, 8.0), (1, 1.5, 10.0), (1, 2.0, 12.0), (1, 3.0, 17.0), (3, 0.5, 2.2), (3, 0.75, 3.2), (3, "
         "1.0, 4.2), (3, 1.5, 6.0), "
         "(3, 2.0, 6.8), (3, 3.0, 9.6)) "
         "SELECT part_id, r.amps, n.amps * 230 / CAST(r.volts AS REAL) FROM motor_ratings r JOIN motors m "
         "USING (part_id) "
         "LEFT JOIN nec n ON n.phase = coalesce(m.phase, 1) AND abs(n.power - r.power_hp) < 0.01 * n.power "
         "WHERE r.amps IS NOT NULL AND r.volts IS NOT NULL AND (r.amps > 2 * n.amps * 230 / CAST(r.volts AS "
         "REAL) OR "
         "r.amps < r.power_hp * 745.7 / CAST(substr(r.volts, instr(r.volts, '-') + 1) AS REAL) / "
         "CASE WHEN m.phase = 3 THEN 1.7320508 ELSE 1 END) ORDER BY part_id, r.rating"},
        {"frame", "motors", "shaft_diameter_in",
         "WITH frames (frame, shaft) AS (VALUES ('42', 0.375), ('48', 0.5), ('56', 0.625)) "
         "SELECT part_id, shaft_diameter_in, shaft FROM motors m JOIN frames f ON f.frame = "
         "rtrim(upper(m.frame), 'CHJ') "
         "WHERE abs(shaft_diameter_in - shaft) > 0.002 ORDER BY part_id"},
        {"capacitor", "motors", "capacitor_uf",
         "SELECT part_id, capacitor_uf, NULL FROM motors WHERE capacitor_uf IS NOT NULL AND "
         "family IN ('constant torque', 'constant airflow', 'communicating') ORDER BY part_id"},
        {"tap torque", "taps", "torque_ozft",
         "WITH rated AS (SELECT part_id, max(power_hp * 5252.113 * 16 / speed_rpm) AS torque FROM "
         "motor_ratings GROUP BY part_id) "
         "SELECT part_id, torque_ozft, torque FROM taps JOIN rated USING (part_id) WHERE torque_ozft > 1.15 "
         "* torque ORDER BY part_id, tap"},
        {"rotation", "motors", "rotation_viewed_from",
         "SELECT part_id, rotation, NULL FROM motors WHERE rotation IN ('CW', 'CCW') AND "
         "rotation_viewed_from IS NULL ORDER BY part_id"},
        {"zero price", "offers", "price",
         "SELECT part_id, price, NULL FROM offers WHERE CAST(price AS REAL) = 0 AND price IS NOT NULL ORDER "
         "BY part_id, branch, seller"},
        {"phase", "motors", "capacitor_uf",
         "SELECT part_id, capacitor_uf, NULL FROM motors WHERE phase = 3 AND capacitor_uf IS NOT NULL ORDER "
         "BY part_id"},
        {"shaft flat", "motors", "shaft_flat_in",
         "SELECT part_id, shaft_flat_in, shaft_length_in FROM motors WHERE shaft_flat_in > shaft_length_in "
         "ORDER BY part_id"},
        {"speed and poles", "motor_ratings", "speed_rpm",
         "SELECT part_id, r.speed_rpm, 120 * coalesce(m.frequency_hz, 60) / m.poles FROM motor_ratings r "
         "JOIN motors m USING (part_id) "
         "WHERE m.family NOT IN ('constant torque', 'constant airflow', 'communicating') AND "
         "r.speed_rpm >= 120 * coalesce(m.frequency_hz, 60) / m.poles ORDER BY part_id, r.rating"},
        {"duplicate", "parts", "part_number",
         "WITH keyed AS (SELECT part_id, part_number, maker, number_key(part_number) AS k FROM parts), "
         "twice AS (SELECT maker, k FROM keyed WHERE k <> '' GROUP BY maker, k HAVING count(*) > 1) "
         "SELECT part_id, part_number, maker FROM keyed JOIN twice USING (maker, k) ORDER BY part_id"},
        {"dead link", "cross_references", "part_id",
         "SELECT part_id, old_number, NULL FROM cross_references WHERE part_id NOT IN (SELECT part_id FROM "
         "parts) AND NOT is_known_otherwise(part_id, old_number) ORDER BY part_id, old_number"},
        {"dead link", "accessory_excludes", "other_part_id",
         "SELECT part_id, other_part_id, NULL FROM accessory_excludes WHERE other_part_id NOT IN (SELECT "
         "part_id FROM parts) ORDER BY part_id"},
        {"no own row", "parts", "kind",
         "SELECT part_id, kind, NULL FROM parts WHERE (kind = 'motor' AND part_id NOT IN (SELECT part_id "
         "FROM motors)) OR "
         "(kind = 'module' AND part_id NOT IN (SELECT part_id FROM modules)) OR "
         "(kind = 'accessory' AND part_id NOT IN (SELECT part_id FROM accessories)) ORDER BY part_id"},
        {"no offer", "parts", "status",
         "SELECT part_id, status, NULL FROM parts WHERE status = 'active' AND part_id NOT IN (SELECT part_id "
         "FROM offers) ORDER BY part_id"},
    };
    return list;
}

const std::vector<std::string_view>& kind_order() {
    static const std::vector<std::string_view> order{
        "power",      "current",     "frame",      "capacitor",       "tap torque", "rotation",
        "zero price", "phase",       "shaft flat", "speed and poles", "duplicate",  "dead link",
        "cycle",      "stale price", "no own row", "no offer"};
    return order;
}

class Examiner {
  public:
    Examiner(const std::filesystem::path& file, const QualityOptions& options)
        : file_(file), options_(options), db_(open_finished(file)), numbers_(db_) {
        register_number_key(db_);
        db_.createFunction("is_known_otherwise", 2, true, this, is_known_otherwise);
    }

    QualityReport run() {
        look_for_damage();
        if (!report_.whole) return std::move(report_);
        report_.parts = db_.execAndGet("SELECT count(*) FROM parts").getInt64();
        for (const FieldNeed& need : field_needs()) {
            if (need.of != Concerns::nobody) look_for_gap(need);
        }
        for (const std::string_view kind : kind_order()) {
            const std::int64_t before = found_;
            for (const Doubt& doubt : doubts()) {
                if (doubt.kind == kind) ask(doubt);
            }
            if (kind == "cycle") look_for_cycles();
            if (kind == "stale price" && options_.as_of) look_for_stale_prices();
            if (found_ > before) report_.counts.push_back({std::string(kind), found_ - before});
        }
        return std::move(report_);
    }

  private:
    /// Of a cross reference's (part_id, old_number): whether some other row knows its part_id as a number.
    static void is_known_otherwise(sqlite3_context* context, int, sqlite3_value** values) {
        const std::string_view id = argument_text(values[0]), old_number = argument_text(values[1]);
        const std::string key = number_key(id);
        bool known = false;
        static_cast<Examiner*>(sqlite3_user_data(context))
            ->numbers_.each(sight_key(id), [&](std::string_view number, std::string_view part_id) {
                known = known || (number_key(number) == key && (part_id != id || number != old_number));
            });
        sqlite3_result_int(context, known ? 1 : 0);
    }

    void look_for_damage() {
        try {
            const GenerationRow row = read_generation(db_);
            report_.generation = row.number;
            report_.digest = row.digest;
            report_.digest_checked = has_sums_of_today(db_);
            const std::string verdict = db_.execAndGet("PRAGMA integrity_check(1)").getString();
            if (verdict != "ok")
                report_.damage = verdict;
            else if (!are_written(computed_sums(db_), db_))
                report_.damage = "the rows do not have the digest that was written with them";
        } catch (const SQLite::Exception& failure) {
            report_.damage = failure.getErrorStr();
        }
        report_.whole = report_.damage.empty();
    }

    void look_for_gap(const FieldNeed& need) {
        const bool of_modules = need.table == "modules";
        const std::string parts = of_modules ? "modules" : "motors";
        const std::string asked = need.condition.empty() ? "1" : std::string(need.condition);
        std::string gap = quoted(need.column) + " IS NULL";
        if (need.column == "rotation")
            gap = "(rotation IS NULL OR (rotation <> 'reversible' AND rotation_viewed_from IS NULL))";
        if (need.table == "motor_ratings" || need.table == "taps") {
            gap = fmt::format(
                "NOT EXISTS (SELECT 1 FROM {0} c WHERE c.part_id = motors.part_id AND c.{1} IS NOT NULL)",
                need.table, quoted(need.column));
        }
        SQLite::Statement row(
            db_, fmt::format("SELECT count(*), coalesce(sum({}), 0) FROM {} WHERE {}", gap, parts, asked));
        row.executeStep();
        if (row.getColumn(1).getInt64() == 0) return;
        report_.missing.push_back({std::string(need.table), std::string(need.column), std::string(need.rule),
                                   row.getColumn(1).getInt64(), row.getColumn(0).getInt64()});
    }

    void tell(std::string_view kind, std::string part_id, std::string_view table, std::string_view column,
              Stored found, Stored expected) {
        ++found_;
        if (kind != telling_) {
            telling_ = kind;
            told_ = 0;
        }
        if (told_++ >= options_.most_of_a_kind) return;
        report_.contradictions.push_back({std::string(kind), std::move(part_id), std::string(table),
                                          std::string(column), std::move(found), std::move(expected)});
    }

    void ask(const Doubt& doubt) {
        SQLite::Statement rows(db_, std::string(doubt.sql));
        while (rows.executeStep()) {
            tell(doubt.kind, rows.getColumn(0).getString(), doubt.table, doubt.column,
                 column_value(rows.getColumn(1)), column_value(rows.getColumn(2)));
        }
    }

    void look_for_stale_prices() {
        const double age = StoredCatalog(file_).limits().value(limit::price_age).in(calendar_day);
        SQLite::Statement rows(db_,
                               "SELECT part_id, as_of FROM offers WHERE julianday(?) - julianday(as_of) > ? "
                               "ORDER BY part_id, branch, seller");
        const std::string today = write(*options_.as_of);
        rows.bind(1, today);
        rows.bind(2, age);
        while (rows.executeStep()) {
            tell("stale price", rows.getColumn(0).getString(), "offers", "as_of",
                 rows.getColumn(1).getString(), today);
        }
    }

    /// Supersession as arrows from old to new, over letters and digits of numbers; a part's id and number are
    /// one knot.
    void look_for_cycles() {
        std::map<std::string, std::string> id_of;
        SQLite::Statement parts(
            db_,
            "SELECT part_id, part_number FROM parts WHERE number_key(part_number) <> number_key(part_id) AND "
            "EXISTS "
            "(SELECT 1 FROM cross_references WHERE relation IN ('supersedes', 'superseded by'))");
        while (parts.executeStep())
            id_of[number_key(parts.getColumn(1).getString())] = number_key(parts.getColumn(0).getString());
        const auto knot = [&](const std::string& number) {
            const std::string key = number_key(number);
            const auto found = id_of.find(key);
            return found != id_of.end() ? found->second : key;
        };
        std::map<std::string, std::set<std::string>> arrows;
        SQLite::Statement rows(db_,
                               "SELECT old_number, part_id, relation FROM cross_references WHERE relation IN "
                               "('supersedes', 'superseded by')");
        while (rows.executeStep()) {
            const std::string old_number = knot(rows.getColumn(0).getString());
            const std::string part = knot(rows.getColumn(1).getString());
            if (rows.getColumn(2).getString() == "supersedes")
                arrows[old_number].insert(part);
            else
                arrows[part].insert(old_number);
        }
        // What no arrow leads to, or no arrow leaves, is on no cycle; taking it away repeatedly leaves the
        // cycles and the paths between them.
        std::map<std::string, std::size_t> arriving;
        for (const auto& [from, targets] : arrows) {
            for (const std::string& to : targets) ++arriving[to];
        }
        std::vector<std::string> free;
        for (const auto& [from, targets] : arrows) {
            if (arriving[from] == 0) free.push_back(from);
        }
        while (!free.empty()) {
            const std::string from = free.back();
            free.pop_back();
            const auto found = arrows.find(from);
            if (found == arrows.end()) continue;
            for (const std::string& to : found->second) {
                if (--arriving[to] == 0) free.push_back(to);
            }
            arrows.erase(found);
        }
        for (bool removed = true; removed;) {
            removed = false;
            for (auto& [from, targets] : arrows) {
                for (auto to = targets.begin(); to != targets.end();) {
                    const bool dead_end = arrows.count(*to) == 0;
                    to = dead_end ? targets.erase(to) : std::next(to);
                    removed = removed || dead_end;
                }
            }
            for (auto it = arrows.begin(); it != arrows.end();)
                it = it->second.empty() ? arrows.erase(it) : std::next(it);
        }
        for (const auto& [from, targets] : arrows)
            tell("cycle", from, "cross_references", "part_id", *targets.begin(), {});
    }

    const std::filesystem::path& file_;
    const QualityOptions& options_;
    SQLite::Database db_;
    Numbers numbers_;
    QualityReport report_;
    std::int64_t found_ = 0;
    std::string_view telling_;
    std::size_t told_ = 0;
};

}  // namespace

QualityReport quality_of(const std::filesystem::path& catalog, const QualityOptions& options) {
    return guarded(catalog, [&] { return Examiner(catalog, options).run(); });
}

}  // namespace endbell::inline quality
