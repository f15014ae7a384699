#include "tests/rules/world.hpp"

namespace endbell::rule_tests {

// A mounting guide: the band is the body's diameter within 1/16 in.
BOOST_AUTO_TEST_CASE(a_band_takes_a_sixteenth_either_way) {
    World w = blower();
    w.motor().body_diameter = inch(5.6 + 1.0 / 16);
    SAYS(w("body-diameter"), Verdict::fits, "body goes in");
    w.motor().body_diameter = inch(5.67);
    SAYS(w("body-diameter"), Verdict::does_not_fit, "body too large");
    w.motor().body_diameter = inch(5.6 - 1.0 / 16);
    SAYS(w("body-diameter"), Verdict::fits, "body goes in");
    w.motor().body_diameter = inch(5.0);
    const Finding f = w("body-diameter");
    SAYS(f, Verdict::fits_with_changes, "body too small");
    BOOST_TEST(f.remedies.at(0).from->in(inch) == 5.0);
    BOOST_TEST(f.remedies.at(0).to->in(inch) == 5.6);
}

BOOST_AUTO_TEST_CASE(the_measured_band_wins_over_the_old_body) {
    World w = blower();
    w.job.measured.band_diameter = known(inch(6.5), Origin::measured);
    SAYS(w("body-diameter"), Verdict::fits_with_changes, "body too small");
}

BOOST_AUTO_TEST_CASE(studs_do_not_grip_the_body) {
    World w = condenser();
    w.motor().body_diameter = inch(6.5);
    SAYS(w("body-diameter"), Verdict::fits, "larger body");
    BOOST_TEST(w("body-diameter").caution);
    w.motor().body_diameter = inch(5.0);
    SAYS(w("body-diameter"), Verdict::fits, "body goes in");
    w.job.plate.body_diameter = {};
    SAYS(w("body-diameter"), Verdict::fits, "not stated");
}

BOOST_AUTO_TEST_CASE(an_unknown_body_in_a_band_asks) {
    World w = blower();
    w.motor().body_diameter.reset();
    SAYS(w("body-diameter"), Verdict::not_shown, "part does not say");
    w.job.plate.body_diameter = {};
    SAYS(w("body-diameter"), Verdict::not_shown, "body not stated");
    w.job.plate.mount = {};
    SAYS(w("body-diameter"), Verdict::not_shown, "body not stated");  // it may be a band
}

}  // namespace endbell::rule_tests
