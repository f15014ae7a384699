#include "tests/rules/world.hpp"

namespace endbell::rule_tests {

// Common practice: speed count is adaptable; a spare lead of a running motor is live and is capped.
BOOST_AUTO_TEST_CASE(spare_speed_leads_are_parked) {
    World w = blower();
    SAYS(w("tap-count"), Verdict::fits, "enough speeds");
    w.motor().speeds = 4;
    SAYS(w("tap-count"), Verdict::fits_with_changes, "leads to park");
    BOOST_TEST((task_of(w("tap-count").remedies.at(0).cure) == ShopTask::lead_parking));
}

BOOST_AUTO_TEST_CASE(fewer_speeds_make_calls_share_one) {
    World w = blower();
    w.motor().speeds = 2;
    SAYS(w("tap-count"), Verdict::fits_with_changes, "calls share a speed");
    BOOST_TEST(w("tap-count").caution);
}

BOOST_AUTO_TEST_CASE(spare_24_v_taps_carry_nothing) {
    World w = retrofit();
    w.motor().speeds.reset();  // five taps are listed
    SAYS(w("tap-count"), Verdict::fits, "enough speeds");
}

BOOST_AUTO_TEST_CASE(a_blank_job_is_said_and_a_blank_part_not_shown) {
    World w = blower();
    w.motor().speeds.reset();
    SAYS(w("tap-count"), Verdict::not_shown, "part does not say");
    w.job.plate.speeds = {};
    SAYS(w("tap-count"), Verdict::fits, "not stated");
}

}  // namespace endbell::rule_tests
