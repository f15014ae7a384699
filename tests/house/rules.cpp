// One rule: one file, one test, one page, one line in the registry; and nothing it names is missing.
#include <boost/test/unit_test.hpp>
#include <filesystem>

#include "engine/rules/rule.hpp"
#include "tests/house/repository.hpp"

using namespace house;
using endbell::Rule;

namespace {

const std::vector<std::string> rule_folders{"engine/rules/ID.cpp", "tests/rules/ID.cpp", "docs/rules/ID.md"};

std::string path_of(std::string pattern, std::string_view id) {
    return pattern.replace(pattern.find("ID"), 2, std::string(id));
}

Complaints missing_files(const std::vector<std::string>& ids, bool (*exists)(const std::string&)) {
    Complaints complaints;
    for (const std::string& id : ids) {
        for (const std::string& pattern : rule_folders) {
            const std::string path = path_of(pattern, id);
            if (!exists(path)) complaints.push_back("rule " + id + " has no " + path);
        }
    }
    return complaints;
}

/// Files of rules/ and its tests and pages that no rule of the registry owns.
Complaints orphans(const std::vector<std::string>& ids, const std::vector<std::string>& paths) {
    Complaints complaints;
    for (const std::string& path : paths) {
        const std::filesystem::path file(path);
        // Shared by the rules of a folder: headers with what stands behind them, a page's index, the registry's test.
        const std::string header = path.substr(0, path.size() - file.extension().string().size()) + ".hpp";
        const bool shared = file.extension() == ".hpp" || contains(paths, header);
        if (shared || file.stem() == "README" || file.stem() == "registry") continue;
        if (!contains(ids, file.stem().string())) complaints.push_back(path + " belongs to no rule");
    }
    return complaints;
}

std::vector<std::string> registered() {
    std::vector<std::string> ids;
    for (const Rule& rule : endbell::all_rules()) ids.emplace_back(rule.id);
    return ids;
}

/// The rule's sentence stands above its code: first in the file, below what it includes.
Complaints claims_not_first(const std::vector<File>& files) {
    Complaints complaints;
    for (const File& file : files) {
        const auto first = captures(file.text, "\nnamespace \\{\n\n(\\w+ \\w+(?:::\\w+)? \\w+)");
        if (first.empty() || first.front() != "constexpr std::string_view claim")
            complaints.push_back(file.path + " does not begin with its claim");
    }
    return complaints;
}

std::vector<File> rule_sources() {
    std::vector<File> found;
    for (const std::string& id : registered()) {
        const std::string path = path_of("engine/rules/ID.cpp", id);
        found.push_back({path, read(root() / path)});
    }
    return found;
}

/// A rule names its limits by constants, which exist or do not compile.
Complaints unknown_names(const std::vector<Rule>& rules) {
    Complaints complaints;
    for (const Rule& rule : rules) {
        const std::string id(rule.id);
        if (rule.sources.empty()) complaints.push_back(id + " has no source");
        if (rule.claim.empty()) complaints.push_back(id + " has no claim");
        for (std::string_view source : rule.sources) {
            const auto& known = endbell::sources();
            const bool found =
                std::any_of(known.begin(), known.end(), [&](const auto& s) { return s.id == source; });
            if (!found) complaints.push_back(id + ": no such source " + std::string(source));
        }
    }
    return complaints;
}

Complaints twice(const std::vector<std::string>& ids) {
    Complaints complaints;
    for (const std::string& id : ids) {
        if (std::count(ids.begin(), ids.end(), id) > 1) complaints.push_back(id + " stands twice");
    }
    return complaints;
}

bool exists_nowhere(const std::string&) {
    return false;
}

}  // namespace

BOOST_AUTO_TEST_CASE(every_rule_has_its_file_its_test_and_its_page) {
    BOOST_TEST(registered().size() > 0U);
    CHECK_NO_COMPLAINTS(missing_files(registered(), exists_here));
    CHECK_NO_COMPLAINTS(twice(registered()));
}

BOOST_AUTO_TEST_CASE(a_rule_without_its_files_is_caught) {
    BOOST_TEST(missing_files({"shaft-colour"}, exists_nowhere).size() == 3U);
    BOOST_TEST(twice({"a", "b", "a"}).size() == 2U);
}

BOOST_AUTO_TEST_CASE(every_file_of_a_rule_belongs_to_the_registry) {
    std::vector<std::string> paths;
    for (const std::string folder : {"engine/rules", "tests/rules", "docs/rules"}) {
        for (const File& file : files(folder)) paths.push_back(file.path);
    }
    CHECK_NO_COMPLAINTS(orphans(registered(), paths));
}

BOOST_AUTO_TEST_CASE(a_file_without_a_rule_is_caught) {
    BOOST_TEST(orphans({"power"}, {"engine/rules/shaft-colour.cpp", "docs/rules/power.md"}).size() == 1U);
}

BOOST_AUTO_TEST_CASE(every_rule_has_a_claim_and_names_known_sources) {
    CHECK_NO_COMPLAINTS(unknown_names(endbell::all_rules()));
}

BOOST_AUTO_TEST_CASE(a_rule_with_an_unknown_source_or_none_is_caught) {
    Rule rule{"shaft-colour", "a claim", endbell::Weight::hard, {}, {"hearsay"}, {}, {}, {}, {}, nullptr};
    BOOST_TEST(unknown_names({rule}).size() == 1U);
    rule.sources = {};
    BOOST_TEST(unknown_names({rule}).size() == 1U);
    rule.claim = "";
    BOOST_TEST(unknown_names({rule}).size() == 2U);
}

BOOST_AUTO_TEST_CASE(every_rule_begins_with_its_claim) {
    CHECK_NO_COMPLAINTS(claims_not_first(rule_sources()));
}

BOOST_AUTO_TEST_CASE(a_claim_below_the_code_is_caught) {
    const std::string claim = "constexpr std::string_view claim = \"it fits\";\n";
    const std::string id = "constexpr std::string_view id = rule_id::load;\n";
    BOOST_TEST(claims_not_first({{"engine/rules/load.cpp", "\nnamespace {\n\n" + claim + id}}).empty());
    BOOST_TEST(claims_not_first({{"engine/rules/load.cpp", "\nnamespace {\n\n" + id + claim}}).size() == 1U);
    BOOST_TEST(claims_not_first({{"engine/rules/load.cpp", "\nRule load();\n"}}).size() == 1U);
}
