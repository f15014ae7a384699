// Every reason that a rule declares has one sentence, and no sentence stands for a pair that nobody declares. Sentences
// are data for people: tests hold their form, never their words.
#include <boost/test/unit_test.hpp>
#include <map>
#include <set>
#include <string>
#include <utility>

#include "engine/explain/reasons.hpp"
#include "engine/rules/rule.hpp"

using namespace endbell;

namespace {

using Pair = std::pair<std::string, std::string>;  // rule and the reason's word

/// What can be found: the rules' own reasons, and what the wiring plan adds to a candidate.
std::set<Pair> declared() {
    std::set<Pair> pairs{{std::string(rule_id::wiring), std::string(word(Reason::relays_of_the_wiring_plan))},
                         {std::string(rule_id::wiring), std::string(word(Reason::transformer_overloaded))}};
    for (const Rule& rule : all_rules()) {
        for (const Reason reason : rule.reasons) pairs.emplace(rule.id, word(reason));
    }
    return pairs;
}

std::vector<RuleSentences> written() {
    std::vector<RuleSentences> all = sentences_of_kind_and_power();
    for (const RuleSentences& more : sentences_of_size_and_place()) all.push_back(more);
    return all;
}

std::vector<std::string> complaints(const std::set<Pair>& declared,
                                    const std::vector<RuleSentences>& written) {
    std::vector<std::string> found;
    std::map<Pair, int> times;
    for (const RuleSentences& of_rule : written) {
        for (const ReasonSentence& s : of_rule.list) {
            const Pair pair(of_rule.rule, word(s.reason));
            const std::string name = pair.first + ", " + pair.second;
            if (++times[pair] == 2) found.push_back(name + ": two sentences");
            if (declared.count(pair) == 0) found.push_back(name + ": nobody finds that");
            const bool whole = s.text.size() > 10 && s.text.front() >= 'A' && s.text.front() <= 'Z' &&
                               s.text.back() == '.' && s.text.find(". ") == std::string_view::npos;
            if (!whole) found.push_back(name + ": not one whole sentence");
        }
    }
    for (const Pair& pair : declared) {
        if (times.count(pair) == 0) found.push_back(pair.first + ", " + pair.second + ": no sentence");
    }
    return found;
}

}  // namespace

BOOST_AUTO_TEST_CASE(every_reason_of_every_rule_has_its_sentence_and_none_is_left_over) {
    BOOST_TEST(declared().size() > 250U);
    const std::vector<std::string> none;
    BOOST_TEST(complaints(declared(), written()) == none, boost::test_tools::per_element());
    for (const Rule& rule : all_rules()) {
        for (const Reason reason : rule.reasons) BOOST_TEST(!sentence_for(rule.id, reason).empty());
    }
}

BOOST_AUTO_TEST_CASE(a_sentence_that_is_missing_left_over_double_or_broken_is_caught) {
    const std::set<Pair> one{{"mount", "other mount"}};
    const auto write = [](Reason reason, std::string_view text) {
        return RuleSentences{rule_id::mount, {{reason, text}}};
    };
    const RuleSentences good = write(Reason::other_mount, "It is held another way.");
    BOOST_TEST(complaints(one, {good}).empty());
    BOOST_TEST(complaints(one, {}).size() == 1U);
    BOOST_TEST(complaints(one, {good, good}).size() == 1U);
    BOOST_TEST(complaints(one, {good, write(Reason::same_mount, "It is held as before.")}).size() == 1U);
    BOOST_TEST(complaints({}, {good}).size() == 1U);
    BOOST_TEST(complaints(one, {write(Reason::other_mount, "other mount")}).size() == 1U);
    BOOST_TEST(complaints(one, {write(Reason::other_mount, "It is held. Another way.")}).size() == 1U);
}
