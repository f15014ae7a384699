// Each row of the limits has one constant in code, named as the row is, and bounds a fact that exists.
#include <boost/test/unit_test.hpp>
#include <map>

#include "engine/model/limit_rows.hpp"
#include "tests/house/repository.hpp"

using namespace house;

namespace {

std::vector<std::string> row_ids() {
    std::vector<std::string> ids;
    for (const endbell::LimitRow& row : endbell::limit_rows) ids.emplace_back(row.id);
    return ids;
}

Complaints not_one_constant_each(const std::string& header, const std::vector<std::string>& ids) {
    const std::string constant = R"re(inline constexpr LimitOf<\w+>\s+)re";
    const std::vector<std::string> named = captures(header, constant + R"re(\w+\{"([^"]+)"\})re");
    const std::vector<std::string> names = captures(header, constant + R"re((\w+)\{"[^"]+"\})re");
    Complaints complaints;
    for (const std::string& id : ids) {
        const auto count = std::count(named.begin(), named.end(), id);
        if (count != 1) complaints.push_back(id + " has " + std::to_string(count) + " constants");
    }
    for (std::size_t i = 0; i < named.size(); ++i) {
        std::string name = named[i];
        std::replace(name.begin(), name.end(), '.', '_');
        const bool end_of_it =
            names[i].size() <= name.size() && name.substr(name.size() - names[i].size()) == names[i];
        if (!end_of_it) complaints.push_back(names[i] + " is not how " + named[i] + " ends");
    }
    return complaints;
}

// What rows bound that is neither a job's key nor a part's column.
const std::vector<std::string> worked_out{
    "voltage unbalance", "volts and hertz together", "transformer load", "predicted airflow",
    "predicted load",    "airflow of a call",        "predicted watts",  "predicted rise",
    "control volts",     "contacts of a relay",      "chance of loss",   "drop in control wire",
    "volts on a coil",   "what a call feeds",        "secondary fuse",   "a reading beside its start-up"};

/// Keys and columns as the reference of job keys and the tables' descriptors list them: "measured.rise".
std::vector<std::string> keys_and_columns() {
    std::vector<std::string> facts;
    const std::string keys = read(root() / "docs/reference/job-keys.md");
    for (std::size_t at = keys.find("\n## "); at != std::string::npos;) {
        const std::size_t next = keys.find("\n## ", at + 1);
        const std::string section = keys.substr(at, next - at);
        const std::string group = captures(section, R"re(\n## (\w+))re").front();
        for (const std::string& key : captures(section, R"re(\n\| `(\w+)` \|)re"))
            facts.push_back(group + "." + key);
        at = next;
    }
    for (const File& table : files("catalog-schema/tables", {".json"})) {
        const std::vector<std::string> names = captures(table.text, R"re("name": "(\w+)")re");
        for (std::size_t i = 1; i < names.size(); ++i) facts.push_back(names.front() + "." + names[i]);
    }
    return facts;
}

Complaints unknown_facts(const std::map<std::string, std::string>& bounded,
                         const std::vector<std::string>& facts) {
    Complaints complaints;
    for (const auto& [id, fact] : bounded) {
        if (!contains(facts, fact) && !contains(worked_out, fact))
            complaints.push_back(id + " bounds '" + fact + "'");
    }
    return complaints;
}

}  // namespace

BOOST_AUTO_TEST_CASE(every_limit_has_one_constant_named_as_it_is) {
    CHECK_NO_COMPLAINTS(not_one_constant_each(read(root() / "engine/model/limit.hpp"), row_ids()));
}

BOOST_AUTO_TEST_CASE(a_limit_without_a_constant_or_with_two_is_caught) {
    const std::string one = "inline constexpr LimitOf<Length> shaft_colour{\"shaft.colour\"};\n";
    BOOST_TEST(not_one_constant_each(one, {"shaft.colour"}).empty());
    BOOST_TEST(not_one_constant_each("", {"shaft.colour"}).size() == 1U);
    BOOST_TEST(not_one_constant_each(one + one, {"shaft.colour"}).size() == 1U);
    BOOST_TEST(not_one_constant_each("inline constexpr LimitOf<Length> colour_of{\"shaft.colour\"};\n",
                                     {"shaft.colour"})
                   .size() == 1U);
}

BOOST_AUTO_TEST_CASE(every_limit_bounds_a_fact_that_exists) {
    std::map<std::string, std::string> bounded;
    for (const endbell::LimitRow& row : endbell::limit_rows)
        bounded.emplace(std::string(row.id), std::string(row.bounds));
    const std::vector<std::string> facts = keys_and_columns();
    BOOST_TEST(contains(facts, "measured.line_volts"));
    BOOST_TEST(contains(facts, "motors.shaft_diameter_in"));
    CHECK_NO_COMPLAINTS(unknown_facts(bounded, facts));
}

BOOST_AUTO_TEST_CASE(a_limit_of_a_fact_that_does_not_exist_is_caught) {
    BOOST_TEST(unknown_facts({{"shaft.colour", "motors.shaft_colour"}}, {"motors.volts"}).size() == 1U);
    BOOST_TEST(unknown_facts({{"a", "transformer load"}, {"b", "motors.volts"}}, {"motors.volts"}).empty());
}
