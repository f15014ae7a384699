// Every number has a source: rows of limits name one that exists, and code names only rows and sources that
// exist.
#include <boost/test/unit_test.hpp>
#include <set>

#include "engine/model/limits.hpp"
#include "tests/house/repository.hpp"

using namespace house;
using endbell::Basis;
using endbell::Limit;
using endbell::Limits;
using endbell::Source;

namespace {

std::set<std::string> source_ids() {
    std::set<std::string> ids;
    for (const Source& source : endbell::sources()) ids.insert(source.id);
    return ids;
}

std::set<std::string> limit_ids() {
    const Limits limits;
    std::set<std::string> ids;
    for (const Limit& row : limits.rows()) ids.emplace(row.id);
    return ids;
}

Complaints unsourced(const std::vector<Limit>& rows, const std::set<std::string>& known) {
    Complaints complaints;
    for (const Limit& row : rows) {
        const std::string id(row.id), source(row.source);
        if (known.count(source) == 0) complaints.push_back(id + ": no source '" + source + "'");
        if (row.unit.empty()) complaints.push_back(id + " has no unit");
        if (row.meaning.empty()) complaints.push_back(id + " has no meaning");
        if (row.bounds.empty()) complaints.push_back(id + " bounds no fact");
    }
    return complaints;
}

/// Identifiers at the places where code names one.
Complaints unknown_at(const std::vector<File>& code, const std::vector<std::string>& places,
                      const std::set<std::string>& known) {
    Complaints complaints;
    for (const File& file : code) {
        for (const std::string& place : places) {
            for (const std::string& id : captures(file.text, place)) {
                // A line of a quote may name the job key that it comes from instead.
                const bool job_key = std::regex_match(id, std::regex("(plate|measured|equipment|shop)\\..*"));
                if (!job_key && known.count(id) == 0) complaints.push_back(file.path + " names '" + id + "'");
            }
        }
    }
    return complaints;
}

const std::vector<std::string> source_places{R"re(\bsource\("([^"]+)"\))re", R"re(\.from\("([^"]+)"\))re",
                                             R"re(\bsay\(id, "([^"]+)")re", R"re(\.source = "([^"]+)")re",
                                             R"re(open_row\([^;"]*"[^";]*",\s*"([^"]+)"\))re"};
/// Code names a limit by its constant; by its text only where the row itself and its constant stand, and
/// where a column's example shows one. Comments may.
Complaints limits_as_text(const std::vector<File>& code, const std::set<std::string>& ids) {
    Complaints complaints;
    for (const File& file : code) {
        if (file.path.rfind("engine/model/limit", 0) == 0 || file.path == "engine/fields/shop_columns.cpp")
            continue;
        for (const std::string& line : captures(file.text, "([^\n]+)")) {
            if (line.substr(0, line.find_first_not_of(' ') + 2).find("//") != std::string::npos) continue;
            for (const std::string& word : captures(line, R"re("([^"]+)")re")) {
                if (ids.count(word) != 0) complaints.push_back(file.path + " names \"" + word + "\"");
            }
        }
    }
    return complaints;
}

}  // namespace

BOOST_AUTO_TEST_CASE(every_limit_has_a_unit_a_meaning_and_a_source) {
    CHECK_NO_COMPLAINTS(unsourced(Limits().rows(), source_ids()));
    for (const Source& source : endbell::sources()) BOOST_TEST(!source.title.empty());
    BOOST_TEST(source_ids().size() == endbell::sources().size());  // no id stands twice
    BOOST_TEST(limit_ids().size() == Limits().rows().size());
}

BOOST_AUTO_TEST_CASE(a_limit_without_a_source_is_caught) {
    const Limit bad{
        {"shaft.colour", 1.0, "", endbell::Stricter::lower, "", endbell::VoltagePoint::none, "hearsay", ""},
        ""};
    BOOST_TEST(unsourced({bad}, source_ids()).size() == 4U);
}

BOOST_AUTO_TEST_CASE(code_names_only_sources_that_exist_and_limits_by_their_constants) {
    CHECK_NO_COMPLAINTS(unknown_at(sources(), source_places, source_ids()));
    CHECK_NO_COMPLAINTS(limits_as_text(sources(), limit_ids()));
}

BOOST_AUTO_TEST_CASE(a_misspelt_source_or_a_limit_by_its_text_is_caught) {
    const auto caught = [](const std::string& line, const auto& places, const auto& known) {
        return unknown_at({{"a.cpp", line}}, places, known).size() == 1U;
    };
    BOOST_TEST(caught("say.from(\"inducr\")", source_places, source_ids()));
    BOOST_TEST(caught("FindingDraft say(id, \"comon-practice\", wanted)", source_places, source_ids()));
    BOOST_TEST(caught("row.source = \"hearsay\";", source_places, source_ids()));
    BOOST_TEST(caught("open_row(Test::amps, \"measured.amps\", \"hearsay\")", source_places, source_ids()));
    const auto by_text = [](const std::string& line) {
        return limits_as_text({{"engine/a.cpp", line}}, limit_ids()).size() == 1U;
    };
    BOOST_TEST(by_text("    row.limit_id = \"winding.balance\";"));
    BOOST_TEST(!by_text("    row.limit_id = limit::winding_balance.text;"));
    BOOST_TEST(!by_text("//     \"winding.balance\" = 0.05"));
}
