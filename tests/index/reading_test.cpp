// What the index reads of a stored catalog is all that rules look at.
#include <boost/test/unit_test.hpp>
#include <map>

#include "engine/catalog/stored_catalog.hpp"
#include "engine/match/part_fields.hpp"
#include "tests/catalog/fixture.hpp"

using namespace endbell;
using namespace endbell::testing;

BOOST_AUTO_TEST_SUITE(reading)

BOOST_AUTO_TEST_CASE(parts_read_to_be_matched_have_the_fields_of_parts_read_whole) {
    std::vector<bool> stated(part_fields().size());
    for (const fs::path& tables : {fs::path(ENDBELL_ROOT) / "demo-catalog/tables", fixtures() / "small"}) {
        const Folder folder;
        import_catalog({tables}, folder.catalog(), {});
        const StoredCatalog catalog(folder.catalog());
        std::map<std::string, Part> whole;
        catalog.each_part([&](const Part& part) {
            if (part.kind != PartKind::accessory) whole.emplace(part.id, part);
        });
        std::size_t seen = 0;
        catalog.each_part_to_match({}, [&](const Part& part) {
            ++seen;
            BOOST_REQUIRE(whole.count(part.id) == 1U);
            for (std::size_t f = 0; f < part_fields().size(); ++f) {
                std::string all, read;
                part_fields()[f].take(whole.at(part.id), all);
                part_fields()[f].take(part, read);
                BOOST_TEST((all == read), part.id + ": " + std::string(part_fields()[f].column));
                if (!all.empty()) stated[f] = true;
            }
        });
        BOOST_TEST(seen == whole.size());
    }
    for (std::size_t f = 0; f < stated.size(); ++f)
        BOOST_TEST(stated[f], std::string(part_fields()[f].column) + " is stated by some part");
}

BOOST_AUTO_TEST_SUITE_END()
