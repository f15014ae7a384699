// One word, one idea: a type's name says one thing in the whole house, and to the linker two types of one name in one
// namespace are one, whichever it meets first.
// What a source keeps to itself stands in a namespace without a name.
#include <boost/test/unit_test.hpp>
#include <map>
#include <set>

#include "tests/house/repository.hpp"

using namespace house;

namespace {

/// The types that a file declares outside any other type or function, aliases too. A namespace does not indent.
std::vector<std::string> types_in(const File& file) {
    std::vector<std::string> names = captures(
        file.text, "(?:^|\n)(?:struct|class|enum class|enum) (?:alignas\\(\\w+\\) )?(\\w+)[^;{(]*\\{");
    for (std::string& name : captures(file.text, "(?:^|\n)using (\\w+) ?=")) names.push_back(std::move(name));
    return names;
}

bool is_header(const File& file) {
    return file.path.size() > 4 && file.path.substr(file.path.size() - 4) == ".hpp";
}

std::string home_of(const File& file) {
    return file.path.substr(0, file.path.rfind('/'));
}

/// Each type's name with where it is declared, as `where` has it.
template <class Where>
std::map<std::string, std::set<std::string>> declared(const std::vector<File>& files, const Where& where) {
    std::map<std::string, std::set<std::string>> places;
    for (const File& file : files) {
        for (const std::string& name : types_in(file)) places[name].insert(where(file));
    }
    return places;
}

Complaints in_several(const std::map<std::string, std::set<std::string>>& places) {
    Complaints complaints;
    for (const auto& [name, where] : places) {
        if (where.size() < 2) continue;
        std::string complaint = name + " is a type of";
        for (const std::string& place : where) complaint += " " + place;
        complaints.push_back(complaint);
    }
    return complaints;
}

Complaints of_two_headers(const std::vector<File>& files) {
    std::vector<File> headers;
    std::copy_if(files.begin(), files.end(), std::back_inserter(headers), is_header);
    return in_several(declared(headers, [](const File& file) { return file.path; }));
}

/// Also of a type that only its own file sees: a reader who met the name in one room brings its meaning to the next.
Complaints of_two_folders(const std::vector<File>& files) {
    return in_several(declared(files, home_of));
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
    BOOST_TEST(declared(sources(), home_of).size() > 300U);
    CHECK_NO_COMPLAINTS(of_two_headers(sources()));
}

BOOST_AUTO_TEST_CASE(a_name_given_twice_is_caught) {
    const File one{"engine/wiring/trade.hpp", "\nstruct Signal {\n"};
    const File other{"engine/wiring/states.hpp", "\nstruct Signal {\n"};
    const File forward{"engine/wiring/plan.hpp", "\nstruct Signal;\n"};
    BOOST_TEST(of_two_headers({one, other}).size() == 1U);
    BOOST_TEST(of_two_headers({one, forward}).empty());
}

BOOST_AUTO_TEST_CASE(no_two_folders_declare_a_type_of_one_name) {
    CHECK_NO_COMPLAINTS(of_two_folders(sources()));
}

BOOST_AUTO_TEST_CASE(a_name_with_a_meaning_in_each_of_two_folders_is_caught) {
    const File way{"engine/kit/reach.hpp", "namespace a {\n\nstruct Way {\n    int count = 1;\n};\n"};
    const File alias{"engine/wiring/highest_wins.cpp", "namespace {\nusing Way = std::vector<int>;\n}\n"};
    const File same_folder{"engine/kit/choose.cpp", "\nenum class Way { in, out };\n"};
    const File nested{"engine/cost/ways.cpp", "\nclass Ways {\n    struct Way {\n    };\n};\n"};
    const File import{"engine/match/match.cpp", "\nusing MoreNames::next;\nusing namespace Way;\n"};
    BOOST_TEST(of_two_folders({way, alias}).size() == 1U);
    BOOST_TEST(of_two_folders({way, same_folder, nested, import}).empty());
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
