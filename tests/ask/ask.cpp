#include "engine/ask/ask.hpp"
#include "engine/fields/job_key.hpp"

#include <algorithm>

#include "engine/ask/askable.hpp"
#include "tests/match/pairs.hpp"
#include "tests/match/shelf.hpp"

namespace endbell::match_tests {

namespace {

using namespace rule_tests;

AskState state(const Shelf& s) {
    return ask_state(s.query(), s.report(), s.catalog);
}

std::vector<AskedReading> asked(const Shelf& s) {
    return what_to_ask(s.query(), books_of(s.catalog));
}

}  // namespace

BOOST_AUTO_TEST_CASE(the_stop_rules) {
    Shelf s;
    BOOST_TEST(static_cast<int>(state(s)) == static_cast<int>(AskState::none_left));
    s.add("a");
    BOOST_TEST(static_cast<int>(state(s)) == static_cast<int>(AskState::one_left));
    s.add("b");
    BOOST_TEST(static_cast<int>(state(s)) == static_cast<int>(AskState::only_price));
    s.w.job.plate.mount = {};
    BOOST_TEST(static_cast<int>(state(s)) == static_cast<int>(AskState::ask));
    s.w.job.plate.mount = known(Mount::band);
    s.add("c")
        .motor->rotation.reset();  // open, and could not end better than a and b, which need one change too
    BOOST_TEST(static_cast<int>(state(s)) == static_cast<int>(AskState::cannot_change));
    BOOST_TEST(asked(s).empty());
    s.catalog.parts_list.erase(s.catalog.parts_list.begin(), s.catalog.parts_list.begin() + 2);
    BOOST_TEST(static_cast<int>(state(s)) == static_cast<int>(AskState::no_answer));  // only its maker knows
}

// Three mounts on the shelf and one shaft: the mount splits, the shaft does not; both must be known.
BOOST_AUTO_TEST_CASE(the_reading_that_splits_this_catalog_comes_first) {
    Shelf s;
    s.w.job.plate.mount = {};
    s.w.job.plate.shaft_diameter = {};
    s.add("a");
    s.add("b").motor->mount = Mount::base;
    s.add("c").motor->mount = Mount::face;
    const auto list = asked(s);
    BOOST_REQUIRE(list.size() == 2u);
    BOOST_TEST(list[0].job_key == "plate.mount");
    BOOST_TEST(list[0].concerns == 3);
    BOOST_TEST(list[0].answers.size() == 3u);
    BOOST_TEST(list[0].answers[0].answer == "band");
    BOOST_TEST(list[0].answers[0].living == 1);
}

// The order adapts: where every mount is a band and the shafts differ, the shaft comes first.
BOOST_AUTO_TEST_CASE(the_order_adapts_to_the_catalog) {
    Shelf s;
    s.w.job.plate.mount = {};
    s.w.job.plate.shaft_diameter = {};
    s.w.job.plate.body_diameter = known(inch(5.6));
    for (int i = 0; i < 6; ++i) s.add("p" + std::to_string(i)).motor->shaft_diameter = inch(0.5 + 0.125 * i);
    const auto list = asked(s);
    BOOST_REQUIRE(!list.empty());
    BOOST_TEST(list[0].settled > 0);
    double shaft = 0;
    double mount = 0;
    for (const AskedReading& a : list) {
        if (a.job_key == "plate.shaft_diameter" || a.job_key == "measured.bore") shaft = a.settled;
        if (a.job_key == "plate.mount") mount = a.settled;
    }
    BOOST_TEST(shaft > mount);
}

BOOST_AUTO_TEST_CASE(of_two_keys_that_answer_the_same_only_one_is_asked) {
    Shelf s;
    s.w.job.plate.shaft_diameter = {};
    s.add("a");
    const auto list = asked(s);
    BOOST_REQUIRE(list.size() == 1u);
    BOOST_TEST(list[0].job_key == "plate.shaft_diameter");  // the plate is quicker than the tape
}

// Whether it stands outdoors follows from what it turns, which must be asked in any case.
BOOST_AUTO_TEST_CASE(what_follows_from_an_unavoidable_answer_is_not_asked) {
    Shelf s;
    s.w.job.unit.load = {};
    s.add("a");
    s.add("b").motor->loads = {Load::outdoor_fan};
    const auto list = asked(s);
    BOOST_REQUIRE(!list.empty());
    BOOST_TEST(list[0].job_key == "unit.load");
    BOOST_TEST((std::none_of(list.begin(), list.end(),
                             [](const AskedReading& a) { return a.job_key == "unit.outdoors"; })));
}

BOOST_AUTO_TEST_CASE(the_readings_of_a_proof_are_all_asked) {
    Shelf s;
    s.w = module_job();
    s.w.diagnosis = {};
    s.catalog.parts_list.push_back(s.w.part);
    std::vector<std::string> keys;
    for (const AskedReading& a : asked(s)) keys.push_back(a.job_key);
    std::sort(keys.begin(), keys.end());
    BOOST_TEST(keys == (std::vector<std::string>{"measured.spins_free", "measured.winding_to_shell",
                                                 "measured.windings"}),
               boost::test_tools::per_element());
}

// Every job key that a rule can ask for is one that somebody has told how to ask.
namespace {
/// No part knows an answer to it: it is asked after the others, in the words of its key.
bool told(std::string_view key) {
    const JobKey* found = job_key(key);
    return found != nullptr && !found->asked_as.empty();
}
}  // namespace

BOOST_AUTO_TEST_CASE(every_question_of_a_rule_can_be_asked) {
    Dice dice(9);
    for (int i = 0; i < 20'000; ++i) {
        const World w = pair(dice);
        for (const Finding& f :
             examine(Query{w.job, facts_of(w.job, w.limits), w.diagnosis, w.limits}, w.part).findings) {
            if (f.verdict != Verdict::not_shown) continue;
            for (const std::string& key : f.asks) {
                const bool column = key.rfind("motors.", 0) == 0 || key.rfind("motor_ratings.", 0) == 0 ||
                                    key.rfind("taps.", 0) == 0 || key.rfind("modules.", 0) == 0;
                BOOST_TEST_CONTEXT(f.rule << ' ' << key) {
                    BOOST_TEST((column || askable(key) != nullptr || told(key)));
                }
            }
        }
    }
}

}  // namespace endbell::match_tests
