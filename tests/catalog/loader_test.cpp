// Rows by the batch: some refused in the middle of one, parents in any order, and a digest without reading back.
#include <fmt/format.h>

#include <boost/test/unit_test.hpp>

#include "engine/base/problem.hpp"
#include "engine/catalog/stored_catalog.hpp"
#include "engine/quality/quality.hpp"
#include "tests/catalog/fixture.hpp"

using namespace endbell;
using namespace endbell::testing;

namespace {

constexpr int many = 1000;  // some batches of read_ahead.cpp

std::string parts(int from, int to) {
    std::string csv = "part_id,kind,maker,part_number\n";
    for (int i = from; i < to; ++i) csv += fmt::format("P-{:04},motor,Maker,N{}\n", i, i);
    return csv;
}

const std::string offer_head = "part_id,seller,price,currency,stock,as_of\n";
std::string offer(int part, int stock) {
    return fmt::format("P-{:04},Seller,10.00,USD,{},2026-01-01\n", part, stock);
}

}  // namespace

BOOST_AUTO_TEST_SUITE(loader)

BOOST_AUTO_TEST_CASE(children_find_their_parents_in_any_order) {
    for (const int stride : {1, many - 1, 37}) {
        Folder folder;
        folder.table("parts", parts(0, many));
        std::string offers = offer_head;
        for (int i = 0; i < many; ++i) offers += offer(i * stride % many, 1);
        folder.table("offers", offers + offer(many, 1) + offer(5, 1));
        const ImportReport report = folder.import();
        BOOST_TEST(report.accepted == 2 * many);
        BOOST_REQUIRE(report.problems.size() == 2U);
        BOOST_TEST(report.problems[0].expected == "a part_id of parts");
        BOOST_TEST(report.problems[1].expected == "each part_id + branch + seller once");
        BOOST_TEST(quality_of(folder.catalog()).whole);
    }
}

BOOST_AUTO_TEST_CASE(a_refused_row_leaves_its_neighbours) {
    Folder folder;
    std::string csv = parts(0, many);
    for (int i = 0; i < many; i += 10) csv += fmt::format("P-{:04},module,Maker,again\n", i);
    folder.table("parts", csv + parts(many, many + 20).substr(csv.find('\n') + 1));
    const ImportReport report = folder.import();
    BOOST_TEST(report.accepted == many + 20);
    BOOST_TEST(report.set_aside == many / 10);
    BOOST_TEST(StoredCatalog(folder.catalog()).part("P-0010")->number == "N10");
    BOOST_TEST(quality_of(folder.catalog()).whole);
}

// As the store itself says it: first what the row is, then whose it is.
BOOST_AUTO_TEST_CASE(what_is_wrong_in_a_row_comes_before_its_parent) {
    Folder folder;
    folder.table("parts", parts(0, 3));
    folder.table("terminals", "part_id,label,function\nP-0000,L,line\nP-0009,N,line\n");
    folder.table("motors", "part_id,poles\nP-0000,6\n");
    folder.table("taps", "part_id,tap\nP-0000,1\nP-0001,2\nP-0001,99\n");
    const ImportReport report = folder.import();
    BOOST_REQUIRE(report.problems.size() == 3U);
    BOOST_TEST(report.problems[0].expected == "a part_id of motors");
    BOOST_TEST(report.problems[1].expected == "taps count from 1");
    BOOST_TEST(report.problems[2].expected == "a part_id of parts");
    BOOST_TEST(quality_of(folder.catalog()).whole);
}

BOOST_AUTO_TEST_CASE(added_rows_give_the_digest_of_the_whole) {
    Folder whole;
    whole.table("parts", parts(0, many));
    const std::string digest = whole.import().digest;
    Folder grown;
    grown.table("parts", parts(0, 600));
    BOOST_TEST(grown.import().digest != digest);
    write_file(grown.path / "more" / "parts.csv", parts(600, many));
    ImportOptions options;
    options.mode = ImportMode::rows;
    BOOST_TEST(import_catalog({grown.path / "more"}, grown.catalog(), options).digest == digest);
    BOOST_TEST(quality_of(grown.catalog()).whole);
}

BOOST_AUTO_TEST_CASE(the_rows_can_be_read_before_the_catalog_stands) {
    SmallFolder folder;
    std::string stamp;
    ImportOptions options;
    options.rows_stored = [&](const fs::path& file) { stamp = StoredCatalog(file).stamp(); };
    const ImportReport first = folder.import(options);
    BOOST_TEST(stamp == "generation 1, digest " + first.digest);
    stamp.clear();
    BOOST_TEST((folder.import(options).outcome == ImportOutcome::unchanged));
    BOOST_TEST(stamp.empty());
}

BOOST_AUTO_TEST_SUITE_END()
