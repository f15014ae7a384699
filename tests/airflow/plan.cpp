// plan_air: windows, old point, taps, assignment, and what it says when readings are missing.
#include "engine/airflow/air_plan.hpp"

#include <boost/test/unit_test.hpp>

#include "tests/airflow/fixtures.hpp"

using namespace endbell;
using namespace endbell::test;

namespace {

const CallAir& call_of(const AirPlan& plan, Call call) {
    const CallAir* found = find_call(plan, call);
    BOOST_REQUIRE(found);
    return *found;
}

const TapAir& tap_of(const AirPlan& plan, int number) {
    for (const TapAir& tap : plan.taps) {
        if (tap.tap == number) return tap;
    }
    BOOST_FAIL("no such tap");
    return plan.taps.front();
}

const std::vector<double> six_taps{12, 20, 24, 28, 32, 36};

}  // namespace

// Expected airflows, rises and taps: calculated by hand, Q1 sqrt(T2/T1) from 1,145.6 cfm at 32 oz-ft.
BOOST_AUTO_TEST_CASE(each_call_gets_the_tap_nearest_its_target) {
    const AirPlan plan = plan_air(furnace(), constant_torque(0.75, six_taps), limits);
    BOOST_REQUIRE(plan.computed);
    BOOST_TEST(plan.method == AirMethod::torque_ratio);
    BOOST_TEST(plan.point.torque_from == TorqueSource::slip_line);
    BOOST_CHECK_CLOSE(plan.point.torque.in(pound_foot).value * 16, 32.0, 0.1);
    BOOST_REQUIRE(plan.taps.size() == 6u);
    BOOST_CHECK_CLOSE(tap_of(plan, 1).airflow.in(cfm).value, 701.5, 0.1);
    BOOST_CHECK_CLOSE(tap_of(plan, 2).airflow.in(cfm).value, 905.7, 0.1);
    BOOST_CHECK_CLOSE(tap_of(plan, 5).airflow.in(cfm).value, 1145.6, 0.1);
    BOOST_CHECK_CLOSE(tap_of(plan, 6).airflow.in(cfm).value, 1215.1, 0.1);
    BOOST_CHECK_CLOSE(tap_of(plan, 6).static_total.in(inch_water).value, 0.732, 0.1);
    BOOST_TEST(call_of(plan, Call::cool_high).tap.value() == 6);
    BOOST_TEST(call_of(plan, Call::heat_high).tap.value() == 6);
    BOOST_TEST(call_of(plan, Call::circulate).tap.value() == 1);
    BOOST_CHECK_CLOSE(call_of(plan, Call::heat_high).expected_rise.in(fahrenheit_degree).value, 48.77, 0.1);
    BOOST_CHECK_CLOSE(call_of(plan, Call::heat_high).low.in(cfm), 911.7, 0.1);
    BOOST_CHECK_CLOSE(call_of(plan, Call::heat_high).target.in(cfm), 1185.2, 0.1);
    BOOST_TEST(call_of(plan, Call::heat_high).hard);
    BOOST_TEST(air_of(plan, Call::cool_high)->tap == 6);
}

BOOST_AUTO_TEST_CASE(a_motor_of_no_power_is_one_of_unknown_power) {
    const AirPlan plan = plan_air(furnace(), constant_torque(0, six_taps), limits);
    BOOST_REQUIRE(plan.computed);
    BOOST_CHECK_CLOSE(tap_of(plan, 5).airflow.in(cfm).value, 1145.6, 0.1);
    BOOST_TEST(!tap_of(plan, 5).load.known);
}

BOOST_AUTO_TEST_CASE(a_furnace_rise_is_never_traded_for_a_tap_below_it) {
    // 20 oz-ft gives 905.7 cfm: 65.43 F of a permitted 65. By hand.
    const AirPlan plan = plan_air(furnace(), constant_torque(0.75, {12, 20}), limits);
    BOOST_TEST(!call_of(plan, Call::heat_high).tap.has_value());
    BOOST_TEST(call_of(plan, Call::heat_high).unmet_reason == UnmetReason::no_tap_in_window);
    BOOST_TEST(call_of(plan, Call::circulate).met);
}

BOOST_AUTO_TEST_CASE(after_the_duct_is_mended_the_same_torque_moves_more_and_another_tap_serves) {
    // k falls to 0.347222: 32 oz-ft gives 1,200.5 cfm on the reference blower, so 36 gives 1,273.4.
    FailedUnit job = furnace();
    job.measured.airflow = known(cfm(1200.5));
    job.measured.static_total = known(inch_water(0.5004));
    const AirPlan plan = plan_air(job, constant_torque(0.75, six_taps), limits);
    BOOST_CHECK_CLOSE(tap_of(plan, 6).airflow.in(cfm).value, 1273.4, 0.1);
    BOOST_TEST(call_of(plan, Call::cool_high).tap.value() == 5);
}

BOOST_AUTO_TEST_CASE(without_an_airflow_windows_are_given_and_no_tap_is_guessed) {
    FailedUnit job = furnace();
    job.measured = {};
    const AirPlan plan = plan_air(job, constant_torque(0.75, six_taps), limits);
    BOOST_TEST(!plan.computed);
    BOOST_TEST(plan.taps.empty());
    BOOST_TEST(has(plan.lacking, "measured.airflow"));
    BOOST_TEST(has(plan.lacking, "measured.static_total"));
    BOOST_CHECK_CLOSE(call_of(plan, Call::cool_high).target.in(cfm), 1200.0, 1e-9);
    BOOST_TEST(call_of(plan, Call::cool_high).unmet_reason == UnmetReason::not_measured);
    BOOST_TEST(!call_of(plan, Call::cool_high).tap.has_value());
}

BOOST_AUTO_TEST_CASE(airflow_comes_from_the_rise_where_nobody_measured_it) {
    // 64,000 / (1.08 x 50) = 1,185.2 cfm. By hand. 1.4 of 50 F and 3 % of output: 4.1 %.
    FailedUnit job = furnace();
    job.measured.airflow = {};
    job.measured.rise = known(fahrenheit_degree(50));
    const AirPlan plan = plan_air(job, constant_torque(0.75, six_taps), limits);
    BOOST_TEST(plan.point.airflow_from == AirflowSource::temperature_rise);
    BOOST_CHECK_CLOSE(plan.point.airflow.in(cfm).value, 1185.2, 0.1);
    BOOST_CHECK_CLOSE(plan.point.airflow.in(cfm).plus_minus, 1185.2 * 0.04104, 0.5);
    BOOST_TEST(!plan.point.airflow.assumed());
    job.equipment.altitude = {};
    BOOST_TEST(plan_air(job, constant_torque(0.75, six_taps), limits).point.airflow.assumed());
}

BOOST_AUTO_TEST_CASE(the_best_reading_decides_the_old_torque) {
    FailedUnit job = furnace();
    const Part part = constant_torque(0.75, six_taps);
    job.measured.watts = known(watt(480));
    job.measured.speed = known(rpm(1000));
    AirPlan plan = plan_air(job, part, limits);
    BOOST_TEST(plan.point.torque_from == TorqueSource::watts);
    // 480 W x 0.70 x 1000/1200 = 280 W = 0.3755 hp; x 5252.113 / 1000 = 1.972 lb-ft. By hand.
    BOOST_CHECK_CLOSE(plan.point.torque.in(pound_foot).value, 1.972, 0.1);
    BOOST_TEST(has(plan.assumed, "plate.efficiency"));

    job.measured.watts = {};
    job.measured.speed = {};
    plan = plan_air(job, part, limits);
    BOOST_TEST(plan.point.torque_from == TorqueSource::plate_power);
    // 0.8 of 2.4428 lb-ft. By hand.
    BOOST_CHECK_CLOSE(plan.point.torque.in(pound_foot).value, 1.9542, 0.1);
    BOOST_TEST(plan.point.torque.assumed());
    BOOST_TEST(plan.point.speed.assumed());
    BOOST_TEST(tap_of(plan, 6).airflow.assumed());

    job.measured.amps = known<LineAmps>(ampere(4.5));
    plan = plan_air(job, part, limits);
    BOOST_TEST(plan.point.torque_from == TorqueSource::amps);
    BOOST_TEST(has(plan.assumed, "measured.watts"));
}

BOOST_AUTO_TEST_CASE(a_wider_reading_gives_a_wider_answer) {
    FailedUnit job = furnace();
    const Part part = constant_torque(0.75, six_taps);
    const EstimatedNumber by_slip = tap_of(plan_air(job, part, limits), 6).airflow.in(cfm);
    job.measured.speed = {};
    const EstimatedNumber by_plate = tap_of(plan_air(job, part, limits), 6).airflow.in(cfm);
    BOOST_TEST(by_plate.plus_minus > by_slip.plus_minus);
    // At the old torque: root of 7 % (airflow), half of 15.. % (slip), half of 5 % (tap): by hand 0.11 of
    // 1,145.6.
    const EstimatedNumber same = tap_of(plan_air(furnace(), part, limits), 5).airflow.in(cfm);
    BOOST_CHECK_CLOSE(same.plus_minus / same.value, 0.115, 8.0);
}

BOOST_AUTO_TEST_CASE(a_speed_limit_binds_and_the_airflow_is_found_again) {
    // On one duct rpm follows cfm: 1,100 rpm of 1,097.67 at 1,145.6 cfm is 1,148.0 cfm, below the 1,215 the
    // tap asks.
    Part part = constant_torque(0.75, six_taps);
    part.motor->speed_limit = rpm(1100);
    const AirPlan plan = plan_air(furnace(), part, limits);
    BOOST_TEST(tap_of(plan, 6).bound == MotorLimit::speed);
    BOOST_CHECK_CLOSE(tap_of(plan, 6).airflow.in(cfm).value, 1148.03, 0.1);
    BOOST_TEST(!tap_of(plan, 5).bound);
}

BOOST_AUTO_TEST_CASE(a_power_limit_binds_and_the_airflow_is_found_again) {
    // Shaft power at the old point: 2.0 lb-ft x 1,097.67 / 5252.113 = 0.41799 hp; 0.40 hp at
    // (0.40/0.41799)^(1/3).
    const AirPlan plan = plan_air(furnace(), constant_torque(0.40, six_taps), limits);
    BOOST_TEST(tap_of(plan, 6).bound == MotorLimit::power);
    BOOST_CHECK_CLOSE(tap_of(plan, 6).airflow.in(cfm).value, 1145.6 * 0.98544, 0.1);
    BOOST_TEST(tap_of(plan, 6).caution == LoadCaution::near_full_load);
    BOOST_CHECK_CLOSE(tap_of(plan, 6).load.value, 1.0, 0.1);
}

BOOST_AUTO_TEST_CASE(the_same_capacitor_run_motor_settles_where_the_old_one_did) {
    const AirPlan plan = plan_air(furnace(), capacitor_run(0.5, {825, 950, 1075}), limits);
    BOOST_TEST(plan.method == AirMethod::slip_line);
    BOOST_CHECK_CLOSE(tap_of(plan, 3).airflow.in(cfm).value, 1145.6, 0.1);
    BOOST_CHECK_CLOSE(tap_of(plan, 3).speed.in(rpm).value, 1097.67, 0.1);
    // Efficiency 0.70 x 1097.67/1200 of 311.7 W shaft: 486.8 W. By hand.
    BOOST_CHECK_CLOSE(tap_of(plan, 3).input_power.in(watt).value, 486.8, 0.2);
    BOOST_TEST(tap_of(plan, 3).input_power.assumed());
    BOOST_TEST(tap_of(plan, 1).airflow.in(cfm).value < tap_of(plan, 2).airflow.in(cfm).value);
    // A lighter fan than the plate's runs each tap faster than its printed speed.
    BOOST_TEST(tap_of(plan, 1).speed.in(rpm).value > 825);
}

BOOST_AUTO_TEST_CASE(an_overloaded_tap_serves_no_call) {
    // 1/4 hp on a fan that took 0.418 hp: overloaded on every tap.
    const AirPlan plan = plan_air(furnace(), capacitor_run(0.25, {1075}), limits);
    BOOST_TEST(tap_of(plan, 1).caution == LoadCaution::overload);
    BOOST_TEST(call_of(plan, Call::heat_high).unmet_reason == UnmetReason::overload);
    BOOST_TEST(!call_of(plan, Call::heat_high).tap.has_value());
}

BOOST_AUTO_TEST_CASE(speed_alone_gives_airflow_by_the_fan_laws) {
    FailedUnit job = furnace();
    job.plate = {};
    Part part = capacitor_run(0.5, {825, 1075});
    part.motor->ratings[0].power.reset();
    const AirPlan plan = plan_air(job, part, limits);
    BOOST_TEST(plan.method == AirMethod::fan_laws);
    BOOST_CHECK_CLOSE(tap_of(plan, 1).airflow.in(cfm).value, 1145.6 * 825 / 1097.67, 0.1);
    BOOST_TEST(!tap_of(plan, 1).shaft_power.known());
    BOOST_TEST(!tap_of(plan, 1).input_power.known());
}

BOOST_AUTO_TEST_CASE(a_constant_airflow_module_is_tried_at_each_target) {
    Part part;
    part.kind = PartKind::module;
    part.module = Module{};
    part.module->power = horsepower(0.75);
    const AirPlan plan = plan_air(furnace(), part, limits);
    BOOST_TEST(plan.method == AirMethod::programmed_airflow);
    BOOST_TEST(plan.computed);
    BOOST_TEST(plan.taps.empty());
    const CallAir& cool = call_of(plan, Call::cool_high);
    BOOST_TEST(cool.met);
    BOOST_TEST(!cool.tap.has_value());
    BOOST_CHECK_CLOSE(cool.programmed->airflow.in(cfm).value, 1200.0, 0.01);
    // 0.41799 hp x (1200/1145.6)^3. By hand.
    BOOST_CHECK_CLOSE(cool.programmed->shaft_power.in(horsepower).value, 0.48040, 0.1);
    BOOST_TEST(air_of(plan, Call::cool_high) == &*cool.programmed);
    BOOST_TEST(has(plan.assumed, "motors.program"));
}

BOOST_AUTO_TEST_CASE(fans_and_inducers_have_no_calls) {
    for (Load load : {Load::outdoor_fan, Load::draft_inducer}) {
        FailedUnit job = furnace();
        job.unit.load = known(load);
        const AirPlan plan = plan_air(job, capacitor_run(0.25, {1075}), limits);
        BOOST_TEST(!plan.computed);
        BOOST_TEST(plan.method == AirMethod::no_calls);
        BOOST_TEST(plan.calls.empty());
        BOOST_TEST(plan.lacking.empty());
    }
}

BOOST_AUTO_TEST_CASE(an_unknown_load_is_asked_for) {
    const AirPlan plan = plan_air(FailedUnit{}, capacitor_run(0.25, {1075}), limits);
    BOOST_TEST(!plan.computed);
    BOOST_TEST(has(plan.lacking, "unit.load"));
}

BOOST_AUTO_TEST_CASE(a_serial_motor_is_left_to_its_board) {
    const AirPlan plan = plan_air(furnace(), motor_part(Family::communicating, 0.5), limits);
    BOOST_TEST(!plan.computed);
    BOOST_TEST(plan.method == AirMethod::by_the_board);
    BOOST_TEST(plan.lacking.empty());
}

BOOST_AUTO_TEST_CASE(taps_without_torque_are_asked_for) {
    Part part = constant_torque(0.75, {20, 30});
    part.motor->taps[0].torque.reset();
    AirPlan plan = plan_air(furnace(), part, limits);
    BOOST_TEST(plan.computed);
    BOOST_TEST(plan.taps.size() == 1u);
    BOOST_TEST(has(plan.lacking, "taps.torque"));
    part.motor->taps.clear();
    plan = plan_air(furnace(), part, limits);
    BOOST_TEST(!plan.computed);
    BOOST_TEST(has(plan.lacking, "taps.torque"));
}

BOOST_AUTO_TEST_CASE(an_unknown_static_leaves_airflow_known_and_static_unknown) {
    FailedUnit job = furnace();
    job.measured.static_total = {};
    const AirPlan plan = plan_air(job, constant_torque(0.75, six_taps), limits);
    BOOST_TEST(plan.computed);
    BOOST_CHECK_CLOSE(tap_of(plan, 6).airflow.in(cfm).value, 1215.1, 0.1);
    BOOST_TEST(!tap_of(plan, 6).static_total.known());
    BOOST_TEST(has(plan.lacking, "measured.static_total"));
}

BOOST_AUTO_TEST_CASE(both_sides_of_the_static_make_the_total_and_a_high_one_is_a_duct_fault) {
    FailedUnit job = furnace();
    job.measured.static_total = {};
    job.measured.static_supply = known(inch_water(0.42));
    job.measured.static_return = known(inch_water(-0.48));
    const AirPlan plan = plan_air(job, constant_torque(0.75, six_taps), limits);
    BOOST_CHECK_CLOSE(plan.point.static_total.in(inch_water).value, 0.90, 1e-9);
    BOOST_TEST(plan.duct_first);
    BOOST_TEST(!plan_air(furnace(), constant_torque(0.75, six_taps), limits).duct_first);
}

BOOST_AUTO_TEST_CASE(a_met_call_off_its_target_or_over_the_plate_static_says_so) {
    FailedUnit job = furnace();
    job.equipment.rise_high = known(fahrenheit_degree(55));
    // 28 oz-ft: 1,071.6 cfm (10.7 % under 1,200), 0.569 in. (over 0.50), 55.3 F; 32: 51.73 F (3.27 F below
    // 55).
    AirPlan plan = plan_air(job, constant_torque(0.75, {28}), limits);
    const CallAir& cool = call_of(plan, Call::cool_high);
    BOOST_TEST(cool.met);
    BOOST_REQUIRE(cool.cautions.size() == 2u);
    BOOST_TEST(cool.cautions[0] == CallCaution::off_target);
    BOOST_TEST(cool.cautions[1] == CallCaution::static_over_plate);
    BOOST_TEST(!call_of(plan, Call::heat_high).met);
    job.equipment.climate = known(Climate::humid);  // 1,215.1 of a target of 1,050: 15.7 % over
    plan = plan_air(job, constant_torque(0.75, {36}), limits);
    BOOST_TEST(call_of(plan, Call::cool_high).cautions.at(0) == CallCaution::far_off_target);
    job.equipment.climate = known(Climate::normal);
    job.equipment.static_limit = known(inch_water(0.8));
    plan = plan_air(job, constant_torque(0.75, {32}), limits);
    BOOST_TEST(call_of(plan, Call::cool_high).cautions.empty());
    BOOST_TEST(call_of(plan, Call::heat_high).cautions.empty());
    BOOST_CHECK_CLOSE(call_of(plan, Call::heat_high).expected_rise.in(fahrenheit_degree).value, 51.73, 0.1);
    job.equipment.rise_high = known(fahrenheit_degree(54));
    plan = plan_air(job, constant_torque(0.75, {32}), limits);
    BOOST_REQUIRE(call_of(plan, Call::heat_high).cautions.size() == 1u);
    BOOST_TEST(call_of(plan, Call::heat_high).cautions[0] == CallCaution::rise_near_limit);
}

BOOST_AUTO_TEST_CASE(readings_that_no_fan_can_show_are_named_together) {
    const Part part = constant_torque(0.75, six_taps);
    BOOST_TEST(plan_air(furnace(), part, limits).contradictions.empty());
    FailedUnit job = furnace();
    job.measured.watts = known(watt(80));  // 1,145.6 cfm against 0.6507 in. is 87.6 W of air, by hand
    BOOST_TEST(has(plan_air(job, part, limits).contradictions,
                   "measured.airflow and measured.static_total and measured.watts"));
    job.measured.watts = known(watt(200));
    BOOST_TEST(plan_air(job, part, limits).contradictions.empty());
    job.measured.speed = known(rpm(1250));  // a six-pole motor at 60 Hz stays below 1,200
    BOOST_TEST(has(plan_air(job, part, limits).contradictions, "measured.speed and plate.speed"));
}

BOOST_AUTO_TEST_CASE(a_speed_far_below_the_plates_is_not_read_off_the_high_taps_line) {
    FailedUnit job = furnace();
    job.measured.speed = known(rpm(800));
    BOOST_TEST(plan_air(job, constant_torque(0.75, six_taps), limits).point.torque_from ==
               TorqueSource::plate_power);
}

BOOST_AUTO_TEST_CASE(limits_that_nobody_can_watch_ask_for_the_speed) {
    FailedUnit job = furnace();
    job.plate = {};
    job.plate.family = known(Family::constant_torque);
    job.measured.speed = {};
    job.measured.watts = known(watt(350));
    AirPlan plan = plan_air(job, constant_torque(0.75, six_taps), limits);
    BOOST_TEST(!plan.computed);  // watts without any speed give no torque
    BOOST_TEST(has(plan.lacking, "measured.speed"));
    job.plate.speed = known(rpm(1050));
    plan = plan_air(job, constant_torque(0.75, six_taps), limits);
    BOOST_TEST(plan.computed);
    BOOST_TEST(plan.point.speed.assumed());
    BOOST_TEST(has(plan.assumed, "measured.speed"));
}

BOOST_AUTO_TEST_CASE(a_dead_line_does_not_choose_the_rating) {
    FailedUnit job = furnace();
    job.measured.line_volts = known<LineVolts>(volt(0));
    const AirPlan plan = plan_air(job, capacitor_run(0.5, {825, 950, 1075}), limits);
    BOOST_CHECK_CLOSE(tap_of(plan, 3).speed.in(rpm).value, 1097.67, 0.1);
    BOOST_TEST(tap_of(plan, 3).line_current.known());
}

BOOST_AUTO_TEST_CASE(a_low_line_slows_an_induction_motor) {
    // 104 V on 115: 0.8178 of the torque (just inside the motor's 10 %). Slip line by hand:
    // 39.09 x 0.8178 (1200-n)/125 = 32 (n/1097.67)^2 at n = 1,079.1.
    FailedUnit job = furnace();
    job.equipment.supply = known(bare_supply(volt(115)));
    job.measured.line_volts = known<LineVolts>(volt(104));
    const AirPlan plan = plan_air(job, capacitor_run(0.5, {825, 950, 1075}), limits);
    BOOST_CHECK_SMALL(tap_of(plan, 3).speed.in(rpm).value - 1079.1, 0.1);
}
