// Everything that a diagnosis can say has its English, once; and nothing has English that is never said.
#include <algorithm>
#include <boost/test/unit_test.hpp>

#include "engine/explain/diagnosis_words.hpp"
#include "engine/explain/next_test_words.hpp"
#include "tests/explain/english.hpp"

using namespace endbell;
using namespace english;

namespace {

std::vector<Fault> faults_that_keep_the_motor() {
    std::vector<Fault> faults;
    for (Fault fault : values_of<Fault>()) {
        Diagnosis d;
        d.fault = fault;
        if (d.replace_nothing()) faults.push_back(fault);
    }
    return faults;
}

}  // namespace

BOOST_AUTO_TEST_CASE(all_that_a_diagnosis_can_say_has_its_english) {
    check_none(unsaid(values_of<Test>(), english_of_tests()));
    check_none(unsaid(std::vector(test_outcomes.begin(), test_outcomes.end()), english_of_outcomes()));
    check_none(unsaid(values_of<Fault>(), english_of_faults()));
    check_none(unsaid(faults_that_keep_the_motor(), english_of_keeping()));
    check_none(unsaid(values_of<Cause>(), english_of_causes()));
    check_none(unsaid(values_of<Cause>(), english_of_cures()));
    check_none(unsaid(values_of<Culprit>(), english_of_culprits()));
    check_none(unsaid(values_of<Danger>(), english_of_dangers()));
}

BOOST_AUTO_TEST_CASE(each_test_says_once_what_decides_it_and_what_follows) {
    const std::vector<NextTestWords> told = words_of_next_tests();
    for (const Test test : values_of<Test>()) {
        const auto count =
            std::count_if(told.begin(), told.end(), [&](const auto& w) { return w.test == test; });
        BOOST_TEST(count == 1, word(test));
        BOOST_TEST(!say_decides(test).empty());
        BOOST_TEST(!say_follows(test).empty());
    }
}

BOOST_AUTO_TEST_CASE(a_word_without_english_is_caught) {
    const TestOutcome low{Test::line_volts, TestReason::too_low};
    const TestOutcome high{Test::line_volts, TestReason::too_high};
    const TestOutcome never{Test::shaft_play, TestReason::too_low};
    using List = std::vector<English<TestOutcome>>;
    BOOST_TEST(
        (unsaid({low, high}, List{{low, "too low"}}) == Complaints{"line volts: too high has no English"}));
    BOOST_TEST((unsaid({low}, List{{low, "too low"}, {low, "too low"}}) ==
                Complaints{"line volts: too low has English twice"}));
    BOOST_TEST((unsaid({low}, List{{low, ""}}) == Complaints{"line volts: too low has an empty text"}));
    BOOST_TEST((unsaid({low}, List{{low, "too low"}, {never, "too low"}}) ==
                Complaints{"shaft play: too low is never said"}));
    BOOST_TEST(unsaid({low}, List{{low, "too low"}}).empty());
    BOOST_TEST(unsaid({Cause::overload}, std::vector<English<Cause>>{}).size() == 1U);
}

BOOST_AUTO_TEST_CASE(each_cause_has_its_own_advice) {
    std::vector<std::string_view> told;
    for (const English<Cause>& cure : english_of_cures()) told.push_back(cure.text);
    std::sort(told.begin(), told.end());
    BOOST_TEST((std::adjacent_find(told.begin(), told.end()) == told.end()));
}

BOOST_AUTO_TEST_CASE(a_cause_that_is_not_found_is_looked_for_and_not_cured) {
    const RootCause lost{Cause::not_found, "measured.earlier_replacements", "common-practice"};
    BOOST_TEST(cure_step(lost.cause).rfind("Find the cause: ", 0) == 0U);
    BOOST_TEST(cure_step(Cause::loaded_filter).rfind("Cure the cause, loaded filter: ", 0) == 0U);
    BOOST_TEST(next_life_sentence(lost).find("Cure it") == std::string::npos);
    BOOST_TEST(cause_sentence(lost).rfind("Cause: not found (measured.earlier_replacements). ", 0) == 0U);
}

BOOST_AUTO_TEST_CASE(no_fault_found_is_not_called_a_fault) {
    BOOST_TEST(fault_sentence(Fault::none) == "No fault found.");
    BOOST_TEST(fault_sentence(Fault::supply) == "Fault: supply.");
    BOOST_TEST(keep_sentence(Fault::none).find("elsewhere") == std::string::npos);
}
