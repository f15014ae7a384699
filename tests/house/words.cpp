// Every value of an enumeration that has words has one: a value left out of the table would be said as "?".
#include <boost/test/unit_test.hpp>
#include <map>
#include <set>

#include "tests/house/repository.hpp"

using namespace house;

namespace {

std::string without_comments(const std::string& text) {
    return std::regex_replace(text, std::regex("//[^\n]*"), "");
}

/// The enumerations of a header by name, with the names of their values.
std::map<std::string, std::set<std::string>> enumerations_of(const std::string& code) {
    std::map<std::string, std::set<std::string>> all;
    const std::regex pattern("enum class (\\w+)[^{};]*\\{([^}]*)\\}");
    for (auto it = std::sregex_iterator(code.begin(), code.end(), pattern); it != std::sregex_iterator();
         ++it) {
        for (const std::string& value : captures((*it)[2].str(), "(\\w+)\\s*(?:=[^,]*)?(?:,|$)"))
            all[(*it)[1].str()].insert(value);
    }
    return all;
}

Complaints unworded(const std::vector<File>& files) {
    Complaints complaints;
    for (const File& file : files) {
        const std::string code = without_comments(file.text);
        const auto enumerations = enumerations_of(code);
        for (const std::string& name : captures(code, "words_of\\((\\w+)\\)")) {
            const auto values = enumerations.find(name);
            if (values == enumerations.end()) continue;
            for (const std::string& value : values->second) {
                const std::size_t words = captures(code, "\\{(" + name + "::" + value + "),\\s*\"").size();
                if (words != 1)
                    complaints.push_back(file.path + ": " + name + "::" + value + " has " +
                                         std::to_string(words) + " words");
            }
        }
    }
    return complaints;
}

}  // namespace

BOOST_AUTO_TEST_CASE(every_value_of_an_enumeration_with_words_has_one) {
    CHECK_NO_COMPLAINTS(unworded(sources()));
}

BOOST_AUTO_TEST_CASE(a_value_without_a_word_or_with_two_is_caught) {
    const std::string kinds =
        "enum class Fruit { apple, pear = 3, plum };  // no more\n"
        "constexpr auto words_of(Fruit) { return std::array{Word<Fruit>{Fruit::apple, \"apple\"}";
    const std::string pear = ", Word<Fruit>{Fruit::pear,\n \"pear\"}";
    const std::string plum = ", Word<Fruit>{Fruit::plum, \"plum\"}";
    BOOST_TEST(enumerations_of(kinds).at("Fruit").size() == 3U);
    BOOST_TEST(unworded({{"a.hpp", kinds + pear + plum}}).empty());
    BOOST_TEST(unworded({{"a.hpp", kinds + pear}}).size() == 1U);
    BOOST_TEST(unworded({{"a.hpp", kinds + pear + plum + plum}}).size() == 1U);
}
