#include "tests/rules/world.hpp"

namespace endbell::rule_tests {

// Common practice: the plate must allow the position; a shaft pointing up outdoors takes a slinger.
BOOST_AUTO_TEST_CASE(shaft_up_outdoors_takes_a_rain_shield) {
    World w = condenser();
    const Finding f = w("position");
    SAYS(f, Verdict::fits_with_changes, "rain shield");
    BOOST_TEST((task_of(f.remedies.at(0).cure) == ShopTask::rain_shield_fit));
    BOOST_TEST((f.remedies.at(0).from == w.motor().shaft_diameter));
    w.job.unit.shaft_points = known(ShaftPosition::down);
    SAYS(w("position"), Verdict::fits, "position allowed");
}

BOOST_AUTO_TEST_CASE(a_position_that_is_not_listed_does_not_fit) {
    World w = condenser();
    w.motor().positions = {ShaftPosition::down, ShaftPosition::horizontal};
    SAYS(w("position"), Verdict::does_not_fit, "other position");
    w.motor().positions.clear();
    SAYS(w("position"), Verdict::not_shown, "part does not say");
}

// Two stored pages disagree on which way condensers hang: it cannot be assumed.
BOOST_AUTO_TEST_CASE(an_unstated_position_asks_outdoors_and_is_said_indoors) {
    World w = condenser();
    w.job.unit.shaft_points = {};
    SAYS(w("position"), Verdict::not_shown, "position not stated");
    w = blower();
    SAYS(w("position"), Verdict::fits, "any position");
    w.motor().positions = {ShaftPosition::horizontal};
    SAYS(w("position"), Verdict::fits, "not stated");
    BOOST_TEST(w("position").caution);
}

}  // namespace endbell::rule_tests
