#include "tests/rules/world.hpp"

namespace endbell::rule_tests {

namespace {
World measured(double needed, double has) {
    World w = blower();
    w.job.measured.shaft_needed = known(inch(needed), Origin::measured);
    w.motor().shaft_length = inch(has);
    return w;
}
}  // namespace

// Common practice: the old projection to the hub's far end is needed; excess may be cut; nothing lengthens a
// shaft.
BOOST_AUTO_TEST_CASE(the_measured_need_wins_over_the_plate) {
    SAYS(measured(4, 4)("shaft-length"), Verdict::fits, "long enough");
    SAYS(measured(4, 3.99)("shaft-length"), Verdict::does_not_fit, "too short");
    SAYS(measured(4, 5)("shaft-length"), Verdict::fits, "long enough");  // as long as the old one was made
}

BOOST_AUTO_TEST_CASE(shorter_than_the_old_plate_is_a_tape_measure_away) {
    World w = blower();
    w.motor().shaft_length = inch(4.5);
    SAYS(w("shaft-length"), Verdict::not_shown, "shorter than the old");
    BOOST_TEST(w("shaft-length").asks.front() == "measured.shaft_needed");
}

BOOST_AUTO_TEST_CASE(too_long_is_cut_where_its_maker_allows) {
    World w = measured(4, 8);
    w.job.measured.shaft_room = known(inch(6), Origin::measured);
    const Finding f = w("shaft-length");
    SAYS(f, Verdict::fits_with_changes, "to be cut");
    BOOST_TEST(f.remedies.at(0).from->in(inch) == 8);
    BOOST_TEST(f.remedies.at(0).to->in(inch) == 6);
    w.motor().shaft_cuttable = false;
    SAYS(w("shaft-length"), Verdict::does_not_fit, "too long");
    w.motor().shaft_cuttable.reset();
    SAYS(w("shaft-length"), Verdict::not_shown, "part does not say");
    w.motor().shaft_length = inch(6);
    SAYS(w("shaft-length"), Verdict::fits, "long enough");
}

// An old shaft that was cut: its plate says 5 in., 4.5 in. clear. Whatever the hub needs, it had.
BOOST_AUTO_TEST_CASE(a_room_shorter_than_the_plate_says_that_the_old_one_was_cut) {
    World w = blower();
    w.job.measured.shaft_room = known(inch(4.5), Origin::measured);
    SAYS(w("shaft-length"), Verdict::fits_with_changes, "to be cut");
    w.motor().shaft_length = inch(4.5);
    SAYS(w("shaft-length"), Verdict::fits, "long enough");
    w.motor().shaft_length = inch(4.4);
    SAYS(w("shaft-length"), Verdict::not_shown, "shorter than the old");
}

BOOST_AUTO_TEST_CASE(more_needed_than_clears_is_a_wrong_reading) {
    World w = measured(6, 6);
    w.job.measured.shaft_room = known(inch(5.5), Origin::measured);
    SAYS(w("shaft-length"), Verdict::not_shown, "readings disagree");
}

BOOST_AUTO_TEST_CASE(without_a_measured_room_a_quarter_inch_is_let_pass) {
    World w = blower();
    w.motor().shaft_length = inch(5.25);
    SAYS(w("shaft-length"), Verdict::fits, "long enough");
    w.motor().shaft_length = inch(5.26);
    SAYS(w("shaft-length"), Verdict::fits_with_changes, "to be cut");
    BOOST_TEST(w("shaft-length").remedies.at(0).to->in(inch) == 5, boost::test_tools::tolerance(1e-9));
    w.motor().shaft_cuttable = false;
    SAYS(w("shaft-length"), Verdict::not_shown, "may be too long");
    BOOST_TEST(w("shaft-length").asks.front() == "measured.shaft_room");
}

BOOST_AUTO_TEST_CASE(an_unstated_length_is_said) {
    World w = blower();
    w.motor().shaft_length.reset();
    SAYS(w("shaft-length"), Verdict::not_shown, "part does not say");
    w.job.plate.shaft_length = {};
    SAYS(w("shaft-length"), Verdict::fits, "not stated");
    BOOST_TEST(w("shaft-length").caution);
}

}  // namespace endbell::rule_tests
