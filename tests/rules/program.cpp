#include "tests/rules/world.hpp"

namespace endbell::rule_tests {

// Equipment manuals: a module of another program behaves differently and ends the warranty.
BOOST_AUTO_TEST_CASE(the_same_program_fits_and_another_never_does) {
    World w = module_job();
    SAYS(w("program"), Verdict::fits, "same program");
    w.part.module->program = "PR-2";
    SAYS(w("program"), Verdict::does_not_fit, "other program");
}

BOOST_AUTO_TEST_CASE(an_unknown_program_is_never_guessed) {
    World w = module_job();
    w.part.module->program.reset();
    SAYS(w("program"), Verdict::not_shown, "part does not say");
    BOOST_TEST(w("program").asks.front() == "modules.program");
    w.job.plate.program = {};
    SAYS(w("program"), Verdict::not_shown, "program not stated");
}

BOOST_AUTO_TEST_CASE(a_module_that_lists_other_motors_is_said) {
    World w = module_job();
    w.job.unit.old_part_number = known(std::string("OLD 7"));
    w.part.module->fits = {"OLD-8"};
    SAYS(w("program"), Verdict::fits, "old motor not listed");
    w.part.module->fits = {"OLD-8", "OLD-7"};
    SAYS(w("program"), Verdict::fits, "same program");
}

BOOST_AUTO_TEST_CASE(a_two_piece_motor_carries_one_too) {
    World w = five_taps();
    w.job.plate.family = known(Family::constant_airflow);
    w.motor().family = Family::constant_airflow;
    SAYS(w("program"), Verdict::not_shown, "program not stated");
    w.job.plate.program = known(std::string("PR-1"));
    SAYS(w("program"), Verdict::not_shown, "part does not say");
    BOOST_TEST(w("program").asks.front() == "motors.program");
    w.motor().program = "PR 1";
    SAYS(w("program"), Verdict::fits, "same program");
}

BOOST_AUTO_TEST_CASE(a_motor_half_carries_none_and_its_module_is_asked) {
    World w = five_taps();
    w.job.plate.family = known(Family::constant_airflow);
    w.motor().family = Family::constant_airflow;
    w.motor().includes_module = false;
    SAYS(w("program"), Verdict::not_shown, "program not stated");
    w.job.plate.program = known(std::string("PR-1"));
    SAYS(w("program"), Verdict::fits, "not concerned");
    w.motor().program = "PR-2";  // made for the module of another program
    SAYS(w("program"), Verdict::does_not_fit, "other program");
    // The equipment's plugs and its signal meet the module, not the half.
    w.motor().signal.reset();
    w.motor().connector = "3-pin winding plug";
    w.job.plate.connector = known(std::string("16-pin signal plug"));
    SAYS(w("connector"), Verdict::fits, "not concerned");
    SAYS(w("signal-class"), Verdict::fits, "not concerned");
}

BOOST_AUTO_TEST_CASE(a_universal_constant_torque_motor_carries_none) {
    World w = five_taps();
    SAYS(w("program"), Verdict::fits, "not concerned");
    w.job.plate.program = known(std::string("PR-1"));
    w.motor().program = "PR-2";
    SAYS(w("program"), Verdict::does_not_fit, "other program");
}

}  // namespace endbell::rule_tests
