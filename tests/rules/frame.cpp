#include "tests/rules/world.hpp"

namespace endbell::rule_tests {

namespace {

World on_feet(const char* old, const char* offered) {
    World w = blower();
    w.job.plate.mount = known(Mount::base);
    w.motor().mount = Mount::base;
    w.job.plate.frame = known(std::string(old), Origin::plate);
    w.motor().frame = offered;
    return w;
}

}  // namespace

// NEMA MG 1 frame numbers: shaft height is two digits over 16 (48: 3 in., 56: 3 1/2 in.); letters tell of the shaft.
BOOST_AUTO_TEST_CASE(the_number_decides_and_not_the_letters) {
    SAYS(on_feet("56", "56HZ")("frame"), Verdict::fits, "same frame");
    SAYS(on_feet("FR 56H", "56")("frame"), Verdict::fits, "same frame");
    SAYS(on_feet("56", "48Y")("frame"), Verdict::does_not_fit, "other frame");
    SAYS(on_feet("56", "143T")("frame"), Verdict::does_not_fit, "other frame");
    SAYS(on_feet("143T", "145T")("frame"), Verdict::does_not_fit, "other frame");
}

BOOST_AUTO_TEST_CASE(rings_have_a_frame_and_bands_have_none) {
    World w = on_feet("56", "48");
    w.job.plate.mount = known(Mount::ring);
    SAYS(w("frame"), Verdict::fits, "not concerned");
    w.motor().mount = Mount::ring;
    SAYS(w("frame"), Verdict::does_not_fit, "other frame");
    SAYS(blower()("frame"), Verdict::fits, "not concerned");
}

BOOST_AUTO_TEST_CASE(a_frame_that_nobody_states_is_no_pass_of_the_part) {
    World w = on_feet("56", "no number");
    SAYS(w("frame"), Verdict::not_shown, "part does not say");
    w.motor().frame.reset();
    SAYS(w("frame"), Verdict::not_shown, "part does not say");
    w.job.plate.frame = known(std::string("56"), Origin::guessed);
    const Finding f = w("frame");
    SAYS(f, Verdict::fits, "not stated");
    BOOST_TEST(f.asks.at(0) == "plate.frame");
}

}  // namespace endbell::rule_tests
