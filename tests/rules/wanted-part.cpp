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
    for (const Fault fault : {Fault::motor, Fault::motor_and_module}) {
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
}

namespace {

/// A two-piece motor of program PR-1 for a unit whose motor and module both failed.
World two_piece() {
    World w = five_taps();
    w.job.plate.family = known(Family::constant_airflow, Origin::plate);
    w.job.plate.program = known(std::string("PR-1"), Origin::plate);
    w.motor().family = Family::constant_airflow;
    w.motor().program = "PR-1";
    w.diagnosis.fault = Fault::motor_and_module;
    return w;
}

}  // namespace

// Field practice: a complete motor has its module and program, a motor half has none, and the catalog has to say which.
BOOST_AUTO_TEST_CASE(whether_a_two_piece_motor_brings_its_module_is_the_catalogs_to_say) {
    World w = two_piece();
    SAYS(w("wanted-part"), Verdict::not_shown, "part does not say");
    BOOST_TEST(w("wanted-part").asks.front() == "motors.includes_module");
    w.motor().family = Family::communicating;
    SAYS(w("wanted-part"), Verdict::not_shown, "part does not say");
    w = two_piece();
    w.motor().includes_module = true;
    SAYS(w("wanted-part"), Verdict::fits, "motor failed");
    BOOST_TEST(w("wanted-part").remedies.empty());
}

BOOST_AUTO_TEST_CASE(a_motor_half_needs_a_module_whatever_failed) {
    World w = two_piece();
    w.motor().includes_module = false;
    for (const Fault fault : {Fault::motor, Fault::motor_and_module, Fault::module, Fault::not_shown}) {
        w.diagnosis.fault = fault;
        const Finding f = w("wanted-part");
        SAYS(f, Verdict::fits_with_changes, "module needed too");
        BOOST_TEST(f.caution);
        BOOST_REQUIRE(f.remedies.size() == 1u);
        BOOST_TEST((f.remedies[0].cure == Cure::control_module));
        BOOST_TEST(f.remedies[0].program.value() == "PR-1");
    }
}

BOOST_AUTO_TEST_CASE(the_old_module_stays_only_where_it_is_shown_to_be_good_and_drives_that_power) {
    World w = two_piece();
    w.motor().includes_module = false;
    w.diagnosis.fault = Fault::motor;
    w.job.measured.module_good = known(true);
    SAYS(w("wanted-part"), Verdict::fits, "old module stays");
    BOOST_TEST(w("wanted-part").caution);
    w.diagnosis.fault = Fault::motor_and_module;  // a short may have taken it since
    SAYS(w("wanted-part"), Verdict::fits_with_changes, "module needed too");
    w.diagnosis.fault = Fault::motor;
    w.motor().ratings.front().power = horsepower(0.75);
    SAYS(w("wanted-part"), Verdict::fits_with_changes, "module needed too");
    w.motor().ratings.front().power.reset();
    SAYS(w("wanted-part"), Verdict::fits_with_changes, "module needed too");
}

BOOST_AUTO_TEST_CASE(a_motor_of_one_piece_has_no_module_to_miss) {
    World w = five_taps();
    w.diagnosis.fault = Fault::motor;
    SAYS(w("wanted-part"), Verdict::fits, "motor failed");
    w.motor().includes_module = false;  // the catalog says that something of it is missing
    SAYS(w("wanted-part"), Verdict::fits_with_changes, "module needed too");
    w = blower();
    w.diagnosis.fault = Fault::motor;
    w.motor().includes_module = false;  // an induction motor has no electronics at all
    SAYS(w("wanted-part"), Verdict::fits, "motor failed");
}

}  // namespace endbell::rule_tests
