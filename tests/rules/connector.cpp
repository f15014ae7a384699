#include "tests/rules/world.hpp"

namespace endbell::rule_tests {

// Common practice: another plug is curable by a harness; a retrofit is wired lead by lead.
BOOST_AUTO_TEST_CASE(another_plug_takes_a_harness) {
    World w = five_taps();
    w.job.plate.connector = known(std::string("L-G-N strip"));
    w.motor().connector = "l-g-n STRIP ";
    SAYS(w("connector"), Verdict::fits, "same plug");
    w.motor().connector = "leads";
    const Finding f = w("connector");
    SAYS(f, Verdict::fits_with_changes, "other plug");
    BOOST_TEST(*f.remedies.at(0).connector_from == "L-G-N strip");
    BOOST_TEST(*f.remedies.at(0).connector_to == "leads");
}

BOOST_AUTO_TEST_CASE(an_unstated_plug_is_said) {
    World w = five_taps();
    SAYS(w("connector"), Verdict::fits, "not stated");
    w.job.plate.connector = known(std::string("leads"));
    SAYS(w("connector"), Verdict::not_shown, "part does not say");
    SAYS(retrofit()("connector"), Verdict::fits, "not concerned");
}

}  // namespace endbell::rule_tests
