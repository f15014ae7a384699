#include <boost/test/unit_test.hpp>

#include "engine/catalog/stored_catalog.hpp"
#include "tests/catalog/fixture.hpp"

using namespace endbell;
using namespace endbell::testing;

namespace {

bool mentions(const std::vector<Problem>& problems, const std::string& subject,
              const std::string& todo_part) {
    for (const Problem& p : problems) {
        if (p.subject == subject && p.todo.find(todo_part) != std::string::npos) return true;
    }
    return false;
}

}  // namespace

BOOST_AUTO_TEST_CASE(the_small_catalog_is_read_whole) {
    SmallFolder folder;
    const ImportReport report = folder.import();
    for (const Problem& p : report.problems) BOOST_TEST_MESSAGE(to_text(p));
    BOOST_TEST(report.set_aside == 0);
    BOOST_TEST(report.rows_in == 6 + 3 + 4 + 5 + 6 + 1 + 2 + 2 + 1 + 2 + 5 + 2 + 1);
    BOOST_TEST(report.accepted == report.rows_in);
    BOOST_TEST(report.generation == 1);
    BOOST_TEST((report.outcome == ImportOutcome::replaced));
}

BOOST_AUTO_TEST_CASE(what_was_written_in_the_words_of_the_trade_comes_back_typed) {
    SmallFolder folder;
    folder.import();
    const StoredCatalog catalog(folder.catalog());
    const std::optional<Part> fan = catalog.part("M-1");
    BOOST_REQUIRE(fan);
    BOOST_TEST(fan->number == "00123-5");  // leading zeros and the dash are kept
    BOOST_REQUIRE(fan->motor);
    BOOST_TEST((fan->motor->rotation == Rotation::reversible));
    BOOST_TEST(fan->motor->shaft_diameter->in(inch) == 0.5);
    BOOST_REQUIRE(fan->motor->ratings.size() == 1U);
    BOOST_TEST(fan->motor->ratings[0].power->in(horsepower) == 0.5, boost::test_tools::tolerance(1e-12));
    BOOST_TEST(fan->motor->ratings[0].volts->low.in(volt) == 208);
    BOOST_TEST(fan->motor->ratings[0].volts->high.in(volt) == 230);

    const std::optional<Part> blower = catalog.part("M-2");
    BOOST_REQUIRE(blower);
    BOOST_TEST((blower->motor->rotation == Rotation::cw_shaft_end));  // CCW seen from the lead end
    BOOST_TEST(blower->motor->shaft_length->in(inch) == 5.6);
    BOOST_TEST(blower->motor->taps.size() == 5U);
    BOOST_TEST(blower->motor->taps[1].torque->in(ounce_foot) == 25.5, boost::test_tools::tolerance(1e-12));
    BOOST_TEST(blower->motor->terminals.size() == 6U);
    BOOST_TEST(blower->description == "1/2 hp, five taps, \"quiet\"");

    const std::optional<Part> airflow = catalog.part("M-3");
    BOOST_TEST((!airflow->motor->rotation));  // a bare CW is unknown
    BOOST_TEST((airflow->status == PartStatus::superseded));
    BOOST_TEST(catalog.part("C-1")->module->fits.size() == 2U);
    BOOST_TEST(catalog.part("A-1")->accessory->excludes.front() == "A-2");
}

BOOST_AUTO_TEST_CASE(offers_labour_and_limits_are_the_shops_own) {
    SmallFolder folder;
    folder.import();
    const StoredCatalog catalog(folder.catalog());
    const std::vector<Offer> offers = catalog.offers("M-1");
    BOOST_REQUIRE(offers.size() == 2U);
    BOOST_TEST(offers[0].branch == "East");
    BOOST_TEST(offers[0].price->minor() == 12950);
    BOOST_TEST(catalog.offers("M-2")[0].price->minor() == 123450);
    BOOST_TEST(catalog.labour("motor swap")->thousandth_hours == 1250);
    BOOST_TEST(catalog.labour("shaft cut")->thousandth_hours == 200);
    BOOST_TEST((!catalog.labour("no such task")));
    BOOST_TEST(catalog.limits().find("price.age")->value == 14);
    BOOST_TEST(catalog.limits().find("price.age")->set_by == "Corner Supply");
}

BOOST_AUTO_TEST_CASE(each_part_gives_what_part_gives) {
    SmallFolder folder;
    folder.import();
    const StoredCatalog catalog(folder.catalog());
    std::vector<std::string> ids;
    catalog.each_part([&](const Part& part) {
        ids.push_back(part.id);
        const std::optional<Part> same = catalog.part(part.id);
        BOOST_REQUIRE(same);
        BOOST_TEST(same->number == part.number);
        BOOST_TEST(same->motor.has_value() == part.motor.has_value());
        if (part.motor) BOOST_TEST(same->motor->taps.size() == part.motor->taps.size());
        if (part.motor) BOOST_TEST(same->motor->ratings.size() == part.motor->ratings.size());
        if (part.module) BOOST_TEST(same->module->fits == part.module->fits);
        if (part.accessory) BOOST_TEST(same->accessory->cures.size() == part.accessory->cures.size());
    });
    BOOST_TEST(ids == (std::vector<std::string>{"A-1", "A-2", "C-1", "M-1", "M-2", "M-3"}),
               boost::test_tools::per_element());
}

BOOST_AUTO_TEST_CASE(a_wrong_word_sets_the_row_aside_and_names_the_near_one) {
    SmallFolder folder;
    folder.table("parts", "part_id,kind,maker,part_number\nM-1,moter,K,1\nM-2,motor,K,2\n");
    folder.table("motors", "part_id,family\nM-1,capacitor run\nM-2,capacitr run\nM-9,capacitor run\n");
    for (const char* gone : {"motor_ratings", "taps", "terminals", "modules", "module_fits", "accessories",
                             "accessory_excludes", "offers"}) {
        fs::remove(folder.tables() / (std::string(gone) + ".csv"));
    }
    const ImportReport report = folder.import();
    BOOST_TEST(report.rows_in == report.accepted + report.set_aside);
    BOOST_TEST(report.set_aside == 4);
    BOOST_TEST(mentions(report.problems, "kind", "'motor'"));
    BOOST_TEST(mentions(report.problems, "family", "'capacitor run'"));
    BOOST_TEST(mentions(report.problems, "part_id", "mend that row of parts"));
    BOOST_TEST(mentions(report.problems, "part_id", "add the part to parts"));
    BOOST_TEST(report.problems.front().at.line == 2);
    BOOST_TEST(report.problems.front().at.column == 2);
    BOOST_TEST(report.problems.front().value == "moter");
}

BOOST_AUTO_TEST_CASE(a_header_that_is_no_column_ends_the_import_with_the_near_one) {
    SmallFolder folder;
    folder.table("taps", "part_id,tap,torqe_ozft\nM-2,1,20\n");
    BOOST_CHECK_EXCEPTION(folder.import(), BadData, [](const BadData& bad) {
        return mentions(bad.problems(), "torqe_ozft", "'torque_ozft'");
    });
    BOOST_TEST(!fs::exists(folder.catalog()));
    BOOST_TEST(!fs::exists(folder.catalog().string() + "-importing"));
}

BOOST_AUTO_TEST_CASE(a_required_column_that_is_missing_ends_the_import) {
    SmallFolder folder;
    folder.table("parts", "part_id,kind,maker\nM-1,motor,K\n");
    BOOST_CHECK_EXCEPTION(folder.import(), BadData, [](const BadData& bad) {
        return mentions(bad.problems(), "part_number", "column map");
    });
}

BOOST_AUTO_TEST_CASE(a_shop_may_tighten_a_limit_and_not_loosen_it) {
    SmallFolder folder;
    folder.table("limits",
                 "limit,value,set_by\nprice.age,60,shop\nprice.agee,10,shop\nvoltage.band,0.05,shop\n");
    const ImportReport report = folder.import();
    BOOST_TEST(report.set_aside == 2);
    BOOST_TEST(mentions(report.problems, "value", "never loosen"));
    BOOST_TEST(mentions(report.problems, "limit", "'price.age'"));
    BOOST_TEST(StoredCatalog(folder.catalog()).limits().find("voltage.band")->value == 0.05);
}

BOOST_AUTO_TEST_CASE(a_part_number_that_a_spreadsheet_spoilt_is_set_aside) {
    SmallFolder folder;
    folder.table("parts",
                 "part_id,kind,maker,part_number\nM-1,motor,K,1.23E+11\nM-2,motor,K,2-Jan\nM-3,motor,K,="
                 "\"001\"\nC-1,module,K,1\nA-1,accessory,K,1\nA-2,accessory,K,2\n");
    fs::remove(folder.tables() / "cross_references.csv");
    const ImportReport report = folder.import();
    BOOST_TEST(mentions(report.problems, "part_number", "formatted as text"));
    const StoredCatalog catalog(folder.catalog());
    BOOST_TEST((!catalog.part("M-1")));
    BOOST_TEST((!catalog.part("M-2")));
    BOOST_TEST(catalog.part("M-3")->number == "001");
}

BOOST_AUTO_TEST_CASE(the_same_row_twice_is_set_aside_once) {
    SmallFolder folder;
    folder.table("taps", "part_id,tap\nM-2,1\nM-2,1\n");
    const ImportReport report = folder.import();
    BOOST_TEST(report.set_aside == 1);
    BOOST_TEST(report.problems.front().at.line == 3);
}

BOOST_AUTO_TEST_CASE(an_impossible_number_is_named_with_its_column) {
    SmallFolder folder;
    folder.table("taps", "part_id,tap,torque_ozft\nM-2,0,20\n");
    const ImportReport report = folder.import();
    BOOST_REQUIRE(report.set_aside == 1);
    BOOST_TEST(report.problems.front().subject == "tap");
    BOOST_TEST(report.problems.front().expected == "taps count from 1");
}

BOOST_AUTO_TEST_CASE(a_row_of_another_kind_of_part_is_set_aside) {
    SmallFolder folder;
    folder.table("modules", "part_id,program\nM-1,P\nC-1,P-104\n");
    const ImportReport report = folder.import();
    BOOST_TEST(report.set_aside == 1);
    BOOST_TEST(report.problems.front().expected == "a part of kind module, not motor");
}

BOOST_AUTO_TEST_CASE(strict_keeps_the_old_generation_when_one_row_is_set_aside) {
    SmallFolder folder;
    folder.import();
    folder.table("limits", "limit,value,set_by\nprice.age,60,shop\n");
    ImportOptions options;
    options.strict = true;
    BOOST_TEST((folder.import(options).outcome == ImportOutcome::refused));
    BOOST_TEST(StoredCatalog(folder.catalog()).generation() == 1);
}

BOOST_AUTO_TEST_CASE(a_dry_run_counts_the_same_and_changes_nothing) {
    SmallFolder folder;
    folder.table("limits", "limit,value,set_by\nprice.age,60,shop\n");
    ImportOptions options;
    options.dry_run = true;
    const ImportReport dry = folder.import(options);
    BOOST_TEST(!fs::exists(folder.catalog()));
    const ImportReport wet = folder.import();
    BOOST_TEST(dry.digest == wet.digest);
    BOOST_TEST(dry.accepted == wet.accepted);
    BOOST_TEST(dry.set_aside == wet.set_aside);
    BOOST_REQUIRE(dry.problems.size() == wet.problems.size());
    BOOST_TEST(to_text(dry.problems[0]) == to_text(wet.problems[0]));
}

BOOST_AUTO_TEST_CASE(the_same_content_in_another_order_is_the_same_catalog) {
    SmallFolder folder;
    const std::string digest = folder.import().digest;
    folder.table("labour_tasks",
                 "source,hours,task\nshop table,.200,Shaft Cut\nshop table,1.25,motor swap\n");
    const ImportReport again = folder.import();
    BOOST_TEST(again.digest == digest);
    BOOST_TEST((again.outcome == ImportOutcome::unchanged));
    BOOST_TEST(again.generation == 1);
}

BOOST_AUTO_TEST_CASE(a_price_list_alone_never_replaces_a_catalog) {
    SmallFolder folder;
    folder.import();
    const std::string before = read_file(folder.catalog());
    for (const bool dry : {false, true}) {
        ImportOptions options;
        options.dry_run = dry;
        std::vector<Problem> problems;
        try {
            import_catalog({folder.tables() / "offers.csv", folder.tables() / "labour_tasks.csv"},
                           folder.catalog(), options);
        } catch (const BadData& refused) {
            problems = refused.problems();
        }
        BOOST_TEST(mentions(problems, "files", "--mode tables"));
        BOOST_TEST(read_file(folder.catalog()) == before);
    }
    ImportOptions tables;
    tables.mode = ImportMode::tables;
    BOOST_CHECK_NO_THROW(import_catalog({folder.tables() / "offers.csv"}, folder.catalog(), tables));
    BOOST_TEST(StoredCatalog(folder.catalog()).part("M-1").has_value());
}
