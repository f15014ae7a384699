#include "engine/import/loader.hpp"

#include <fmt/format.h>
#include <sqlite3.h>

#include <algorithm>

#include "engine/base/hash.hpp"
#include "engine/base/text.hpp"
#include "engine/catalog/database.hpp"
#include "engine/import/batch_insert.hpp"

namespace endbell::inline import {

namespace {

/// Between these a rollback journal in memory, where there is one, is given back, and somebody is told how far it has come.
constexpr std::int64_t rows_a_report = 10'000;
constexpr std::size_t most_reasons = 100;

std::uint64_t aside_key(std::string_view table, std::string_view part_id) {
    return hash_of(std::string(table) + "|" + std::string(part_id));
}

std::string_view text_of(const Stored& value) {
    const auto* text = std::get_if<std::string>(&value);
    return text != nullptr ? std::string_view(*text) : std::string_view();
}

}  // namespace

struct Loader::Target {
    Target(SQLite::Database& db, const TableFile& file, const ParentIds* known)
        : insert(db, *file.table, file.fed) {
        const Table& table = *file.table;
        if (!table.parent.empty()) parents.emplace(db, table.parent, known);
        if (table.kind && table.parent == "parts") kind = word(*table.kind);
    }
    BatchInsert insert;
    std::optional<ParentRows> parents;
    std::string_view kind;  // of part that may have such rows; empty: any
};

Loader::Loader(SQLite::Database& db, SetAside& set_aside, const ImportOptions& options, ImportReport& report)
    : db_(db), set_aside_(set_aside), options_(options), report_(report) {}

void Loader::load(std::vector<TableFile>& files, const std::function<void()>& parts_stored) {
    for (const TableFile& file : files) bytes_in_all_ += file.csv.size();
    const Table* const last_of_parts = find_table(tables_of_parts().back());
    bool told = false;
    for (TableFile& file : files) {
        if (!told && file.table > last_of_parts) {
            parts_stored();
            told = true;
        }
        Target target(db_, file, known_rows(file.table->parent));
        FileReport counts;
        counts.file = file.path.string();
        counts.table = std::string(file.table->name);
        counts.delimiter = file.csv.delimiter();
        counts.columns = file.columns;
        load_file(file, target, counts);
        counts.encoding = std::string(word(file.csv.encoding()));
        report_.rows_in += counts.rows_in;
        report_.accepted += counts.accepted;
        report_.set_aside += counts.set_aside;
        report_.files.push_back(std::move(counts));
        bytes_before_ += file.csv.size();
    }
    if (!told) parts_stored();
    for (const auto& [key, rows] : reasons_) {
        report_.reasons.push_back({std::get<0>(key), std::get<1>(key), std::get<2>(key), rows});
    }
    std::stable_sort(report_.reasons.begin(), report_.reasons.end(),
                     [](const ReasonCount& a, const ReasonCount& b) { return a.rows > b.rows; });
}

void Loader::load_file(TableFile& file, Target& target, FileReport& counts) {
    RowSum& sum = sums_[std::string(file.table->name)];
    for (const std::size_t i : file.fed) sum.filled |= column_bit(i);
    ParentIds* const ids = ids_to_know(*file.table);
    const bool has_kind = file.table->name == "parts";
    set_aside_.begin_file(file.path, file.csv.head_bytes());
    db_.exec("BEGIN");
    ReadAhead rows(file);
    for (std::int64_t told = 0;;) {
        ReadAhead::Batch& batch = rows.next();
        const std::span<ReadRow> read(batch.rows.data(), batch.count);
        for (ReadRow& row : read) check_parent(file, row, target);
        store(file, read, target);
        for (const ReadRow& row : read) {
            ++counts.rows_in;
            if (row.problems.empty()) {
                ++counts.accepted;
                if (ids != nullptr) ids->add(text_of(row.values[0]), has_kind ? text_of(row.values[1]) : "");
                sum.add(row.fingerprint);
            } else {
                ++counts.set_aside;
                put_aside(file, row.row, row.problems);
            }
        }
        const bool at_end = read.empty();
        if (!at_end && counts.rows_in - told < rows_a_report) continue;
        told = counts.rows_in;
        db_.exec("COMMIT");
        tell(file, batch.bytes_read, counts.rows_in);
        if (at_end) break;
        db_.exec("BEGIN");
    }
    counts.set_aside_file = set_aside_.file();
}

/// Null: they are to be asked of the table.
const ParentIds* Loader::known_rows(std::string_view table) const {
    const auto known = parents_.find(table);
    return known != parents_.end() && known->second.are_all() ? &known->second : nullptr;
}

/// Where to keep the ids of a table that others name as theirs; null: nowhere.
ParentIds* Loader::ids_to_know(const Table& table) {
    const bool is_parent =
        std::any_of(tables().begin(), tables().end(), [&](const Table& t) { return t.parent == table.name; });
    return is_parent && options_.mode == ImportMode::whole ? &parents_[std::string(table.name)] : nullptr;
}

void Loader::store(const TableFile& file, std::span<ReadRow> rows, Target& target) {
    for (std::size_t next = 0; next < rows.size();) {
        const BatchInsert::StoredRows outcome = target.insert.store(rows, next);
        next = outcome.end;
        if (outcome.refusal == 0) continue;
        refused_by_store(file, rows[next].row, outcome.refusal, rows[next].problems);
        ++next;
    }
}

/// Rows of motors belong to parts of kind motor, and so on.
void Loader::check_parent(const TableFile& file, ReadRow& read, Target& target) {
    const CsvRow& row = read.row;
    if (!row.damage.empty()) {
        read.problems.push_back({{file.path.string(), row.line, 0},
                                 "row",
                                 std::string(beginning(row.bytes, 80)),
                                 row.damage,
                                 "mend the line"});
    }
    if (!read.problems.empty() || !target.parents) return;
    if (!target.parents->find(text_of(read.values.front()))) {
        missing_parent(file, row, file.table->parent, read.problems);
    } else if (!target.kind.empty() && target.parents->kind() != target.kind) {
        read.problems.push_back(
            problem_at(file, row, "part_id",
                       fmt::format("a part of kind {}, not {}", target.kind, target.parents->kind()),
                       "correct the part's kind, or move the row to its own table"));
    }
}

void Loader::missing_parent(const TableFile& file, const CsvRow& row, std::string_view parent,
                            std::vector<Problem>& problems) {
    const std::string id = cleaned(cell_text(file, row, "part_id"));
    if (was_set_aside(parent, id)) {
        problems.push_back(
            problem_at(file, row, "part_id", fmt::format("a part whose row in {} was accepted", parent),
                       fmt::format("mend that row of {}; this one is right as it stands", parent)));
        return;
    }
    problems.push_back(problem_at(file, row, "part_id", fmt::format("a part_id of {}", parent),
                                  fmt::format("add the part to {}, or correct the id", parent)));
}

void Loader::refused_by_store(const TableFile& file, const CsvRow& row, int code,
                              std::vector<Problem>& problems) {
    const Table& table = *file.table;
    if (code == SQLITE_CONSTRAINT_PRIMARYKEY || code == SQLITE_CONSTRAINT_UNIQUE) {
        std::string key;
        for (std::size_t i = 0; i < table.key_columns; ++i) {
            key += (i == 0 ? "" : " + ") + std::string(table.columns[i].name);
        }
        problems.push_back(problem_at(file, row, table.columns.front().name, "each " + key + " once",
                                      "an earlier row has the same: keep the right one"));
    } else {  // its readers and CHECKs let it pass, and the types of the store do not
        problems.push_back({{file.path.string(), row.line, 0},
                            "row",
                            std::string(beginning(row.bytes, 80)),
                            std::string("a row that the store takes: ") + db_.getErrorMsg(),
                            "correct the row"});
    }
}

void Loader::put_aside(const TableFile& file, const CsvRow& row, const std::vector<Problem>& problems) {
    set_aside_.add(row.bytes, problems);
    remember_aside(file, row);
    for (const Problem& problem : problems) {
        ++report_.problem_count;
        if (report_.problems.size() < options_.most_problems) report_.problems.push_back(problem);
    }
    const Problem& first = problems.front();
    const auto key = std::make_tuple(std::string(file.table->name), first.subject, first.expected);
    const auto known = reasons_.find(key);
    if (known != reasons_.end())
        ++known->second;
    else if (reasons_.size() < most_reasons)
        reasons_[key] = 1;
}

void Loader::remember_aside(const TableFile& file, const CsvRow& row) {
    if (file.table->name != "parts" && file.table->name != "motors" && file.table->name != "modules") return;
    aside_.push_back(aside_key(file.table->name, cleaned(cell_text(file, row, "part_id"))));
    aside_sorted_ = false;
}

bool Loader::was_set_aside(std::string_view table, std::string_view part_id) {
    if (!aside_sorted_) std::sort(aside_.begin(), aside_.end());
    aside_sorted_ = true;
    const auto known = [&](std::string_view name) {
        return std::binary_search(aside_.begin(), aside_.end(), aside_key(name, part_id));
    };
    return known(table) || known("parts");
}

void Loader::tell(const TableFile& file, std::uint64_t bytes_read, std::int64_t rows) {
    if (!options_.progress) return;
    options_.progress(
        {"rows", file.path.string(), bytes_before_ + bytes_read, bytes_in_all_, report_.rows_in + rows});
}

}  // namespace endbell::inline import
