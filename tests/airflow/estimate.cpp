// An estimate gives back what it was made of, in the unit that is asked for.
#include "engine/airflow/estimate.hpp"

#include <boost/test/unit_test.hpp>

#include "engine/units/units.hpp"

using namespace endbell;

BOOST_AUTO_TEST_CASE(nothing_is_known_until_something_is_said) {
    BOOST_TEST(!Estimate<Speed>().known());
    BOOST_TEST(!Estimate<Speed>().in(rpm).known);
    BOOST_TEST(estimate(rpm(0), 0.01).known());
}

BOOST_AUTO_TEST_CASE(a_share_of_the_value_is_what_it_may_be_off_by) {
    const auto pressure = estimate(inch_water(-0.5), 0.04, true);
    BOOST_CHECK_CLOSE(pressure.in(inch_water).plus_minus, 0.02, 1e-9);
    BOOST_CHECK_CLOSE(pressure.relative(), 0.04, 1e-9);
    BOOST_TEST(pressure.assumed());
    const auto fixed = estimate_within(inch_water(0.5), inch_water(0.02));
    BOOST_TEST(fixed.in(inch_water).plus_minus == 0.02);
    BOOST_TEST(!fixed.assumed());
}

BOOST_AUTO_TEST_CASE(numbers_leave_in_their_own_unit_to_the_last_digit) {
    int moved = 0;
    for (int i = 1; i <= 1000; ++i) {
        const double number = i * 0.0007;
        moved += horsepower(number).in(horsepower) != number;
        const Estimate<Power> shaft(horsepower, estimated_number(number, 0.1));
        BOOST_TEST(shaft.in(horsepower).value == number);
        BOOST_TEST(shaft.in(horsepower).plus_minus == number * 0.1);
        BOOST_CHECK_CLOSE(shaft.in(watt).plus_minus, number * 74.569987, 1e-9);
    }
    BOOST_TEST(moved > 0);  // through the base unit they do not
}
