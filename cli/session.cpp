#include "cli/session.hpp"

#include <algorithm>
#include <filesystem>

#include "engine/base/problem.hpp"
#include "engine/base/text.hpp"
#include "engine/job/job.hpp"
#include "engine/job/shop_policy.hpp"
#include "engine/job/start_up_file.hpp"
#include "engine/sheet/json.hpp"

namespace endbell::cli {

namespace {

FailedUnit job_of(const Arguments& typed, std::vector<std::string>& words_not_understood) {
    if (typed.job.empty() && typed.plate.empty() && typed.set.empty()) {
        throw BadUsage(Problem{{},
                               "JOB",
                               "",
                               "a job file, --plate, or --set",
                               "try: endbell match --plate \"1/2 hp 208-230 1075 CCWLE 1/2x5\""});
    }
    const bool begun = !typed.answer || std::filesystem::exists(typed.job);  // a dialogue may begin a job
    FailedUnit job = typed.job.empty() || !begun ? FailedUnit{} : read_job_file(typed.job);
    if (!typed.plate.empty()) {
        for (const std::string& unread : add_plate(job, typed.plate)) words_not_understood.push_back(unread);
    }
    if (!typed.set.empty()) set_fields(job, typed.set);
    if (!typed.as_of.empty()) set_field(job, "shop.as_of=" + typed.as_of);
    attach_start_up(job, std::filesystem::path(typed.job).parent_path());
    return job;
}

}  // namespace

std::string catalog_file(const Arguments& typed) {
    if (typed.catalog.empty()) {
        throw BadUsage(Problem{{},
                               "--catalog",
                               "",
                               "the catalog file",
                               "name it with --catalog, ENDBELL_CATALOG or the configuration file; make one "
                               "with endbell catalog import"});
    }
    return typed.catalog;
}

std::unique_ptr<IndexedCatalog> open_catalog(const Arguments& typed) {
    return std::make_unique<IndexedCatalog>(catalog_file(typed));
}

/// The job first, which may be wrong without any catalog; then the catalog, and only then what a shop makes stricter.
Session open_session(const Arguments& typed) {
    Session session;
    std::vector<std::string> words_not_understood;
    session.job = job_of(typed, words_not_understood);
    session.open = open_fields(session.job);
    for (const std::string& unread : words_not_understood) {
        session.open.push_back(OpenField{
            "--plate", unread, "This was not understood and decides nothing. What does it say?", {}, {}});
    }
    session.catalog = open_catalog(typed);
    if (!typed.shop.empty()) add_shop(session.job, read_shop_policy_file(typed.shop));
    session.limits = limits_in_force(typed, session.catalog.get());
    session.policy = policy_of(session.job);
    return session;
}

Limits limits_in_force(const Arguments& typed, const StoredCatalog* catalog) {
    Limits limits = catalog != nullptr ? catalog->limits() : Limits();
    if (!typed.shop.empty()) tighten(limits, read_shop_policy_file(typed.shop));
    return limits;
}

namespace {

/// A number that looks alike comes before one that is spelled nearly alike.
std::string near_part(const StoredCatalog& catalog, const std::string& typed) {
    const std::vector<NumberedPart> alike = catalog.misread_numbers(typed);
    if (!alike.empty()) return alike.front().number;
    std::vector<std::string> known;
    catalog.each_part([&](const Part& part) {
        known.push_back(part.id);
        known.push_back(part.number);
    });
    return nearest(typed, known);
}

}  // namespace

/// By id, else by its number as people write it; a number of several parts is not guessed at.
Part part_named(const StoredCatalog& catalog, const std::string& typed) {
    if (auto part = catalog.part(typed)) return *part;
    const std::vector<std::string> same = catalog.parts_numbered(typed);
    if (same.size() == 1) return *catalog.part(same.front());
    if (same.size() > 1) {
        throw BadData(Problem{{},
                              "PART",
                              typed,
                              "a part id",
                              "several parts have this number: use one of their ids, " + joined(same, ", ")});
    }
    const std::string near = near_part(catalog, typed);
    throw BadData(Problem{{},
                          "PART",
                          typed,
                          "a part id or number of this catalog",
                          near.empty() ? "look it up with endbell match" : "did you mean " + near + "?"});
}

/// A part that the user names is carried whatever its verdict: the sheet then says what is against it.
const Option* chosen_option(const Arguments& typed, const Session& session, Selection& selection) {
    Option* chosen = selection.pick ? &selection.options[static_cast<std::size_t>(*selection.pick)] : nullptr;
    if (!typed.part.empty()) {
        const Part part = part_named(*session.catalog, typed.part);
        const auto found =
            std::find_if(selection.options.begin(), selection.options.end(),
                         [&](const Option& option) { return option.candidate.part.id == part.id; });
        if (found != selection.options.end()) {
            chosen = &*found;
        } else {
            const KitShelf shelf(session.books(), session.policy);
            const FailedUnit& job = selection.job(session.job);
            const Query query{job, selection.facts, selection.diagnosis, session.limits};
            selection.options.push_back(
                carry(query, candidate(query, *session.catalog, part.id), shelf, session.books()));
            chosen = &selection.options.back();
        }
    }
    if (chosen != nullptr)
        annotate(selection, static_cast<std::size_t>(chosen - selection.options.data()), session.job,
                 session.limits);
    return chosen;
}

std::string selection_json(std::string_view command, Selection& selection, const Session& session, int top) {
    const std::size_t shown = std::min(static_cast<std::size_t>(top), selection.options.size());
    for (std::size_t i = 0; i < shown; ++i) annotate(selection, i, session.job, session.limits);
    const FailedUnit& job = selection.job(session.job);
    for (Option& option : selection.stopped) annotate(option, job, selection.facts, session.limits);
    return json_selection(command, job, selection, session.open, top);
}

}  // namespace endbell::cli
