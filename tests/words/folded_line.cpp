// A line is folded once: what is cut out of its folding is what each piece folds to by itself, and its raw text is what
// was written.
#include "engine/words/folded_line.hpp"

#include <boost/test/unit_test.hpp>
#include <type_traits>

#include "engine/words/plate_text.hpp"
#include "engine/words/power.hpp"

using namespace endbell;

// No reader folds what it was given, because none takes a text that is not folded.
static_assert(!std::is_constructible_v<Folded, std::string>);
static_assert(!std::is_convertible_v<const char*, Folded>);
static_assert(!std::is_invocable_v<decltype(&read_power), std::string_view>);
static_assert(std::is_invocable_v<decltype(&read_power), const Folded&>);

BOOST_AUTO_TEST_SUITE(folded_line)

BOOST_AUTO_TEST_CASE(pieces_keep_what_was_written_and_what_it_folds_to) {
    // Bytes: "5½" 0-3, the no-break space 3-5, "HP" 5-7, two blanks, "½/6" 9-13, a tab, "CCW" 14-17.
    const FoldedLine line("5\u00bd\u00a0HP  \u00bd/6\tCCW");
    const Folded power = line.of({{0, 7}});
    BOOST_TEST(power.raw() == "5\u00bd\u00a0HP");
    BOOST_TEST(power.text() == "5 1/2 hp");
    const Folded size = line.of({{9, 13}});
    BOOST_TEST(size.raw() == "\u00bd/6");
    BOOST_TEST(size.text() == "1/2/6");
    BOOST_TEST(line.of({{12, 13}}).text() == "6");
    const Folded both = line.of({{5, 7}, {14, 17}});
    BOOST_TEST(both.raw() == "HP CCW");
    BOOST_TEST(both.text() == "hp ccw");
    const Folded slashed = line.of({{9, 11}, {14, 17, '/'}});
    BOOST_TEST(slashed.raw() == "\u00bd/CCW");
    BOOST_TEST(slashed.text() == "1/2/ccw");
}

BOOST_AUTO_TEST_CASE(blanks_at_the_ends_of_a_piece_are_not_in_its_folding) {
    const FoldedLine line(" \u00a0115\u00a0/\u2009230 ");
    BOOST_TEST(line.of({{3, 8}}).text() == "115");
    BOOST_TEST(line.of({{3, 8}}).raw() == "115\u00a0");
    BOOST_TEST(line.of({{9, 15}}).text() == "230");
    BOOST_TEST(line.of({{3, 8}, {9, 15, '/'}}).text() == "115 / 230");
}

BOOST_AUTO_TEST_CASE(what_is_left_to_read_keeps_the_whole_writing) {
    const Folded words = fold("7.5 MFD  370V");
    const Folded left = words.left_with("7.5  mfd ");
    BOOST_TEST(left.raw() == "7.5 MFD  370V");
    BOOST_TEST(left.text() == "7.5 mfd");
}

BOOST_AUTO_TEST_CASE(a_plate_reports_its_words_as_they_were_written) {
    const PlateText read = read_plate("HP:\t\u00bd ;5  MFD\u00a0370V, 1075/3SPD//208\u2013230 Zonk");
    std::vector<std::string> told;
    for (const UnderstoodWords& words : read.understood) told.push_back(words.key + " = " + words.text);
    const std::vector<std::string> expected{"plate.power = HP \u00bd", "plate.capacitor = 5 MFD\u00a0370V",
                                            "plate.speed = 1075/3SPD", "plate.volts = 208\u2013230"};
    BOOST_TEST(told == expected, boost::test_tools::per_element());
    BOOST_TEST(read.not_understood == std::vector<std::string>{"Zonk"}, boost::test_tools::per_element());
    BOOST_TEST(read.plate.capacitor.raw == "5 MFD\u00a0370V");
    BOOST_TEST(read.plate.volts.raw == "208\u2013230");
}

BOOST_AUTO_TEST_SUITE_END()
