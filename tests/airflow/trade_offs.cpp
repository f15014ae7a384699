// What each tap choice costs, what stands over the plate, and the fan energy of the plan. Values by hand.
#include "engine/airflow/trade_offs.hpp"

#include <boost/test/unit_test.hpp>

#include "tests/airflow/fixtures.hpp"

using namespace endbell;
using namespace endbell::test;

namespace {

// W28 of the research: 12, 20, 24, 28, 32, 36 oz-ft on the furnace's duct; cooling gets 36, 1,215.1 cfm.
const std::vector<double> six{12, 20, 24, 28, 32, 36};

}  // namespace

BOOST_AUTO_TEST_CASE(the_tap_beside_the_chosen_one_is_weighed) {
    const AirPlan plan = plan_air(furnace(), constant_torque(.75, six), limits);
    const CallAir* cool = find_call(plan, Call::cool_high);
    BOOST_REQUIRE(cool && cool->tap == 6);
    BOOST_REQUIRE(cool->trades.size() == 1u);  // none above
    const TapTrade& down = cool->trades.front();
    BOOST_TEST(down.tap == 5);
    BOOST_TEST(down.in_window);
    BOOST_CHECK_CLOSE(down.airflow.in(cfm), 1145.6 - 1215.1, 0.1);
    // Static goes with torque: 0.6507 at 32 oz-ft, 0.7320 at 36. Sound: 50 log10(1,145.6 / 1,215.1) = -1.279 dB.
    BOOST_CHECK_CLOSE(down.static_total->in(inch_water), 0.6507 - 0.7320, 0.2);
    BOOST_CHECK_CLOSE(down.decibels, -1.279, 0.2);
    BOOST_TEST(down.input_power->in(watt) < 0);
    BOOST_CHECK_CLOSE(*cool->cfm_per_ton, 405.03, 0.1);  // 1,215.1 / 3
}

BOOST_AUTO_TEST_CASE(static_over_the_plate_always_has_its_cures) {
    FailedUnit job = furnace();
    const AirPlan plan = plan_air(job, constant_torque(.75, six), limits);
    BOOST_REQUIRE(plan.static_over);
    BOOST_CHECK_CLOSE(plan.static_over->found.in(inch_water), 0.7320, 0.1);
    BOOST_TEST(plan.static_over->most.in(inch_water) == 0.5);
    BOOST_TEST(!plan.static_over->plate_says);
    const std::vector<StaticCure> all{StaticCure::filter, StaticCure::coil, StaticCure::lower_tap,
                                      StaticCure::duct};
    BOOST_TEST(plan.static_over->cures == all, boost::test_tools::per_element());
    // A filter and a coil that were read and are good are no cure; a return of 20 x 25 in takes 1,000 cfm at 2 a square inch.
    job.measured.filter_drop = known(inch_water(0.12));
    job.measured.coil_drop = known(inch_water(0.25));
    job.equipment.return_size = known(500.0);
    const std::vector<StaticCure> left{StaticCure::return_face, StaticCure::lower_tap, StaticCure::duct};
    const AirPlan read = plan_air(job, constant_torque(.75, six), limits);
    BOOST_TEST(read.static_over->cures == left, boost::test_tools::per_element());
    job.equipment.static_limit = known(inch_water(0.8));
    BOOST_TEST(!plan_air(job, constant_torque(.75, six), limits).static_over);
    // Nothing worked out: the reading itself is over the plate.
    job.equipment.static_limit = known(inch_water(0.5));
    job.measured.airflow = {};
    job.measured.speed = {};
    const AirPlan bare = plan_air(job, constant_torque(.75, six), limits);
    BOOST_REQUIRE(bare.static_over);
    BOOST_TEST(!bare.static_over->call);
    BOOST_CHECK_CLOSE(bare.static_over->found.in(inch_water), 0.6507, 1e-6);
}

BOOST_AUTO_TEST_CASE(the_fan_energy_rating_is_the_formula_of_the_plans_watts) {
    FailedUnit job = furnace();
    job.equipment.efficiency = known(.8);
    const AirPlan plan = plan_air(job, constant_torque(.75, six), limits);
    BOOST_REQUIRE(plan.fan_energy);
    const auto watts = [&](Call call) { return air_of(plan, call)->input_power.value().in(watt); };
    const double most = air_of(plan, Call::cool_high)->airflow.value().in(cfm);
    const double wanted =
        (640 * watts(Call::cool_high) + 830 * watts(Call::heat_high) + 400 * watts(Call::circulate)) /
        (1870 * most) * 1000;
    BOOST_CHECK_CLOSE(plan.fan_energy->rating, wanted, 1e-6);
    BOOST_TEST(plan.fan_energy->furnace == FurnaceClass::gas_non_condensing);
    BOOST_CHECK_CLOSE(*plan.fan_energy->most, 0.044 * most + 182, 1e-6);
    job.controls.heat = known(HeatKind::heat_pump);
    BOOST_TEST(!plan_air(job, constant_torque(.75, six), limits).fan_energy);
}

BOOST_AUTO_TEST_CASE(a_taps_efficiency_names_what_it_was_taken_from) {
    Part part = constant_torque(.75, six);
    const AirPlan usual = plan_air(furnace(), part, limits);
    BOOST_TEST(usual.taps[0].efficiency_from == EfficiencySource::usual_electronic);
    BOOST_TEST(usual.taps[0].efficiency.assumed);
    part.motor->efficiency = 0.82;
    BOOST_TEST(plan_air(furnace(), part, limits).taps[0].efficiency_from ==
               EfficiencySource::printed_electronic);
    const AirPlan slip = plan_air(furnace(), capacitor_run(.5, {825, 1075}), limits);
    BOOST_REQUIRE(!slip.taps.empty());
    BOOST_TEST(slip.taps.back().efficiency_from == EfficiencySource::usual_slip);
    // Shaft power over input is what is printed beside it.
    const TapAir& tap = slip.taps.back();
    BOOST_CHECK_CLOSE(tap.shaft_power.value().in(watt) / tap.input_power.value().in(watt),
                      tap.efficiency.value, 1e-6);
}
