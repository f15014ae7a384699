// A cell, a job and a plate read one spelling alike.
#include <boost/test/unit_test.hpp>

#include "engine/fields/cell.hpp"
#include "engine/words/kinds.hpp"

using namespace endbell;

namespace {

std::string stored(const Cell& cell) {
    const auto* text = std::get_if<std::string>(&cell.value);
    return text && cell.is_read() ? *text : cell.is_read() ? "unknown" : "refused";
}

}  // namespace

BOOST_AUTO_TEST_SUITE(cells_of_words)

BOOST_AUTO_TEST_CASE(a_cell_takes_the_spellings_of_a_job) {
    for (const char* text : {"belly band", "through bolts", "thru-bolt", "ears", "Rubber Rings", "rigid"}) {
        BOOST_TEST_CONTEXT(text) {
            BOOST_TEST(stored(cells::mount(text)) == word(*read_kind<Mount>(fold(text)).reading));
        }
    }
    BOOST_TEST(stored(cells::family("ECM")) == "refused");  // which electronic kind is a question
    BOOST_TEST(stored(cells::protection("none")) == "none");
}

BOOST_AUTO_TEST_CASE(a_direction_and_its_end_stand_in_two_cells) {
    BOOST_TEST(stored(cells::rotation("clockwise")) == "CW");
    BOOST_TEST(stored(cells::rotation("anti-clockwise")) == "CCW");
    BOOST_TEST(stored(cells::rotation("REV")) == "reversible");
    BOOST_TEST(stored(cells::rotation("CWLE")) == "CCWSE");
    BOOST_TEST(stored(cells::viewed_from("drive end")) == "shaft end");
    BOOST_TEST(stored(cells::viewed_from("opposite drive end")) == "lead end");
    BOOST_TEST(stored(cells::viewed_from("OE")) == "refused");  // output end to some, opposite end to others
    BOOST_TEST(stored(cells::viewed_from("top")) == "refused");
}

BOOST_AUTO_TEST_CASE(a_small_rating_is_a_cell_too) {
    const Cell cell = cells::horsepower("1/50");
    BOOST_REQUIRE(cell.is_read());
    BOOST_TEST(std::get<double>(cell.value) == 0.02, boost::test_tools::tolerance(1e-12));
}

BOOST_AUTO_TEST_SUITE_END()
