// A catalog around the agreeing blower; a test spoils the parts it adds.
#pragma once
#include <string>
#include <vector>

#include "tests/match/books.hpp"
#include "tests/rules/world.hpp"

namespace endbell::match_tests {

/// The parts that live, with their findings, in the report's order: shown first.
inline std::vector<Candidate> living(const Query& query, const Catalog& catalog) {
    const MatchReport report = match_parts(query, books_of(catalog), Keep{1'000'000, 1'000'000}).report;
    std::vector<Candidate> all;
    for (const auto* list : {&report.matches, &report.not_shown}) {
        for (const CandidateName& s : *list) all.push_back(candidate(query, catalog, s.part_id));
    }
    return all;
}

struct Shelf {
    rule_tests::World w = rule_tests::blower();
    PlainCatalog catalog;

    /// A part that agrees in every respect. Good until the next one is added.
    Part& add(const std::string& id) {
        catalog.parts_list.push_back(rule_tests::blower().part);
        catalog.parts_list.back().id = id;
        return catalog.parts_list.back();
    }
    Query query() const { return Query{w.job, facts_of(w.job, w.limits), w.diagnosis, w.limits}; }
    MatchReport report() const { return match_parts(query(), books_of(catalog)).report; }
    std::vector<Candidate> living() const { return match_tests::living(query(), catalog); }
};

}  // namespace endbell::match_tests
