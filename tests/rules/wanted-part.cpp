#include "tests/rules/world.hpp"

namespace endbell::rule_tests {

// Equipment manuals: only the constant-airflow kind has a module that is replaced alone, and only where
// windings, ground reading and bearing pass; a failed winding takes motor and module.
BOOST_AUTO_TEST_CASE(a_module_alone_where_the_motor_half_is_proven_good) {
    SAYS(module_job()("wanted-part"), Verdict::fits, "module failed");
}

BOOST_AUTO_TEST_CASE(a_module_is_not_shown_where_the_motor_half_is_unproven) {
    World w = module_job();
    w.diagnosis = {};
    const Finding f = w("wanted-part");
    SAYS(f, Verdict::not_shown, "motor half not proven");
    BOOST_TEST(f.asks.front() == "measured.windings");
    w.diagnosis.fault = Fault::module;  // a conclusion without the proof is not enough either
    SAYS(w("wanted-part"), Verdict::not_shown, "motor half not proven");
}

BOOST_AUTO_TEST_CASE(it_asks_for_what_the_diagnosis_misses) {
    World w = module_job();
    w.diagnosis = {};
    MissingReading missing;
    missing.job_key = "measured.winding_to_shell";
    w.diagnosis.missing.push_back(missing);
    BOOST_TEST(w("wanted-part").asks.size() == 1u);
    BOOST_TEST(w("wanted-part").asks.front() == "measured.winding_to_shell");
}

BOOST_AUTO_TEST_CASE(a_module_does_not_mend_a_failed_motor_half) {
    World w = module_job();
    for (const Fault fault : {Fault::motor, Fault::motor_and_module, Fault::wheel_or_bearing}) {
        w.diagnosis.fault = fault;
        SAYS(w("wanted-part"), Verdict::does_not_fit, "motor half failed");
    }
}

BOOST_AUTO_TEST_CASE(only_a_two_piece_motor_has_a_module) {
    World w = module_job();
    w.job.plate.family = known(Family::constant_torque);
    SAYS(w("wanted-part"), Verdict::does_not_fit, "no separable module");
    w.job.plate.family = {};
    SAYS(w("wanted-part"), Verdict::not_shown, "family not stated");
}

BOOST_AUTO_TEST_CASE(a_motor_fits_and_says_when_more_or_nothing_failed) {
    World w = blower();
    SAYS(w("wanted-part"), Verdict::fits, "not diagnosed");
    w.diagnosis.fault = Fault::motor;
    SAYS(w("wanted-part"), Verdict::fits, "motor failed");
    BOOST_TEST(!w("wanted-part").caution);
    w.diagnosis.fault = Fault::module;
    SAYS(w("wanted-part"), Verdict::fits, "more than failed");
    BOOST_TEST(w("wanted-part").caution);
    w.diagnosis.fault = Fault::capacitor;
    SAYS(w("wanted-part"), Verdict::fits, "fault elsewhere");
    w.motor().family = Family::constant_airflow;
    w.diagnosis.fault = Fault::motor_and_module;
    SAYS(w("wanted-part"), Verdict::fits, "module needed too");
}

}  // namespace endbell::rule_tests
