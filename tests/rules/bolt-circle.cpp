#include "tests/rules/world.hpp"

namespace endbell::rule_tests {

// Common practice; no published dimension exists, so circles are compared, never inferred from a frame.
BOOST_AUTO_TEST_CASE(two_circles_are_one_within_a_sixteenth) {
    World w = condenser();
    SAYS(w("bolt-circle"), Verdict::fits, "same circle");
    w.motor().bolt_circle = inch(4.75 + 1.0 / 16);
    SAYS(w("bolt-circle"), Verdict::fits, "same circle");
    w.motor().bolt_circle = inch(4.82);
    const Finding f = w("bolt-circle");
    SAYS(f, Verdict::fits_with_changes, "other circle");
    BOOST_TEST(f.remedies.at(0).to->in(inch) == 4.75);
}

BOOST_AUTO_TEST_CASE(a_face_meets_its_holes_or_does_not_fit) {
    World w = condenser();
    w.job.plate.mount = known(Mount::face);
    w.motor().mount = Mount::face;
    w.motor().bolt_circle = inch(5.875);
    SAYS(w("bolt-circle"), Verdict::does_not_fit, "other circle");
}

BOOST_AUTO_TEST_CASE(a_band_or_another_mount_has_no_circle_to_compare) {
    SAYS(blower()("bolt-circle"), Verdict::fits, "not concerned");
    World w = condenser();
    w.motor().mount = Mount::band;
    SAYS(w("bolt-circle"), Verdict::fits, "not concerned");
}

BOOST_AUTO_TEST_CASE(an_unstated_circle_is_said) {
    World w = condenser();
    w.motor().bolt_circle.reset();
    SAYS(w("bolt-circle"), Verdict::not_shown, "part does not say");
    w.job.plate.bolt_circle = {};
    SAYS(w("bolt-circle"), Verdict::fits, "not stated");
}

}  // namespace endbell::rule_tests
