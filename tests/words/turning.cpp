// A direction and its viewing end in two texts, as a table holds them.
#include <boost/test/unit_test.hpp>

#include "tests/words/outcome.hpp"

using namespace endbell;

BOOST_AUTO_TEST_SUITE(turning)

BOOST_AUTO_TEST_CASE(a_direction_alone_is_read_without_an_end) {
    for (const char* text : {"CW", "clockwise", "C.W."})
        BOOST_CHECK(read_spin(fold(text)).reading.value == Spin::cw);
    for (const char* text : {"CCW", "counter-clockwise", "anticlockwise", "ACW"})
        BOOST_CHECK(read_spin(fold(text)).reading.value == Spin::ccw);
    for (const char* text : {"CWLE", "reversible", "OE", "zonk"}) BOOST_CHECK(read_spin(fold(text)).failed());
    BOOST_CHECK(!read_spin(fold("N/A")).failed());
}

BOOST_AUTO_TEST_CASE(the_end_opposite_the_shaft_is_the_lead_end) {
    for (const char* text : {"SE", "shaft end", "drive end", "DE", "pulley end"})
        BOOST_CHECK(read_viewing_end(fold(text)).reading.value == ViewedFrom::shaft_end);
    for (const char* text : {"LE", "lead end", "OSE", "opposite shaft end", "NDE", "ODE"})
        BOOST_CHECK(read_viewing_end(fold(text)).reading.value == ViewedFrom::lead_end);
    BOOST_CHECK(read_viewing_end(fold("OE")).reading.is_open());
    BOOST_CHECK(read_viewing_end(fold("top")).failed());
}

BOOST_AUTO_TEST_SUITE_END()
