#include "tests/rules/world.hpp"

namespace endbell::rule_tests {

// Common practice: a single shaft cannot carry the second wheel; an unused end is cut or guarded.
BOOST_AUTO_TEST_CASE(two_wheels_need_two_shafts) {
    World w = blower();
    SAYS(w("double-shaft"), Verdict::fits, "same shafts");
    w.job.plate.double_shaft = known(true);
    SAYS(w("double-shaft"), Verdict::does_not_fit, "single shaft");
    w.motor().double_shaft = true;
    w.job.measured.second_bore = known(inch(0.5));
    w.motor().second_shaft_diameter = inch(0.5);
    SAYS(w("double-shaft"), Verdict::fits, "same shafts");
    BOOST_TEST(w("double-shaft").caution);  // how much shaft that wheel needs is not stated
    w.motor().double_shaft.reset();
    SAYS(w("double-shaft"), Verdict::not_shown, "part does not say");
}

BOOST_AUTO_TEST_CASE(the_second_end_fits_its_own_wheel) {
    World w = two_wheels();
    SAYS(w("double-shaft"), Verdict::fits, "same shafts");
    BOOST_TEST(!w("double-shaft").caution);
    w.motor().second_shaft_diameter = inch(0.625);
    SAYS(w("double-shaft"), Verdict::does_not_fit, "too thick");
    w.motor().second_shaft_diameter = inch(0.375);
    SAYS(w("double-shaft"), Verdict::fits_with_changes, "bushing");
    BOOST_TEST((w("double-shaft").remedies.at(0).to == inch(0.5)));
    w = two_wheels();
    w.motor().second_shaft_length = inch(3.75);
    SAYS(w("double-shaft"), Verdict::does_not_fit, "too short");
    w.motor().second_shaft_length = inch(4.75);
    SAYS(w("double-shaft"), Verdict::fits_with_changes, "to be cut");
    BOOST_TEST((w("double-shaft").remedies.at(0).to == inch(4.5)));
    w.motor().shaft_cuttable = false;
    SAYS(w("double-shaft"), Verdict::does_not_fit, "too long");
}

BOOST_AUTO_TEST_CASE(both_works_on_the_second_end_are_told) {
    World w = two_wheels();
    w.motor().second_shaft_diameter = inch(0.375);
    w.motor().second_shaft_length = inch(4.75);
    const Finding found = w("double-shaft");
    SAYS(found, Verdict::fits_with_changes, "bushing");
    BOOST_TEST(found.remedies.size() == 2U);
    BOOST_TEST((found.remedies.at(1).cure == Cure::shaft_cut));
}

BOOST_AUTO_TEST_CASE(an_unknown_second_end_is_never_a_pass) {
    World w = two_wheels();
    w.job.measured.second_bore = {};
    SAYS(w("double-shaft"), Verdict::not_shown, "bore not stated");
    w.job.plate.second_shaft_diameter = known(inch(0.5));  // the old shaft stands for the bore
    SAYS(w("double-shaft"), Verdict::fits, "same shafts");
    w.motor().second_shaft_diameter.reset();
    SAYS(w("double-shaft"), Verdict::not_shown, "part does not say");
    w = two_wheels();
    w.motor().second_shaft_length.reset();
    SAYS(w("double-shaft"), Verdict::not_shown, "part does not say");
    BOOST_TEST(w("double-shaft").asks.at(0) == "motors.second_shaft_length_in");
    w = two_wheels();
    w.job.measured.second_bore = known(inch(0.499));  // 1/2 in.? a caliper in a bore reads low
    SAYS(w("double-shaft"), Verdict::not_shown, "bore just under a standard size");
    w = two_wheels();
    w.job.measured.second_shaft_needed = known(inch(5));
    SAYS(w("double-shaft"), Verdict::not_shown, "readings disagree");
}

BOOST_AUTO_TEST_CASE(without_a_measured_need_the_old_second_shaft_stands_for_it) {
    World w = two_wheels();
    w.job.measured.second_shaft_needed = {};
    w.job.measured.second_shaft_room = {};
    w.job.plate.second_shaft_length = known(inch(4.5));
    SAYS(w("double-shaft"), Verdict::not_shown, "shorter than the old");
    w.motor().second_shaft_length = inch(4.75);  // 1/4 in. more than the old one is let pass
    SAYS(w("double-shaft"), Verdict::fits, "same shafts");
    w.motor().second_shaft_length = inch(4.875);
    w.motor().shaft_cuttable = false;
    SAYS(w("double-shaft"), Verdict::not_shown, "may be too long");
}

BOOST_AUTO_TEST_CASE(an_unused_end_is_cut_or_guarded) {
    World w = blower();
    w.motor().double_shaft = true;
    SAYS(w("double-shaft"), Verdict::fits_with_changes, "unused end to cut");
    BOOST_TEST((task_of(w("double-shaft").remedies.at(0).cure) == ShopTask::shaft_cut));
    w.motor().shaft_cuttable = false;
    SAYS(w("double-shaft"), Verdict::fits, "unused end to guard");
}

BOOST_AUTO_TEST_CASE(an_unstated_shaft_count_is_said) {
    World w = blower();
    w.job.plate.double_shaft = {};
    SAYS(w("double-shaft"), Verdict::fits, "not stated");
    w.motor().double_shaft = true;
    SAYS(w("double-shaft"), Verdict::fits_with_changes, "unused end to cut");
    BOOST_TEST(w("double-shaft").caution);
}

}  // namespace endbell::rule_tests
