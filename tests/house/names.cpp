// One name, one type: two types of one name in the same namespace are one to the linker, whichever it meets first.
// What a source keeps to itself stands in a namespace without a name.
#include <boost/test/unit_test.hpp>
#include <map>

#include "tests/house/repository.hpp"

using namespace house;

namespace {

/// Types that stand in a header at the outermost level, by name: the headers that define them.
std::map<std::string, std::vector<std::string>> types_of(const std::vector<File>& files) {
    std::map<std::string, std::vector<std::string>> headers;
    for (const File& file : files) {
        if (file.path.size() < 4 || file.path.substr(file.path.size() - 4) != ".hpp") continue;
        for (const std::string& name :
             captures(file.text, "(?:^|\n)(?:struct|class|enum class) (\\w+)[^;{(]*\\{"))
            headers[name].push_back(file.path);
    }
    return headers;
}

Complaints twice_defined(const std::vector<File>& files) {
    Complaints complaints;
    for (const auto& [name, headers] : types_of(files)) {
        // A specialisation of Words for each enumeration is one template.
        if (headers.size() > 1 && name != "Words")
            complaints.push_back(name + " is a type of " + headers[0] + " and of " + headers[1]);
    }
    return complaints;
}

/// Namespaces that are named for one file's sake, as if its neighbours were compiled with it.
Complaints namespaces_of_one_file(const std::vector<File>& files) {
    Complaints complaints;
    for (const File& file : files) {
        for (const std::string& name : captures(file.text, "\\bnamespace (of_\\w+)"))
            complaints.push_back(file.path + " opens " + name);
    }
    return complaints;
}

}  // namespace

BOOST_AUTO_TEST_CASE(no_two_headers_define_a_type_of_one_name) {
    BOOST_TEST(types_of(sources()).size() > 100U);
    CHECK_NO_COMPLAINTS(twice_defined(sources()));
}

BOOST_AUTO_TEST_CASE(a_name_given_twice_is_caught) {
    const File one{"engine/rules/trade.hpp", "\nstruct Signal {\n"};
    const File other{"engine/wiring/states.hpp", "\nstruct Signal {\n"};
    const File forward{"engine/wiring/plan.hpp", "\nstruct Signal;\n"};
    BOOST_TEST(twice_defined({one, other}).size() == 1U);
    BOOST_TEST(twice_defined({one, forward}).empty());
}

BOOST_AUTO_TEST_CASE(what_a_source_keeps_to_itself_has_no_named_namespace) {
    CHECK_NO_COMPLAINTS(namespaces_of_one_file(sources()));
}

BOOST_AUTO_TEST_CASE(a_namespace_of_one_file_is_caught) {
    BOOST_TEST(
        namespaces_of_one_file({{"engine/rules/load.cpp",
                                 "\nnamespace of_load {\n}\nRule load() {\n    using namespace of_load;\n"}})
            .size() == 2U);
    BOOST_TEST(namespaces_of_one_file({{"engine/rules/load.cpp", "\nnamespace {\n"}}).empty());
}
