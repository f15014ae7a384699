// The glossary is a table of words: each stands once, in order, and a type that a row names is there to be found.
#include <boost/test/unit_test.hpp>
#include <set>

#include "tests/house/repository.hpp"

using namespace house;

namespace {

std::vector<std::string> words_of_table(const std::string& page) {
    std::vector<std::string> words = captures(page, "\n\\| ([^|]+) \\|");
    return words.size() < 2 ? std::vector<std::string>() : std::vector(words.begin() + 1, words.end());
}

Complaints out_of_order(const std::string& page) {
    const std::vector<std::string> words = words_of_table(page);
    Complaints complaints;
    for (std::size_t i = 1; i < words.size(); ++i) {
        if (words[i] <= words[i - 1])
            complaints.push_back(words[i] + (words[i] == words[i - 1] ? " stands twice" : " stands late"));
    }
    return complaints;
}

std::set<std::string> types_of(const std::vector<File>& files) {
    std::set<std::string> types;
    for (const File& file : files) {
        for (const std::string& name : captures(file.text, "\\n *(?:struct|class|enum class|using) (\\w+)"))
            types.insert(name);
    }
    return types;
}

/// Types stand in backticks, with a capital: `Finding`, `Rule::claim`.
Complaints unknown_types(const std::string& page, const std::set<std::string>& types) {
    Complaints complaints;
    for (const std::string& name : captures(page, "`([A-Z]\\w*)[^`]*`")) {
        if (types.count(name) == 0) complaints.push_back("the code has no type " + name);
    }
    return complaints;
}

std::string glossary() {
    return read(root() / "docs/glossary.md");
}

}  // namespace

BOOST_AUTO_TEST_CASE(the_glossary_has_each_word_once_and_in_order) {
    BOOST_TEST(words_of_table(glossary()).size() > 50U);
    CHECK_NO_COMPLAINTS(out_of_order(glossary()));
}

BOOST_AUTO_TEST_CASE(a_word_twice_or_out_of_order_is_caught) {
    const std::string head = "\n| word | meaning |\n|---|---|\n";
    BOOST_TEST(out_of_order(head + "| tap | a |\n| tap rule | b |\n").empty());
    BOOST_TEST(out_of_order(head + "| tap | a |\n| tap | b |\n").size() == 1U);
    BOOST_TEST(out_of_order(head + "| way | a |\n| tap | b |\n").size() == 1U);
}

BOOST_AUTO_TEST_CASE(the_glossary_names_types_that_there_are) {
    CHECK_NO_COMPLAINTS(unknown_types(glossary(), types_of(sources())));
}

BOOST_AUTO_TEST_CASE(a_type_that_was_renamed_is_caught) {
    const std::set<std::string> types = types_of({{"engine/a.hpp", "\nstruct Finding {\n"}});
    BOOST_TEST(unknown_types("| finding | `Finding`, `Finding::verdict`, `demo-catalog` |", types).empty());
    BOOST_TEST(unknown_types("| finding | `Answer` |", types).size() == 1U);
}
