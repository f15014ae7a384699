#include "tests/rules/world.hpp"

namespace endbell::rule_tests {

// Equipment plates: 1.25 of the largest motor plus the rest. Compressor 17.9 A: with a 1.4 A fan 23.775,
// printed 23.8; with a 2.5 A fan 24.875.
BOOST_AUTO_TEST_CASE(the_plate_ampacity_carries_the_new_fan) {
    World w = condenser();
    w.job.equipment.minimum_circuit_ampacity = known(ampere(23.8));
    w.job.equipment.compressor_amps = known(ampere(17.9));
    Finding f = w("circuit-ampacity");
    SAYS(f, Verdict::fits, "within the circuit");
    BOOST_TEST(std::get<Current>(f.computed.value).in(ampere) == 23.775, boost::test_tools::tolerance(1e-9));
    w.motor().ratings.at(0).amps = ampere(2.5);
    f = w("circuit-ampacity");
    SAYS(f, Verdict::does_not_fit, "circuit too small");
    BOOST_TEST(std::get<Current>(f.computed.value).in(ampere) == 24.875, boost::test_tools::tolerance(1e-9));
    w.motor().ratings.at(0).amps = ampere(1.475);  // 23.85: still prints as 23.8
    SAYS(w("circuit-ampacity"), Verdict::fits, "within the circuit");
    w.motor().ratings.at(0).amps = ampere(1.48);
    SAYS(w("circuit-ampacity"), Verdict::does_not_fit, "circuit too small");
    w.motor().ratings.at(0).amps.reset();
    SAYS(w("circuit-ampacity"), Verdict::not_shown, "part does not say");
}

BOOST_AUTO_TEST_CASE(without_both_plate_figures_it_is_not_concerned) {
    World w = condenser();
    SAYS(w("circuit-ampacity"), Verdict::fits, "not concerned");
    w.job.equipment.minimum_circuit_ampacity = known(ampere(23.8));
    SAYS(w("circuit-ampacity"), Verdict::fits, "not concerned");
}

}  // namespace endbell::rule_tests
