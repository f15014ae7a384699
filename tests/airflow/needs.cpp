// Windows of each call, worked out by hand from capacity, rise and elements.
#include "engine/airflow/air_needs.hpp"

#include <boost/test/unit_test.hpp>

#include "tests/airflow/fixtures.hpp"

using namespace endbell;
using namespace endbell::test;

namespace {

const CallAir* get(const AirNeeds& needs, Call call) {
    for (const CallAir& one : needs.calls) {
        if (one.call == call) return &one;
    }
    return nullptr;
}

void check_window(const AirNeeds& needs, Call call, double low, double target, double high) {
    const CallAir* found = get(needs, call);
    BOOST_REQUIRE(found);
    BOOST_CHECK_CLOSE(found->low.in(cfm), low, 0.1);
    BOOST_CHECK_CLOSE(found->target.in(cfm), target, 0.1);
    BOOST_CHECK_CLOSE(found->high.in(cfm), high, 0.1);
}

FailedUnit air_handler(HeatKind heat) {
    FailedUnit job = furnace();
    job.equipment.heat_output = {};
    job.equipment.rise_low = {};
    job.equipment.rise_high = {};
    job.controls.heat = known(heat);
    return job;
}

}  // namespace

BOOST_AUTO_TEST_CASE(cooling_follows_the_climate) {
    FailedUnit job = furnace();
    check_window(air_needs(job, facts_of(job, limits), limits), Call::cool_high, 1050, 1200, 1350);
    job.equipment.climate = known(Climate::humid);
    check_window(air_needs(job, facts_of(job, limits), limits), Call::cool_high, 975, 1050, 1350);
    job.equipment.cooling = known(ton_cooling(3.5));
    check_window(air_needs(job, facts_of(job, limits), limits), Call::cool_high, 1137.5, 1225, 1575);
    job.equipment.climate = known(Climate::dry);
    check_window(air_needs(job, facts_of(job, limits), limits), Call::cool_high, 1225, 1575, 1750);
    job.equipment.climate = {};
    const AirNeeds needs = air_needs(job, facts_of(job, limits), limits);
    check_window(needs, Call::cool_high, 1225, 1400, 1575);
    BOOST_TEST(has(needs.assumed, "equipment.climate"));
}

BOOST_AUTO_TEST_CASE(a_tightened_limit_keeps_the_target_inside_the_window) {
    Limits tighter;
    BOOST_REQUIRE(tighter.tighten("cooling.high", 390, "shop") == Limits::Tightening::accepted);
    check_window(air_needs(furnace(), facts_of(furnace(), tighter), tighter), Call::cool_high, 1050, 1170,
                 1170);
    BOOST_REQUIRE(tighter.tighten("cooling.low", 460, "shop") == Limits::Tightening::accepted);
    check_window(air_needs(furnace(), facts_of(furnace(), tighter), tighter), Call::cool_high, 1170, 1170,
                 1170);
}

BOOST_AUTO_TEST_CASE(a_furnace_window_comes_from_output_and_rise) {
    FailedUnit job = furnace();
    job.equipment.heat_output = {};
    job.equipment.heat_input = known(btu_per_hour(60000));
    job.equipment.efficiency = known(0.95);
    check_window(air_needs(job, facts_of(job, limits), limits), Call::heat_high, 812.0, 1055.6, 1507.9);
    BOOST_TEST(get(air_needs(job, facts_of(job, limits), limits), Call::heat_high)->hard);
    job.equipment.efficiency = {};
    const AirNeeds needs = air_needs(job, facts_of(job, limits), limits);
    BOOST_TEST(get(needs, Call::heat_high)->unmet_reason == UnmetReason::window_not_known);
    BOOST_TEST(has(get(needs, Call::heat_high)->lacking, "equipment.efficiency"));
    BOOST_TEST(get(needs, Call::heat_high)->high.in(cfm) == 0);
}

BOOST_AUTO_TEST_CASE(thin_air_needs_more_cfm_for_the_same_heat) {
    FailedUnit job = furnace();
    job.equipment.altitude = known(foot(5000));
    // 64,000 / (0.8973 x 50): psychrolib 1.1.1; the formula's standard air is 0.15 % heavier.
    BOOST_CHECK_CLOSE(get(air_needs(job, facts_of(job, limits), limits), Call::heat_high)->target.in(cfm),
                      1426.5, 0.2);
}

BOOST_AUTO_TEST_CASE(elements_have_a_hard_least_airflow) {
    FailedUnit job = air_handler(HeatKind::electric);
    job.equipment.electric_heat = known(kilowatt(15));
    job.equipment.electric_heat_volts = known(volt(240));
    job.equipment.supply = known(bare_supply(volt(240)));
    // 15 kW at 50, 40, 20 F: 947.8, 1,184.8, 2,369.5 cfm; cooling would allow 1,350. By hand.
    check_window(air_needs(job, facts_of(job, limits), limits), Call::electric_heat, 947.8, 1184.8, 2369.5);
    BOOST_TEST(get(air_needs(job, facts_of(job, limits), limits), Call::electric_heat)->hard);
    BOOST_TEST(!get(air_needs(job, facts_of(job, limits), limits), Call::heat_high));
}

BOOST_AUTO_TEST_CASE(elements_beside_a_heat_pump_need_the_greater_airflow) {
    FailedUnit job = air_handler(HeatKind::heat_pump);
    job.equipment.electric_heat = known(kilowatt(5));
    // 5 kW alone needs 315.9; the 3 t heat pump 1,050. By hand.
    check_window(air_needs(job, facts_of(job, limits), limits), Call::electric_heat, 1050, 1200, 1350);
    check_window(air_needs(job, facts_of(job, limits), limits), Call::heat_high, 1050, 1200, 1350);
    BOOST_TEST(!get(air_needs(job, facts_of(job, limits), limits), Call::heat_high)->hard);
}

BOOST_AUTO_TEST_CASE(terminals_name_the_calls) {
    FailedUnit job = furnace();
    job.controls.terminals = known(std::vector<Terminal>{
        {"Y1", Call::cool_low}, {"Y2", Call::cool_high}, {"G", Call::circulate}, {"DH", Call::dehumidify}});
    const AirNeeds needs = air_needs(job, facts_of(job, limits), limits);
    BOOST_TEST(needs.calls.size() == 4u);
    BOOST_TEST(!get(needs, Call::heat_high));
    check_window(needs, Call::cool_low, 735, 840, 945);     // 0.70 of capacity
    check_window(needs, Call::dehumidify, 900, 990, 1080);  // 0.75, 0.825, 0.90 of 1,200; 300 a ton is 900
    check_window(needs, Call::circulate, 480, 600, 1200);   // 0.40, 0.50, 1.00 of 1,200
    BOOST_TEST(has(needs.assumed, "equipment.low_cooling"));
}

BOOST_AUTO_TEST_CASE(a_heating_terminal_of_an_electric_furnace_is_its_elements) {
    FailedUnit job = air_handler(HeatKind::electric);
    job.equipment.electric_heat = known(kilowatt(10));
    job.controls.terminals = known(std::vector<Terminal>{{"W1", Call::heat_high}, {"G", Call::circulate}});
    const AirNeeds needs = air_needs(job, facts_of(job, limits), limits);
    BOOST_TEST(needs.calls.size() == 2u);
    BOOST_TEST(get(needs, Call::heat_high)->basis == WindowBasis::electric_elements);
}

BOOST_AUTO_TEST_CASE(heating_of_an_unknown_kind_is_asked_for) {
    FailedUnit job = air_handler(HeatKind::gas);
    job.controls.heat = {};
    job.controls.terminals = known(std::vector<Terminal>{{"W1", Call::heat_high}});
    const AirNeeds needs = air_needs(job, facts_of(job, limits), limits);
    BOOST_TEST(has(get(needs, Call::heat_high)->lacking, "controls.heat"));
}

BOOST_AUTO_TEST_CASE(a_heat_pumps_heating_terminal_carries_its_elements) {
    FailedUnit job = air_handler(HeatKind::heat_pump);
    job.equipment.electric_heat = known(kilowatt(20));
    job.controls.terminals = known(
        std::vector<Terminal>{{"Y1", Call::cool_high}, {"W1", Call::heat_high}, {"G", Call::circulate}});
    const AirNeeds needs = air_needs(job, facts_of(job, limits), limits);
    BOOST_TEST(needs.calls.size() == 3u);
    // 20 kW at 50 F needs 1,263.8 cfm, more than the heat pump's 1,050; at 40 F 1,579.8. By hand.
    BOOST_TEST(get(needs, Call::heat_high)->hard);
    BOOST_CHECK_CLOSE(get(needs, Call::heat_high)->low.in(cfm), 1263.8, 0.1);
    BOOST_CHECK_CLOSE(get(needs, Call::heat_high)->target.in(cfm), 1579.8, 0.1);
    // With a terminal of their own the heat pump's heating keeps its own window.
    job.controls.terminals = known(
        std::vector<Terminal>{{"Y1", Call::heat_high}, {"W1", Call::electric_heat}, {"G", Call::circulate}});
    BOOST_TEST(!get(air_needs(job, facts_of(job, limits), limits), Call::heat_high)->hard);
}
