#include "cli/grammar.hpp"

#include <algorithm>
#include <memory>
#include <sstream>
#include <utility>

#include "cli/commands/commands.hpp"
#include "cli/exit_codes.hpp"
#include "engine/base/text.hpp"

namespace endbell::cli {

namespace {

/// The help in lines of 80 characters.
class Help : public CLI::Formatter {
  public:
    std::string make_option_desc(const CLI::Option* option) const override {
        return folded(CLI::Formatter::make_option_desc(option));
    }
    std::string make_subcommand(const CLI::App* sub) const override {
        std::ostringstream out;
        CLI::detail::format_help(out, sub->get_name(), folded(sub->get_description()), column_width_);
        return out.str();
    }

  private:
    std::string folded(const std::string& text) const {
        std::string out, line;
        for (const std::string& word : split(text, ' ')) {
            if (!line.empty() && column_width_ + line.size() + 1 + word.size() > 80) {
                out += line + "\n";
                line.clear();
            }
            line += (line.empty() ? "" : " ") + word;
        }
        return out + line;
    }
};

/// What stands under the help of the whole program.
std::string exit_codes_and_settings() {
    std::ostringstream text;
    text << "Exit codes:\n";
    for (const ExitMeaning& exit : exit_meanings) {
        const std::string code = std::to_string(exit.code);
        text << "  " << code << std::string(5 - code.size(), ' ') << exit.meaning << '\n';
    }
    text << "\nSettings:\n";
    for (const std::string& line : split(settings, '\n')) text << "  " << line << '\n';
    return text.str();
}

/// Adds a verb under `parent`, with its examples in the footer of its help. What `options` adds to it, and the footer, it
/// only gets where it can be typed.
template <class Options>
void verb(Grammar& g, CLI::App& parent, const char* name, const char* help, Command command,
          std::initializer_list<Example> examples, Options options) {
    CLI::App* sub = parent.add_subcommand(name, help);
    if (!g.may_stand_on_line(name)) return;
    sub->callback([command, &g] { g.chosen = command; });
    std::string footer = "Examples:";
    for (const Example& e : examples)
        footer.append("\n  ").append(e.command).append("\n      ").append(e.does);
    sub->footer(footer + "\n");
    g.examples[sub] = examples;
    options(sub);
}

/// A word of a few; its description in the help lists them.
CLI::Validator one_of(const std::vector<std::string>& words) {
    const auto complaint = [words](std::string& typed) -> std::string {
        if (std::find(words.begin(), words.end(), typed) != words.end()) return "";
        const std::string near = nearest(typed, words);
        return "expected " + joined(words, ", ") + ", not '" + typed + "'" +
               (near.empty() ? "" : "; did you mean '" + near + "'?");
    };
    return CLI::Validator(complaint, "{" + joined(words, ",") + "}");
}

CLI::Validator whole_number(int least, int most) {
    const std::string range = "from " + std::to_string(least) + " to " + std::to_string(most);
    const auto complaint = [=](std::string& typed) -> std::string {
        const bool digits =
            !typed.empty() && typed.size() < 7 && typed.find_first_not_of("0123456789") == std::string::npos;
        const int number = digits ? std::stoi(typed) : -1;
        return number >= least && number <= most
                   ? ""
                   : "expected a whole number " + range + ", not '" + typed + "'";
    };
    return CLI::Validator(complaint, range);
}

void takes_job(CLI::App* sub, Arguments& typed) {
    sub->add_option("JOB", typed.job, "a job file (TOML); without it, --plate and --set describe the job")
        ->type_name("FILE");
    sub->add_option("--plate", typed.plate, "the nameplate in one line, as it is written");
    sub->add_option("--set", typed.set, "one field of the job: GROUP.FIELD=VALUE (may be given again)")
        ->allow_extra_args(false)
        ->type_name("KEY=VALUE");
    sub->add_option("--as-of", typed.as_of, "the day for which prices count, YYYY-MM-DD (shop.as_of)");
}

void takes_part(CLI::App* sub, Arguments& typed) {
    sub->add_option("PART", typed.part, "a part id or number; without it, the first option");
}

void takes_catalog(CLI::App* sub, Arguments& typed) {
    sub->add_option("CATALOG", typed.database, "a catalog file")->type_name("FILE")->required();
}

void answer_verbs(Grammar& g) {
    Arguments& typed = g.typed;
    const auto job = [&](CLI::App* sub) { takes_job(sub, typed); };
    const auto job_and_part = [&](CLI::App* sub) {
        takes_job(sub, typed);
        takes_part(sub, typed);
    };
    verb(g, g.app, "match", "the ranked options with kits, and why the rest fall", run_match,
         {{"endbell match --plate \"1/2 hp 208-230 1075 3spd CCWLE 1/2x5 psc\"",
           "at the counter: the plate in one line, and what to ask next"},
          {"endbell match job.toml --top 10", "from a job file, with ten options"},
          {"endbell --json match job.toml > answer.json", "for another program: one JSON document"}},
         [&](CLI::App* match) {
             takes_job(match, typed);
             match->add_option("--top", typed.top, "how many options to show (5)")
                 ->check(whole_number(1, 1000));
         });
    verb(g, g.app, "why", "what every rule found about one part: JOB PART, or PART with --plate", run_why,
         {{"endbell why job.toml B-050-230-3R", "every finding for that part, with limit and source"},
          {"endbell why B-050-230-3R --plate \"1/2 hp 208-230 1075\"", "the same from the plate alone"}},
         [&](CLI::App* why) {
             takes_job(why, typed);
             why->add_option("PART", typed.part, "a part id or a part number");
         });
    verb(g, g.app, "ask", "what to measure next", run_ask,
         {{"endbell ask job.toml", "the open questions, the most telling first"},
          {"endbell ask job.toml --answer",
           "one question after the other; each answer goes into the job file, and the last "
           "gives the decision"}},
         [&](CLI::App* ask) {
             takes_job(ask, typed);
             ask->add_flag("--answer", typed.answer, "answer them now, into the job file");
         });
    verb(g, g.app, "diagnose", "what failed and why", run_diagnose,
         {{"endbell diagnose job.toml", "the conclusion, with the reading that proves it"},
          {"endbell diagnose job.toml --set measured.line_volts=\"0 V\"", "the same with one more reading"}},
         job);
    verb(g, g.app, "wire", "tap-to-terminal wiring, relays and the truth table", run_wire,
         {{"endbell wire job.toml", "the wiring of the first option"},
          {"endbell wire job.toml B-050-230-3R", "the wiring of a part that you name"}},
         job_and_part);
    verb(g, g.app, "compare", "what each way out costs, today and per year", run_compare,
         {{"endbell compare job.toml --set shop.labour_rate=120", "at another labour rate"}}, job);
    verb(g, g.app, "sheet", "the whole answer on paper", run_sheet,
         {{"endbell sheet job.toml --for counter", "the counter's sheet, as text"},
          {"endbell sheet job.toml --for technician --html sheet.html",
           "one HTML file that needs nothing else, to print or to open on a phone"}},
         [&](CLI::App* sheet) {
             job_and_part(sheet);
             sheet->add_option("--for", typed.reader, "counter, technician or estimate")
                 ->check(one_of({"counter", "technician", "estimate"}));
             sheet
                 ->add_option("--html", typed.html, "write the sheet as one HTML file instead of printing it")
                 ->type_name("FILE");
         });
    verb(g, g.app, "start-up", "what to read when it runs, and a file that keeps it", run_start_up,
         {{"endbell start-up job.toml", "the form for the first option, with what each reading should be"},
          {"endbell start-up job.toml --record start-up.toml",
           "the same as a file to fill in; a later job of the unit names it as unit.baseline"}},
         [&](CLI::App* start_up) {
             job_and_part(start_up);
             start_up
                 ->add_option("--record", typed.record,
                              "write the form as a file to fill in; one that exists is never written over")
                 ->type_name("FILE");
         });
}

void list_verbs(Grammar& g) {
    Arguments& typed = g.typed;
    verb(
        g, g.app, "batch", "many jobs from one CSV; a failed row never stops the rest", run_batch,
        {{"endbell batch jobs.csv --out results.csv",
          "one result row a job, and results.orders.csv with what to order"}},
        [&](CLI::App* batch) {
            batch->add_option("JOBS", typed.job, "a CSV file, one job a row, columns named GROUP.FIELD")
                ->type_name("FILE")
                ->required();
            batch->add_option("--out", typed.results, "the CSV file to write")->type_name("FILE")->required();
        });
    verb(g, g.app, "find", "the parts that a number, a piece of one, or words belong to", run_find,
         {{"endbell find B-050-230-3R", "an id, a part number or an old number, misread or whole"},
          {"endbell find 050-230", "a piece of one, from three characters on; shorter ones begin it"},
          {"endbell find - < numbers.txt", "many of them, one a line"}},
         [&](CLI::App* find) {
             find->add_option("TEXT", typed.inputs, "a number, a piece of one, or words; - reads a line each")
                 ->required();
         });
    verb(g, g.app, "rules", "the rules and limits in force, each with its source", run_rules,
         {{"endbell rules", "all of them"}, {"endbell rules rotation", "one of them"}},
         [&](CLI::App* rules) { rules->add_option("RULE", typed.rule, "one rule"); });
}

void import_verb(Grammar& g, CLI::App& catalog) {
    Arguments& typed = g.typed;
    verb(g, catalog, "import", "read CSV tables into a catalog", run_catalog_import,
         {{"endbell catalog import tables --into parts.db", "make or replace the catalog"},
          {"endbell catalog import tables --into parts.db --dry-run", "read and report, write nothing"},
          {"endbell catalog import offers.csv --into parts.db --mode tables",
           "replace one table: tonight's prices"},
          {"endbell catalog import supplier.csv --into parts.db --mode rows --columns supplier.toml",
           "add a supplier's own spreadsheet"}},
         [&](CLI::App* import) {
             import->add_option("TABLES", typed.inputs, "a folder of CSV tables, or CSV files")
                 ->type_name("FILE")
                 ->required();
             import->add_option("--into", typed.database, "the catalog file to make or replace")
                 ->type_name("FILE")
                 ->required();
             import
                 ->add_option("--columns", typed.columns, "a column map (TOML) for a supplier's own headers")
                 ->type_name("FILE");
             import
                 ->add_option(
                     "--mode", typed.mode,
                     "whole: the files are the catalog; tables: each replaces its table; rows: added to it")
                 ->check(one_of({"whole", "tables", "rows"}));
             import
                 ->add_option("--set-aside", typed.set_aside,
                              "a folder for the rows that were set aside, as they came")
                 ->type_name("FOLDER");
             import->add_flag("--strict", typed.strict, "one row set aside, and the old catalog stays");
             import->add_flag("--dry-run", typed.dry_run, "read and report, change nothing");
         });
}

void catalog_verbs(Grammar& g) {
    Arguments& typed = g.typed;
    CLI::App* catalog = g.app.add_subcommand("catalog", "import a catalog and look into it");
    if (!g.may_stand_on_line("catalog")) return;
    catalog->require_subcommand(1);
    const auto file = [&](CLI::App* sub) { takes_catalog(sub, typed); };
    import_verb(g, *catalog);
    verb(g, *catalog, "check", "what the catalog's gaps and contradictions cost", run_catalog_check,
         {{"endbell catalog check parts.db --as-of 2026-03-01",
           "empty fields, contradictions, and prices that were old on that day"}},
         [&](CLI::App* check) {
             takes_catalog(check, typed);
             check->add_option("--as-of", typed.as_of, "judge the age of prices on this date, YYYY-MM-DD");
         });
    verb(g, *catalog, "show", "one part with all its rows", run_catalog_show,
         {{"endbell catalog show parts.db B-050-230-3R", "by its id or its number"}}, [&](CLI::App* show) {
             takes_catalog(show, typed);
             show->add_option("PART", typed.part, "a part id or number")->required();
         });
    verb(g, *catalog, "changes", "what the last import changed", run_catalog_changes,
         {{"endbell catalog changes parts.db", "rows, cells and prices, before and after"}}, file);
    verb(g, *catalog, "generations", "the generations that can be brought back", run_catalog_generations,
         {{"endbell catalog generations parts.db", "each with its number and digest"}}, file);
    verb(g, *catalog, "restore", "bring an earlier generation back", run_catalog_restore,
         {{"endbell catalog restore parts.db 1", "as it was after the first import"}}, [&](CLI::App* back) {
             takes_catalog(back, typed);
             back->add_option("GENERATION", typed.generation, "its number, from catalog generations")
                 ->required()
                 ->check(whole_number(1, 999'999));
         });
}

/// The innermost verb that was typed.
const CLI::App& innermost(const CLI::App& app) {
    const CLI::App* inner = &app;
    while (!inner->get_subcommands().empty()) inner = inner->get_subcommands().front();
    return *inner;
}

/// Everything that may stand where `word` stands.
std::vector<std::string> known_words(const CLI::App& app, const CLI::App& inner, const std::string& word) {
    std::vector<std::string> known;
    if (word.front() == '-') {
        for (const CLI::App* each : {&inner, &app}) {
            for (const CLI::Option* option : each->get_options()) {
                for (const std::string& name : option->get_lnames()) known.push_back("--" + name);
            }
        }
        return known;
    }
    for (const CLI::App* sub : inner.get_subcommands([](const CLI::App*) { return true; }))
        known.push_back(sub->get_name());
    return known;
}

}  // namespace

std::string Grammar::verb() const {
    std::string words;
    const CLI::App* at = &app;
    while (!at->get_subcommands().empty()) {
        at = at->get_subcommands().front();
        words += (words.empty() ? "" : " ") + at->get_name();
    }
    return words;
}

Problem Grammar::complaint(const CLI::ParseError& wrong) const {
    const CLI::App& inner = innermost(app);
    const std::string here = verb().empty() ? "endbell" : "endbell " + verb();
    const std::vector<std::string> unread = app.remaining(true);
    const std::string help = "see " + here + " --help";
    if (unread.empty() || unread.front().empty()) return {{}, wrong.what(), "", "", help};
    const std::string& word = unread.front();
    const std::vector<std::string> known = known_words(app, inner, word);
    const std::string near = nearest(word, known);
    const std::string wanted = word.front() == '-' ? "an option of "
                               : known.empty()     ? "nothing more after "
                                                   : "a command of ";
    return {{}, word, "", wanted + here, near.empty() ? help : "did you mean '" + near + "'?"};
}

bool Grammar::may_stand_on_line(std::string_view name) const {
    return !line || std::find(line->begin(), line->end(), name) != line->end();
}

Grammar::Grammar(std::optional<std::vector<std::string_view>> words)
    : line(std::move(words)),
      app("Endbell picks what replaces a failed HVAC motor or its module from your own catalog.", "endbell") {
    app.set_version_flag("--version", std::string("endbell ") + ENDBELL_VERSION);
    app.add_option("--catalog", typed.catalog, "the catalog file")
        ->type_name("FILE")
        ->envname("ENDBELL_CATALOG");
    app.add_option("--shop", typed.shop, "the shop's own file: [shop] keys and tightened [limits]")
        ->type_name("FILE")
        ->envname("ENDBELL_SHOP");
    app.add_flag("--json", typed.json, "one JSON document on stdout instead of text");
    app.add_option("--width", typed.width, "characters a line (the terminal's, else 80)")
        ->check(whole_number(narrowest_line, widest_line))
        ->envname("ENDBELL_WIDTH");
    app.add_flag("--no-config", typed.no_config, "leave the user's configuration file aside");
    app.require_subcommand(1);
    app.fallthrough();
    app.formatter(std::make_shared<Help>());
    app.footer(exit_codes_and_settings());
    answer_verbs(*this);
    list_verbs(*this);
    catalog_verbs(*this);
}

}  // namespace endbell::cli
