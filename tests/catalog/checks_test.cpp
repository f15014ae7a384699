// What schema.sql asks of a value is asked by the readers of cells while a catalog is filled: as the store asks it.
#include <SQLiteCpp/SQLiteCpp.h>

#include <boost/test/unit_test.hpp>
#include <random>

#include "engine/base/text.hpp"
#include "engine/catalog/database.hpp"
#include "engine/csv/csv_file.hpp"
#include "engine/csv/plain_line.hpp"
#include "engine/import/check_constraints.hpp"
#include "tests/catalog/fixture.hpp"

using namespace endbell;
using namespace endbell::testing;

namespace {

std::size_t times_in(std::string_view text, std::string_view word) {
    std::size_t times = 0;
    for (std::size_t at = text.find(word); at != std::string_view::npos; at = text.find(word, at + 1))
        ++times;
    return times;
}

/// Values at, beside and far from every limit of schema.sql.
std::vector<Stored> probes() {
    std::vector<Stored> all{std::string("115"),        std::string("208-230"),    std::string("0"),
                            std::string("x"),          std::string("USD"),        std::string("DOLLAR"),
                            std::string("2026-01-31"), std::string("31.01.2026"), std::string()};
    for (const std::int64_t whole :
         {-1, 0, 1, 2, 3, 4, 5, 12, 13, 14, 16, 17, 18, 20, 21, 100, 101, 600, 601, 1'000'000})
        all.emplace_back(whole);
    for (const double number : {-61.0, -60.0, -0.5, 0.0, 0.001, 0.999, 1.0, 1.001, 2.0, 2.001, 3.0, 3.001,
                                30.0, 30.5, 60.0, 60.5, 150.0, 150.5, 1e9})
        all.emplace_back(number);
    return all;
}

/// Of another type the store takes nothing, and readers of cells give none.
bool has_type(SQLite::Database& db, const Table& table, std::string_view column, const Stored& value) {
    SQLite::Statement info(db, "SELECT type FROM pragma_table_info(?) WHERE name = ?");
    info.bind(1, std::string(table.name));
    info.bind(2, std::string(column));
    BOOST_REQUIRE(info.executeStep());
    const std::string type = info.getColumn(0).getString();
    if (std::holds_alternative<std::string>(value)) return type == "TEXT";
    if (std::holds_alternative<std::int64_t>(value)) return type != "TEXT";
    return type == "REAL";
}

/// Whether the store lets the first row of `table` have `value` there.
bool store_takes(SQLite::Database& db, const Table& table, std::string_view column, const Stored& value) {
    SQLite::Statement first(db, select_all(table, "LIMIT 1"));
    BOOST_REQUIRE_MESSAGE(first.executeStep(), std::string(table.name) + " has a row");
    const std::string key = first.getColumn(0).getString();
    first.reset();
    SQLite::Transaction undone(db);
    SQLite::Statement update(db, "UPDATE " + quoted(table.name) + " SET " + quoted(column) + " = ? WHERE " +
                                     quoted(table.columns.front().name) + " = ?");
    bind_value(update, 1, value);
    update.bind(2, key);
    try {
        update.exec();
    } catch (const SQLite::Exception& refused) {
        return refused.getExtendedErrorCode() != SQLITE_CONSTRAINT_CHECK;
    }
    return true;
}

}  // namespace

BOOST_AUTO_TEST_SUITE(checks)

// Source: SQLite itself, which asks every CHECK when a row is changed.
BOOST_AUTO_TEST_CASE(a_value_breaks_a_check_where_the_store_says_so) {
    const SmallFolder folder;
    folder.import();
    SQLite::Database db(folder.catalog().string(), SQLite::OPEN_READWRITE);
    std::size_t asked = 0, refused = 0;
    for (const Table& table : tables()) {
        if (db.execAndGet("SELECT count(*) FROM " + quoted(table.name)).getInt() == 0) continue;
        CheckConstraints checks(table);
        for (std::size_t i = 0; i < table.columns.size(); ++i) {
            const auto check = check_of(table.columns[i]);
            if (!check) continue;
            for (const Stored& value : probes()) {
                if (!has_type(db, table, table.columns[i].name, value)) continue;
                const std::string broken = checks.broken(i, value);
                if (store_takes(db, table, table.columns[i].name, value) != broken.empty()) {
                    BOOST_ERROR(std::string(table.columns[i].name) + " = " + to_text(value) + ": " + broken);
                }
                BOOST_TEST((broken.empty() || broken == check->told));
                ++asked;
                refused += broken.empty() ? 0 : 1;
            }
        }
    }
    BOOST_TEST(asked > 1000U);
    BOOST_TEST(refused > 300U);
}

BOOST_AUTO_TEST_CASE(every_named_check_belongs_to_a_column_and_looks_at_no_other) {
    std::size_t found = 0;
    for (const Table& table : tables()) {
        for (const Column& column : table.columns) {
            const auto check = check_of(column);
            if (!check) continue;
            ++found;
            BOOST_TEST((check->expression.find(column.name) != std::string::npos));
            for (const Column& other : table.columns) {
                if (other.name == column.name || column.name.find(other.name) != std::string::npos) continue;
                BOOST_TEST((check->expression.find(other.name) == std::string::npos),
                           check->expression + " looks at " + std::string(other.name));
            }
        }
    }
    BOOST_TEST(found == times_in(schema_sql(), "CONSTRAINT \""));
}

// Source: SQLite's own check of a whole file, CHECKs included.
BOOST_AUTO_TEST_CASE(an_imported_catalog_breaks_no_check) {
    const SmallFolder folder;
    folder.import();
    SQLite::Database db(folder.catalog().string(), SQLite::OPEN_READWRITE);
    BOOST_TEST(db.execAndGet("PRAGMA quick_check").getString() == "ok");
    db.exec("PRAGMA ignore_check_constraints = ON");
    db.exec("UPDATE offers SET stock = -1");
    db.exec("PRAGMA ignore_check_constraints = OFF");
    BOOST_TEST(db.execAndGet("PRAGMA quick_check").getString() != "ok");
}

bool is_plain_line(std::string_view line) {
    std::vector<CellPlace> cells;
    return cut_plain_line(line, ',', cells);
}

// Source: libcsv, which reads a line with quotes.
BOOST_AUTO_TEST_CASE(a_plain_line_is_cut_as_the_parser_cuts_it) {
    std::mt19937 random(11);
    const std::string_view letters = ",,;;\t  ab1.-/'#\x01\x7f!~";
    for (const char delimiter : {',', ';', '\t'}) {
        const Folder folder;
        std::string quoted_first;
        std::vector<std::string> lines;
        for (int i = 0; i < 2000; ++i) {
            std::string line;
            for (std::size_t left = random() % 30; left > 0; --left)
                line += letters[random() % letters.size()];
            if (!is_plain_line(line)) continue;  // blank
            lines.push_back(line);
            quoted_first += std::string("\"q\"") + delimiter + line + "\n";
        }
        write_file(folder.path / "x.csv",
                   std::string("q") + delimiter + "a" + delimiter + "b\n" + quoted_first);
        CsvHints hints;
        hints.delimiter = delimiter;
        CsvFile file(folder.path / "x.csv", hints);
        CsvRow parsed, plain;
        for (const std::string& line : lines) {
            BOOST_REQUIRE(file.next(parsed));
            std::vector<std::string> cells = parsed.cells();
            cells.erase(cells.begin());
            plain.bytes = line + "\r\n";
            BOOST_REQUIRE(plain.cut(delimiter));
            BOOST_TEST(plain.cells() == cells, boost::test_tools::per_element());
        }
        BOOST_TEST(!file.next(parsed));
    }
}

BOOST_AUTO_TEST_CASE(a_line_is_plain_without_quotes_accents_and_zeros) {
    BOOST_TEST(is_plain_line("A-1,motor,0.5"));
    BOOST_TEST(!is_plain_line("A-1,\"motor\",0.5"));
    BOOST_TEST(
        !is_plain_line("A-1,10 \xc2\xb5"
                       "F,0.5"));
    BOOST_TEST(!is_plain_line(std::string_view("A-1,\0,0.5,more", 14)));
    BOOST_TEST(!is_plain_line(" \t "));
    BOOST_TEST(!is_plain_line(""));
    // What is refused may stand anywhere among the eight bytes that are looked at together.
    for (std::size_t at = 0; at < 20; ++at) {
        for (const char c : {'"', '\0', '\x80', '\xff'}) {
            std::string line(20, 'a');
            line[at] = c;
            BOOST_TEST(!is_plain_line(line));
        }
    }
}

BOOST_AUTO_TEST_SUITE_END()
