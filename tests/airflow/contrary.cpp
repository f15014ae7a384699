// Readings of the air that cannot all be true, at each limit and on both sides of it. Worked out by hand: 1.08 Btu/h a cfm and F,
// 117.557 W for 1,000 cfm against 1 in. w.c.; a blower makes at most 0.70 of its watts into air, and its fastest tap moves
// at most twice the air of its slowest.
#include "engine/airflow/contrary.hpp"

#include <boost/test/unit_test.hpp>

#include "tests/airflow/fixtures.hpp"

using namespace endbell;
using namespace endbell::test;

namespace {

using Keys = std::vector<ContraryKeys>;

Keys contrary(const FailedUnit& job) {
    return contrary_air(job, facts_of(job, limits), limits);
}

FailedUnit furnace_with(double cfm_read, double rise) {
    FailedUnit job = furnace();
    job.measured.airflow = known(cfm(cfm_read));
    job.measured.rise = known(fahrenheit_degree(rise));
    return job;
}

const Keys air_and_rise{{"measured.airflow", "measured.rise"}};

}  // namespace

BOOST_AUTO_TEST_CASE(a_rise_and_an_airflow_more_than_two_taps_apart_cannot_both_be_true) {
    // 64,000 / (1.08 * 55) = 1,077 cfm: 539 to 2,155.
    BOOST_TEST((contrary(furnace_with(2180, 55)) == air_and_rise));
    BOOST_TEST(contrary(furnace_with(2130, 55)).empty());
    BOOST_TEST(contrary(furnace_with(550, 55)).empty());
    BOOST_TEST((contrary(furnace_with(525, 55)) == air_and_rise));
}

BOOST_AUTO_TEST_CASE(the_rise_of_elements_counts_and_that_beside_a_compressor_does_not) {
    FailedUnit job = furnace_with(500, 30);  // 10 kW are 34,121 Btu/h: 1,053 cfm, so 527 to 2,106
    job.equipment.heat_output = {};
    job.equipment.electric_heat = known(kilowatt(10));
    job.controls.heat = known(HeatKind::electric);
    BOOST_TEST(contrary(job).empty());  // 240 V elements on 208 V give 7.5 kW: 395 cfm would still do
    job.equipment.electric_heat_volts = known(volt(240));
    job.equipment.supply = known(bare_supply(volt(240)));
    job.measured.line_volts = known<LineVolts>(volt(240));
    BOOST_TEST((contrary(job) == air_and_rise));
    job.measured.airflow = known(cfm(560));
    BOOST_TEST(contrary(job).empty());
    job.measured.airflow = known(cfm(500));
    job.controls.heat = known(HeatKind::heat_pump);
    BOOST_TEST(contrary(job).empty());
}

BOOST_AUTO_TEST_CASE(more_air_than_the_watts_can_move_cannot_be_true) {
    FailedUnit job = furnace();  // 1,145.6 cfm against 0.6507 in.: 87.6 W of air, so 125.2 W in
    job.measured.watts = known(watt(124));
    BOOST_TEST((contrary(job) == Keys{{"measured.airflow", "measured.static_total", "measured.watts"}}));
    job.measured.watts = known(watt(127));
    BOOST_TEST(contrary(job).empty());
    job.measured.static_total = {};
    job.measured.static_supply = known(inch_water(0.40));
    job.measured.static_return = known(inch_water(-0.2507));
    job.measured.watts = known(watt(124));
    BOOST_TEST((contrary(job) == Keys{{"measured.airflow", "measured.static_supply", "measured.static_return",
                                       "measured.watts"}}));
}

BOOST_AUTO_TEST_CASE(a_speed_that_no_induction_motor_reaches_is_read_again) {
    FailedUnit job = furnace();
    job.measured.speed = known(rpm(1250));  // six poles at 60 Hz: below 1,200
    BOOST_TEST((contrary(job) == Keys{{"measured.speed", "plate.speed"}}));
}

BOOST_AUTO_TEST_CASE(no_tap_is_chosen_by_readings_that_cannot_be_true) {
    const Part part = constant_torque(0.75, {30, 36});
    BOOST_TEST(plan_air(furnace_with(1100, 55), part, limits).computed);
    const AirPlan plan = plan_air(furnace_with(2300, 55), part, limits);
    BOOST_TEST(!plan.computed);
    BOOST_TEST(!plan.point.airflow.known());
    BOOST_TEST(plan.taps.empty());
    BOOST_TEST(has(plan.contradictions, "measured.airflow and measured.rise"));
    BOOST_TEST(has(plan.lacking, "measured.airflow"));
    BOOST_TEST(has(plan.lacking, "measured.rise"));
}

BOOST_AUTO_TEST_CASE(what_takes_no_part_stays_read) {
    const FailedUnit job = furnace_with(2300, 55);
    const FailedUnit settled = without_contrary(job, contrary(job));
    BOOST_TEST(!settled.measured.airflow);
    BOOST_TEST(!settled.measured.rise);
    BOOST_TEST((settled.measured.static_total.value == job.measured.static_total.value));
    BOOST_TEST((settled.measured.speed.value == job.measured.speed.value));
}
