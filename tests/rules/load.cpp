#include "tests/rules/world.hpp"

namespace endbell::rule_tests {

// Common practice: what it turns is the first question, and an inducer error is a safety matter.
BOOST_AUTO_TEST_CASE(a_part_made_for_the_load_fits_it) {
    SAYS(blower()("load"), Verdict::fits, "same load");
}

BOOST_AUTO_TEST_CASE(a_part_made_for_another_load_does_not) {
    World w = blower();
    w.motor().loads = {Load::outdoor_fan};
    SAYS(w("load"), Verdict::does_not_fit, "other load");
    w.motor().loads = {Load::outdoor_fan, Load::indoor_blower};
    SAYS(w("load"), Verdict::fits, "same load");
}

BOOST_AUTO_TEST_CASE(an_unknown_load_asks_and_a_silent_part_is_not_shown) {
    World w = blower();
    w.motor().loads.clear();
    SAYS(w("load"), Verdict::not_shown, "part does not say");
    w.job.unit.load = {};
    SAYS(w("load"), Verdict::not_shown, "load not stated");
    BOOST_TEST(w("load").asks.front() == "unit.load");
}

BOOST_AUTO_TEST_CASE(a_module_is_not_concerned_with_the_load) {
    SAYS(module_job()("load"), Verdict::fits, "not concerned");
}

}  // namespace endbell::rule_tests
