#include "engine/base/problem.hpp"

#include <boost/test/unit_test.hpp>

#include "engine/base/ensure.hpp"

using namespace endbell;

BOOST_AUTO_TEST_CASE(a_place_says_only_what_is_known) {
    BOOST_TEST(to_text(Place{"attic.toml", 12, 9}) == "attic.toml:12:9");
    BOOST_TEST(to_text(Place{"attic.toml", 12, 0}) == "attic.toml:12");
    BOOST_TEST(to_text(Place{"attic.toml", 0, 9}) == "attic.toml");
    BOOST_TEST(to_text(Place{}).empty());
}

BOOST_AUTO_TEST_CASE(a_problem_names_place_value_expectation_and_what_to_do) {
    const Problem problem{
        {"attic.toml", 3, 1}, "volts", "2x0", "volts, such as 208-230", "read the plate again"};
    const std::string text = to_text(problem);
    for (const char* part : {"attic.toml:3:1", "volts", "'2x0'", "208-230", "read the plate again"}) {
        BOOST_TEST(text.find(part) != std::string::npos);
    }
}

BOOST_AUTO_TEST_CASE(a_value_in_a_problem_cannot_drive_a_terminal) {
    const std::string text = to_text(Problem{{}, "volts", "\x1b[2J", "", ""});
    BOOST_TEST(text.find('\x1b') == std::string::npos);
    BOOST_TEST(text.find("\\x1b[2J") != std::string::npos);
}

BOOST_AUTO_TEST_CASE(bad_data_carries_every_problem_on_its_own_line) {
    const BadData error(std::vector<Problem>{{{"a", 1, 1}, "x", "", "", ""}, {{"a", 2, 1}, "y", "", "", ""}});
    const std::string text = error.what();
    BOOST_TEST(error.problems().size() == 2U);
    BOOST_TEST(text.find("a:1:1: x\na:2:1: y") != std::string::npos);
}

BOOST_AUTO_TEST_CASE(a_claim_that_does_not_hold_is_our_bug) {
    BOOST_CHECK_NO_THROW(ensure(true, "one is one"));
    BOOST_CHECK_THROW(ensure(false, "one is two"), OurBug);
}
