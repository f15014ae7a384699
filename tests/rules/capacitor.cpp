#include "tests/rules/world.hpp"

namespace endbell::rule_tests {

// Trade articles: the microfarads of the NEW motor's plate, volts equal or higher, and always a new
// capacitor.
BOOST_AUTO_TEST_CASE(a_new_motor_gets_a_new_capacitor_of_its_own_value) {
    World w = blower();
    w.motor().capacitor = microfarad(10);  // the old one was 7.5
    const Finding f = w("capacitor");
    SAYS(f, Verdict::fits_with_changes, "new capacitor");
    BOOST_TEST(f.remedies.at(0).capacitor->in(microfarad) == 10);
    BOOST_TEST(f.remedies.at(0).capacitor_volts->in(volt) == 370);
    BOOST_TEST((task_of(f.remedies.at(0).cure) == ShopTask::capacitor_swap));
}

BOOST_AUTO_TEST_CASE(an_unknown_value_is_not_shown) {
    World w = blower();
    w.motor().capacitor_volts.reset();
    BOOST_TEST(w("capacitor").asks.front() == "motors.capacitor_v");
    w.motor().capacitor.reset();
    SAYS(w("capacitor"), Verdict::not_shown, "part does not say");
    BOOST_TEST(w("capacitor").asks.front() == "motors.capacitor_uf");
}

// Never a run capacitor for a permanent-magnet motor.
BOOST_AUTO_TEST_CASE(an_electronic_motor_takes_the_old_one_out) {
    SAYS(retrofit()("capacitor"), Verdict::fits_with_changes, "old capacitor out");
    BOOST_TEST((task_of(retrofit()("capacitor").remedies.at(0).cure) == ShopTask::capacitor_removal));
    SAYS(five_taps()("capacitor"), Verdict::fits, "no capacitor");
}

BOOST_AUTO_TEST_CASE(unknown_families) {
    World w = five_taps();
    w.job.plate.family = {};
    SAYS(w("capacitor"), Verdict::fits, "not stated");
    w.motor().family.reset();
    SAYS(w("capacitor"), Verdict::not_shown, "part does not say");
    w = inducer();
    w.motor().family = Family::capacitor_run;
    SAYS(w("capacitor"), Verdict::fits, "with the assembly");
}

}  // namespace endbell::rule_tests
