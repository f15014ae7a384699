// What catalog-schema/ shows is made from the columns of engine/fields: table descriptors, DDL, dictionary, migrations.
// ENDBELL_WRITE_SCHEMA=1 writes it anew; a column that the store did not have yet becomes a migration.
#include <SQLiteCpp/SQLiteCpp.h>

#include <algorithm>
#include <boost/test/unit_test.hpp>
#include <cmath>
#include <cstdlib>
#include <map>
#include <nlohmann/json.hpp>
#include <regex>
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

// -- descriptors

std::vector<std::string> rules_needing(const Table& table, const Column& column) {
    std::vector<std::string> rules;
    for (const FieldNeed& need : field_needs()) {
        if (need.table == table.name && need.column == column.name) rules.emplace_back(need.rule);
    }
    return rules;
}

std::string several_of(const std::vector<std::string_view>& words) {
    std::string any;
    for (const std::string_view word : words) any += (any.empty() ? "" : "|") + std::string(word);
    return "^(" + any + ")(;(" + any + "))*$";
}

/// 1, not 1.0.
ordered_json number(double value) {
    if (value == std::floor(value)) return static_cast<int>(value);
    return value;
}

ordered_json constraints_of(const Column& column) {
    const ValueKind& kind = *column.kind;
    ordered_json all = ordered_json::object();
    if (column.need == Need::required) all["required"] = true;
    if (kind.words != nullptr && !kind.several) all["enum"] = kind.words();
    if (!kind.numbers.empty()) all["enum"] = ordered_json::parse("[" + std::string(kind.numbers) + "]");
    if (kind.several) all["pattern"] = several_of(kind.words());
    if (!kind.pattern.empty()) all["pattern"] = kind.pattern;
    if (kind.described != "string") {
        const Bounds& bounds = column.bounds;
        if (bounds.least || kind.least)
            all["minimum"] =
                number(bounds.above ? kind.above_zero : bounds.least.value_or(kind.least.value_or(0)));
        if (bounds.most || kind.most) all["maximum"] = number(bounds.most ? *bounds.most : *kind.most);
    }
    return all;
}

ordered_json field_of(const Table& table, const Column& column) {
    const ValueKind& kind = *column.kind;
    ordered_json field{{"name", column.name},
                       {"title", column.title},
                       {"description", column.meaning},
                       {"type", kind.described},
                       {"example", column.example}};
    const std::string_view unit = column.unit.empty() ? kind.unit : column.unit;
    if (!unit.empty()) field["unit"] = unit;
    std::vector<std::string_view> spellings = column.spellings;
    for (const std::string_view each : kind.spellings) {
        if (column.spellings.empty() && !each.empty()) spellings.push_back(each);
    }
    if (!spellings.empty()) field["spellings"] = spellings;
    if (kind.unit_may_follow) field["bareNumber"] = false;
    if (kind.thousands) field["groupChar"] = ",";
    if (const auto rules = rules_needing(table, column); !rules.empty()) field["neededBy"] = rules;
    if (const auto constraints = constraints_of(column); !constraints.empty())
        field["constraints"] = constraints;
    return field;
}

ordered_json made_descriptor(const Table& table) {
    ordered_json made{{"name", table.name}, {"title", table.title}, {"description", table.meaning}};
    std::vector<std::string_view> order = table.sheet_order;
    for (const Column& column : table.columns) {
        if (table.sheet_order.empty()) order.push_back(column.name);
    }
    for (const std::string_view name : order)
        made["fields"].push_back(field_of(table, *find_column(table, name)));
    made["missingValues"] = {""};
    for (std::size_t i = 0; i < table.key_columns; ++i) made["primaryKey"].push_back(table.columns[i].name);
    if (!table.parent.empty()) {
        made["foreignKeys"] = ordered_json::array(
            {{{"fields", "part_id"}, {"reference", {{"resource", table.parent}, {"fields", "part_id"}}}}});
    }
    return made;
}

// -- dictionary

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
        "table. Made from engine/fields by the catalog's tests: change those, not this.\n";
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

// -- migrations

/// The columns that a store has, table by table.
std::map<std::string, std::set<std::string>> columns_in(SQLite::Database& db) {
    std::map<std::string, std::set<std::string>> columns;
    for (const Table& table : tables()) {
        SQLite::Statement rows(db, "SELECT name FROM pragma_table_info(?)");
        rows.bind(1, std::string(table.name));
        while (rows.executeStep()) columns[std::string(table.name)].insert(rows.getColumn(0).getString());
    }
    return columns;
}
std::map<std::string, std::set<std::string>> columns_of(const std::string& ddl) {
    SQLite::Database db(":memory:", SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE);
    db.exec(ddl);
    return columns_in(db);
}

/// What turns a store of `before` into one of today; empty where nothing was added.
std::string migration_from(const std::string& before, int version) {
    const auto known = columns_of(before);
    std::string sql;
    for (const Table& table : tables()) {
        const auto had = known.find(std::string(table.name));
        for (const Column& column : table.columns) {
            if (had != known.end() && had->second.count(std::string(column.name)) > 0) continue;
            sql += "ALTER TABLE " + std::string(table.name) + " ADD COLUMN " + column_sql(column) + ";\n";
        }
    }
    return sql.empty() ? sql : sql + "PRAGMA user_version = " + std::to_string(version) + ";\n";
}

/// Writes what `expected` gives where that is asked for; else compares.
void hold(const fs::path& file, const std::string& expected) {
    if (std::getenv("ENDBELL_WRITE_SCHEMA") != nullptr) write_file(file, expected);
    BOOST_TEST((read_file(file) == expected),
               file.string() + " differs: run this test with ENDBELL_WRITE_SCHEMA=1");
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
                const bool has_default = column->when_empty.has_value();
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

BOOST_AUTO_TEST_CASE(what_the_schema_folder_shows_is_made_from_the_columns) {
    const fs::path ddl = schema_folder() / "schema.sql";
    const std::string added = migration_from(read_file(ddl), schema_version + 1);
    if (std::getenv("ENDBELL_WRITE_SCHEMA") != nullptr && !added.empty()) {
        const std::string number = std::to_string(10000 + schema_version + 1).substr(1);
        write_file(schema_folder() / "migrations" / (number + "-more-columns.sql"), added);
        BOOST_TEST_MESSAGE("a migration was written: configure and build again, then run this once more");
    }
    for (const Table& table : tables())
        hold(schema_folder() / "tables" / (std::string(table.name) + ".json"),
             made_descriptor(table).dump(2) + "\n");
    hold(schema_folder() / "DICTIONARY.md", dictionary());
    hold(ddl, schema_sql());
}

BOOST_AUTO_TEST_CASE(a_column_that_a_store_lacks_becomes_a_migration) {
    std::string before = schema_sql();
    const std::string column = "    frame TEXT,\n";
    before.erase(before.find(column), column.size());
    BOOST_TEST(migration_from(before, 7) ==
               "ALTER TABLE motors ADD COLUMN frame TEXT;\nPRAGMA user_version = 7;\n");
    BOOST_TEST(migration_from(schema_sql(), 7).empty());
}

BOOST_AUTO_TEST_CASE(every_schema_version_has_its_migration) {
    int found = 0;
    for (const auto& entry : fs::directory_iterator(schema_folder() / "migrations")) {
        if (entry.path().extension() == ".sql") ++found;
    }
    BOOST_TEST(found == schema_version);
}

BOOST_AUTO_TEST_CASE(the_migrations_lead_from_the_first_store_to_this_one) {
    std::map<std::string, std::string> migrations;  // by file: in the order of their numbers
    for (const auto& entry : fs::directory_iterator(schema_folder() / "migrations")) {
        if (entry.path().extension() == ".sql")
            migrations[entry.path().filename().string()] = read_file(entry.path());
    }
    SQLite::Database db = empty_store();
    const std::regex added("ALTER TABLE (\\w+) ADD COLUMN (\\w+)");
    for (const auto& [name, sql] : migrations) {
        for (auto it = std::sregex_iterator(sql.begin(), sql.end(), added); it != std::sregex_iterator();
             ++it)
            db.exec("ALTER TABLE " + (*it)[1].str() + " DROP COLUMN " + (*it)[2].str());
    }
    db.exec("PRAGMA user_version = 1");
    for (const auto& [name, sql] : migrations) {
        db.exec("BEGIN; " + sql + "; COMMIT");
        const int number = std::stoi(name.substr(0, 4));
        if (sql.find("user_version") != std::string::npos)
            BOOST_TEST(db.execAndGet("PRAGMA user_version").getInt() == number);
    }
    BOOST_TEST((columns_in(db) == columns_of(schema_sql())));
}
