// States that the job lists itself take the place of those usual for its kind of heat.
#include <boost/test/unit_test.hpp>

#include "tests/wiring/fixtures.hpp"

using namespace fixture;

namespace {

const AirPlan own_taps =
    air({{Call::circulate, 1}, {Call::cool_low, 2}, {Call::cool_high, 4}, {Call::electric_heat, 5}});

FailedUnit with_states(FailedUnit job, std::vector<CustomState> states) {
    if (*job.controls.heat == HeatKind::heat_pump) job.equipment.electric_heat = known(kilowatt(0));
    job.controls.states = known(std::move(states));
    return job;
}

WiringPlan plan(const FailedUnit& job, TapRule rule) {
    return plan_wiring(job, five_tap_motor(rule), own_taps, limits);
}

const std::vector<CustomState> by_the_valve{{"cool", {"Y1", "G", "O"}, Call::cool_high},
                                            {"heat", {"Y1", "G"}, Call::cool_low},
                                            {"held", {"O"}, std::nullopt}};

}  // namespace

BOOST_AUTO_TEST_CASE(own_states_replace_the_usual_ones) {
    const WiringPlan p =
        plan(with_states(thermostat_job(HeatKind::heat_pump, {"G", "Y1", "O"}), by_the_valve),
             TapRule::one_tap_only);
    BOOST_REQUIRE(p.proven);
    BOOST_TEST(p.states.size() == 4u);  // and "off"
    BOOST_TEST(!row(p, {"G"}).reachable);
    BOOST_TEST(row(p, {"G", "Y1", "O"}).effective_tap.value() == 4);
    BOOST_TEST(row(p, {"G", "Y1"}).effective_tap.value() == 2);
    BOOST_TEST(row(p, {"O"}).live_taps.empty());
    BOOST_TEST(coils(p) == 1u);  // one coil on O moves the call from one tap to the other
}

BOOST_AUTO_TEST_CASE(a_job_without_terminals_takes_those_of_its_states) {
    FailedUnit job = with_states(blower_job(ControlSource::thermostat, HeatKind::heat_pump), by_the_valve);
    const WiringPlan p = plan(job, TapRule::one_tap_only);
    BOOST_REQUIRE(p.proven);
    BOOST_TEST(p.signals == (std::vector<std::string>{"Y1", "G", "O"}), boost::test_tools::per_element());
    BOOST_TEST(p.assumed.empty());
}

BOOST_AUTO_TEST_CASE(elements_need_air_in_own_states_too) {
    const WiringPlan p = plan(with_states(thermostat_job(HeatKind::electric, {"G", "W1"}),
                                          {{"heat", {"G", "W1"}, Call::electric_heat}}),
                              TapRule::one_tap_only);
    BOOST_REQUIRE(p.proven);
    BOOST_TEST(!row(p, {"W1"}).reachable);
    BOOST_TEST(!row(p, {"W1"}).live_taps.empty());
}

BOOST_AUTO_TEST_CASE(own_states_never_take_a_furnace_call_past_the_board) {
    const WiringPlan p =
        plan(with_states(thermostat_job(HeatKind::gas, {"G", "W1"}), {{"heat", {"W1"}, Call::cool_high}}),
             TapRule::highest_tap_wins);
    BOOST_TEST(!p.possible);
    BOOST_TEST((p.refusal == WiringRefusal::heat_call_past_the_board));
}

BOOST_AUTO_TEST_CASE(outputs_that_a_board_sends_together_are_no_longer_one_at_a_time) {
    FailedUnit job = blower_job(ControlSource::board_24v, HeatKind::none);
    job.controls.terminals = known(terminals({{"LOW", Call::cool_low}, {"HIGH", Call::cool_high}}));
    const WiringPlan p =
        plan(with_states(job, {{"low", {"LOW"}, Call::cool_low}, {"high", {"LOW", "HIGH"}, Call::cool_high}}),
             TapRule::one_tap_only);
    BOOST_REQUIRE(p.proven);
    BOOST_TEST(!p.condition);
    BOOST_TEST(p.alternatives.empty());
    BOOST_TEST(coils(p) == 1u);
    BOOST_TEST(row(p, {"LOW", "HIGH"}).live_taps == (std::vector<int>{4}), boost::test_tools::per_element());
}

BOOST_AUTO_TEST_CASE(no_thermostat_letter_meets_the_line_voltage_run_signal) {
    FailedUnit job = blower_job(ControlSource::board_line, HeatKind::dual_fuel);
    job.controls.run_signal_available = known(true);
    job.controls.terminals = known(terminals({{"G", Call::circulate},
                                              {"Y1", Call::cool_high},
                                              {"W1", Call::heat_high},
                                              {"O", Call::cool_high},
                                              {"B", Call::heat_high},
                                              {"COOL", Call::cool_high}}));
    Part part = five_tap_motor(TapRule::highest_tap_wins);
    part.motor->terminals.push_back({"RUN", "run signal", "lead"});
    const WiringPlan p = plan_wiring(
        job, part, air({{Call::circulate, 1}, {Call::cool_high, 4}, {Call::heat_high, 3}}), limits);
    BOOST_REQUIRE(p.possible);
    BOOST_TEST(wired(p, "board COOL", "motor RUN"));
    BOOST_TEST(!wired(p, "board O", "motor RUN"));
    BOOST_TEST(!wired(p, "board B", "motor RUN"));
}
