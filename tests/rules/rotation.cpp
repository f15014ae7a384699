#include "tests/rules/world.hpp"

namespace endbell::rule_tests {

// NEMA MG 1 2.24 faces the lead end, IEC 60034-8 the shaft end; two trade explanations give CWLE = CCWSE.
BOOST_AUTO_TEST_CASE(one_physical_direction_under_two_names) {
    World w = blower();
    w.job.plate.rotation = known(normalised(Spin::ccw, ViewedFrom::shaft_end));
    w.motor().rotation = normalised(Spin::cw, ViewedFrom::lead_end);
    SAYS(w("rotation"), Verdict::fits, "same rotation");
    w.job.plate.rotation = known(normalised(Spin::cw, ViewedFrom::shaft_end));
    SAYS(w("rotation"), Verdict::does_not_fit, "turns the other way");
}

// The air leaves a forward-curved wheel the same way when it runs backwards, but less of it: it must be set
// and seen.
BOOST_AUTO_TEST_CASE(a_reversible_motor_is_set) {
    World w = blower();
    w.motor().rotation = Rotation::reversible;
    const Finding f = w("rotation");
    SAYS(f, Verdict::fits_with_changes, "to be set");
    BOOST_TEST((task_of(f.remedies.at(0).cure) == ShopTask::rotation_selection));
    BOOST_TEST(!f.caution);
    w.job.plate.rotation = {};  // cannot keep it from fitting; set it by the wheel
    SAYS(w("rotation"), Verdict::fits_with_changes, "to be set");
    BOOST_TEST(w("rotation").caution);
}

BOOST_AUTO_TEST_CASE(a_bare_cw_is_a_question) {
    World w = blower();
    w.job.plate.rotation = {};
    w.job.plate.rotation.raw = "CW";
    w.job.plate.rotation.question = "seen from which end?";
    SAYS(w("rotation"), Verdict::not_shown, "rotation not stated");
    BOOST_TEST(w("rotation").asks.front() == "plate.rotation");
}

BOOST_AUTO_TEST_CASE(an_old_reversible_motor_was_set_one_way) {
    World w = blower();
    w.job.plate.rotation = known(Rotation::reversible);
    SAYS(w("rotation"), Verdict::not_shown, "old motor was set either way");
}

BOOST_AUTO_TEST_CASE(a_part_without_a_viewing_end_is_not_shown) {
    World w = blower();
    w.motor().rotation.reset();
    SAYS(w("rotation"), Verdict::not_shown, "part does not say");
}

BOOST_AUTO_TEST_CASE(a_guess_from_the_scroll_does_not_decide) {
    World w = blower();
    w.job.plate.rotation = known(Rotation::cw_shaft_end, Origin::guessed);
    SAYS(w("rotation"), Verdict::not_shown, "rotation not stated");
    SAYS(inducer()("rotation"), Verdict::fits, "specified assembly");
}

}  // namespace endbell::rule_tests
