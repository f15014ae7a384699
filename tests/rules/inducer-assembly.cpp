#include "tests/rules/world.hpp"

namespace endbell::rule_tests {

// Common practice: a draft inducer is part of a certified combustion system.
BOOST_AUTO_TEST_CASE(the_specified_assembly_fits_whatever_its_spelling) {
    SAYS(inducer()("inducer-assembly"), Verdict::fits, "specified assembly");  // "AS-1" and "AS 1"
}

BOOST_AUTO_TEST_CASE(another_assembly_does_not) {
    World w = inducer();
    w.motor().assembly = "AS-2";
    SAYS(w("inducer-assembly"), Verdict::does_not_fit, "other assembly");
}

BOOST_AUTO_TEST_CASE(no_inference_is_allowed_on_either_side) {
    World w = inducer();
    w.motor().assembly.reset();
    SAYS(w("inducer-assembly"), Verdict::not_shown, "part does not say");
    w.job.unit.assembly_number = known(std::string("AS-1"), Origin::guessed);
    SAYS(w("inducer-assembly"), Verdict::not_shown, "assembly not stated");
    BOOST_TEST(w("inducer-assembly").asks.front() == "unit.assembly_number");
}

BOOST_AUTO_TEST_CASE(a_blower_is_not_concerned) {
    SAYS(blower()("inducer-assembly"), Verdict::fits, "not concerned");
}

}  // namespace endbell::rule_tests
