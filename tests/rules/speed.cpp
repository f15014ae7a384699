#include "tests/rules/world.hpp"

namespace endbell::rule_tests {

// Common practice, by the cube law: 5 % of rpm is already 15.8 % of fan power. Ratios from the fan-law table.
BOOST_AUTO_TEST_CASE(within_five_percent_and_the_limit_included) {
    World w = blower();
    w.motor().ratings = {rating(0.5, plate_volts(115), 6, 1050)};
    SAYS(w("speed"), Verdict::fits, "same speed");
    w.motor().ratings = {rating(0.5, plate_volts(115), 6, 1140)};
    const Finding f = w("speed");
    SAYS(f, Verdict::does_not_fit, "too fast");
    BOOST_TEST(std::get<double>(f.computed.value) == 1.1926, boost::test_tools::tolerance(1e-4));
    w.job.plate.speed = known(rpm(1000));
    w.motor().ratings = {rating(0.5, plate_volts(115), 6, 1050)};  // exactly +5 %
    SAYS(w("speed"), Verdict::fits, "same speed");
    w.motor().ratings = {rating(0.5, plate_volts(115), 6, 950)};
    SAYS(w("speed"), Verdict::fits, "same speed");
    w.motor().ratings = {rating(0.5, plate_volts(115), 6, 949)};
    SAYS(w("speed"), Verdict::does_not_fit, "too slow");
}

BOOST_AUTO_TEST_CASE(a_shop_may_tighten_it) {
    World w = blower();
    w.motor().ratings = {rating(0.5, plate_volts(115), 6, 1050)};  // -2.3 %
    BOOST_TEST(static_cast<int>(w.limits.tighten("speed.match", 0.02, "the shop")) ==
               static_cast<int>(Limits::Tightening::accepted));
    SAYS(w("speed"), Verdict::does_not_fit, "too slow");
    BOOST_TEST(static_cast<int>(w("speed").limit.origin) == static_cast<int>(Origin::shop));
}

BOOST_AUTO_TEST_CASE(a_plate_with_poles_only_is_said) {
    World w = blower();
    w.job.plate.speed = {};
    w.job.plate.poles = known(6);
    SAYS(w("speed"), Verdict::fits, "not stated");
    w = blower();
    w.motor().ratings.at(0).speed.reset();
    SAYS(w("speed"), Verdict::not_shown, "part does not say");
}

BOOST_AUTO_TEST_CASE(an_electronic_motor_minds_only_its_speed_limit) {
    World w = five_taps();
    SAYS(w("speed"), Verdict::fits, "not concerned");
    w.motor().speed_limit = rpm(1050);
    SAYS(w("speed"), Verdict::fits, "within its speed limit");
    BOOST_TEST(!w("speed").offered.known());  // a ceiling is not what it turns at
    BOOST_TEST(std::get<Speed>(w("speed").limit.value).in(rpm) == 1050);
    w.motor().speed_limit = rpm(1000);
    SAYS(w("speed"), Verdict::does_not_fit, "above its speed limit");
    w.job.plate.speed = {};
    SAYS(w("speed"), Verdict::fits, "not stated");
    SAYS(inducer()("speed"), Verdict::fits, "specified assembly");
}

}  // namespace endbell::rule_tests
