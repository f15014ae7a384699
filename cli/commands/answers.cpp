// The verbs that answer about one job.
#include <cstdio>
#include <fstream>

#include "cli/commands/commands.hpp"
#include "cli/exit_codes.hpp"
#include "cli/session.hpp"
#include "engine/base/problem.hpp"
#include "engine/sheet/html.hpp"
#include "engine/sheet/json.hpp"
#include "engine/sheet/text.hpp"

namespace endbell::cli {

namespace {

int exit_of(const Selection& selection) {
    return static_cast<int>(selection.outcome);
}

int exit_of(const Diagnosis& diagnosis) {
    if (diagnosis.replace_nothing()) return static_cast<int>(Outcome::do_not_replace);
    return diagnosis.fault == Fault::not_shown ? static_cast<int>(Outcome::undecided) : done;
}

void write_file(const std::string& path, const std::string& text) {
    std::ofstream file(path, std::ios::binary | std::ios::trunc);
    file.write(text.data(), static_cast<std::streamsize>(text.size()));
    file.close();
    if (!file)
        throw BadData(Problem{{path, 0, 0},
                              "--html",
                              "",
                              "a file that can be written",
                              "name another file or free some space"});
}

}  // namespace

int run_match(const Arguments& typed) {
    const Session session = open_session(typed);
    const Selection selection = select(session.job, *session.catalog, session.policy);
    if (typed.json) {
        print(json_selection("match", selection, typed.top));
    } else {
        print(match_document(session.job, selection, session.open, typed.top), typed);
    }
    return exit_of(selection);
}

int run_why(const Arguments& typed_as_is) {
    Arguments typed = typed_as_is;
    if (typed.part.empty()) std::swap(typed.part, typed.job);  // "why PART --plate ..." has no job file
    if (typed.part.empty())
        throw BadUsage(Problem{{}, "PART", "", "a part id or number", "try: endbell why JOB PART"});
    const Session session = open_session(typed);
    const Part part = part_named(*session.catalog, typed.part);
    const Diagnosis diagnosis = diagnose(session.job, session.catalog->limits());
    Candidate candidate = examine(Question{session.job, diagnosis, session.catalog->limits()}, part);
    const std::string stamp = stamp_of(session.job, *session.catalog);
    if (typed.json) {
        print(json_candidate("why", candidate, stamp));
    } else {
        print(why_document(candidate, stamp), typed);
    }
    return done;
}

int run_ask(const Arguments& typed) {
    const Session session = open_session(typed);
    const Selection selection = select(session.job, *session.catalog, session.policy);
    if (typed.json) {
        print(json_selection("ask", selection, 0));
    } else {
        print(ask_document(selection, session.open), typed);
    }
    return exit_of(selection);
}

int run_diagnose(const Arguments& typed) {
    const Session session = open_session(typed);
    const Diagnosis diagnosis = diagnose(session.job, session.catalog->limits());
    const std::string stamp = stamp_of(session.job, *session.catalog);
    if (typed.json) {
        print(json_diagnosis("diagnose", diagnosis, exit_of(diagnosis), stamp));
    } else {
        print(diagnosis_document(diagnosis, session.open, stamp), typed);
    }
    return exit_of(diagnosis);
}

int run_wire(const Arguments& typed) {
    const Session session = open_session(typed);
    Selection selection = select(session.job, *session.catalog, session.policy);
    const Option* option = chosen_option(typed, session, selection);
    if (option == nullptr) {
        print(typed.json ? json_selection("wire", selection, 0)
                         : render_text(ask_document(selection, session.open), typed.width));
        return exit_of(selection);
    }
    if (typed.json) {
        print(json_option("wire", selection, *option));
    } else {
        print(wiring_document(session.job, selection, *option), typed);
    }
    if (option->wiring.possible) return done;
    return static_cast<int>(option->wiring.lacking.empty() ? Outcome::nothing_fits : Outcome::undecided);
}

int run_compare(const Arguments& typed) {
    const Session session = open_session(typed);
    const Selection selection = select(session.job, *session.catalog, session.policy);
    if (typed.json) {
        print(json_selection("compare", selection, 0));
    } else {
        print(cost_document(selection), typed);
    }
    return exit_of(selection);
}

int run_sheet(const Arguments& typed) {
    const Session session = open_session(typed);
    Selection selection = select(session.job, *session.catalog, session.policy);
    const Option* option = chosen_option(typed, session, selection);
    const Reader reader = *from_word<Reader>(typed.reader);
    const Document sheet = sheet_document(session.job, selection, option, reader, session.open);
    if (!typed.html.empty()) write_file(typed.html, render_html(sheet));
    if (typed.json) {
        print(json_sheet(selection, option, sheet));
    } else if (typed.html.empty()) {
        print(sheet, typed);
    }
    return exit_of(selection);
}

int run_rules(const Arguments& typed) {
    Limits limits;
    std::unique_ptr<Catalog> catalog = typed.catalog.empty() ? nullptr : open_catalog(typed);
    const Limits& in_force = catalog ? catalog->limits() : limits;
    if (typed.json) {
        print(json_rules("rules", in_force, typed.rule));
    } else {
        print(rules_document(in_force, typed.rule), typed);
    }
    return done;
}

}  // namespace endbell::cli
