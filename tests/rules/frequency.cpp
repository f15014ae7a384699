#include "tests/rules/world.hpp"

namespace endbell::rule_tests {

// NEMA MG 1 12.44.1: frequency within 5 % of the plate, limits included; both deviations together within 10
// %.
BOOST_AUTO_TEST_CASE(five_percent_of_the_plate_hertz_and_no_more) {
    World w = blower();
    SAYS(w("frequency"), Verdict::fits, "within tolerance");
    w.job.plate.frequency = known(hertz(63));
    SAYS(w("frequency"), Verdict::fits, "within tolerance");
    w.job.plate.frequency = known(hertz(63.1));
    SAYS(w("frequency"), Verdict::does_not_fit, "other frequency");
    w.motor().frequency = hertz(50);
    w.job.plate.frequency = known(hertz(60));
    SAYS(w("frequency"), Verdict::does_not_fit, "other frequency");
}

// -5.1 % volts and +1.6 % hertz add to 6.7 %; -8 % and +3 % to 11 %.
BOOST_AUTO_TEST_CASE(volts_and_hertz_add_up) {
    World w = blower();
    w.job.plate.frequency = known(hertz(60 * 1.016));
    w.job.measured.line_volts = known<LineVolts>(volt(115 * 0.949));
    SAYS(w("frequency"), Verdict::fits, "within tolerance");
    w.job.plate.frequency = known(hertz(60 * 1.03));
    w.job.measured.line_volts = known<LineVolts>(volt(115 * 0.92));
    SAYS(w("frequency"), Verdict::does_not_fit, "combined deviation");
    w.job.measured.line_volts = known<LineVolts>(volt(115 * 0.93));  // exactly 10 %
    SAYS(w("frequency"), Verdict::fits, "within tolerance");
}

BOOST_AUTO_TEST_CASE(a_plate_without_hertz_is_said_and_a_silent_part_not_shown) {
    World w = blower();
    w.motor().frequency.reset();
    SAYS(w("frequency"), Verdict::not_shown, "part does not say");
    w.job.plate.frequency = {};
    SAYS(w("frequency"), Verdict::not_shown, "part does not say");  // 115 V is North American: 60 Hz
    w.job.plate.volts = known(std::vector{plate_volts(230)});
    w.job.plate.speed = known(rpm(825));  // eight poles at 60 Hz, six at 50: open
    SAYS(w("frequency"), Verdict::fits, "not stated");
    BOOST_TEST(w("frequency").caution);
}

BOOST_AUTO_TEST_CASE(the_hertz_follow_from_north_american_volts_and_from_the_speed) {
    World w = blower();
    w.job.plate.frequency = {};
    w.motor().frequency = hertz(50);
    SAYS(w("frequency"), Verdict::does_not_fit, "other frequency");  // 115 V
    w.job.plate.volts = known(std::vector{plate_volts(230)});
    w.job.plate.speed = known(rpm(1075));  // six poles at 60 Hz: 10 % slip; at 50 Hz 28 % below 1500
    SAYS(w("frequency"), Verdict::does_not_fit, "other frequency");
    w.job.plate.speed = known(rpm(1380));  // four poles at 50 Hz: 8 %; at 60 Hz 23 % below 1800
    SAYS(w("frequency"), Verdict::fits, "within tolerance");
}

BOOST_AUTO_TEST_CASE(an_electronic_motor_rectifies_its_supply) {
    World w = five_taps();
    w.motor().frequency.reset();
    SAYS(w("frequency"), Verdict::fits, "rectified supply");
}

}  // namespace endbell::rule_tests
