#include "engine/import/import.hpp"

#include <sqlite3.h>

#include <algorithm>

#include "engine/catalog/database.hpp"
#include "engine/catalog/digest.hpp"
#include "engine/catalog/numbers.hpp"
#include "engine/catalog/replacement.hpp"
#include "engine/import/loader.hpp"

namespace endbell::inline import {

namespace fs = std::filesystem;

namespace {

class Import {
  public:
    Import(const std::vector<fs::path>& paths, fs::path catalog, const ImportOptions& options)
        : paths_(paths),
          catalog_(std::move(catalog)),
          options_(options),
          next_(catalog_, options.at_write_point) {}

    ImportReport run() {
        look_at_old();
        open_files();
        reached("begun");
        build();
        reached("rows written");
        finish();
        return std::move(report_);
    }

  private:
    void reached(std::string_view point) const {
        if (options_.at_write_point) options_.at_write_point(point);
    }
    void tell(std::string_view stage) const {
        if (options_.progress) options_.progress({stage, "", 0, 0, report_.rows_in});
    }

    void look_at_old() {
        if (fs::exists(catalog_)) {
            old_.emplace(open_finished(catalog_));
            const GenerationRow row = guarded(catalog_, [&] { return read_generation(*old_); });
            report_.old_generation = row.number;
            report_.old_digest = row.digest;
        } else if (options_.mode != ImportMode::whole) {
            throw BadData(Problem{
                {catalog_.string(), 0, 0}, "catalog", "", "a catalog to add to", "import all tables first"});
        }
        const std::vector<int> kept = kept_numbers(catalog_);
        report_.generation = std::max(report_.old_generation, kept.empty() ? 0 : kept.front()) + 1;
    }

    std::optional<RememberedMap> recalled(const HeaderPrint& header) {
        if (!old_) return std::nullopt;
        SQLite::Statement row(*old_,
                              "SELECT table_name, map FROM column_maps WHERE header IN (?1, ?2) "
                              "ORDER BY header = ?1 DESC");
        row.bind(1, header.today);
        row.bind(2, header.before);
        if (!row.executeStep()) return std::nullopt;
        return RememberedMap{row.getColumn(0).getString(), row.getColumn(1).getString()};
    }

    void open_files() {
        if (!options_.columns.empty()) map_ = read_column_map(options_.columns);
        files_ = guarded(catalog_, [&] {
            return open_tables(paths_, map_, [this](const HeaderPrint& header) { return recalled(header); });
        });
        if (files_.empty()) {
            throw BadData(Problem{
                {"", 0, 0}, "files", "", "at least one CSV file", "give the folder that holds the tables"});
        }
        for (const TableFile& file : files_) changed_.emplace_back(file.table->name);
        if (old_ && options_.mode == ImportMode::whole && !is_changed("parts")) refuse_to_empty();
    }

    /// A whole import is the catalog: without parts, a price list of one night would leave nothing else of it.
    [[noreturn]] void refuse_to_empty() const {
        std::string names;
        for (const std::string& name : changed_) names += (names.empty() ? "" : ", ") + name;
        throw BadData(
            Problem{{catalog_.string(), 0, 0},
                    "files",
                    names,
                    "the table of parts among them: a whole import replaces all that the catalog holds",
                    "give --mode tables to replace only these tables; the catalog is as it was"});
    }

    static constexpr int steps_between = 100'000;  // of SQLite's machine: some milliseconds
    static int ask(void* import) { return static_cast<Import*>(import)->options_.stopped() ? 1 : 0; }

    /// The whole generation, in a file that nobody else looks at.
    void build() {
        guarded(next_.file(), [&] {
            if (options_.mode != ImportMode::whole) next_.copy_from(catalog_);
            SQLite::Database db =
                options_.mode == ImportMode::whole ? make_new(next_.file()) : open_private(next_.file());
            if (options_.stopped) sqlite3_progress_handler(db.getHandle(), steps_between, ask, this);
            if (options_.mode == ImportMode::tables) clear_tables(db);
            SetAside set_aside(options_.dry_run ? fs::path() : options_.set_aside, paths_);
            Loader loader(db, set_aside, options_, report_);
            const RowSums before = sums_that_stay(db);
            const auto digest = [&] {
                db.exec("BEGIN");
                report_.digest = write_digest(db, report_.generation, with_loaded(before, loader.sums()));
                db.exec("COMMIT");
            };
            loader.load(files_, [&] {
                if (!options_.parts_stored || options_.dry_run || is_refused()) return;
                digest();
                options_.parts_stored(next_.file());
            });
            set_aside.keep();
            if (options_.mode == ImportMode::tables) check_links(db);
            keep_maps(db);
            tell("digest");
            digest();
            decide();
            if (report_.outcome != ImportOutcome::replaced) return;
            if (options_.rows_stored) options_.rows_stored(next_.file());
            tell("numbers");
            if (options_.mode == ImportMode::whole || numbers_changed()) rebuild_numbers(db);
        });
    }

    RowSums sums_that_stay(SQLite::Database& db) const {
        if (options_.mode == ImportMode::whole) return no_rows();
        return has_sums_of_today(db) ? written_sums(db) : computed_sums(db);
    }

    /// The sums of all tables: of those that stayed as they were written, of the others with the rows loaded.
    RowSums with_loaded(RowSums sums, const RowSums& loaded) const {
        for (const auto& [table, sum] : loaded) {
            RowSum& all = sums[table];
            if (options_.mode != ImportMode::rows) all = {};
            all.rows += sum.rows;
            all.sum += sum.sum;
            all.filled |= sum.filled;
        }
        return sums;
    }

    bool is_changed(std::string_view table) const {
        return std::find(changed_.begin(), changed_.end(), table) != changed_.end();
    }
    bool numbers_changed() const { return is_changed("parts") || is_changed("cross_references"); }

    /// Children that stay may point at parents that come back a moment later: links are checked at the end.
    void clear_tables(SQLite::Database& db) {
        for (const Table& table : tables()) {
            if (is_changed(table.name)) db.exec("DELETE FROM " + quoted(table.name));
        }
    }

    /// Rows of the new tables were held against their parents one by one. Left are the tables that stayed while
    /// their parents were replaced.
    void check_links(SQLite::Database& db) {
        SQLite::Statement broken(db, "SELECT count(*) FROM pragma_foreign_key_check(?)");
        std::vector<Problem> problems;
        for (const std::string& table : tables_by_name()) {
            if (is_changed(table) || !is_changed(find_table(table)->parent)) continue;
            broken.bind(1, table);
            broken.executeStep();
            const std::int64_t rows = broken.getColumn(0).getInt64();
            broken.reset();
            if (rows == 0) continue;
            problems.push_back({{catalog_.string(), 0, 0},
                                table,
                                std::to_string(rows) + " rows",
                                "parts that the new tables still hold",
                                "import " + table + " together with them"});
        }
        if (!problems.empty()) throw BadData(std::move(problems));
    }

    static std::vector<std::string> tables_by_name() {
        std::vector<std::string> names;
        for (const Table& table : tables()) names.emplace_back(table.name);
        std::sort(names.begin(), names.end());
        return names;
    }

    /// Maps of earlier imports stay known, and those of this one are added.
    void keep_maps(SQLite::Database& db) {
        SQLite::Statement write(db, "INSERT OR REPLACE INTO column_maps VALUES (?, ?, ?)");
        const auto keep = [&](const std::string& header, const std::string& table, const std::string& toml) {
            write.bind(1, header);
            write.bind(2, table);
            write.bind(3, toml);
            write.exec();
            write.reset();
        };
        if (old_ && options_.mode == ImportMode::whole) {
            SQLite::Statement rows(*old_, "SELECT header, table_name, map FROM column_maps ORDER BY header");
            while (rows.executeStep()) {
                keep(rows.getColumn(0).getString(), rows.getColumn(1).getString(),
                     rows.getColumn(2).getString());
            }
        }
        for (const TableFile& file : files_) {
            if (file.columns != "mapped") continue;
            const std::optional<RememberedMap> known = recalled(file.header_print);
            learned_ = learned_ || !known || known->toml != map_->text;
            keep(file.header_print.today, std::string(file.table->name), map_->text);
        }
    }

    bool is_refused() const { return options_.strict && report_.set_aside > 0; }

    void decide() {
        if (is_refused()) {
            report_.outcome = ImportOutcome::refused;
        } else if (options_.dry_run) {
            report_.outcome = ImportOutcome::dry_run;
        } else if (report_.digest == report_.old_digest && !learned_) {
            report_.outcome = ImportOutcome::unchanged;
            report_.generation = report_.old_generation;
        }
    }

    void finish() {
        if (report_.outcome != ImportOutcome::replaced) return;
        tell("swap");  // the new file is complete and closed
        next_.swap_in(report_.old_generation);
    }

    const std::vector<fs::path>& paths_;
    fs::path catalog_;
    const ImportOptions& options_;
    Replacement next_;
    ImportReport report_;
    std::optional<SQLite::Database> old_;
    std::optional<ColumnMap> map_;
    std::vector<TableFile> files_;
    std::vector<std::string> changed_;
    bool learned_ = false;  // a column map that the old generation does not know
};

}  // namespace

ImportReport import_catalog(const std::vector<fs::path>& paths, const fs::path& catalog,
                            const ImportOptions& options) {
    return Import(paths, catalog, options).run();
}

}  // namespace endbell::inline import
