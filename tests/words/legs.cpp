// One reading of a line, or three of its legs.
#include <boost/test/unit_test.hpp>

#include "engine/words/electrical.hpp"
#include "engine/words/write.hpp"

using namespace endbell;

BOOST_AUTO_TEST_CASE(a_line_is_read_once_or_on_three_legs) {
    const auto one = read_line_volts(fold("118.4 V"));
    BOOST_REQUIRE(one.reading.value);
    BOOST_TEST(!one.reading->three());
    BOOST_TEST((one.reading->lowest() == volt(118.4)));
    for (const char* written : {"460/467/450", "460 / 467 / 450 V", "460; 467; 450"}) {
        const auto three = read_line_volts(fold(written));
        BOOST_REQUIRE_MESSAGE(three.reading.value, written);
        BOOST_TEST(three.reading->three());
        BOOST_TEST((three.reading->lowest() == volt(450)));
        BOOST_TEST((three.reading->highest() == volt(467)));
        BOOST_TEST(write(*three.reading) == "460/467/450 V");
        BOOST_TEST((read_line_volts(fold(write(*three.reading))).reading.value == three.reading.value));
    }
    BOOST_TEST((read_line_amps(fold("4.8/4.7/0")).reading->lowest() == ampere(0)));
}

BOOST_AUTO_TEST_CASE(two_legs_four_or_a_word_are_refused) {
    for (const char* written : {"460/467", "1/2/3/4", "460/low/450", "//"})
        BOOST_TEST(read_line_volts(fold(written)).failed(), written);
}

// NEMA MG 1 14.36, electrical.md 3.6: not the difference of highest and lowest.
BOOST_AUTO_TEST_CASE(unbalance_is_off_the_mean) {
    BOOST_TEST(LineVolts(volt(220), volt(216), volt(213)).unbalance() == 0.016949,
               boost::test_tools::tolerance(1e-4));
    BOOST_TEST(LineVolts(volt(230)).unbalance() == 0);
    BOOST_TEST(LineVolts(volt(0), volt(0), volt(0)).unbalance() == 0);
}
