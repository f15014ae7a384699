#include "engine/catalog/numbers.hpp"

#include <algorithm>
#include <boost/test/unit_test.hpp>

#include "engine/catalog/stored_catalog.hpp"
#include "tests/catalog/fixture.hpp"

using namespace endbell;
using namespace endbell::testing;

namespace {

struct Numbered : Folder {
    explicit Numbered(const std::string& references) {
        table("parts",
              "part_id,kind,maker,part_number\nP1,motor,K,AB-100 S\nP2,motor,K,00200\nP3,motor,K,300\n");
        table("cross_references", "old_number,part_id,relation,source\n" + references);
        import();
    }
};

}  // namespace

BOOST_AUTO_TEST_CASE(a_cross_reference_is_found_with_or_without_dashes_and_blanks) {
    Numbered folder("12-34 X,P1,replaces,list\n");
    const StoredCatalog catalog(folder.catalog());
    for (const char* spelling : {"12-34 X", "1234X", "12 34-x", "1234x"}) {
        const std::vector<CrossReference> found = catalog.references(spelling);
        BOOST_REQUIRE(found.size() == 1U);
        BOOST_TEST(found[0].part_id == "P1");
        BOOST_TEST(found[0].old_number == "12-34 X");
    }
    BOOST_TEST(catalog.references("1234").empty());
    BOOST_TEST(catalog.references("").empty());
}

BOOST_AUTO_TEST_CASE(modules_of_a_program_are_found_however_it_is_written) {
    SmallFolder folder;
    folder.import();
    const StoredCatalog catalog(folder.catalog());
    for (const char* spelling : {"P-104", "p104", "P 104"}) {
        const std::vector<Part> found = catalog.modules_of(spelling);
        BOOST_REQUIRE(found.size() == 1U);
        BOOST_TEST(found[0].id == "C-1");
        BOOST_TEST(found[0].module->power.value().in(horsepower) == 0.75);
        // As any catalog finds it among all its parts.
        BOOST_TEST(catalog.Catalog::modules_of(spelling).size() == 1U);
    }
    BOOST_TEST(catalog.modules_of("P-105").empty());
    BOOST_TEST(catalog.modules_of("").empty());
}

BOOST_AUTO_TEST_CASE(leading_zeros_tell_numbers_apart) {
    Numbered folder("");
    const StoredCatalog catalog(folder.catalog());
    BOOST_TEST(catalog.parts_numbered("00200") == (std::vector<std::string>{"P2"}),
               boost::test_tools::per_element());
    BOOST_TEST(catalog.parts_numbered("200").empty());
}

BOOST_AUTO_TEST_CASE(misread_characters_give_numbers_that_look_alike_and_no_match) {
    Numbered folder("BO8-S1,P3,replaces,list\n");
    const StoredCatalog catalog(folder.catalog());
    BOOST_TEST(catalog.references("808-51").empty());
    const std::vector<NumberedPart> near = catalog.misread_numbers("808-51");
    BOOST_REQUIRE(near.size() == 1U);
    BOOST_TEST(near[0].number == "BO8-S1");
    BOOST_TEST(near[0].part_id == "P3");
    BOOST_TEST(catalog.misread_numbers("AB-I00-5").at(0).part_id == "P1");
    BOOST_TEST(catalog.misread_numbers("AB-100 S").empty());
}

BOOST_AUTO_TEST_CASE(a_chain_of_successors_is_followed_both_ways_it_can_be_written) {
    // A was superseded by B, B by part P1 (written from B's side), P1 by P3.
    Numbered folder("A,B,supersedes,list\nAB-100 S,B,superseded by,list\n300,P1,superseded by,list\n");
    const StoredCatalog catalog(folder.catalog());
    const Succession chain = catalog.succession("a");
    BOOST_REQUIRE(chain.steps.size() == 3U);
    BOOST_TEST(chain.steps[0].to == "B");
    BOOST_TEST(chain.ends == (std::vector<std::string>{"P3"}), boost::test_tools::per_element());
    BOOST_TEST(!chain.cycle);
}

BOOST_AUTO_TEST_CASE(replaces_is_no_succession) {
    Numbered folder("A,P1,replaces,list\n");
    BOOST_TEST(StoredCatalog(folder.catalog()).succession("A").steps.empty());
}

BOOST_AUTO_TEST_CASE(a_cycle_of_successors_ends_and_is_said) {
    Numbered folder("A,B,supersedes,list\nB,C,supersedes,list\nC,A,supersedes,list\n");
    const Succession chain = StoredCatalog(folder.catalog()).succession("A");
    BOOST_TEST(chain.cycle);
    BOOST_TEST(chain.ends.empty());
}

BOOST_AUTO_TEST_CASE(two_successors_are_two_ends) {
    Numbered folder("A,P1,supersedes,list\nA,P2,supersedes,list\n");
    BOOST_TEST(StoredCatalog(folder.catalog()).succession("A").ends == (std::vector<std::string>{"P1", "P2"}),
               boost::test_tools::per_element());
}

BOOST_AUTO_TEST_CASE(characters_that_look_alike_have_one_key) {
    BOOST_TEST(sight_key("0O-QD") == "0000");
    BOOST_TEST(sight_key("1IL") == "111");
    BOOST_TEST(sight_key("5S 8B 2Z 6G") == "55882266");
}

BOOST_AUTO_TEST_CASE(all_rows_of_a_part_are_shown) {
    SmallFolder folder;
    folder.import();
    const std::vector<TableRows> rows = StoredCatalog(folder.catalog()).rows_of("M-2");
    std::vector<std::string> names;
    for (const TableRows& table : rows) names.push_back(table.table);
    BOOST_TEST(names == (std::vector<std::string>{"parts", "motors", "motor_ratings", "taps", "terminals",
                                                  "offers"}),
               boost::test_tools::per_element());
    BOOST_TEST(StoredCatalog(folder.catalog()).rows_of("nothing").empty());
}

// Texts of fifteen letters, four of them for each part, fill whole blocks of memory to the last byte.
BOOST_AUTO_TEST_CASE(numbers_by_the_ten_thousand_are_all_found) {
    constexpr int parts = 70'000;
    const Folder folder;
    std::string table = "part_id,kind,maker,part_number\n";
    char line[80];
    for (int i = 0; i < parts; ++i) {
        std::snprintf(line, sizeof line, "P%014d,motor,K,N%014d\n", i, i);
        table += line;
    }
    folder.table("parts", table);
    folder.import();
    SQLite::Database db(folder.catalog().string());
    const std::string lines = db.execAndGet("SELECT group_concat(lines, '') FROM numbers").getString();
    BOOST_TEST(std::count(lines.begin(), lines.end(), '\n') == 2 * parts);
    const StoredCatalog catalog(folder.catalog());
    for (const int i : {0, 1, 65'535, 65'536, 65'537, parts - 1}) {
        std::snprintf(line, sizeof line, "n%014d", i);
        const std::string number(line);
        std::snprintf(line, sizeof line, "P%014d", i);
        BOOST_TEST(catalog.parts_numbered(number) == std::vector<std::string>{line},
                   boost::test_tools::per_element());
    }
}

// Their lines fill many rows of the table, with other numbers before and behind.
BOOST_AUTO_TEST_CASE(a_number_of_many_parts_is_found_for_each) {
    const Folder folder;
    std::string table = "part_id,kind,maker,part_number\n";
    std::vector<std::string> ids;
    for (int i = 1000; i < 1500; ++i) {
        ids.push_back("P" + std::to_string(i));
        table += ids.back() + ",motor,K," + (i % 2 == 0 ? "77-7 A\n" : "777A\n");
    }
    table += "Q1,motor,K,777\nQ2,motor,K,777AA\nQ3,motor,K,777 9\n";
    folder.table("parts", table);
    folder.import();
    const StoredCatalog catalog(folder.catalog());
    BOOST_TEST(catalog.parts_numbered("777a") == ids, boost::test_tools::per_element());
    BOOST_TEST(catalog.parts_numbered("777") == std::vector<std::string>{"Q1"},
               boost::test_tools::per_element());
    BOOST_TEST(catalog.parts_numbered("777AA") == std::vector<std::string>{"Q2"},
               boost::test_tools::per_element());
    BOOST_TEST(catalog.parts_numbered("7779") == std::vector<std::string>{"Q3"},
               boost::test_tools::per_element());
    BOOST_TEST(catalog.parts_numbered("77").empty());
    BOOST_TEST(catalog.parts_numbered("").empty());
}
