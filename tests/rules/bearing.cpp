#include "tests/rules/world.hpp"

namespace endbell::rule_tests {

// Common practice: ball may replace sleeve; sleeve should not replace ball upright or outdoors. A preference.
BOOST_AUTO_TEST_CASE(a_bearing_never_ends_a_candidate) {
    World w = condenser();
    SAYS(w("bearing"), Verdict::fits, "ball");
    w.motor().bearing = Bearing::sleeve;
    SAYS(w("bearing"), Verdict::fits, "sleeve upright or outdoors");
    BOOST_TEST(w("bearing").caution);
    w.motor().bearing.reset();
    SAYS(w("bearing"), Verdict::fits, "part does not say");
}

BOOST_AUTO_TEST_CASE(indoors_the_old_bearing_is_the_measure) {
    World w = blower();
    SAYS(w("bearing"), Verdict::fits, "not stated");
    w.job.plate.bearing = known(Bearing::sleeve);
    SAYS(w("bearing"), Verdict::fits, "sleeve for sleeve");
    w.job.plate.bearing = known(Bearing::ball);
    SAYS(w("bearing"), Verdict::fits, "sleeve for ball");
}

}  // namespace endbell::rule_tests
