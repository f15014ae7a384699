#include "tests/rules/world.hpp"

namespace endbell::rule_tests {

namespace {

/// A split-phase motor on a belt, and one like it that is made for belts.
World on_a_belt() {
    World w = blower();
    w.job.unit.belt_drive = known(true);
    w.job.plate.family = known(Family::split_phase, Origin::plate);
    w.motor().family = Family::split_phase;
    w.motor().enclosure = Enclosure::open_drip_proof;
    w.motor().drive = Drive::belt;
    return w;
}

}  // namespace

// Common practice (field practice of the trade): belt and direct drive are never taken for each other.
BOOST_AUTO_TEST_CASE(belt_and_direct_never_match) {
    World w = on_a_belt();
    SAYS(w("drive"), Verdict::fits, "same drive");
    w.motor().drive = Drive::direct;
    SAYS(w("drive"), Verdict::does_not_fit, "not made for a belt");
    w.job.unit.belt_drive = known(false);
    SAYS(w("drive"), Verdict::fits, "same drive");
    w.motor().drive = Drive::belt;
    SAYS(w("drive"), Verdict::does_not_fit, "made for a belt");
    w.motor().drive = Drive::either;
    SAYS(w("drive"), Verdict::fits, "made for either drive");
}

BOOST_AUTO_TEST_CASE(a_motor_cooled_by_its_own_wheel_never_goes_on_a_belt) {
    for (const Enclosure shell : {Enclosure::open_air_over, Enclosure::enclosed_air_over}) {
        World w = on_a_belt();
        w.motor().drive.reset();
        w.motor().enclosure = shell;
        SAYS(w("drive"), Verdict::does_not_fit, "no air over it on a belt");
    }
}

BOOST_AUTO_TEST_CASE(kinds_without_a_start_switch_are_made_for_their_own_shaft) {
    for (const Family kind : {Family::shaded_pole, Family::capacitor_run, Family::constant_torque,
                              Family::constant_airflow, Family::communicating}) {
        World w = on_a_belt();
        w.motor().drive.reset();
        w.motor().family = kind;
        SAYS(w("drive"), Verdict::does_not_fit, "not made for a belt");
        w.job.unit.belt_drive = {};
        w.job.plate.family = known(kind, Origin::plate);
        SAYS(w("drive"), Verdict::fits, "same drive");
    }
}

BOOST_AUTO_TEST_CASE(what_may_hang_on_either_is_asked_on_both_sides) {
    for (const Family kind : {Family::split_phase, Family::capacitor_start, Family::capacitor_start_and_run,
                              Family::three_phase}) {
        World w = on_a_belt();
        w.job.plate.family = known(kind, Origin::plate);
        w.job.unit.belt_drive = {};
        const Finding job = w("drive");
        SAYS(job, Verdict::not_shown, "drive not stated");
        BOOST_TEST(job.asks.at(0) == "unit.belt_drive");
        w.motor().family = kind;
        w.motor().drive.reset();
        w.job.unit.belt_drive = known(true);
        const Finding part = w("drive");
        SAYS(part, Verdict::not_shown, "part does not say");
        BOOST_TEST(part.asks.at(0) == "motors.drive");
    }
}

BOOST_AUTO_TEST_CASE(a_blade_or_an_inducers_wheel_sits_on_the_shaft) {
    for (const Load load : {Load::outdoor_fan, Load::draft_inducer}) {
        World w = on_a_belt();
        w.job.unit.belt_drive = {};
        w.job.unit.load = known(load);
        SAYS(w("drive"), Verdict::does_not_fit, "made for a belt");
    }
}

BOOST_AUTO_TEST_CASE(what_was_guessed_says_nothing_of_the_drive) {
    World w = on_a_belt();
    w.job.unit.belt_drive = known(true, Origin::guessed);
    SAYS(w("drive"), Verdict::not_shown, "drive not stated");
}

}  // namespace endbell::rule_tests
