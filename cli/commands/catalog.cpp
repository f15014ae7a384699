// The verbs of whoever keeps the catalog.
#include "cli/commands/commands.hpp"
#include "cli/exit_codes.hpp"
#include "cli/interrupt.hpp"
#include "cli/output.hpp"
#include "cli/session.hpp"
#include "engine/base/problem.hpp"
#include "engine/base/text.hpp"
#include "engine/catalog/changes.hpp"
#include "engine/catalog/generations.hpp"
#include "engine/catalog/stored_catalog.hpp"
#include "engine/explain/values.hpp"
#include "engine/import/import.hpp"
#include "engine/index/index_ahead.hpp"
#include "engine/job/job.hpp"
#include "engine/quality/quality.hpp"
#include "engine/sheet/json.hpp"

namespace endbell::cli {

namespace {

std::string progress_text(const ImportProgress& p) {
    const std::uint64_t percent = p.bytes_in_all == 0 ? 100 : 100 * p.bytes_read / p.bytes_in_all;
    return std::string(p.stage) + "  " + std::to_string(percent) + " %  " + std::to_string(p.rows) +
           " rows  " + p.file;
}

ImportMode mode_of(const std::string& word) {
    if (word == "tables") return ImportMode::tables;
    return word == "rows" ? ImportMode::rows : ImportMode::whole;
}

std::string outcome_text(const ImportReport& r) {
    switch (r.outcome) {
        case ImportOutcome::replaced:
            return "The catalog is now generation " + std::to_string(r.generation) + ", digest " + r.digest +
                   ".";
        case ImportOutcome::unchanged:
            return "Nothing changed: the catalog stays generation " + std::to_string(r.generation) +
                   ", digest " + r.digest + ".";
        case ImportOutcome::dry_run:
            return "Dry run: nothing was written. It would have been generation " +
                   std::to_string(r.generation) + ", digest " + r.digest + ".";
        case ImportOutcome::refused:
            return "Refused: with --strict a row set aside leaves the catalog as it was.";
    }
    return "";
}

Document import_document(const ImportReport& r) {
    Document d{"Import", {}, ""};
    Grid files{{"file", "table", "encoding", "columns", "rows in", "accepted", "set aside"}, {}, ""};
    for (const FileReport& f : r.files) {
        files.rows.push_back({f.file, f.table, f.encoding, f.columns, std::to_string(f.rows_in),
                              std::to_string(f.accepted), std::to_string(f.set_aside)});
    }
    d.add(files);
    d.add(Paragraph{"Rows in " + std::to_string(r.rows_in) + " = accepted " + std::to_string(r.accepted) +
                    " + set aside " + std::to_string(r.set_aside) + "."});
    if (!r.problems.empty()) {
        d.add(Heading{"Set aside, and why"});
        Bullets list;
        for (const Problem& p : r.problems) list.items.push_back(to_text(p));
        d.add(list);
        if (r.problem_count > static_cast<std::int64_t>(r.problems.size())) {
            d.add(Paragraph{std::to_string(r.problem_count) + " in all; the first " +
                            std::to_string(r.problems.size()) + " are shown."});
        }
    }
    for (const FileReport& f : r.files) {
        if (!f.set_aside_file.empty())
            d.add(Paragraph{"The rows set aside are in " + f.set_aside_file +
                            ": mend them there and import it with --mode rows."});
    }
    d.add(Paragraph{outcome_text(r)});
    return d;
}

void answer(const char* command, const Document& document, const Arguments& typed, int code = done) {
    if (typed.json) {
        print(json_document(command, document, code));
    } else {
        print(document, typed);
    }
}

std::string cell_text(const Stored& cell) {
    if (const auto* text = std::get_if<std::string>(&cell)) return *text;
    if (const auto* whole = std::get_if<std::int64_t>(&cell)) return std::to_string(*whole);
    if (const auto* number = std::get_if<double>(&cell)) return say_number(*number, 6);
    return "not known";
}

/// Ctrl-C ends it between two rows: the catalog is the old one, or the new one whole.
ImportReport heeded_import(const Arguments& typed, ImportOptions& options) {
    const Heed heed;
    ProgressLine line;
    const std::string left = "the import; " + typed.database + " is as it was";
    options.progress = [&](const ImportProgress& p) {
        heed.look(left);
        line.show(progress_text(p));
    };
    options.stopped = [&heed] { return heed.wanted(); };
    IndexAhead index(typed.database);
    options.parts_stored = [&](const std::filesystem::path& file) { index.read_parts(file); };
    options.rows_stored = [&](const std::filesystem::path& file) { index.read_prices(file); };
    try {
        ImportReport report =
            import_catalog({typed.inputs.begin(), typed.inputs.end()}, typed.database, options);
        // Broken off, it is made when it is first missed.
        if (!heed.wanted()) index.put_in_place();
        return report;
    } catch (const BadData&) {
        heed.look(left);  // a statement was broken off
        throw;
    }
}

}  // namespace

int run_catalog_import(const Arguments& typed) {
    ImportOptions options;
    options.mode = mode_of(typed.mode);
    options.dry_run = typed.dry_run;
    options.strict = typed.strict;
    options.columns = typed.columns;
    options.set_aside = typed.set_aside;
    const ImportReport report = heeded_import(typed, options);
    const int code = report.outcome == ImportOutcome::refused ? bad_data : done;
    answer("catalog import", import_document(report), typed, code);
    return code;
}

/// As stored, table by table: what an import made of a sheet, before any rule looks at it.
int run_catalog_show(const Arguments& typed) {
    const StoredCatalog catalog(typed.database);
    const Part part = part_named(catalog, typed.part);
    Document d{part.id + " " + part.number + " (" + part.maker + ")", {}, catalog.stamp()};
    for (const TableRows& rows : catalog.rows_of(part.id)) {
        d.add(Heading{rows.table});
        if (rows.rows.size() == 1) {
            Pairs pairs;
            for (std::size_t c = 0; c < rows.columns.size(); ++c)
                pairs.rows.emplace_back(rows.columns[c], cell_text(rows.rows[0][c]));
            d.add(pairs);
            continue;
        }
        Grid table{rows.columns, {}, ""};
        for (const auto& row : rows.rows) {
            table.rows.emplace_back();
            for (const Stored& cell : row) table.rows.back().push_back(cell_text(cell));
        }
        d.add(table);
    }
    answer("catalog show", d, typed);
    return done;
}

int run_catalog_generations(const Arguments& typed) {
    Document d{"Generations of " + typed.database, {}, ""};
    Grid table{{"generation", "digest", "file", "state"},
               {},
               "Bring one back with: endbell catalog restore CATALOG GENERATION"};
    for (const Generation& g : generations(typed.database)) {
        table.rows.push_back({std::to_string(g.number), g.digest, g.file.filename().string(),
                              g.damaged ? "damaged" : "whole"});
    }
    d.add(table);
    answer("catalog generations", d, typed);
    return done;
}

int run_catalog_restore(const Arguments& typed) {
    const Heed heed;  // a copy and a rename: no signal stops it half way
    const Generation now = restore(typed.database, typed.generation);
    answer("catalog restore",
           Document{"Restore",
                    {Paragraph{"Generation " + std::to_string(typed.generation) + " is back, as generation " +
                               std::to_string(now.number) + ", digest " + now.digest + "."}},
                    ""},
           typed);
    return done;
}

int run_catalog_check(const Arguments& typed) {
    FailedUnit day;  // reads the date as a job would, and complains alike
    if (!typed.as_of.empty()) set_field(day, "shop.as_of=" + typed.as_of);
    const QualityReport r = quality_of(typed.database, QualityOptions{day.shop.as_of.value, 20});
    Document d{"Quality of " + typed.database,
               {},
               "generation " + std::to_string(r.generation) + ", digest " + r.digest};
    if (!r.whole)
        d.add(Warning{"WARNING", "The file is damaged: " + r.damage + ". Restore an earlier generation."});
    if (r.whole && !r.digest_checked)
        d.add(
            Paragraph{"An earlier version of the program wrote this catalog: the rows are as many as it "
                      "wrote, but their "
                      "digest is of another kind and was not checked. The next import writes one that is."});
    d.add(Paragraph{std::to_string(r.parts) + " parts."});
    d.add(Heading{"Empty fields that keep parts from being shown to fit"});
    Grid missing{{"rule", "column", "empty", "of"}, {}, ""};
    for (const MissingField& m : r.missing) {
        if (m.missing > 0)
            missing.rows.push_back(
                {m.rule, m.table + "." + m.column, std::to_string(m.missing), std::to_string(m.of)});
    }
    d.add(missing);
    d.add(Heading{"Contradictions and dead ends"});
    Grid counts{{"kind", "how many"}, {}, ""};
    for (const KindCount& k : r.counts) counts.rows.push_back({k.kind, std::to_string(k.count)});
    d.add(counts);
    Grid found{{"kind", "part", "where", "found", "expected"}, {}, "At most 20 of a kind are shown."};
    for (const Contradiction& c : r.contradictions) {
        found.rows.push_back(
            {c.kind, c.part_id, c.table + "." + c.column, cell_text(c.found), cell_text(c.expected)});
    }
    d.add(found);
    const int code = r.whole ? done : bad_data;
    answer("catalog check", d, typed, code);
    return code;
}

/// Prices apart from the other rows: they change often, the rest seldom.
int run_catalog_changes(const Arguments& typed) {
    const Changes c = last_changes(typed.database);
    Document d{"What changed from generation " + std::to_string(c.from_generation) + " to " +
                   std::to_string(c.to_generation),
               {},
               ""};
    Grid tables{{"table", "new", "changed", "retired"}, {}, ""};
    for (const TableChanges& t : c.tables) {
        tables.rows.push_back(
            {t.table, std::to_string(t.added), std::to_string(t.changed), std::to_string(t.retired)});
    }
    d.add(tables);
    if (!c.price_moves.empty()) {
        d.add(Heading{"Prices"});
        Grid moves{{"part", "branch", "seller", "before", "after"},
                   {},
                   std::to_string(c.price_move_count) + " in all."};
        for (const PriceMove& m : c.price_moves) {
            moves.rows.push_back({m.part_id, m.branch, m.seller, m.before ? to_text(*m.before) : "-",
                                  m.after ? to_text(*m.after) : "-"});
        }
        d.add(moves);
    }
    d.add(Heading{"Rows"});
    Grid rows{{"table", "row", "what", "cells"}, {}, ""};
    for (const Change& row : c.changes) {
        std::string key;
        for (const Stored& cell : row.key) key += (key.empty() ? "" : " / ") + cell_text(cell);
        std::string cells;
        for (const CellChange& cell : row.cells) {
            cells += (cells.empty() ? "" : "; ") + cell.column + ": " + cell_text(cell.before) + " -> " +
                     cell_text(cell.after);
        }
        rows.rows.push_back({row.table, key, std::string(word(row.kind)), cells});
    }
    d.add(rows);
    answer("catalog changes", d, typed);
    return done;
}

}  // namespace endbell::cli
