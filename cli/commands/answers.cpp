// The verbs that answer about one job.
#include <algorithm>
#include <filesystem>

#include "cli/commands/commands.hpp"
#include "cli/exit_codes.hpp"
#include "cli/output.hpp"
#include "cli/session.hpp"
#include "engine/base/problem.hpp"
#include "engine/base/text.hpp"
#include "engine/explain/start_up.hpp"
#include "engine/sheet/html.hpp"
#include "engine/sheet/json.hpp"

namespace endbell::cli {

namespace {

int exit_of(const Selection& selection) {
    return static_cast<int>(selection.outcome);
}

int exit_of(const Diagnosis& diagnosis) {
    if (diagnosis.replace_nothing()) return static_cast<int>(Outcome::do_not_replace);
    return diagnosis.fault == Fault::not_shown ? static_cast<int>(Outcome::undecided) : done;
}

}  // namespace

int run_match(const Arguments& typed) {
    const Session session = open_session(typed);
    const auto wanted = static_cast<std::size_t>(std::max(20, typed.top));
    Selection selection = select_part(session.job, session.books(), session.policy, {wanted});
    if (typed.json) {
        print(selection_json("match", selection, session, typed.top));
    } else {
        print(match_document(session.job, selection, session.open, typed.top), typed);
    }
    return exit_of(selection);
}

/// One part by every rule, whatever becomes of the rest: no match is made.
int run_why(const Arguments& typed_as_is) {
    Arguments typed = typed_as_is;
    if (typed.part.empty()) std::swap(typed.part, typed.job);  // "why PART --plate ..." has no job file
    if (typed.part.empty())
        throw BadUsage(Problem{{}, "PART", "", "a part id or number", "try: endbell why JOB PART"});
    const Session session = open_session(typed);
    const Part part = part_named(*session.catalog, typed.part);
    const Limits& limits = session.limits;
    const Facts stated = facts_of(session.job, limits);
    const Diagnosis diagnosis = diagnose(session.job, stated, limits);
    const std::optional<FailedUnit> without = settled(session.job, stated, limits);
    const FailedUnit& job = without ? *without : session.job;
    Candidate candidate = examine(Query{job, facts_of(job, limits), diagnosis, limits}, part);
    const std::string stamp = stamp_of(session.job, *session.catalog);
    if (typed.json) {
        print(json_candidate("why", candidate, diagnosis, stamp));
    } else {
        print(why_document(candidate, diagnosis, stamp), typed);
    }
    return done;
}

int run_diagnose(const Arguments& typed) {
    const Session session = open_session(typed);
    const Limits& limits = session.limits;
    const Diagnosis diagnosis = diagnose(session.job, facts_of(session.job, limits), limits);
    const std::string stamp = stamp_of(session.job, *session.catalog);
    if (typed.json) {
        print(json_diagnosis("diagnose", diagnosis, session.open, exit_of(diagnosis), stamp));
    } else {
        print(diagnosis_document(diagnosis, session.open, stamp), typed);
    }
    return exit_of(diagnosis);
}

/// Without a part there is nothing to wire: what to ask first is the answer then.
int run_wire(const Arguments& typed) {
    const Session session = open_session(typed);
    Selection selection = select_part(session.job, session.books(), session.policy);
    const Option* option = chosen_option(typed, session, selection);
    if (option == nullptr) {
        if (typed.json)
            print(selection_json("wire", selection, session, 0));
        else
            print(ask_document(selection, session.open), typed);
        return exit_of(selection);
    }
    const Outcome refused = option->wiring.lacking.empty() ? Outcome::nothing_fits : Outcome::undecided;
    const int code = option->wiring.possible ? done : static_cast<int>(refused);
    if (typed.json) {
        print(json_option("wire", selection.job(session.job), selection, *option, code));
    } else {
        print(wiring_document(selection.job(session.job), selection, *option), typed);
    }
    return code;
}

int run_compare(const Arguments& typed) {
    const Session session = open_session(typed);
    Selection selection = select_part(session.job, session.books(), session.policy);
    if (typed.json) {
        print(selection_json("compare", selection, session, 0));
    } else {
        print(cost_document(selection), typed);
    }
    return exit_of(selection);
}

/// Where a page is written, its text is not printed as well: nobody wants the sheet twice. JSON is, since it says more.
int run_sheet(const Arguments& typed) {
    const Session session = open_session(typed);
    Selection selection = select_part(session.job, session.books(), session.policy);
    const Option* option = chosen_option(typed, session, selection);
    const SheetKind kind = *from_word<SheetKind>(typed.reader);
    const Document sheet = sheet_document(session.job, selection, option, kind, session.open);
    if (!typed.html.empty()) write_whole({{typed.html, render_html(sheet), "--html"}});
    if (typed.json) {
        print(json_sheet(session.job, selection, option, session.open, sheet));
    } else if (typed.html.empty()) {
        print(sheet, typed);
    }
    return exit_of(selection);
}

/// The form to fill in where it runs. A record that exists was perhaps filled in: it is never written over.
int run_start_up(const Arguments& typed) {
    const Session session = open_session(typed);
    Selection selection = select_part(session.job, session.books(), session.policy);
    const Option* option = chosen_option(typed, session, selection);
    if (option == nullptr) {
        if (typed.json)
            print(selection_json("start-up", selection, session, 0));
        else
            print(ask_document(selection, session.open), typed);
        return exit_of(selection);
    }
    const FailedUnit& job = selection.job(session.job);
    if (!typed.record.empty()) {
        std::error_code none;
        if (std::filesystem::exists(std::filesystem::symlink_status(typed.record, none)))
            throw BadData(Problem{{},
                                  "--record",
                                  typed.record,
                                  "the name of a file that is not there yet",
                                  "what was read may stand in it: name another file"});
        write_whole({{typed.record, start_up_form(job, selection, *option), "--record"}});
    }
    const Document form = start_up_document(job, selection, *option);
    if (typed.json)
        print(json_document("start-up", form, done));
    else
        print(form, typed);
    return done;
}

int run_rules(const Arguments& typed) {
    std::vector<std::string> known;
    for (const Rule& rule : all_rules()) known.emplace_back(rule.id);
    if (!typed.rule.empty() && std::count(known.begin(), known.end(), typed.rule) == 0) {
        const std::string near = nearest(typed.rule, known);
        throw BadUsage(
            Problem{{},
                    "RULE",
                    typed.rule,
                    "the id of a rule",
                    near.empty() ? "list them with endbell rules" : "did you mean '" + near + "'?"});
    }
    const std::unique_ptr<IndexedCatalog> catalog = typed.catalog.empty() ? nullptr : open_catalog(typed);
    const Limits limits = limits_in_force(typed, catalog.get());
    if (typed.json) {
        print(json_rules("rules", limits, typed.rule));
    } else {
        print(rules_document(limits, typed.rule), typed);
    }
    return done;
}

}  // namespace endbell::cli
