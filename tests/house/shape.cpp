// The shape of the house: what stands at the top, how long a file is, where links and paths may point.
#include <boost/test/unit_test.hpp>

#include "tests/house/repository.hpp"

using namespace house;

namespace {

constexpr std::size_t longest_source = 400;  // lines; a reader looks twice at 300

const std::vector<std::string> top_level{
    "CMakeLists.txt", "CMakePresets.json", "README.md", "DEVELOPERS.md", "engine", "cli",
    "catalog-schema", "demo-catalog",      "tests",     "docs"};

Complaints uninvited(const std::vector<std::string>& names) {
    Complaints complaints;
    for (const std::string& name : names) {
        const bool dotfile = name.front() == '.';
        if (!dotfile && !is_outside_the_clone(name) && !contains(top_level, name)) {
            complaints.push_back(name + " does not belong at the top");
        }
    }
    return complaints;
}

Complaints too_long(const std::vector<File>& files) {
    Complaints complaints;
    for (const File& file : files) {
        const auto lines = static_cast<std::size_t>(std::count(file.text.begin(), file.text.end(), '\n'));
        if (lines > longest_source)
            complaints.push_back(file.path + " has " + std::to_string(lines) + " lines");
    }
    return complaints;
}

/// Names of standards, not places to fetch from: schema and vector-graphics identifiers.
const std::vector<std::string> known_hosts{"json-schema.org", "www.w3.org", "specs.frictionlessdata.io",
                                           "datapackage.org"};

Complaints links_out(const std::vector<File>& files) {
    Complaints complaints;
    for (const File& file : files) {
        for (const std::string& host : captures(file.text, "https?://([A-Za-z0-9.-]+)")) {
            if (!contains(known_hosts, host)) complaints.push_back(file.path + " links to " + host);
        }
    }
    return complaints;
}

/// A path of one machine. The pattern is put together so that this file does not match itself.
Complaints machine_paths(const std::vector<File>& files) {
    const std::string pattern =
        std::string("(?:^|[^A-Za-z0-9_.~/-])(/(?:home") + "|work|root)/[A-Za-z0-9._-]+)";
    Complaints complaints;
    for (const File& file : files) {
        for (const std::string& path : captures(file.text, pattern))
            complaints.push_back(file.path + " names " + path);
    }
    return complaints;
}

std::vector<File> text_files() {
    return files("", {".cpp", ".hpp", ".in", ".txt", ".md", ".json", ".toml", ".csv", ".sql", ".sh", ".py",
                      ".mjs", ".js", ".html", ".mzn", ".yml", ""});
}

std::string url_of(const std::string& host) {
    return "https:" + std::string("//") + host + "/x";
}

}  // namespace

BOOST_AUTO_TEST_CASE(the_top_level_holds_only_what_belongs_there) {
    std::vector<std::string> names;
    for (const auto& entry : std::filesystem::directory_iterator(root()))
        names.push_back(entry.path().filename().string());
    CHECK_NO_COMPLAINTS(uninvited(names));
}

BOOST_AUTO_TEST_CASE(a_stray_file_at_the_top_is_caught) {
    BOOST_TEST(uninvited({"notes.txt", "engine", ".clang-tidy", "build"}).size() == 1U);
}

BOOST_AUTO_TEST_CASE(no_source_file_is_longer_than_a_person_reads_at_once) {
    CHECK_NO_COMPLAINTS(too_long(sources()));
}

BOOST_AUTO_TEST_CASE(a_long_file_is_caught) {
    BOOST_TEST(too_long({{"engine/a.cpp", std::string(401, '\n')}, {"engine/b.cpp", std::string(400, '\n')}})
                   .size() == 1U);
}

BOOST_AUTO_TEST_CASE(nothing_links_to_where_packages_come_from) {
    CHECK_NO_COMPLAINTS(links_out(text_files()));
}

BOOST_AUTO_TEST_CASE(a_link_out_is_caught) {
    BOOST_TEST(
        links_out({{"docs/a.md", url_of("packages.example")}, {"docs/b.md", url_of("www.w3.org")}}).size() ==
        1U);
}

BOOST_AUTO_TEST_CASE(nothing_names_a_path_of_one_machine) {
    CHECK_NO_COMPLAINTS(machine_paths(text_files()));
}

BOOST_AUTO_TEST_CASE(a_path_of_one_machine_is_caught) {
    const std::string home = std::string("/ho") + "me/";
    BOOST_TEST(machine_paths({{"docs/a.md", "see " + home + "someone/x"}, {"b.cpp", "engine" + home + "x"}})
                   .size() == 1U);
}
