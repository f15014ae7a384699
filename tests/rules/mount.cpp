#include "tests/rules/world.hpp"

namespace endbell::rule_tests {

// Common practice: a mount with a listed adapter is curable; a round shell can be banded.
BOOST_AUTO_TEST_CASE(the_same_mount_fits) {
    SAYS(blower()("mount"), Verdict::fits, "same mount");
}

BOOST_AUTO_TEST_CASE(a_band_closes_on_a_round_shell_but_not_on_welded_lugs) {
    World w = blower();
    w.motor().mount = Mount::studs;
    SAYS(w("mount"), Verdict::fits, "band closes on the shell");
    w.motor().mount = Mount::lugs;
    SAYS(w("mount"), Verdict::does_not_fit, "no such adapter");
}

BOOST_AUTO_TEST_CASE(a_round_body_goes_on_lugs_by_a_band) {
    World w = blower();
    w.job.plate.mount = known(Mount::lugs);
    const Finding f = w("mount");
    SAYS(f, Verdict::fits_with_changes, "other mount");
    BOOST_TEST(word(f.remedies.at(0).cure) == "mount band");
    BOOST_TEST(word(*f.remedies.at(0).mount) == "lugs");
    BOOST_TEST(f.remedies.at(0).from->in(inch) == 5.6);
}

BOOST_AUTO_TEST_CASE(studs_go_on_lugs_by_an_adapter) {
    World w = blower();
    w.job.plate.mount = known(Mount::lugs);
    w.motor().mount = Mount::studs;
    BOOST_TEST(word(w("mount").remedies.at(0).cure) == "mount adapter");
}

BOOST_AUTO_TEST_CASE(a_face_or_a_base_has_no_adapter) {
    World w = blower();
    for (const Mount other : {Mount::face, Mount::base}) {
        w.job.plate.mount = known(other);
        SAYS(w("mount"), Verdict::does_not_fit, "no such adapter");
    }
}

BOOST_AUTO_TEST_CASE(an_unknown_mount_asks) {
    World w = blower();
    w.motor().mount.reset();
    SAYS(w("mount"), Verdict::not_shown, "part does not say");
    w.job.plate.mount = {};
    SAYS(w("mount"), Verdict::not_shown, "mount not stated");
}

}  // namespace endbell::rule_tests
