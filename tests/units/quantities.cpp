// Conversions against hand values and standards. 1 hp = 745.69987 W (550 ft lbf/s); 1 in. = 25.4 mm exactly.
#include <boost/test/unit_test.hpp>

#include "engine/units/units.hpp"

using namespace endbell;
namespace tt = boost::test_tools;

BOOST_AUTO_TEST_CASE(power_in_watts_and_horsepower) {
    BOOST_TEST(horsepower(1.0 / 3.0).in(watt) == 248.56662, tt::tolerance(1e-7));  // GNU units: '1|3 hp'
    BOOST_TEST(kilowatt(0.3728).in(horsepower) == 0.49993, tt::tolerance(1e-4));
}

BOOST_AUTO_TEST_CASE(full_load_torque_of_plate_ratings) {
    // 5252.113 hp / rpm, worked by hand for the usual ratings; 1 lb-ft = 16 oz-ft = 1.3558179 N m.
    const Torque third = torque_of(horsepower(1.0 / 3.0), rpm(825));
    BOOST_TEST(third.in(pound_foot) == 2.1221, tt::tolerance(1e-4));
    BOOST_TEST(third.in(ounce_foot) == 33.95, tt::tolerance(2e-4));
    BOOST_TEST(third.in(newton_metre) == 2.8771, tt::tolerance(1e-4));
    const Torque fifth = torque_of(horsepower(0.2), rpm(1140));
    BOOST_TEST(fifth.in(pound_foot) == 0.9214, tt::tolerance(1e-4));
    BOOST_TEST(fifth.in(ounce_foot) == 14.74, tt::tolerance(4e-4));
    BOOST_TEST(fifth.in(newton_metre) == 1.2493, tt::tolerance(1e-4));
    BOOST_TEST(torque_of(horsepower(0.5), rpm(1075)).in(ounce_foot) == 39.09, tt::tolerance(2e-4));
    BOOST_TEST(shaft_power(third, rpm(825)).in(horsepower) == 1.0 / 3.0, tt::tolerance(1e-12));
}

BOOST_AUTO_TEST_CASE(lengths_are_exact_by_the_inch) {
    BOOST_TEST(inch(0.3125).in(millimetre) == 7.9375, tt::tolerance(1e-12));  // 5/16
    BOOST_TEST(millimetre(14).in(inch) == 0.5512, tt::tolerance(1e-4));       // IEC 71 shaft
    BOOST_TEST(foot(5000).in(inch) == 60000.0, tt::tolerance(1e-12));
}

BOOST_AUTO_TEST_CASE(air_heat_and_pressure) {
    BOOST_TEST(cfm(400).in(litre_per_second) == 188.779, tt::tolerance(1e-4));  // 1 cfm = 0.4719474 l/s
    BOOST_TEST(inch_water(0.5).in(pascal) == 124.544,
               tt::tolerance(1e-4));  // 1 in. w.c. at 4 C = 249.0889 Pa
    BOOST_TEST(ton_cooling(3).in(btu_per_hour) == 36000.0, tt::tolerance(1e-12));  // 12,000 Btu/h a ton
    BOOST_TEST(kilowatt_heat(10).in(btu_per_hour) == 34121.4, tt::tolerance(1e-5));
}

BOOST_AUTO_TEST_CASE(a_temperature_is_a_point_and_a_rise_a_difference) {
    BOOST_TEST(Temperature::celsius(40).in_fahrenheit() == 104.0, tt::tolerance(1e-12));
    BOOST_TEST(Temperature::fahrenheit(140).in_celsius() == 60.0, tt::tolerance(1e-12));
    const TemperatureRise rise = Temperature::fahrenheit(120) - Temperature::fahrenheit(70);
    BOOST_TEST(rise.in(fahrenheit_degree) == 50.0, tt::tolerance(1e-12));
    BOOST_TEST(rise.in(celsius_degree) == 27.7778, tt::tolerance(1e-5));  // no 32 in a difference
    BOOST_TEST((Temperature::celsius(20) + celsius_degree(10)).in_celsius() == 30.0, tt::tolerance(1e-12));
}

BOOST_AUTO_TEST_CASE(quantities_of_one_dimension_add_compare_and_divide) {
    BOOST_TEST((volt(208) + volt(22)).in(volt) == 230.0);
    BOOST_TEST((ampere(3) - ampere(1)).in(ampere) == 2.0);
    BOOST_TEST((2 * hour(1)).in(second) == 7200.0, tt::tolerance(1e-12));
    BOOST_TEST((watt(300) / kilowatt(0.6)) == 0.5, tt::tolerance(1e-12));
    BOOST_CHECK(inch(0.5) < inch(0.625));
    BOOST_CHECK(Power() == watt(0));
}
