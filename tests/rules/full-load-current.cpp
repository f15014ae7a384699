#include "tests/rules/world.hpp"

namespace endbell::rule_tests {

// NEC 430.6(A)(1): the full-load current on the equipment plate is not less than that on the motor.
BOOST_AUTO_TEST_CASE(the_fan_amps_of_the_equipment_plate_bind) {
    World w = blower();
    w.job.equipment.fan_amps = known(ampere(6.0));
    SAYS(w("full-load-current"), Verdict::fits, "within the equipment plate");  // exactly equal
    w.job.equipment.fan_amps = known(ampere(5.9));
    SAYS(w("full-load-current"), Verdict::does_not_fit, "over the equipment plate");
    w.motor().ratings.at(0).amps.reset();
    SAYS(w("full-load-current"), Verdict::not_shown, "part does not say");
}

BOOST_AUTO_TEST_CASE(the_old_motor_only_warns) {
    World w = blower();
    SAYS(w("full-load-current"), Verdict::fits, "no more than the old motor");
    BOOST_TEST(w("full-load-current").caution);  // the equipment plate was not read
    w.job.plate.current = known(ampere(5.5));
    SAYS(w("full-load-current"), Verdict::fits, "more than the old motor");
    BOOST_TEST(w("full-load-current").caution);
    w.job.plate.current = {};
    SAYS(w("full-load-current"), Verdict::fits, "not stated");
}

// 6.0 A are 1.25 times 4.8.
BOOST_AUTO_TEST_CASE(far_more_than_the_old_motor_waits_for_the_circuit) {
    World w = blower();
    w.job.plate.current = known(ampere(4.8));
    SAYS(w("full-load-current"), Verdict::fits, "more than the old motor");
    w.job.plate.current = known(ampere(4.79));
    SAYS(w("full-load-current"), Verdict::not_shown, "much more than the old motor");
    BOOST_TEST(w("full-load-current").asks.back() == "equipment.circuit_amps");
    BOOST_TEST(w("full-load-current").limit_id == "current.over_old");
    w.job.equipment.circuit_amps = known(ampere(7.5));  // 1.25 of 6.0
    SAYS(w("full-load-current"), Verdict::fits, "within the circuit");
    w.job.equipment.circuit_amps = known(ampere(7.4));
    SAYS(w("full-load-current"), Verdict::does_not_fit, "circuit too small");
    w.job.equipment.fan_amps = known(ampere(6.0));
    SAYS(w("full-load-current"), Verdict::does_not_fit, "circuit too small");
    w.job.equipment.circuit_amps = known(ampere(20));
    SAYS(w("full-load-current"), Verdict::fits, "within the circuit");
    w.job.equipment.fan_amps = known(ampere(5.9));  // no circuit lets it over the equipment's plate
    SAYS(w("full-load-current"), Verdict::does_not_fit, "over the equipment plate");
}

BOOST_AUTO_TEST_CASE(a_part_without_amps_is_not_shown_beside_a_known_current) {
    World w = blower();
    w.motor().ratings.at(0).amps.reset();
    SAYS(w("full-load-current"), Verdict::not_shown, "part does not say");
    w.job.plate.current = {};
    SAYS(w("full-load-current"), Verdict::fits, "not stated");
}

BOOST_AUTO_TEST_CASE(the_amps_are_those_of_the_rating_in_use) {
    World w = blower();
    w.motor().ratings = {rating(0.5, plate_volts(208, 230), 3.0, 1075),
                         rating(0.5, plate_volts(115), 6.6, 1075)};
    w.job.equipment.fan_amps = known(ampere(6.0));
    SAYS(w("full-load-current"), Verdict::does_not_fit, "over the equipment plate");
}

}  // namespace endbell::rule_tests
