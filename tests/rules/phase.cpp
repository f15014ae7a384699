#include "tests/rules/world.hpp"

namespace endbell::rule_tests {

// By construction: a capacitor-run or shaded-pole motor is single-phase.
BOOST_AUTO_TEST_CASE(a_capacitor_run_plate_needs_no_phase_on_it) {
    World w = blower();
    w.motor().phase.reset();
    SAYS(w("phase"), Verdict::fits, "same phase");
}

BOOST_AUTO_TEST_CASE(three_phases_are_not_one) {
    World w = blower();
    w.motor().family = Family::three_phase;
    w.motor().phase = 3;
    SAYS(w("phase"), Verdict::does_not_fit, "other phase");
    w.job.plate.family = known(Family::three_phase);
    SAYS(w("phase"), Verdict::fits, "same phase");
}

// "3 phase" beside a capacitor: the plate contradicts itself.
BOOST_AUTO_TEST_CASE(a_phase_that_the_family_cannot_have_proves_nothing) {
    World w = blower();
    w.motor().phase = 3;
    SAYS(w("phase"), Verdict::not_shown, "part disagrees with itself");
    w.job.plate.phase = known(3);
    SAYS(w("phase"), Verdict::not_shown, "plate disagrees with itself");
}

BOOST_AUTO_TEST_CASE(an_electronic_motor_must_say) {
    World w = five_taps();
    w.motor().phase.reset();
    SAYS(w("phase"), Verdict::not_shown, "part does not say");
    w.job.plate.phase = {};
    SAYS(w("phase"), Verdict::not_shown, "phase not stated");
    SAYS(module_job()("phase"), Verdict::fits, "not concerned");
}

}  // namespace endbell::rule_tests
