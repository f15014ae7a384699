#include "tests/rules/world.hpp"

namespace endbell::rule_tests {

// Common practice: outdoors an enclosed motor.
BOOST_AUTO_TEST_CASE(an_open_motor_never_goes_outdoors) {
    World w = condenser();
    SAYS(w("enclosure"), Verdict::fits, "enclosed");
    w.motor().enclosure = Enclosure::open_air_over;
    SAYS(w("enclosure"), Verdict::does_not_fit, "open motor outdoors");
    w.motor().enclosure.reset();
    SAYS(w("enclosure"), Verdict::not_shown, "part does not say");
}

BOOST_AUTO_TEST_CASE(the_place_wins_over_the_load) {
    World w = blower();  // a rooftop unit's blower, in the weather
    w.job.unit.outdoors = known(true);
    SAYS(w("enclosure"), Verdict::does_not_fit, "open motor outdoors");
    w.job.unit.outdoors = {};
    w.job.unit.load = {};
    SAYS(w("enclosure"), Verdict::not_shown, "place not stated");
    w.motor().enclosure = Enclosure::enclosed_air_over;
    SAYS(w("enclosure"), Verdict::fits, "enclosed");
}

BOOST_AUTO_TEST_CASE(indoors_a_more_open_motor_is_said) {
    World w = blower();
    SAYS(w("enclosure"), Verdict::fits, "not stated");
    w.job.plate.enclosure = known(Enclosure::open_air_over);
    SAYS(w("enclosure"), Verdict::fits, "open indoors");
    w.job.plate.enclosure = known(Enclosure::enclosed_air_over);
    SAYS(w("enclosure"), Verdict::fits, "more open than the old");
    BOOST_TEST(w("enclosure").caution);
    w.motor().enclosure.reset();
    SAYS(w("enclosure"), Verdict::not_shown, "part does not say");
}

}  // namespace endbell::rule_tests
