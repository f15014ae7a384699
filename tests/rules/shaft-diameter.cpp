#include "tests/rules/world.hpp"

namespace endbell::rule_tests {

// Common practice: equal is a slip fit, thinner takes a bushing, thicker never goes in.
BOOST_AUTO_TEST_CASE(equal_slips_thinner_takes_a_bushing_thicker_never_goes_in) {
    World w = blower();
    SAYS(w("shaft-diameter"), Verdict::fits, "slip fit");
    w.motor().shaft_diameter = inch(0.625);
    SAYS(w("shaft-diameter"), Verdict::does_not_fit, "too thick");
    w.motor().shaft_diameter = inch(5.0 / 16);
    const Finding f = w("shaft-diameter");
    SAYS(f, Verdict::fits_with_changes, "bushing");
    BOOST_TEST(f.remedies.at(0).from->in(inch) == 0.3125);
    BOOST_TEST(f.remedies.at(0).to->in(inch) == 0.5);
}

// 14 mm is 0.5512 in.; 1/2 in. is 12.700 mm; no standard IEC shaft equals an inch bore.
BOOST_AUTO_TEST_CASE(millimetres_are_lengths_too) {
    World w = blower();
    w.motor().shaft_diameter = millimetre(14);
    SAYS(w("shaft-diameter"), Verdict::does_not_fit, "too thick");
    w.motor().shaft_diameter = millimetre(12.7);
    SAYS(w("shaft-diameter"), Verdict::fits, "slip fit");
    w.motor().shaft_diameter = millimetre(11);
    SAYS(w("shaft-diameter"), Verdict::fits_with_changes, "bushing");
}

BOOST_AUTO_TEST_CASE(the_clearance_belongs_to_the_fit) {
    World w = blower();
    w.motor().shaft_diameter = inch(0.502);
    SAYS(w("shaft-diameter"), Verdict::fits, "slip fit");
    w.motor().shaft_diameter = inch(0.5021);
    SAYS(w("shaft-diameter"), Verdict::does_not_fit, "too thick");
    BOOST_TEST(std::get<Length>(w("shaft-diameter").limit.value).in(inch) == 0.502,
               boost::test_tools::tolerance(1e-12));
    w.motor().shaft_diameter = inch(0.498);
    SAYS(w("shaft-diameter"), Verdict::fits, "slip fit");
    w.motor().shaft_diameter = inch(0.4979);
    SAYS(w("shaft-diameter"), Verdict::fits_with_changes, "bushing");
}

BOOST_AUTO_TEST_CASE(the_measured_bore_wins_over_the_old_shaft) {
    World w = blower();
    w.job.measured.bore = known(inch(0.625), Origin::measured);  // the old one sat in a bushing
    SAYS(w("shaft-diameter"), Verdict::fits_with_changes, "bushing");
}

BOOST_AUTO_TEST_CASE(unknown_sizes_ask) {
    World w = blower();
    w.motor().shaft_diameter.reset();
    SAYS(w("shaft-diameter"), Verdict::not_shown, "part does not say");
    w.job.plate.shaft_diameter = {};
    SAYS(w("shaft-diameter"), Verdict::not_shown, "bore not stated");
    BOOST_TEST(w("shaft-diameter").asks.front() == "measured.bore");
    SAYS(inducer()("shaft-diameter"), Verdict::fits, "specified assembly");
    SAYS(module_job()("shaft-diameter"), Verdict::fits, "not concerned");
}

}  // namespace endbell::rule_tests
