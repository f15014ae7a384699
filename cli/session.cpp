#include "cli/session.hpp"

#include <cstdio>

#include "engine/base/problem.hpp"
#include "engine/base/text.hpp"
#include "engine/catalog/stored_catalog.hpp"
#include "engine/job/job.hpp"
#include "engine/job/shop_policy.hpp"
#include "engine/sheet/text.hpp"

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
    FailedUnit job = typed.job.empty() ? FailedUnit{} : read_job_file(typed.job);
    if (!typed.plate.empty()) {
        for (const std::string& unread : add_plate(job, typed.plate)) words_not_understood.push_back(unread);
    }
    for (const std::string& field : typed.set) set_field(job, field);
    if (!typed.as_of.empty()) set_field(job, "shop.as_of=" + typed.as_of);
    return job;
}

std::vector<OpenField> open_fields(const FailedUnit& job) {
    std::vector<OpenField> open;
    for (const OpenQuestion& q : open_questions(job))
        open.push_back(OpenField{q.key, q.raw, q.question, q.readings});
    return open;
}

}  // namespace

std::unique_ptr<Catalog> open_catalog(const Arguments& typed) {
    if (typed.catalog.empty()) {
        throw BadUsage(
            Problem{{},
                    "--catalog",
                    "",
                    "the catalog file",
                    "name it with --catalog or ENDBELL_CATALOG; make one with endbell catalog import"});
    }
    return std::make_unique<StoredCatalog>(typed.catalog);
}

Session open_session(const Arguments& typed) {
    Session session;
    std::vector<std::string> words_not_understood;
    session.job = job_of(typed, words_not_understood);
    session.open = open_fields(session.job);
    for (const std::string& unread : words_not_understood) {
        session.open.push_back(OpenField{
            "--plate", unread, "This was not understood and decides nothing. What does it say?", {}});
    }
    session.stored = open_catalog(typed);
    Limits limits = session.stored->limits();
    if (!typed.shop.empty()) {
        const ShopPolicy shop = read_shop_policy_file(typed.shop);
        add_shop(session.job, shop);
        tighten(limits, shop);
    }
    session.catalog = std::make_unique<TightenedCatalog>(*session.stored, std::move(limits));
    session.policy = policy_of(session.job);
    return session;
}

Part part_named(const Catalog& catalog, const std::string& typed) {
    if (auto part = catalog.part(typed)) return *part;
    std::vector<Part> alike;
    std::vector<std::string> known;
    const std::string key = number_key(typed);
    catalog.each_part([&](const Part& part) {
        if (number_key(part.number) == key || number_key(part.id) == key) alike.push_back(part);
        known.push_back(part.id);
        known.push_back(part.number);
    });
    if (alike.size() == 1) return alike.front();
    if (alike.size() > 1) {
        throw BadData(
            Problem{{},
                    "PART",
                    typed,
                    "a part id",
                    "several parts have this number: use one of their ids, such as " + alike.front().id});
    }
    const std::string near = nearest(typed, known);
    throw BadData(Problem{{},
                          "PART",
                          typed,
                          "a part id or number of this catalog",
                          near.empty() ? "look it up with endbell match" : "did you mean " + near + "?"});
}

void print(const std::string& text) {
    std::fwrite(text.data(), 1, text.size(), stdout);
}

void print(const Document& document, const Arguments& typed) {
    print(render_text(document, typed.width));
}

const Option* chosen_option(const Arguments& typed, const Session& session, Selection& selection) {
    if (typed.part.empty())
        return selection.pick ? &selection.options[static_cast<std::size_t>(*selection.pick)] : nullptr;
    const Part part = part_named(*session.catalog, typed.part);
    for (const Option& option : selection.options) {
        if (option.candidate.part.id == part.id) return &option;
    }
    const KitShelf shelf(*session.catalog, session.policy);
    const Question question{session.job, selection.diagnosis, session.catalog->limits()};
    selection.options.push_back(carry(session.job, selection.diagnosis,
                                      candidate(question, *session.catalog, part.id), shelf,
                                      *session.catalog));
    return &selection.options.back();
}

}  // namespace endbell::cli
