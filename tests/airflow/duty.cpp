// The old motor's duty, worked out by hand: watts times 0.70 n/1,200, 745.7 W a hp, 5,252.113 hp/rpm of torque; slip of 125 rpm
// at 39.09 oz-ft. A blower's torque goes with the square of its airflow on one duct, its power with the cube.
#include "engine/airflow/duty.hpp"

#include "tests/airflow/fixtures.hpp"

using namespace endbell;
using namespace endbell::test;

namespace {

std::optional<Duty> duty_of(const FailedUnit& job) {
    return measured_duty(job, facts_of(job, limits), limits);
}

DuctPoint point_of(const FailedUnit& job) {
    return plan_air(job, constant_torque(0.75, {20, 30}), limits).point;
}

}  // namespace

BOOST_AUTO_TEST_CASE(the_duty_is_that_of_the_largest_call) {
    // 1,097.67 rpm slips 102.33 of 125: 32 oz-ft. Cooling wants 1,200 of 1,145.6 cfm: 1.04749 times.
    const auto duty = duty_of(furnace());
    BOOST_REQUIRE(duty);
    BOOST_TEST(duty->largest);
    BOOST_TEST(duty->from == TorqueSource::slip_line);
    BOOST_CHECK_CLOSE(duty->torque.in(ounce_foot).value, 35.11, 0.1);
    BOOST_CHECK_CLOSE(duty->shaft.in(horsepower).value, 0.4804, 0.2);
    // 15 % of the line, 10.98 of 102.33 rpm, and 7 % of airflow twice.
    BOOST_CHECK_CLOSE(duty->torque.relative(), 0.2316, 0.5);
}

BOOST_AUTO_TEST_CASE(without_airflow_only_the_high_speed_tells_the_largest_duty) {
    FailedUnit job = furnace();
    job.measured.airflow = {};
    BOOST_TEST(duty_of(job)->largest);
    BOOST_CHECK_CLOSE(duty_of(job)->torque.in(ounce_foot).value, 32.0, 0.1);
    job.measured.speed = known(rpm(1000));
    job.measured.watts = known(watt(300));
    BOOST_TEST(!duty_of(job)->largest);
}

BOOST_AUTO_TEST_CASE(a_plate_is_no_measured_duty) {
    FailedUnit job = furnace();
    job.measured.speed = {};
    BOOST_TEST(!duty_of(job));
    BOOST_TEST(point_of(job).torque_from == TorqueSource::plate_power);
    job.unit.load = known(Load::outdoor_fan);
    job.measured.watts = known(watt(300));
    BOOST_TEST(!duty_of(job));
}

// Watts: 0.12, 0.02 and 0.01 of rpm are 0.1221; slip: 0.15 and 10.98 of 102.33 are 0.1844; together 0.1018.
BOOST_AUTO_TEST_CASE(leads_and_slip_that_agree_are_taken_together) {
    FailedUnit job = furnace();
    job.measured.watts = known(watt(487));  // 0.64031 of it is 311.8 W: 2.0008 lb-ft
    DuctPoint point = point_of(job);
    BOOST_TEST(point.torque_from == TorqueSource::watts);
    BOOST_TEST(point.torque_with == TorqueSource::slip_line);
    BOOST_CHECK_CLOSE(point.torque.in(pound_foot).value, 2.0006, 0.1);
    BOOST_CHECK_CLOSE(point.torque.relative(), 0.1018, 0.5);
    job.measured.watts = known(watt(400));  // 1.6434 by watts counts 0.6952, 2.0 by slip the rest
    BOOST_CHECK_CLOSE(point_of(job).torque.in(pound_foot).value, 1.7521, 0.1);
}

BOOST_AUTO_TEST_CASE(a_slip_that_cannot_be_the_high_speeds_leaves_the_watts_alone) {
    FailedUnit job = furnace();
    job.measured.watts = known(watt(300));  // 1.2326 lb-ft: 0.767 off, and both spreads make 0.398
    const DuctPoint point = point_of(job);
    BOOST_CHECK_CLOSE(point.torque.in(pound_foot).value, 1.2326, 0.1);
    BOOST_TEST(!point.torque_with);
}

BOOST_AUTO_TEST_CASE(a_service_factor_is_not_spent_on_a_blower) {
    // 0.41799 hp at the old point on 1/3 hp: 1.25 of the rating, 0.93 of it with a factor of 1.35.
    Part part = capacitor_run(1.0 / 3, {1075});
    part.motor->service_factor = 1.35;
    const AirPlan plan = plan_air(furnace(), part, limits);
    BOOST_REQUIRE(plan.taps.size() == 1U);
    BOOST_TEST(plan.taps.front().caution == LoadCaution::overload);
    BOOST_TEST(plan.taps.front().load.value > 1.1);
}

BOOST_AUTO_TEST_CASE(what_is_near_a_limit_holds_over_no_range) {
    // 0.40 hp binds the strongest tap: 1,128.9 cfm lie well within 1,050 to 1,350.
    FailedUnit job = furnace();
    job.controls.heat = known(HeatKind::none);
    job.equipment.heat_output = {};
    job.measured.airflow = known(cfm(1200));
    job.equipment.static_limit = known(inch_water(0.9));
    const auto assured = [&](const Part& part) {
        const AirPlan plan = plan_air(job, part, limits);
        const CallAir* cooling = find_call(plan, Call::cool_high);
        BOOST_REQUIRE((cooling && cooling->met));
        return cooling->assured;
    };
    BOOST_TEST(assured(constant_torque(0.75, {32})));
    BOOST_TEST(!assured(constant_torque(0.42, {32})));  // 0.418 of 0.42 hp
    job.equipment.static_limit = known(inch_water(0.5));
    BOOST_TEST(!assured(constant_torque(0.75, {32})));
}
