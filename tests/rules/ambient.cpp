#include "tests/rules/world.hpp"

namespace endbell::rule_tests {

// Common practice: outdoor fan motors are often rated 60 C; 60 C is never replaced by 40 C.
BOOST_AUTO_TEST_CASE(a_cooler_rating_does_not_fit) {
    World w = condenser();
    SAYS(w("ambient"), Verdict::fits, "rated as hot");
    w.motor().ambient = Temperature::celsius(40);
    SAYS(w("ambient"), Verdict::does_not_fit, "rated too cool");
    w.motor().ambient = Temperature::celsius(65);
    SAYS(w("ambient"), Verdict::fits, "rated as hot");
    w.motor().ambient.reset();
    SAYS(w("ambient"), Verdict::not_shown, "part does not say");
}

BOOST_AUTO_TEST_CASE(outdoors_the_usual_rating_stands_in_and_is_said) {
    World w = condenser();
    w.job.plate.ambient = {};
    SAYS(w("ambient"), Verdict::fits, "usual outdoor rating");
    BOOST_TEST(w("ambient").caution);
    w.motor().ambient = Temperature::celsius(59);
    SAYS(w("ambient"), Verdict::not_shown, "ambient not stated");
    BOOST_TEST(w("ambient").asks.front() == "plate.ambient");
}

BOOST_AUTO_TEST_CASE(indoors_an_unstated_ambient_is_said) {
    SAYS(blower()("ambient"), Verdict::fits, "not stated");
    SAYS(inducer()("ambient"), Verdict::fits, "specified assembly");
}

}  // namespace endbell::rule_tests
