// The descriptors, the DDL, the column table and the dictionary say the same.
// ENDBELL_WRITE_DICTIONARY=1 writes catalog-schema/DICTIONARY.md anew from the descriptors.
#include <SQLiteCpp/SQLiteCpp.h>

#include <algorithm>
#include <boost/test/unit_test.hpp>
#include <cstdlib>
#include <nlohmann/json.hpp>
#include <set>

#include "engine/base/text.hpp"
#include "engine/catalog/database.hpp"
#include "engine/fields/tables.hpp"
#include "engine/quality/quality.hpp"
#include "tests/catalog/fixture.hpp"

using namespace endbell;
using namespace endbell::testing;
using nlohmann::ordered_json;

namespace {

fs::path schema_folder() {
    return fs::path(ENDBELL_ROOT) / "catalog-schema";
}

ordered_json descriptor(std::string_view table) {
    return ordered_json::parse(read_file(schema_folder() / "tables" / (std::string(table) + ".json")));
}

SQLite::Database empty_store() {
    SQLite::Database db(":memory:", SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE);
    db.exec(read_file(schema_folder() / "schema.sql"));
    return db;
}

std::string list_of(const ordered_json& field, const char* key) {
    std::string text;
    for (const auto& item : field.value(key, ordered_json::array())) {
        const std::string word = item.is_string() ? item.get<std::string>() : item.dump();
        text += (text.empty() ? "`" : ", `") + word + "`";
    }
    return text;
}

/// A '|' ends a cell of a Markdown table.
std::string escaped(std::string text) {
    for (std::size_t i = text.find('|'); i != std::string::npos; i = text.find('|', i + 2))
        text.insert(i, "\\");
    return text;
}

std::string dictionary_row(const ordered_json& field) {
    const ordered_json constraints = field.value("constraints", ordered_json::object());
    std::string meaning = field["description"].get<std::string>();
    if (constraints.contains("enum")) meaning += " One of " + list_of(constraints, "enum") + ".";
    std::string rules;
    for (const auto& rule : field.value("neededBy", ordered_json::array())) {
        rules += (rules.empty() ? "" : ", ") + rule.get<std::string>();
    }
    return "| `" + field["name"].get<std::string>() + "` | " +
           (constraints.value("required", false) ? "yes" : "") + " | " + escaped(meaning) + " | " +
           field.value("unit", "") + " | " + escaped(list_of(field, "spellings")) + " | `" +
           escaped(field["example"].get<std::string>()) + "` | " + rules + " |\n";
}

std::string dictionary() {
    std::string text =
        "# Dictionary of the catalog\n\n"
        "Every column of every table: what it means, its unit, how it may be spelled, an example, and the "
        "rules that need it. An empty\n"
        "cell is unknown, never a default, unless the column says otherwise; so are `N/A`, `-`, `TBD` and "
        "`see note`. Cells may be\n"
        "written as the trade writes them; an ambiguous spelling sets the row aside with a question. A CSV "
        "file is named after its\n"
        "table. Made from `tables/*.json` by the catalog's tests: change those, not this.\n";
    for (const Table& table : tables()) {
        const ordered_json schema = descriptor(table.name);
        text +=
            "\n## " + std::string(table.name) + "\n\n" + schema["description"].get<std::string>() + "\n\n";
        text += "One row for each " + list_of(schema, "primaryKey") + ".\n\n";
        text +=
            "| column | required | meaning | unit | spellings | example | rules "
            "|\n|---|---|---|---|---|---|---|\n";
        for (const auto& field : schema["fields"]) text += dictionary_row(field);
    }
    return text;
}

}  // namespace

BOOST_AUTO_TEST_CASE(every_table_has_the_same_columns_in_code_in_its_descriptor_and_in_the_store) {
    SQLite::Database db = empty_store();
    for (const Table& table : tables()) {
        BOOST_TEST_CONTEXT(table.name) {
            std::vector<std::string> code;
            for (const Column& column : table.columns) code.emplace_back(column.name);
            std::vector<std::string> described;
            const ordered_json schema = descriptor(table.name);
            for (const auto& field : schema["fields"]) described.push_back(field["name"]);
            std::vector<std::string> stored;
            SQLite::Statement columns(db, "SELECT name FROM pragma_table_info(?) ORDER BY cid");
            columns.bind(1, std::string(table.name));
            while (columns.executeStep()) stored.push_back(columns.getColumn(0).getString());
            BOOST_TEST(code == stored, boost::test_tools::per_element());
            // A CSV file may have its columns in another order than the keys want them.
            std::sort(code.begin(), code.end());
            std::sort(described.begin(), described.end());
            BOOST_TEST(code == described, boost::test_tools::per_element());
        }
    }
}

BOOST_AUTO_TEST_CASE(there_is_no_descriptor_without_a_table) {
    std::set<std::string> described;
    for (const auto& entry : fs::directory_iterator(schema_folder() / "tables"))
        described.insert(entry.path().stem().string());
    std::set<std::string> known;
    for (const Table& table : tables()) known.insert(std::string(table.name));
    BOOST_TEST(described == known, boost::test_tools::per_element());
}

BOOST_AUTO_TEST_CASE(keys_and_required_columns_agree) {
    SQLite::Database db = empty_store();
    for (const Table& table : tables()) {
        BOOST_TEST_CONTEXT(table.name) {
            const ordered_json schema = descriptor(table.name);
            std::vector<std::string> key;
            for (const auto& name : schema["primaryKey"]) key.push_back(name);
            std::vector<std::string> key_in_code;
            for (std::size_t i = 0; i < table.key_columns; ++i)
                key_in_code.emplace_back(table.columns[i].name);
            BOOST_TEST(key == key_in_code, boost::test_tools::per_element());
            for (const auto& field : schema["fields"]) {
                const std::string name = field["name"];
                const Column* column = find_column(table, name);
                BOOST_REQUIRE(column != nullptr);
                const bool required =
                    field.value("constraints", ordered_json::object()).value("required", false);
                BOOST_TEST(required == (column->need == Need::required), name);
                SQLite::Statement row(
                    db,
                    "SELECT \"notnull\", dflt_value IS NOT NULL FROM pragma_table_info(?) WHERE name = ?");
                row.bind(1, std::string(table.name));
                row.bind(2, name);
                BOOST_REQUIRE(row.executeStep());
                const bool has_default = column->when_empty.data() != nullptr;
                BOOST_TEST((row.getColumn(0).getInt() == 1) == (required || has_default), name);
            }
        }
    }
}

BOOST_AUTO_TEST_CASE(parents_are_the_foreign_keys) {
    SQLite::Database db = empty_store();
    for (const Table& table : tables()) {
        const ordered_json schema = descriptor(table.name);
        const std::string described = schema.contains("foreignKeys")
                                          ? schema["foreignKeys"][0]["reference"]["resource"]
                                          : ordered_json("");
        SQLite::Statement row(db, "SELECT \"table\" FROM pragma_foreign_key_list(?)");
        row.bind(1, std::string(table.name));
        const std::string stored = row.executeStep() ? row.getColumn(0).getString() : "";
        BOOST_TEST(described == table.parent, table.name);
        BOOST_TEST(stored == table.parent, table.name);
    }
}

BOOST_AUTO_TEST_CASE(the_words_of_a_column_are_those_the_store_takes) {
    SQLite::Database db = empty_store();
    for (const Table& table : tables()) {
        const ordered_json schema = descriptor(table.name);
        SQLite::Statement sql(db, "SELECT sql FROM sqlite_schema WHERE name = ?");
        sql.bind(1, std::string(table.name));
        BOOST_REQUIRE(sql.executeStep());
        const std::string ddl = sql.getColumn(0).getString();
        for (const auto& field : schema["fields"]) {
            const ordered_json constraints = field.value("constraints", ordered_json::object());
            if (!constraints.contains("enum")) continue;
            const std::string name = field["name"];
            const Column* column = find_column(table, name);
            for (const auto& item : constraints["enum"]) {
                if (!item.is_string()) continue;
                const std::string word = item;
                const Cell cell = column->read(word);
                BOOST_TEST(cell.is_read(), name + ": " + word);
                BOOST_TEST(std::get<std::string>(cell.value) == word);
                if (table.name != "labour_tasks")
                    BOOST_TEST(ddl.find("'" + word + "'") != std::string::npos, name + ": " + word);
            }
        }
    }
}

BOOST_AUTO_TEST_CASE(every_example_and_every_spelling_can_be_read) {
    for (const Table& table : tables()) {
        const ordered_json schema = descriptor(table.name);
        for (const auto& field : schema["fields"]) {
            const std::string name = field["name"];
            const Column* column = find_column(table, name);
            const std::string example = field["example"];
            BOOST_TEST(column->read(example).is_read(), name + ": " + example);
            for (const auto& item : field.value("spellings", ordered_json::array())) {
                const std::string spelling = item;
                const bool a_remark = spelling.find("kept as") == 0 || spelling.find("found with") == 0 ||
                                      spelling.find("several") == 0;
                if (!a_remark) BOOST_TEST(column->read(spelling).is_read(), name + ": " + spelling);
            }
        }
    }
}

BOOST_AUTO_TEST_CASE(what_a_rule_needs_is_named_in_the_descriptor) {
    for (const FieldNeed& need : field_needs()) {
        const ordered_json schema = descriptor(need.table);
        bool named = false;
        for (const auto& field : schema["fields"]) {
            if (field["name"] != std::string(need.column)) continue;
            for (const auto& rule : field.value("neededBy", ordered_json::array()))
                named = named || rule == std::string(need.rule);
        }
        BOOST_TEST(named,
                   std::string(need.table) + "." + std::string(need.column) + " " + std::string(need.rule));
    }
}

BOOST_AUTO_TEST_CASE(a_rule_that_a_descriptor_names_has_its_file) {
    for (const Table& table : tables()) {
        const ordered_json schema = descriptor(table.name);
        for (const auto& field : schema["fields"]) {
            for (const auto& rule : field.value("neededBy", ordered_json::array())) {
                const std::string id = rule;
                BOOST_TEST(fs::exists(fs::path(ENDBELL_ROOT) / "engine/rules" / (id + ".cpp")), id);
            }
        }
    }
}

BOOST_AUTO_TEST_CASE(the_data_package_lists_every_table) {
    const ordered_json package = ordered_json::parse(read_file(schema_folder() / "datapackage.json"));
    std::set<std::string> names;
    for (const auto& resource : package["resources"]) names.insert(resource["name"].get<std::string>());
    BOOST_TEST(names.size() == tables().size());
    for (const Table& table : tables()) BOOST_TEST(names.count(std::string(table.name)) == 1U, table.name);
}

BOOST_AUTO_TEST_CASE(the_dictionary_is_the_descriptors) {
    const fs::path file = schema_folder() / "DICTIONARY.md";
    if (std::getenv("ENDBELL_WRITE_DICTIONARY") != nullptr) write_file(file, dictionary());
    BOOST_TEST((read_file(file) == dictionary()),
               "catalog-schema/DICTIONARY.md differs: run this test with ENDBELL_WRITE_DICTIONARY=1");
}

BOOST_AUTO_TEST_CASE(the_schema_in_the_program_is_the_schema_file) {
    BOOST_TEST((schema_sql() == read_file(schema_folder() / "schema.sql")));
}

BOOST_AUTO_TEST_CASE(every_schema_version_has_its_migration) {
    int found = 0;
    for (const auto& entry : fs::directory_iterator(schema_folder() / "migrations")) {
        if (entry.path().extension() == ".sql") ++found;
    }
    BOOST_TEST(found == schema_version);
}

BOOST_AUTO_TEST_CASE(every_migration_runs_on_a_catalog) {
    SQLite::Database db = empty_store();
    for (const auto& entry : fs::directory_iterator(schema_folder() / "migrations")) {
        if (entry.path().extension() == ".sql") db.exec("BEGIN; " + read_file(entry.path()) + "; COMMIT");
    }
    BOOST_TEST(db.execAndGet("PRAGMA user_version").getInt() == schema_version);
}
