// A catalog that an earlier version of the program wrote: schema version 1, with sums of another hash.
#include <boost/test/unit_test.hpp>

#include "engine/catalog/database.hpp"
#include "engine/catalog/generations.hpp"
#include "engine/catalog/schema.hpp"
#include "engine/catalog/stored_catalog.hpp"
#include "engine/quality/quality.hpp"
#include "tests/catalog/fixture.hpp"

using namespace endbell;
using namespace endbell::testing;

namespace {

/// What the earlier program wrote for the small catalog.
const std::string old_digest = "9724454ba30d2799";
const std::vector<std::pair<std::string, std::string>> old_sums{{"accessories", "ae3754270a92c199"},
                                                                {"accessory_excludes", "51b371b24c6d0493"},
                                                                {"cross_references", "12f05dc1fc490083"},
                                                                {"labour_tasks", "020bbfa688230299"},
                                                                {"limits", "2ad38207629fe5aa"},
                                                                {"module_fits", "2aa58243813e15a8"},
                                                                {"modules", "4cd7e33df5e65ad7"},
                                                                {"motor_ratings", "be98ca7abb73a9ba"},
                                                                {"motors", "22fc750621d1567f"},
                                                                {"offers", "d3fbbb8b8b436dd3"},
                                                                {"parts", "60c435e6c90ade5a"},
                                                                {"taps", "c8e43dbb7ad2c7e4"},
                                                                {"terminals", "2aabf8ec74fc20e2"}};

struct OldFolder : SmallFolder {
    OldFolder() {
        import();
        SQLite::Database db(catalog().string(), SQLite::OPEN_READWRITE);
        for (const auto& [table, sum] : old_sums)
            db.exec("UPDATE table_digests SET row_sum = '" + sum + "' WHERE table_name = '" + table + "'");
        db.exec("UPDATE generation SET digest = '" + old_digest + "'");
        // It laid its statements out otherwise, too.
        db.exec("PRAGMA writable_schema = ON; UPDATE sqlite_schema SET sql = replace(sql, '    ', ' ')");
        db.exec("PRAGMA user_version = 1");
    }
    ImportReport import_offers(ImportMode mode, const std::string& text) const {
        write_file(path / "tonight" / "offers.csv", text);
        ImportOptions options;
        options.mode = mode;
        return import_catalog({path / "tonight"}, catalog(), options);
    }
};

int version_of(const fs::path& catalog) {
    return SQLite::Database(catalog.string()).execAndGet("PRAGMA user_version").getInt();
}

std::string digest_from_nothing(const OldFolder& old, const std::string& offers) {
    SmallFolder fresh;
    fresh.table("offers", offers.empty() ? read_file(old.tables() / "offers.csv") : offers);
    return fresh.import().digest;
}

const std::string one_more =
    "part_id,seller,branch,price,currency,as_of\nM-3,Example Supply,North,1.00,USD,2026-01-15\n";

}  // namespace

BOOST_AUTO_TEST_CASE(an_older_catalog_is_answered_from) {
    const OldFolder folder;
    const StoredCatalog catalog(folder.catalog());
    BOOST_TEST(catalog.stamp() == "generation 1, digest " + old_digest);
    BOOST_TEST(catalog.part("M-2")->motor->taps.size() == 5U);
}

BOOST_AUTO_TEST_CASE(an_older_catalog_with_another_column_or_table_is_refused) {
    for (const char* sql :
         {"ALTER TABLE parts ADD COLUMN more TEXT", "ALTER TABLE taps RENAME COLUMN label TO name",
          "CREATE TABLE more (one TEXT)", "CREATE VIEW more AS SELECT 1"}) {
        const OldFolder folder;
        SQLite::Database(folder.catalog().string(), SQLite::OPEN_READWRITE).exec(sql);
        BOOST_CHECK_THROW(StoredCatalog{folder.catalog()}, BadData);
    }
}

BOOST_AUTO_TEST_CASE(an_older_catalog_is_not_damaged_and_its_digest_not_called_checked) {
    const OldFolder folder;
    const QualityReport report = quality_of(folder.catalog());
    BOOST_TEST(report.whole);
    BOOST_TEST(!report.digest_checked);
    SmallFolder today;
    today.import();
    BOOST_TEST(quality_of(today.catalog()).digest_checked);
}

BOOST_AUTO_TEST_CASE(an_older_catalog_that_lacks_a_row_is_damaged) {
    const OldFolder folder;
    SQLite::Database(folder.catalog().string(), SQLite::OPEN_READWRITE)
        .exec("DELETE FROM offers WHERE price = '129.50'");
    BOOST_TEST(!quality_of(folder.catalog()).whole);
}

BOOST_AUTO_TEST_CASE(tables_brought_into_an_older_catalog_make_it_one_of_today) {
    const OldFolder folder;
    const std::string digest = folder.import_offers(ImportMode::tables, one_more).digest;
    BOOST_TEST(digest == digest_from_nothing(folder, one_more));
    BOOST_TEST(version_of(folder.catalog()) == schema_version);
    BOOST_TEST(quality_of(folder.catalog()).digest_checked);
    BOOST_TEST(quality_of(folder.catalog()).whole);
}

BOOST_AUTO_TEST_CASE(rows_added_to_an_older_catalog_make_it_one_of_today) {
    const OldFolder folder;
    BOOST_TEST(folder.import_offers(ImportMode::rows, one_more).accepted == 1);
    BOOST_TEST(quality_of(folder.catalog()).digest_checked);
    BOOST_TEST(quality_of(folder.catalog()).whole);
}

BOOST_AUTO_TEST_CASE(a_kept_generation_of_an_older_version_is_whole_and_can_be_restored) {
    const OldFolder folder;
    folder.table("labour_tasks", "task,hours,source\nmotor swap,9,shop\n");
    folder.import();
    const std::vector<Generation> all = generations(folder.catalog());
    BOOST_REQUIRE(all.size() == 2U);
    BOOST_TEST(!all[1].damaged);
    BOOST_TEST(all[1].digest == old_digest);
    SmallFolder fresh;
    BOOST_TEST(restore(folder.catalog(), 1).digest == fresh.import().digest);
    BOOST_TEST(version_of(folder.catalog()) == schema_version);
    BOOST_TEST(StoredCatalog(folder.catalog()).labour("motor swap")->thousandth_hours == 1250);
}

BOOST_AUTO_TEST_CASE(a_column_map_that_an_older_catalog_remembers_is_found_again) {
    Folder folder;
    const std::string sheet = "Item,Make,Model\nM-1,Plover Example Works,1\n";
    const std::string map =
        "[tables.parts.columns]\npart_id = \"Item\"\nmaker = \"Make\"\n"
        "part_number = \"Model\"\nkind = { value = \"motor\" }\n";
    write_file(folder.path / "map.toml", map);
    folder.table("parts", sheet);
    ImportOptions options;
    options.columns = folder.path / "map.toml";
    folder.import(options);
    // FNV-1a of "item", "make" and "model" with U+001F between them, worked out by another program.
    SQLite::Database(folder.catalog().string(), SQLite::OPEN_READWRITE)
        .exec("UPDATE column_maps SET header = 'b7d2bb9043cb2abf'; PRAGMA user_version = 1");
    folder.table("parts", sheet + "M-2,Plover Example Works,2\n");
    const ImportReport report = folder.import();
    BOOST_REQUIRE(report.files.size() == 1U);
    BOOST_TEST(report.files[0].columns == "remembered");
    BOOST_TEST(report.accepted == 2);
    BOOST_TEST(folder.import().files.at(0).columns == "remembered");  // also from the catalog of today
}
