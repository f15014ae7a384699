#include <boost/test/unit_test.hpp>

#include "engine/catalog/changes.hpp"
#include "engine/catalog/database.hpp"
#include "engine/catalog/generations.hpp"
#include "engine/catalog/stored_catalog.hpp"
#include "engine/quality/quality.hpp"
#include "tests/catalog/fixture.hpp"

using namespace endbell;
using namespace endbell::testing;

namespace {

std::string with(std::string text, const std::string& from, const std::string& to) {
    const std::size_t at = text.find(from);
    BOOST_REQUIRE(at != std::string::npos);
    return text.replace(at, from.size(), to);
}

}  // namespace

BOOST_AUTO_TEST_CASE(a_nightly_price_list_changes_prices_and_nothing_else) {
    SmallFolder folder;
    folder.import();
    const fs::path offers = folder.path / "tonight" / "offers.csv";
    std::string text = read_file(folder.tables() / "offers.csv");
    text = with(text, "129.50", "135.00");
    text = with(text, ",210,", ",199.99,");
    write_file(offers, text);
    ImportOptions options;
    options.mode = ImportMode::tables;
    const ImportReport report = import_catalog({offers}, folder.catalog(), options);
    BOOST_TEST(report.generation == 2);

    const Changes changes = last_changes(folder.catalog());
    BOOST_TEST(changes.from_generation == 1);
    BOOST_TEST(changes.to_generation == 2);
    BOOST_REQUIRE(changes.tables.size() == 1U);
    BOOST_TEST(changes.tables[0].table == "offers");
    BOOST_TEST(changes.tables[0].changed == 2);
    BOOST_TEST(changes.tables[0].added + changes.tables[0].retired == 0);
    BOOST_REQUIRE(changes.price_moves.size() == 2U);
    BOOST_TEST(changes.price_moves[0].part_id == "C-1");
    BOOST_TEST(changes.price_moves[0].before->minor() == 21000);
    BOOST_TEST(changes.price_moves[0].after->minor() == 19999);
    BOOST_TEST(changes.price_moves[1].part_id == "M-1");
    BOOST_TEST(changes.price_moves[1].branch == "East");
    BOOST_TEST(changes.price_moves[1].after->minor() == 13500);
    BOOST_TEST(StoredCatalog(folder.catalog()).part("M-2")->motor->taps.size() == 5U);
}

BOOST_AUTO_TEST_CASE(an_update_of_tables_is_the_same_catalog_as_a_whole_import) {
    SmallFolder folder;
    folder.import();
    const std::string changed = with(read_file(folder.tables() / "offers.csv"), "129.50", "1.00");
    write_file(folder.path / "tonight" / "offers.csv", changed);
    ImportOptions options;
    options.mode = ImportMode::tables;
    const std::string digest = import_catalog({folder.path / "tonight"}, folder.catalog(), options).digest;
    SmallFolder other;
    other.table("offers", changed);
    BOOST_TEST(other.import().digest == digest);
}

BOOST_AUTO_TEST_CASE(new_changed_and_retired_rows_are_told_apart) {
    SmallFolder folder;
    folder.import();
    std::string parts = read_file(folder.tables() / "parts.csv");
    parts = with(parts, "CAP-5,active", "CAP-5,discontinued");
    parts += "N-1,motor,Plover Example Works,NEW 1,,\n";
    folder.table("parts", parts);
    folder.table("cross_references",
                 "old_number,part_id,relation,source\nOLD-42,M-3,replaces,maker's list\n");
    folder.import();
    const Changes changes = last_changes(folder.catalog());
    BOOST_REQUIRE(changes.tables.size() == 2U);
    BOOST_TEST(changes.tables[0].added == 1);
    BOOST_TEST(changes.tables[0].changed == 1);
    BOOST_TEST(changes.tables[1].retired == 1);
    BOOST_REQUIRE(changes.changes.size() == 3U);
    BOOST_TEST(changes.changes[0].cells.at(0).column == "status");
    BOOST_TEST(to_text(changes.changes[0].cells.at(0).after) == "discontinued");
    BOOST_TEST(changes.price_move_count == 0);
}

BOOST_AUTO_TEST_CASE(tables_that_lose_their_parents_are_refused_and_the_old_catalog_stays) {
    SmallFolder folder;
    folder.import();
    write_file(folder.path / "new" / "parts.csv", "part_id,kind,maker,part_number\nM-1,motor,K,1\n");
    ImportOptions options;
    options.mode = ImportMode::tables;
    BOOST_CHECK_THROW(import_catalog({folder.path / "new"}, folder.catalog(), options), BadData);
    BOOST_TEST(StoredCatalog(folder.catalog()).generation() == 1);
}

BOOST_AUTO_TEST_CASE(the_last_three_generations_are_kept_and_can_be_restored) {
    SmallFolder folder;
    std::vector<std::string> digests;
    for (int i = 1; i <= 6; ++i) {
        folder.table("labour_tasks", "task,hours,source\nmotor swap," + std::to_string(i) + ",shop\n");
        digests.push_back(folder.import().digest);
    }
    std::vector<int> numbers;
    for (const Generation& each : generations(folder.catalog())) numbers.push_back(each.number);
    BOOST_TEST(numbers == (std::vector<int>{6, 5, 4, 3}), boost::test_tools::per_element());

    const Generation restored = restore(folder.catalog(), 4);
    BOOST_TEST(restored.number == 7);
    BOOST_TEST(restored.digest == digests[3]);
    const StoredCatalog catalog(folder.catalog());
    BOOST_TEST(catalog.stamp() == "generation 7, digest " + digests[3]);
    BOOST_TEST(catalog.labour("motor swap")->thousandth_hours == 4000);
    BOOST_CHECK_THROW(restore(folder.catalog(), 1), BadData);
}

BOOST_AUTO_TEST_CASE(a_damaged_catalog_is_refused_and_an_earlier_generation_brings_it_back) {
    SmallFolder folder;
    folder.import();
    folder.table("labour_tasks", "task,hours,source\nmotor swap,9,shop\n");
    folder.import();
    write_file(folder.catalog(), "not a database at all, only text that somebody saved under this name");
    BOOST_CHECK_THROW(StoredCatalog{folder.catalog()}, BadData);
    BOOST_CHECK_THROW(folder.import(), BadData);
    BOOST_TEST(restore(folder.catalog(), 1).number == 2);
    BOOST_TEST(StoredCatalog(folder.catalog()).labour("motor swap")->thousandth_hours == 1250);
}

BOOST_AUTO_TEST_CASE(another_programs_database_is_no_catalog) {
    Folder folder;
    {
        SQLite::Database db(folder.catalog().string(), SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE);
        db.exec("CREATE TABLE songs (title TEXT)");
    }
    BOOST_CHECK_THROW(StoredCatalog{folder.catalog()}, BadData);
    folder.table("parts", "part_id,kind,maker,part_number\n");
    BOOST_CHECK_THROW(folder.import(), BadData);
    SQLite::Database db(folder.catalog().string());
    BOOST_TEST(db.tableExists("songs"));  // and it is left alone
}

BOOST_AUTO_TEST_CASE(a_catalog_with_a_view_or_a_newer_schema_is_refused) {
    for (const char* sql :
         {"CREATE VIEW v AS SELECT 1", "CREATE TRIGGER t AFTER INSERT ON parts BEGIN DELETE FROM taps; END",
          "PRAGMA user_version = 99", "PRAGMA application_id = 1"}) {
        SmallFolder folder;
        folder.import();
        {
            SQLite::Database db(folder.catalog().string(), SQLite::OPEN_READWRITE);
            db.exec(sql);
        }
        BOOST_CHECK_THROW(StoredCatalog{folder.catalog()}, BadData);
    }
}

/// What an older program, which did not know the column yet, would have left.
void forget_column(const fs::path& catalog, const char* column) {
    SQLite::Database db(catalog.string(), SQLite::OPEN_READWRITE);
    db.exec(std::string("ALTER TABLE motors DROP COLUMN ") + column);
    db.exec("PRAGMA user_version = 1");
}

BOOST_AUTO_TEST_CASE(a_column_that_an_older_catalog_lacks_is_unknown) {
    SmallFolder folder;
    folder.import();
    const Part before = *StoredCatalog(folder.catalog()).part("M-1");
    BOOST_TEST(before.motor->shaft_length.has_value());
    forget_column(folder.catalog(), "shaft_length_in");
    const Part after = *StoredCatalog(folder.catalog()).part("M-1");
    BOOST_TEST(!after.motor->shaft_length.has_value());
    BOOST_TEST((after.motor->shaft_diameter == before.motor->shaft_diameter));
    BOOST_TEST((after.motor->body_diameter == before.motor->body_diameter));
}

BOOST_AUTO_TEST_CASE(the_next_import_gives_an_older_catalog_the_column) {
    SmallFolder folder;
    folder.import();
    forget_column(folder.catalog(), "shaft_length_in");
    folder.table("labour_tasks", "task,hours,source\nmotor swap,9,shop\n");
    ImportOptions one_table;
    one_table.mode = ImportMode::tables;
    import_catalog({folder.path / "tables/labour_tasks.csv"}, folder.catalog(), one_table);
    SQLite::Database db(folder.catalog().string());
    const char* count = "SELECT count(*) FROM pragma_table_info('motors') WHERE name = 'shaft_length_in'";
    BOOST_TEST(db.execAndGet(count).getInt() == 1);
    BOOST_TEST(StoredCatalog(folder.catalog()).part("M-1").has_value());
    BOOST_TEST(StoredCatalog(folder.catalog()).labour("motor swap")->thousandth_hours == 9000);
}

BOOST_AUTO_TEST_CASE(a_catalog_that_lacks_a_column_it_must_have_is_refused) {
    SmallFolder folder;
    folder.import();
    {
        SQLite::Database db(folder.catalog().string(), SQLite::OPEN_READWRITE);
        db.exec("ALTER TABLE parts DROP COLUMN maker");
    }
    BOOST_CHECK_THROW(StoredCatalog{folder.catalog()}, BadData);
}

BOOST_AUTO_TEST_CASE(a_row_that_was_changed_behind_our_back_is_found) {
    SmallFolder folder;
    folder.import();
    {
        SQLite::Database db(folder.catalog().string(), SQLite::OPEN_READWRITE);
        db.exec("UPDATE offers SET price = '1.00'");
    }
    const QualityReport report = quality_of(folder.catalog());
    BOOST_TEST(!report.whole);
    BOOST_TEST(!report.damage.empty());
}

BOOST_AUTO_TEST_CASE(a_value_that_no_import_writes_is_damage_and_no_crash) {
    for (const char* sql : {"UPDATE motors SET loads = 'moon'", "UPDATE motor_ratings SET volts = '9x'",
                            "UPDATE offers SET currency = 'ZZZ'", "UPDATE offers SET price = 'free'",
                            "UPDATE labour_tasks SET hours = '1.2.3'"}) {
        SmallFolder folder;
        folder.import();
        {
            SQLite::Database db(folder.catalog().string(), SQLite::OPEN_READWRITE);
            db.exec(sql);
        }
        const StoredCatalog catalog(folder.catalog());
        const auto read_all = [&] {
            catalog.each_part([&](const Part& part) { catalog.offers(part.id); });
            catalog.labour("motor swap");
        };
        BOOST_CHECK_THROW(read_all(), BadData);
    }
}

BOOST_AUTO_TEST_CASE(flipped_bytes_give_an_error_or_the_truth) {
    SmallFolder folder;
    folder.import();
    const std::string whole = read_file(folder.catalog());
    const fs::path broken = folder.path / "broken.db";
    std::uint32_t seed = 12345;
    int refused = 0;
    for (int i = 0; i < 150; ++i) {
        std::string bytes = whole;
        for (int k = 0; k < 8; ++k) {
            seed = seed * 1664525U + 1013904223U;
            bytes[(seed >> 8U) % bytes.size()] = static_cast<char>(seed >> 24U);
        }
        write_file(broken, bytes);
        try {
            if (!quality_of(broken).whole) ++refused;
            const StoredCatalog catalog(broken);
            catalog.each_part([&](const Part& part) { catalog.offers(part.id); });
        } catch (const BadData&) {
            ++refused;
        }
    }
    BOOST_TEST(refused > 30);
}

BOOST_AUTO_TEST_CASE(two_imports_into_one_folder_do_not_run_at_once) {
    SmallFolder folder;
    ImportOptions options;
    bool refused = false;
    options.at_write_point = [&](std::string_view point) {
        if (point != "rows written") return;
        try {
            folder.import();
        } catch (const BadData&) {
            refused = true;
        }
    };
    folder.import(options);
    BOOST_TEST(refused);
}

BOOST_AUTO_TEST_CASE(an_open_reader_keeps_the_generation_it_began_with) {
    SmallFolder folder;
    folder.import();
    const StoredCatalog reader(folder.catalog());
    folder.table("labour_tasks", "task,hours,source\nmotor swap,9,shop\n");
    folder.import();
    BOOST_TEST(reader.labour("motor swap")->thousandth_hours == 1250);
    BOOST_TEST(StoredCatalog(folder.catalog()).labour("motor swap")->thousandth_hours == 9000);
}

BOOST_AUTO_TEST_CASE(a_column_that_rows_know_and_no_file_had_is_damage) {
    SmallFolder folder;
    folder.import();
    BOOST_TEST(quality_of(folder.catalog()).whole);
    SQLite::Database(folder.catalog().string(), SQLite::OPEN_READWRITE)
        .exec("UPDATE table_digests SET filled = replace(filled, 'phase', '') WHERE table_name = 'motors'");
    BOOST_TEST(!quality_of(folder.catalog()).whole);
}
