// A catalog around the agreeing blower; a test spoils the parts it adds.
#pragma once
#include <string>

#include "tests/rules/world.hpp"

namespace endbell::match_tests {

struct Shelf {
    rule_tests::World w = rule_tests::blower();
    PlainCatalog catalog;

    /// A part that agrees in every respect. Good until the next one is added.
    Part& add(const std::string& id) {
        catalog.parts_list.push_back(rule_tests::blower().part);
        catalog.parts_list.back().id = id;
        return catalog.parts_list.back();
    }
    Question question() const { return Question{w.job, w.diagnosis, w.limits}; }
    MatchReport report() const { return match(question(), catalog); }
};

}  // namespace endbell::match_tests
