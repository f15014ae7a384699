// What the history says of itself: a subject that fits on a line. A tree without a history has nothing to answer for.
#include <algorithm>
#include <boost/test/unit_test.hpp>
#include <cstdio>
#include <sstream>

#include "tests/house/repository.hpp"

using namespace house;

namespace {

constexpr std::size_t longest_subject = 72;  // characters

std::size_t characters(const std::string& text) {
    return static_cast<std::size_t>(
        std::count_if(text.begin(), text.end(), [](char c) { return (c & 0xC0) != 0x80; }));
}

Complaints long_subjects(const std::vector<std::string>& subjects) {
    Complaints complaints;
    for (const std::string& subject : subjects) {
        if (characters(subject) > longest_subject)
            complaints.push_back(subject + " has " + std::to_string(characters(subject)) + " characters");
    }
    return complaints;
}

/// Of the last commits; none without git or a history.
std::vector<std::string> last_subjects() {
    const std::string command = "git -C '" + root().string() + "' log -20 --format=%s 2>/dev/null";
    std::string text;
    if (FILE* said = popen(command.c_str(), "r")) {
        char block[4096];
        for (std::size_t got = 1; got > 0; text.append(block, got)) got = fread(block, 1, sizeof block, said);
        pclose(said);
    }
    std::vector<std::string> subjects;
    std::istringstream lines(text);
    for (std::string line; std::getline(lines, line);) subjects.push_back(line);
    return subjects;
}

}  // namespace

BOOST_AUTO_TEST_CASE(subjects_of_commits_fit_on_a_line) {
    const std::vector<std::string> subjects = last_subjects();
    if (subjects.empty()) BOOST_TEST_MESSAGE("no git history here");
    CHECK_NO_COMPLAINTS(long_subjects(subjects));
}

BOOST_AUTO_TEST_CASE(a_long_subject_is_caught) {
    BOOST_TEST(long_subjects({std::string(72, 'x')}).empty());
    BOOST_TEST(long_subjects({std::string(73, 'x')}).size() == 1U);
    std::string umlauts;
    for (int i = 0; i < 72; ++i) umlauts += "\xC3\xBC";
    BOOST_TEST(long_subjects({umlauts}).empty());
}
