// What the index reads of a stored catalog is all that rules look at.
#include <algorithm>
#include <boost/test/unit_test.hpp>
#include <map>

#include "engine/catalog/generations.hpp"
#include "engine/catalog/stored_catalog.hpp"
#include "engine/fields/part_fields.hpp"
#include "tests/catalog/fixture.hpp"

using namespace endbell;
using namespace endbell::testing;

BOOST_AUTO_TEST_SUITE(reading)

namespace {

/// Which fields are stated by some part.
std::vector<bool> compare_readings(const fs::path& file) {
    std::vector<bool> stated(part_fields().size());
    const StoredCatalog catalog(file);
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
    return stated;
}

bool is_stated(const fs::path& file, std::string_view column) {
    return compare_readings(file)[static_cast<std::size_t>(part_field(column))];
}

}  // namespace

BOOST_AUTO_TEST_CASE(parts_read_to_be_matched_have_the_fields_of_parts_read_whole) {
    std::vector<bool> stated(part_fields().size());
    for (const fs::path& tables : {fs::path(ENDBELL_ROOT) / "demo-catalog/tables", fixtures() / "small"}) {
        const Folder folder;
        import_catalog({tables}, folder.catalog(), {});
        const std::vector<bool> here = compare_readings(folder.catalog());
        for (std::size_t f = 0; f < stated.size(); ++f) stated[f] = stated[f] || here[f];
    }
    for (std::size_t f = 0; f < stated.size(); ++f)
        BOOST_TEST(stated[f], std::string(part_fields()[f].column) + " is stated by some part");
}

// What no row knows is not asked for: rows that come later may know it.
BOOST_AUTO_TEST_CASE(columns_that_later_files_have_are_read) {
    const Folder folder;
    folder.table("parts", "part_id,kind,maker,part_number\nP1,motor,K,1\nP2,motor,K,2\n");
    folder.table("motors", "part_id,phase\nP1,1\n");
    folder.import();
    BOOST_TEST(!is_stated(folder.catalog(), "motors.family"));
    write_file(folder.path / "more" / "motors.csv", "part_id,family\nP2,three phase\n");
    ImportOptions options;
    options.mode = ImportMode::rows;
    import_catalog({folder.path / "more"}, folder.catalog(), options);
    BOOST_TEST(is_stated(folder.catalog(), "motors.phase"));
    BOOST_TEST(is_stated(folder.catalog(), "motors.family"));
    options.mode = ImportMode::tables;
    import_catalog({folder.path / "more"}, folder.catalog(), options);
    BOOST_TEST(!is_stated(folder.catalog(), "motors.phase"));
    BOOST_TEST(is_stated(folder.catalog(), "motors.family"));
    restore(folder.catalog(), 2);
    BOOST_TEST(is_stated(folder.catalog(), "motors.phase"));
    BOOST_TEST(is_stated(folder.catalog(), "motors.family"));
}

BOOST_AUTO_TEST_CASE(the_middle_id_halves_the_parts) {
    const Folder folder;
    std::string table = "part_id,kind,maker,part_number\n";
    for (int i = 100; i < 131; ++i) table += "P" + std::to_string(i) + ",motor,K,1\n";
    folder.table("parts", table);
    folder.import();
    const StoredCatalog catalog(folder.catalog());
    BOOST_TEST(catalog.middle_id() == "P115");
    std::vector<std::string> ids;
    const auto note = [&](const Part& part) { ids.push_back(part.id); };
    catalog.each_part_to_match({"", catalog.middle_id()}, note);
    BOOST_TEST(ids.size() == 15U);
    catalog.each_part_to_match({catalog.middle_id(), ""}, note);
    BOOST_TEST(ids.size() == 31U);
    BOOST_TEST(std::is_sorted(ids.begin(), ids.end()));
}

BOOST_AUTO_TEST_SUITE_END()
