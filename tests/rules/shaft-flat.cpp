#include "tests/rules/world.hpp"

namespace endbell::rule_tests {

// An equipment manual: align the set screw with the flat. The flat runs from the shaft's end towards the
// motor.
BOOST_AUTO_TEST_CASE(the_flat_begins_no_further_out_than_the_old_one) {
    World w = blower();
    SAYS(w("shaft-flat"), Verdict::fits, "flat reaches as far");
    w.motor().shaft_length = inch(6);
    w.motor().shaft_flat = inch(5.5);  // begins 0.5 in. from the face, as the old one did
    SAYS(w("shaft-flat"), Verdict::fits, "flat reaches as far");
    w.motor().shaft_flat = inch(5.4);
    SAYS(w("shaft-flat"), Verdict::fits, "check the set screw");
    BOOST_TEST(w("shaft-flat").caution);
}

BOOST_AUTO_TEST_CASE(a_flat_beyond_the_hub_is_no_flat) {
    World w = blower();
    w.job.measured.shaft_needed = known(inch(4), Origin::measured);
    w.motor().shaft_length = inch(6);
    w.motor().shaft_flat = inch(2);  // begins exactly where the hub ends
    SAYS(w("shaft-flat"), Verdict::does_not_fit, "flat ends before the hub");
    w.motor().shaft_flat = inch(2.1);
    SAYS(w("shaft-flat"), Verdict::fits, "check the set screw");
}

BOOST_AUTO_TEST_CASE(without_lengths_the_flats_are_compared) {
    World w = blower();
    w.job.plate.shaft_length = {};
    SAYS(w("shaft-flat"), Verdict::fits, "flat reaches as far");
    w.motor().shaft_flat = inch(4.4);
    SAYS(w("shaft-flat"), Verdict::fits, "check the set screw");
}

BOOST_AUTO_TEST_CASE(an_unstated_flat_is_said) {
    World w = blower();
    w.motor().shaft_flat.reset();
    SAYS(w("shaft-flat"), Verdict::not_shown, "part does not say");
    w.job.plate.shaft_flat = {};
    SAYS(w("shaft-flat"), Verdict::fits, "not stated");
}

}  // namespace endbell::rule_tests
