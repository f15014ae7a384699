// What the tests say is what test_outcomes.hpp declares: nothing else, and all of it.
#include <algorithm>
#include <boost/test/unit_test.hpp>

#include "engine/diagnosis/test_outcomes.hpp"
#include "tests/diagnosis/random_jobs.hpp"

using namespace endbell;
using namespace endbell::jobs;

namespace {

bool is_declared(const TestOutcome& outcome) {
    return std::find(test_outcomes.begin(), test_outcomes.end(), outcome) != test_outcomes.end();
}

}  // namespace

BOOST_AUTO_TEST_CASE(random_jobs_say_what_is_declared_and_all_of_it) {
    Maker maker(17);
    std::vector<TestOutcome> said;
    for (int i = 0; i < 10000; ++i) {
        const FailedUnit job = maker.any_job();
        for (const Evidence& row : diagnose(job, facts_of(job, limits), limits).evidence) {
            const TestOutcome outcome{row.test, row.reason};
            if (std::find(said.begin(), said.end(), outcome) == said.end()) said.push_back(outcome);
        }
    }
    for (const TestOutcome& outcome : said)
        BOOST_TEST(is_declared(outcome), outcome.test << ": " << outcome.reason << " is not declared");
    for (const TestOutcome& outcome : test_outcomes)
        BOOST_TEST((std::find(said.begin(), said.end(), outcome) != said.end()),
                   outcome.test << ": " << outcome.reason << " is never said");
}

BOOST_AUTO_TEST_CASE(no_outcome_is_declared_twice) {
    for (const TestOutcome& outcome : test_outcomes)
        BOOST_TEST(std::count(test_outcomes.begin(), test_outcomes.end(), outcome) == 1);
    BOOST_TEST(!is_declared({Test::shaft_play, TestReason::too_low}));
}
