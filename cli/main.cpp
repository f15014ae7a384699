// The only includer of CLI11: from argv to Arguments, and from exceptions to exit codes.
#include <CLI/CLI.hpp>
#include <cstdio>
#include <exception>
#include <string>

#include "cli/arguments.hpp"
#include "cli/commands/commands.hpp"
#include "cli/exit_codes.hpp"
#include "engine/base/problem.hpp"
#include "engine/base/text.hpp"

namespace endbell::cli {

namespace {

using Command = int (*)(const Arguments&);

/// Adds a verb; `chosen` becomes its function when it is typed.
CLI::App* verb(CLI::App& app, const char* name, const char* help, Command command, Command& chosen) {
    CLI::App* sub = app.add_subcommand(name, help);
    sub->callback([command, &chosen] { chosen = command; });
    return sub;
}

void takes_job(CLI::App* sub, Arguments& typed) {
    sub->add_option("JOB", typed.job, "a job file (TOML); without it, --plate and --set describe the job");
    sub->add_option("--plate", typed.plate, "the nameplate in one line, as it is written");
    sub->add_option("--set", typed.set, "one field of the job: GROUP.FIELD=VALUE (may be given again)")
        ->allow_extra_args(false);
    sub->add_option("--as-of", typed.as_of, "the day for which prices count, YYYY-MM-DD (shop.as_of)");
}

void job_verbs(CLI::App& app, Arguments& typed, Command& chosen) {
    CLI::App* match =
        verb(app, "match", "the ranked options with kits, and why the rest fall", run_match, chosen);
    takes_job(match, typed);
    match->add_option("--top", typed.top, "how many options to show (5)")->check(CLI::Range(1, 1000));

    CLI::App* why = verb(app, "why", "what every rule found about one part: JOB PART, or PART with --plate",
                         run_why, chosen);
    takes_job(why, typed);
    why->add_option("PART", typed.part, "a part id or a part number");

    takes_job(verb(app, "ask", "what to measure next", run_ask, chosen), typed);
    takes_job(verb(app, "diagnose", "what failed and why", run_diagnose, chosen), typed);

    CLI::App* wire =
        verb(app, "wire", "tap-to-terminal wiring, relays and the truth table", run_wire, chosen);
    takes_job(wire, typed);
    wire->add_option("PART", typed.part, "a part id or number; without it, the first option");

    takes_job(verb(app, "compare", "what each way out costs, today and per year", run_compare, chosen),
              typed);

    CLI::App* sheet = verb(app, "sheet", "the whole answer on paper", run_sheet, chosen);
    takes_job(sheet, typed);
    sheet->add_option("PART", typed.part, "a part id or number; without it, the first option");
    sheet->add_option("--for", typed.reader, "counter, technician or estimate")
        ->check(CLI::IsMember({"counter", "technician", "estimate"}));
    sheet->add_option("--html", typed.html, "write the sheet as one HTML file instead of printing it");
}

void catalog_verbs(CLI::App& app, Arguments& typed, Command& chosen) {
    CLI::App* catalog = app.add_subcommand("catalog", "import a catalog and look into it");
    catalog->require_subcommand(1);
    CLI::App* import = verb(*catalog, "import", "read CSV tables into a catalog", run_catalog_import, chosen);
    import->add_option("TABLES", typed.inputs, "a folder of CSV tables, or CSV files")->required();
    import->add_option("--into", typed.database, "the catalog file to make or replace")->required();
    import->add_option("--columns", typed.columns, "a column map (TOML) for a supplier's own headers");
    import
        ->add_option("--mode", typed.mode,
                     "whole: the files are the catalog; tables: each replaces its table; rows: added to it")
        ->check(CLI::IsMember({"whole", "tables", "rows"}));
    import->add_option("--set-aside", typed.set_aside,
                       "a folder for the rows that were set aside, as they came");
    import->add_flag("--strict", typed.strict, "one row set aside, and the old catalog stays");
    import->add_flag("--dry-run", typed.dry_run, "read and report, change nothing");
    CLI::App* check =
        verb(*catalog, "check", "what the catalog's gaps and contradictions cost", run_catalog_check, chosen);
    check->add_option("CATALOG", typed.database, "a catalog file")->required();
    check->add_option("--as-of", typed.as_of, "judge the age of prices on this date, YYYY-MM-DD");
    CLI::App* show = verb(*catalog, "show", "one part with all its rows", run_catalog_show, chosen);
    show->add_option("CATALOG", typed.database, "a catalog file")->required();
    show->add_option("PART", typed.part, "a part id or number")->required();
    CLI::App* changes =
        verb(*catalog, "changes", "what the last import changed", run_catalog_changes, chosen);
    changes->add_option("CATALOG", typed.database, "a catalog file")->required();
    CLI::App* kept = verb(*catalog, "generations", "the generations that can be brought back",
                          run_catalog_generations, chosen);
    kept->add_option("CATALOG", typed.database, "a catalog file")->required();
    CLI::App* back =
        verb(*catalog, "restore", "bring an earlier generation back", run_catalog_restore, chosen);
    back->add_option("CATALOG", typed.database, "a catalog file")->required();
    back->add_option("GENERATION", typed.generation, "its number, from catalog generations")->required();
}

int carry_out(int argc, char** argv) {
    Arguments typed;
    Command chosen = nullptr;
    CLI::App app{"Endbell picks what replaces a failed HVAC motor or its module from your own catalog.",
                 "endbell"};
    app.set_version_flag("--version", std::string("endbell ") + ENDBELL_VERSION);
    app.add_option("--catalog", typed.catalog, "the catalog file")->envname("ENDBELL_CATALOG");
    app.add_option("--shop", typed.shop, "the shop's own file: [shop] keys and tightened [limits]")
        ->envname("ENDBELL_SHOP");
    app.add_flag("--json", typed.json, "one JSON document on stdout instead of text");
    app.add_option("--width", typed.width, "characters a line (80)")->check(CLI::Range(40, 400));
    app.require_subcommand(1);
    app.fallthrough();

    job_verbs(app, typed, chosen);
    CLI::App* batch =
        verb(app, "batch", "many jobs from one CSV; a failed row never stops the rest", run_batch, chosen);
    batch->add_option("JOBS", typed.job, "a CSV file, one job a row, columns named GROUP.FIELD")->required();
    batch->add_option("--out", typed.results, "the CSV file to write")->required();
    CLI::App* rules =
        verb(app, "rules", "the rules and limits in force, each with its source", run_rules, chosen);
    rules->add_option("RULE", typed.rule, "one rule");
    catalog_verbs(app, typed, chosen);

    try {
        app.parse(argc, argv);
    } catch (const CLI::ParseError& wrong) {
        return app.exit(wrong) == 0 ? done : usage;
    }
    return chosen(typed);
}

}  // namespace

}  // namespace endbell::cli

int main(int argc, char** argv) {
    using namespace endbell;
    try {
        return cli::carry_out(argc, argv);
    } catch (const BadUsage& wrong) {
        std::fprintf(stderr, "endbell: %s\n", wrong.what());
        return cli::usage;
    } catch (const BadData& wrong) {
        std::fprintf(stderr, "endbell: %s\n", wrong.what());
        return cli::bad_data;
    } catch (const std::exception& bug) {
        std::fprintf(stderr, "endbell: our own bug: %s\nPlease report it with the command you typed.\n",
                     bug.what());
        return cli::our_bug;
    }
}
