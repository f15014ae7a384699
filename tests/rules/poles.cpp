#include "tests/rules/world.hpp"

namespace endbell::rule_tests {

// Fan laws: 825 to 1075 rpm is 2.2124 times the shaft power, 1075 to 1625 is 3.4541, 1075 to 825 is 0.4520.
BOOST_AUTO_TEST_CASE(a_faster_motor_is_overloaded_by_the_cube_of_speed) {
    World w = blower();
    w.job.plate.speed = known(rpm(825));
    Finding f = w("poles");
    SAYS(f, Verdict::does_not_fit, "runs too fast");
    BOOST_TEST(std::get<double>(f.computed.value) == 2.2124, boost::test_tools::tolerance(1e-4));
    w = blower();
    w.motor().poles = 4;
    w.motor().ratings = {rating(0.5, plate_volts(115), 6, 1625)};
    f = w("poles");
    BOOST_TEST(std::get<double>(f.computed.value) == 3.4541, boost::test_tools::tolerance(1e-4));
    w.motor().poles = 8;
    w.motor().ratings = {rating(0.5, plate_volts(115), 6, 825)};
    f = w("poles");
    SAYS(f, Verdict::does_not_fit, "runs too slow");
    BOOST_TEST(std::get<double>(f.computed.value) == 0.4520, boost::test_tools::tolerance(1e-3));
}

// Full-load speeds of PSC and shaded-pole fan motors (MG 1 10.32, from memory): the plate's rpm names the
// poles.
BOOST_AUTO_TEST_CASE(poles_follow_from_the_plate_speed) {
    for (const auto& [speed, poles] : {std::pair{3250, 2},
                                       {1625, 4},
                                       {1550, 4},
                                       {1725, 4},
                                       {1075, 6},
                                       {1050, 6},
                                       {1140, 6},
                                       {1100, 6},
                                       {825, 8},
                                       {800, 8},
                                       {850, 8}}) {
        World w = blower();
        w.job.plate.speed = known(rpm(speed));
        w.motor().poles = poles;
        w.motor().ratings.at(0).speed.reset();
        SAYS(w("poles"), Verdict::fits, "same poles");
    }
}

BOOST_AUTO_TEST_CASE(a_speed_between_two_pole_counts_proves_nothing) {
    World w = blower();
    w.job.plate.speed = known(rpm(1190));  // 0.8 % below 1200
    SAYS(w("poles"), Verdict::not_shown, "poles not stated");
    w.job.plate.poles = known(6);
    SAYS(w("poles"), Verdict::fits, "same poles");
    w.job.plate.poles = known(8);
    w.job.plate.speed = known(rpm(1075));
    SAYS(w("poles"), Verdict::not_shown, "plate disagrees with itself");
}

// 950 rpm at 50 Hz: 1000 less 5 %.
BOOST_AUTO_TEST_CASE(fifty_hertz_has_its_own_speeds) {
    World w = blower();
    w.job.plate.speed = known(rpm(950));
    w.job.plate.frequency = known(hertz(50));
    SAYS(w("poles"), Verdict::fits, "same poles");
}

BOOST_AUTO_TEST_CASE(a_part_that_contradicts_its_own_speed_is_not_shown) {
    World w = blower();
    w.motor().poles = 8;  // beside a rated 1075 rpm
    SAYS(w("poles"), Verdict::not_shown, "part disagrees with itself");
}

BOOST_AUTO_TEST_CASE(unknown_poles_ask) {
    World w = blower();
    w.motor().poles.reset();
    SAYS(w("poles"), Verdict::fits, "same poles");  // its rated 1075 rpm names them
    w.motor().ratings.at(0).speed.reset();
    SAYS(w("poles"), Verdict::not_shown, "part does not say");
    w.job.plate.speed = {};
    SAYS(w("poles"), Verdict::not_shown, "poles not stated");
    BOOST_TEST(w("poles").asks.front() == "plate.speed");
}

BOOST_AUTO_TEST_CASE(an_electronic_motor_has_no_line_poles) {
    SAYS(five_taps()("poles"), Verdict::fits, "not concerned");
    SAYS(retrofit()("poles"), Verdict::fits, "not concerned");
    SAYS(inducer()("poles"), Verdict::fits, "specified assembly");
}

}  // namespace endbell::rule_tests
