#include "tests/rules/world.hpp"

namespace endbell::rule_tests {

// Common practice: a single shaft cannot carry the second wheel; an unused end is cut or guarded.
BOOST_AUTO_TEST_CASE(two_wheels_need_two_shafts) {
    World w = blower();
    SAYS(w("double-shaft"), Verdict::fits, "same shafts");
    w.job.plate.double_shaft = known(true);
    SAYS(w("double-shaft"), Verdict::does_not_fit, "single shaft");
    w.motor().double_shaft = true;
    SAYS(w("double-shaft"), Verdict::fits, "same shafts");
    w.motor().double_shaft.reset();
    SAYS(w("double-shaft"), Verdict::not_shown, "part does not say");
}

BOOST_AUTO_TEST_CASE(an_unused_end_is_cut_or_guarded) {
    World w = blower();
    w.motor().double_shaft = true;
    SAYS(w("double-shaft"), Verdict::fits_with_changes, "unused end to cut");
    BOOST_TEST((task_of(w("double-shaft").remedies.at(0).cure) == ShopTask::shaft_cut));
    w.motor().shaft_cuttable = false;
    SAYS(w("double-shaft"), Verdict::fits, "unused end to guard");
}

BOOST_AUTO_TEST_CASE(an_unstated_shaft_count_is_said) {
    World w = blower();
    w.job.plate.double_shaft = {};
    SAYS(w("double-shaft"), Verdict::fits, "not stated");
    w.motor().double_shaft = true;
    SAYS(w("double-shaft"), Verdict::fits_with_changes, "unused end to cut");
    BOOST_TEST(w("double-shaft").caution);
}

}  // namespace endbell::rule_tests
