#include "engine/find/find.hpp"

#include <boost/test/unit_test.hpp>

#include "tests/catalog/fixture.hpp"

using namespace endbell;
using namespace endbell::testing;

namespace {

struct Shop : Folder {
    Shop() {
        table("parts",
              "part_id,kind,maker,part_number,status,description\n"
              "P1,motor,K,AB-1004 S,superseded,blower motor 1/2 hp\nP2,motor,K,00200,active,\n"
              "P3,motor,K,AB-1014 S,active,condenser fan motor\n");
        table("cross_references",
              "old_number,part_id,relation,source\nOLD-77123,P1,replaces,list\nAB-1004 "
              "S,P3,supersedes,maker's list\n"
              "GONE-1,GONE-2,supersedes,first list\nGONE-2,P2,supersedes,second list\n"
              "RING-1,RING-2,supersedes,list\nRING-2,RING-1,supersedes,list\n");
        import();
    }
    FindAnswer find(std::string_view text) const {
        const StoredCatalog catalog(this->catalog());
        return find_parts(text, NameIndex(this->catalog(), catalog), catalog);
    }
};

}  // namespace

BOOST_AUTO_TEST_CASE(ids_part_numbers_and_old_numbers_find_their_part) {
    const Shop shop;
    for (const char* text : {"P1", "ab1004s", "old 77123"}) {
        const FindAnswer found = shop.find(text);
        BOOST_REQUIRE(!found.parts.empty());
        BOOST_TEST(found.parts[0].part_id == "P1", text);
        BOOST_TEST((found.parts[0].by == FoundBy::number), text);
    }
    const FindAnswer old = shop.find("OLD-77123");
    BOOST_REQUIRE(old.parts[0].references.size() == 1U);
    BOOST_TEST(old.parts[0].references[0].source == "list");
}

BOOST_AUTO_TEST_CASE(what_is_not_the_number_itself_says_so) {
    const Shop shop;
    BOOST_TEST((shop.find("A8-IOO4-5").parts.at(0).by == FoundBy::look_alike));
    for (const char* text : {"AB-1904S", "AB-100S4", "AB-100S", "AB-10044S"}) {
        const FindAnswer found = shop.find(text);
        BOOST_REQUIRE(!found.parts.empty());
        BOOST_TEST((found.parts[0].by == FoundBy::one_off), text);
    }
    BOOST_TEST((shop.find("7712").parts.at(0).by == FoundBy::fragment));
    BOOST_TEST(shop.find("7712").parts.at(0).part_id == "P1");
    BOOST_TEST((shop.find("condenser fan").parts.at(0).by == FoundBy::description));
}

// A misread that is another number is the dear mistake: the near one is named behind it.
BOOST_AUTO_TEST_CASE(a_number_that_is_known_still_names_those_one_character_off) {
    const FindAnswer found = Shop().find("AB-1004S");
    BOOST_REQUIRE(found.parts.size() >= 2U);
    BOOST_TEST((found.parts[0].by == FoundBy::number));
    const bool near = std::any_of(found.parts.begin(), found.parts.end(),
                                  [](const FoundPart& each) { return each.part_id == "P3"; });
    BOOST_TEST(near);
}

BOOST_AUTO_TEST_CASE(less_than_three_characters_begin_a_number) {
    const Shop shop;
    BOOST_TEST(shop.find("AB").numbers == 3U);  // of P1, of P3, and the old number of P3
    BOOST_TEST(shop.find("77").numbers == 0U);
    BOOST_TEST(shop.find("771").numbers == 1U);
}

BOOST_AUTO_TEST_CASE(a_chain_is_followed_to_its_end_with_its_sources) {
    const FindAnswer found = Shop().find("GONE-1");
    BOOST_REQUIRE(found.chains.size() == 1U);
    const Succession& chain = found.chains[0].succession;
    BOOST_REQUIRE(chain.steps.size() == 2U);
    BOOST_TEST(chain.steps[0].source == "first list");
    BOOST_TEST(chain.steps[1].source == "second list");
    BOOST_TEST(chain.ends == std::vector<std::string>{"P2"}, boost::test_tools::per_element());
    BOOST_REQUIRE(!found.parts.empty());
    BOOST_TEST(!found.parts[0].part.has_value());
}

BOOST_AUTO_TEST_CASE(a_cycle_is_said_and_ends) {
    const FindAnswer found = Shop().find("RING-1");
    BOOST_REQUIRE(!found.chains.empty());
    BOOST_TEST(found.chains[0].succession.cycle);
}

BOOST_AUTO_TEST_CASE(a_number_that_nobody_knows_is_not_known) {
    const Shop shop;
    BOOST_TEST(!shop.find("ZZZZZZ999").is_known());
    BOOST_TEST(!can_be_found("--- /"));
}

BOOST_AUTO_TEST_CASE(too_many_are_counted_and_a_question_narrows_them) {
    const Folder folder;
    std::string table = "part_id,kind,maker,part_number\n";
    for (int i = 100; i < 140; ++i)
        table += "X" + std::to_string(i) + ",motor,K,MM-" + std::to_string(i) + "-77777\n";
    folder.table("parts", table);
    folder.import();
    const StoredCatalog catalog(folder.catalog());
    const FindAnswer found = find_parts("77777", NameIndex(folder.catalog(), catalog), catalog);
    BOOST_TEST(found.parts.size() == most_named);
    BOOST_TEST(found.numbers == 40U);
    BOOST_TEST((found.narrowing == Narrowing::characters));
}

BOOST_AUTO_TEST_CASE(an_index_of_another_state_is_never_answered_from) {
    const Shop shop;
    BOOST_TEST(shop.find("NEW-5").numbers == 0U);
    BOOST_TEST(fs::exists(shop.catalog().string() + "-names"));
    shop.table("parts", "part_id,kind,maker,part_number\nN1,motor,K,NEW-5\n");
    shop.table("cross_references", "old_number,part_id,relation,source\n");
    shop.import();
    BOOST_TEST(shop.find("NEW-5").parts.at(0).part_id == "N1");
    BOOST_TEST(!shop.find("OLD-77123").is_known());
}

BOOST_AUTO_TEST_CASE(where_none_can_be_written_the_answer_is_the_same) {
    const Shop shop;
    fs::create_directory(shop.catalog().string() + "-names");
    BOOST_TEST(shop.find("old77123").parts.at(0).part_id == "P1");
}
