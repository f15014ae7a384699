#include "engine/catalog/stored_catalog.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <deque>
#include <limits>
#include <set>

#include "engine/base/hash.hpp"
#include "engine/base/text.hpp"
#include "engine/catalog/database.hpp"
#include "engine/catalog/digest.hpp"
#include "engine/catalog/numbers.hpp"
#include "engine/catalog/part_rows.hpp"
#include "engine/catalog/shop_rows.hpp"

namespace endbell::inline catalog {

struct StoredCatalog::State {
    explicit State(const std::filesystem::path& path)
        : file(path),
          db(open_finished(path)),
          parts(db, select_all(table_named("parts"), "WHERE part_id = ?")),
          part_rows(db, PartReading::of_one_part),
          offers(db, select_all(table_named("offers"), "WHERE part_id = ? ORDER BY branch, seller")),
          references(db, select_all(table_named("cross_references"),
                                    "WHERE old_number = ? ORDER BY part_id, relation")),
          by_part(db, select_all(table_named("cross_references"),
                                 "WHERE part_id = ? ORDER BY old_number, relation")),
          labour(db, select_all(table_named("labour_tasks"), "WHERE task = ?")),
          numbers(db),
          stamp(read_generation(db)) {
        SQLite::Statement rows(db, select_all(table_named("limits"), "ORDER BY \"limit\""));
        while (rows.executeStep()) {
            const std::string id = rows.getColumn(0).getString();
            if (limits.tighten(id, rows.getColumn(1).getDouble(), rows.getColumn(2).getString()) !=
                Limits::Tightening::accepted) {
                damaged_value(id);
            }
        }
    }

    /// (number, part_id) pairs whose number has the same letters and digits (`alike` false), or only looks
    /// alike (true).
    std::vector<NumberedPart> numbered(std::string_view number, bool alike) {
        std::vector<NumberedPart> found;
        const std::string key = number_key(number);
        numbers.each(sight_key(number), [&](std::string_view seen, std::string_view part_id) {
            if ((number_key(seen) != key) == alike)
                found.push_back({std::string(seen), std::string(part_id)});
        });
        return found;
    }

    void each_part(PartReading reading, const IdRange& range, const std::string& condition,
                   const std::function<void(const Part&)>& visit) {
        guarded(file, [&] { PartRows::each(db, reading, range, condition, visit); });
    }

    std::filesystem::path file;
    SQLite::Database db;
    PlainStatement parts;
    PartRows part_rows;
    PlainStatement offers;
    PlainStatement references;
    PlainStatement by_part;
    PlainStatement labour;
    Numbers numbers;
    GenerationRow stamp;
    Limits limits;
};

StoredCatalog::StoredCatalog(const std::filesystem::path& file)
    : state_(guarded(file, [&] { return std::make_unique<State>(file); })) {}
StoredCatalog::~StoredCatalog() = default;

void StoredCatalog::each_part(const std::function<void(const Part&)>& visit) const {
    state_->each_part(PartReading::of_all, {}, "", visit);
}

void StoredCatalog::each_part_to_match(const IdRange& range,
                                       const std::function<void(const Part&)>& visit) const {
    state_->each_part(PartReading::to_match, range, "AND kind <> 'accessory' ", visit);
}

void StoredCatalog::each_accessory(const std::function<void(const Part&)>& visit) const {
    // Of accessories alone: their tables are short.
    state_->each_part(PartReading::of_all, {},
                      "AND kind = 'accessory' AND part_id IN (SELECT part_id FROM accessories) ", visit);
}

std::vector<Part> StoredCatalog::modules_of(std::string_view program) const {
    return guarded(state_->file, [&] {
        const std::string wanted = number_key(program);
        PlainStatement rows(
            state_->db, "SELECT part_id, program FROM modules WHERE program IS NOT NULL ORDER BY part_id");
        std::vector<Part> found;
        while (rows.step()) {
            if (number_key(rows.text(1)) != wanted) continue;
            if (std::optional<Part> whole = part(rows.text(0))) found.push_back(std::move(*whole));
        }
        return found;
    });
}

void StoredCatalog::each_least_price(const std::function<void(std::string_view, std::int64_t)>& visit) const {
    guarded(state_->file, [&] {
        PlainStatement rows(state_->db,
                            "SELECT part_id, price, currency, core_credit FROM offers ORDER BY part_id");
        std::string part_id;
        constexpr std::int64_t none = std::numeric_limits<std::int64_t>::max();
        std::int64_t least = none;
        const auto tell = [&] {
            if (least != none) visit(part_id, least);
            least = none;
        };
        while (rows.step()) {
            const std::string_view next = rows.text(0);
            if (part_id != next) {
                tell();
                part_id = next;
            }
            least = std::min(least, read_asked(rows).value_or(none));
        }
        tell();
    });
}

std::optional<Part> StoredCatalog::part(std::string_view id) const {
    return guarded(state_->file, [&]() -> std::optional<Part> {
        state_->parts.restart(id);
        if (!state_->parts.step()) return std::nullopt;
        Part part = read_part(state_->parts);
        state_->part_rows.fill(part);
        return part;
    });
}

void StoredCatalog::map_pages() const {
    guarded(state_->file, [&] { endbell::map_pages(state_->db); });
}

std::vector<Offer> StoredCatalog::offers(std::string_view part_id) const {
    return guarded(state_->file, [&] {
        std::vector<Offer> found;
        state_->offers.restart(part_id);
        while (state_->offers.step()) found.push_back(read_offer(state_->offers));
        return found;
    });
}

std::vector<CrossReference> StoredCatalog::references(std::string_view old_number) const {
    return guarded(state_->file, [&] {
        std::set<std::string> spellings;
        for (const NumberedPart& same : state_->numbered(old_number, false)) spellings.insert(same.number);
        std::vector<CrossReference> found;
        for (const std::string& spelling : spellings) {
            state_->references.restart(spelling);
            while (state_->references.step()) found.push_back(read_reference(state_->references));
        }
        return found;
    });
}

std::optional<LabourTask> StoredCatalog::labour(std::string_view task) const {
    return guarded(state_->file, [&]() -> std::optional<LabourTask> {
        state_->labour.restart(task);
        if (!state_->labour.step()) return std::nullopt;
        return read_labour(state_->labour);
    });
}

const Limits& StoredCatalog::limits() const {
    return state_->limits;
}
std::string StoredCatalog::middle_id() const {
    return guarded(state_->file, [&] {
        SQLite::Statement row(state_->db,
                              "SELECT part_id FROM parts ORDER BY part_id LIMIT 1 OFFSET "
                              "(SELECT row_count / 2 FROM table_digests WHERE table_name = 'parts')");
        return row.executeStep() ? row.getColumn(0).getString() : "";
    });
}
int StoredCatalog::generation() const {
    return state_->stamp.number;
}
std::string StoredCatalog::digest() const {
    return state_->stamp.digest;
}
std::string StoredCatalog::digest_of(const std::vector<std::string_view>& tables) const {
    return guarded(state_->file, [&] {
        std::string all;
        SQLite::Statement row(state_->db, "SELECT row_sum FROM table_digests WHERE table_name = ?");
        for (const std::string_view table : tables) {
            const std::string name(table);
            row.bind(1, name);
            all += name + "=" + (row.executeStep() ? row.getColumn(0).getString() : "") + ";";
            row.reset();
        }
        return fingerprint(all);
    });
}
std::string StoredCatalog::stamp() const {
    return fmt::format("generation {}, digest {}", generation(), digest());
}

std::vector<std::string> StoredCatalog::parts_numbered(std::string_view number) const {
    return guarded(state_->file, [&] {
        std::set<std::string> ids;
        for (const NumberedPart& same : state_->numbered(number, false)) {
            const std::optional<Part> found = part(same.part_id);
            const bool own = found && (number_key(found->id) == number_key(number) ||
                                       number_key(found->number) == number_key(number));
            if (own) ids.insert(same.part_id);
        }
        return std::vector<std::string>(ids.begin(), ids.end());
    });
}

void StoredCatalog::each_number(
    const std::function<void(std::string_view, std::string_view, std::string_view)>& visit) const {
    guarded(state_->file, [&] { state_->numbers.each_of_all(visit); });
}

void StoredCatalog::each_description(
    const std::function<void(std::string_view, std::string_view)>& visit) const {
    guarded(state_->file, [&] {
        PlainStatement rows(
            state_->db, "SELECT part_id, description FROM parts WHERE description <> '' ORDER BY part_id");
        while (rows.step()) visit(rows.text(0), rows.text(1));
    });
}

std::vector<NumberedPart> StoredCatalog::misread_numbers(std::string_view number) const {
    return guarded(state_->file, [&] { return state_->numbered(number, true); });
}

Succession StoredCatalog::succession(std::string_view number) const {
    Succession chain;
    std::set<std::string> passed{number_key(number)};
    std::deque<std::string> open{std::string(number)};
    while (!open.empty()) {
        const std::string from = open.front();
        open.pop_front();
        // A number may stand for a part under its id and under its number: both are the same thing.
        std::set<std::string> names{from};
        for (const std::string& id : parts_numbered(from)) {
            names.insert(id);
            names.insert(part(id)->number);
        }
        for (const std::string& name : names) passed.insert(number_key(name));
        std::vector<SuccessionStep> steps;
        for (const std::string& name : names) {
            for (const CrossReference& r : references(name)) {
                if (r.relation == Relation::supersedes) steps.push_back({from, r.part_id, r.source});
            }
            guarded(state_->file, [&] {
                state_->by_part.restart(name);
                while (state_->by_part.step()) {
                    const CrossReference r = read_reference(state_->by_part);
                    if (r.relation == Relation::superseded_by)
                        steps.push_back({from, r.old_number, r.source});
                }
            });
        }
        std::set<std::string> targets;
        for (SuccessionStep& step : steps) {
            if (!targets.insert(number_key(step.to)).second) continue;
            if (passed.insert(number_key(step.to)).second)
                open.push_back(step.to);
            else
                chain.cycle = true;
            chain.steps.push_back(std::move(step));
        }
        if (steps.empty() && !chain.steps.empty()) {
            const std::vector<std::string> ids = parts_numbered(from);
            chain.ends.push_back(ids.empty() ? from : ids.front());
        }
    }
    std::sort(chain.ends.begin(), chain.ends.end());
    chain.ends.erase(std::unique(chain.ends.begin(), chain.ends.end()), chain.ends.end());
    return chain;
}

std::vector<TableRows> StoredCatalog::rows_of(std::string_view part_id) const {
    return guarded(state_->file, [&] {
        std::vector<TableRows> all;
        for (const Table& each : tables()) {
            if (find_column(each, "part_id") == nullptr) continue;
            SQLite::Statement rows(state_->db, select_all(each, "WHERE part_id = ? " + in_order(each)));
            rows.bind(1, std::string(part_id));
            TableRows found;
            found.table = std::string(each.name);
            for (const Column& column : each.columns) found.columns.emplace_back(column.name);
            while (rows.executeStep()) {
                found.rows.emplace_back();
                for (int i = 0; i < rows.getColumnCount(); ++i)
                    found.rows.back().push_back(column_value(rows.getColumn(i)));
            }
            if (!found.rows.empty()) all.push_back(std::move(found));
        }
        if (all.empty() || all.front().table != "parts") all.clear();
        return all;
    });
}

}  // namespace endbell::inline catalog
