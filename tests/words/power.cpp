// Ratings beyond the common fractions. Expected values are the arithmetic of the texts.
#include <boost/test/unit_test.hpp>

#include "tests/words/outcome.hpp"

using namespace endbell;
using namespace endbell::test;

BOOST_AUTO_TEST_SUITE(power)

BOOST_AUTO_TEST_CASE(the_smallest_ratings_are_one_over_something) {
    BOOST_CHECK_EQUAL(outcome_in(read_power(fold("1/50")), horsepower, "hp"), "0.02 hp");
    BOOST_CHECK_EQUAL(outcome_in(read_power(fold("1/50 HP")), horsepower, "hp"), "0.02 hp");
    BOOST_CHECK_EQUAL(outcome_in(read_power(fold("1/70 hp")), horsepower, "hp"), "0.0142857 hp");
    BOOST_CHECK_EQUAL(outcome_in(read_power(fold("15 W")), horsepower, "hp"),
                      "0.02 hp");  // 15 W / 746 W = 0.0201
    BOOST_CHECK_EQUAL(write(horsepower(0.02)), "1/50 hp");
}

BOOST_AUTO_TEST_CASE(a_capacitor_pair_is_no_small_rating) {
    // Compressor and fan stand in the other order on a dual can; 0.125 MFD would be the worst of answers.
    BOOST_CHECK(!read_capacitance(fold("5/40 MFD")).reading);
    BOOST_CHECK(!read_capacitance(fold("5/50 MFD")).reading);
}

BOOST_AUTO_TEST_CASE(a_fraction_above_one_is_one_rating) {
    BOOST_CHECK_EQUAL(outcome_in(read_power(fold("3/2")), horsepower, "hp"), "1.5 hp");
    BOOST_CHECK_EQUAL(outcome_in(read_power(fold("3/2 HP")), horsepower, "hp"), "1.5 hp");
    BOOST_CHECK_EQUAL(outcome_in(read_power(fold("1 1/2")), horsepower, "hp"), "1.5 hp");
    BOOST_CHECK(read_power(fold("2/3/4")).failed());
}

BOOST_AUTO_TEST_CASE(where_a_plate_may_list_ratings_a_fraction_above_one_is_a_question) {
    BOOST_CHECK(read_powers(fold("3/2 hp")).reading.is_open());
    BOOST_CHECK(read_powers(fold("1/2 hp")).reading);
}

BOOST_AUTO_TEST_CASE(a_list_holds_ratings_only) {
    BOOST_CHECK(read_powers(fold("2.5/1/4")).failed());
    BOOST_CHECK(read_powers(fold("5/1/2")).failed());
    BOOST_CHECK_EQUAL(read_powers(fold("1/10-1/15-1/25")).reading->size(), 3U);
}

BOOST_AUTO_TEST_CASE(brake_horsepower_is_never_moved_to_a_rating) {
    BOOST_CHECK_EQUAL(outcome_in(read_brake_power(fold("0.376")), horsepower, "hp"), "0.376 hp");
    BOOST_CHECK_EQUAL(outcome_in(read_brake_power(fold(".34 bhp")), horsepower, "hp"), "0.34 hp");
    BOOST_CHECK(read_brake_power(fold("280 W")).failed());
}

BOOST_AUTO_TEST_SUITE_END()
