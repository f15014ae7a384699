#include "engine/rules/job_fields.hpp"
#include "tests/rules/world.hpp"

namespace endbell::rule_tests {

namespace {
World sized(double was, double now) {
    World w = blower();
    w.job.plate.power = hp(was);
    w.motor().ratings = {rating(now, plate_volts(115), 6, 1075)};
    return w;
}
}  // namespace

// Sizing practice: the same power first, one standard size up where amps, capacitor, body and circuit pass,
// never down on the plate alone. Slip-line model: 1/4 on a 1/3 hp fan runs at 122 % load, 1/3 on a 1/4 hp fan
// at 81 %.
BOOST_AUTO_TEST_CASE(the_same_power_fits_and_a_smaller_one_never) {
    SAYS(sized(0.5, 0.5)("power"), Verdict::fits, "same power");
    SAYS(sized(0.5, 373.0 / 745.69987)("power"), Verdict::fits, "same power");  // 373 W for 1/2 hp
    SAYS(sized(0.5, 0.49)("power"), Verdict::fits, "same power");               // exactly 2 % less
    SAYS(sized(0.5, 0.489)("power"), Verdict::does_not_fit, "too small");
    SAYS(sized(1.0 / 3, 0.25)("power"), Verdict::does_not_fit, "too small");
    SAYS(sized(0.25, 0.2)("power"), Verdict::does_not_fit, "too small");
}

BOOST_AUTO_TEST_CASE(one_standard_size_up_is_allowed_and_two_are_not) {
    SAYS(sized(0.25, 1.0 / 3)("power"), Verdict::fits_with_changes, "one step up");
    SAYS(sized(0.5, 0.75)("power"), Verdict::fits_with_changes, "one step up");
    SAYS(sized(0.25, 0.5)("power"), Verdict::does_not_fit, "too large");
    SAYS(sized(0.5, 1.0)("power"), Verdict::does_not_fit, "too large");
    BOOST_TEST((task_of(sized(0.5, 0.75)("power").remedies.at(0).cure) == ShopTask::airflow_setup));
}

BOOST_AUTO_TEST_CASE(an_odd_plate_lies_between_two_standard_sizes) {
    SAYS(sized(0.4, 0.5)("power"), Verdict::fits_with_changes, "one step up");
    SAYS(sized(1.0 / 3, 0.4)("power"), Verdict::fits_with_changes, "one step up");
    SAYS(sized(0.4, 0.75)("power"), Verdict::does_not_fit, "too large");
}

BOOST_AUTO_TEST_CASE(a_fan_has_no_taps_to_set_up_after_a_step) {
    World w = condenser();
    w.motor().ratings = {rating(1.0 / 3, plate_volts(208, 230), 1.9, 1075)};
    SAYS(w("power"), Verdict::fits, "one step up");
    BOOST_TEST(w("power").caution);
}

// One motor that spans several ratings of one pole count.
BOOST_AUTO_TEST_CASE(a_wide_range_motor_matches_by_any_rating) {
    World w = blower();
    w.motor().ratings = {rating(1.0 / 6, plate_volts(115), 3, 1075), rating(0.25, plate_volts(115), 4, 1075),
                         rating(0.5, plate_volts(115), 6, 1075), rating(0.75, plate_volts(115), 8, 1075)};
    SAYS(w("power"), Verdict::fits, "same power");
    w.job.plate.power = known(std::vector<Power>{horsepower(0.25), horsepower(1.0 / 6), horsepower(0.1)});
    SAYS(w("power"), Verdict::fits, "same power");  // per-tap powers: the largest counts
}

BOOST_AUTO_TEST_CASE(a_rating_at_another_voltage_does_not_lend_its_power) {
    World w = blower();
    w.motor().ratings = {rating(0.25, plate_volts(115), 4, 1075),
                         rating(0.5, plate_volts(208, 230), 3, 1075)};
    SAYS(w("power"), Verdict::does_not_fit, "too small");
}

// 5252.113 hp/rpm: 1/2 hp at 1075 rpm is 39.09 oz-ft, 3/4 hp at 1050 is 60.02, 1/2 hp at 1050 is 40.01.
BOOST_AUTO_TEST_CASE(a_constant_torque_motor_needs_a_tap_for_the_duty_torque) {
    World w = retrofit();
    w.motor().ratings = {rating(1.0, plate_volts(115), 9, 1050)};
    SAYS(w("power"), Verdict::fits, "larger with a tap for it");  // strongest tap 57.73
    BOOST_TEST(std::get<Torque>(w("power").computed.value).in(ounce_foot) == 39.09,
               boost::test_tools::tolerance(1e-3));
    w.motor().taps.resize(2);  // strongest 37.96, under 98 % of 39.09
    SAYS(w("power"), Verdict::does_not_fit, "no tap strong enough");
    w.motor().taps.clear();
    SAYS(w("power"), Verdict::not_shown, "part does not say");
    w = five_taps();
    SAYS(w("power"), Verdict::fits, "same power");
    w.motor().ratings = {rating(1.0, plate_volts(115), 9, 1050)};
    SAYS(w("power"), Verdict::fits_with_changes, "larger with a tap for it");
    w.job.plate.power = hp(0.75);
    SAYS(w("power"), Verdict::does_not_fit, "no tap strong enough");
    w.job.plate.speed = {};
    SAYS(w("power"), Verdict::not_shown, "duty torque not known");
}

namespace {
/// A 1/2 hp capacitor-run motor that was read at its full speed: 380 W x 0.70 x 1080/1200 are 239.4 W, 0.3210 hp, 24.98 oz-ft.
/// Watts are good for 12.2 % of it: 21.93 to 28.03 oz-ft, 0.2817 to 0.3603 hp. The slip line says 37.5, too far off to agree.
World measured_retrofit(double now, double strongest) {
    World w = retrofit();
    w.job.measured.watts = known(watt(380));
    w.job.measured.speed = known(rpm(1080));
    w.motor().ratings = {rating(now, plate_volts(115), 6, 1050)};
    w.motor().taps.resize(1);
    w.motor().taps.front().torque = ounce_foot(strongest);
    return w;
}
}  // namespace

// The plate says 39.09 oz-ft; what was measured is judged instead.
BOOST_AUTO_TEST_CASE(a_retrofit_is_judged_by_the_measured_duty_before_the_plate) {
    SAYS(measured_retrofit(0.5, 30)("power"), Verdict::fits, "tap for the measured duty");
    BOOST_TEST(std::get<Torque>(measured_retrofit(0.5, 30)("power").computed.value).in(ounce_foot) == 24.98,
               boost::test_tools::tolerance(1e-3));
    SAYS(measured_retrofit(0.75, 24.6)("power"), Verdict::fits, "tap for the measured duty");
    SAYS(measured_retrofit(0.5, 24.0)("power"), Verdict::not_shown, "duty not sure");
    SAYS(measured_retrofit(0.5, 21.5)("power"), Verdict::does_not_fit, "no tap strong enough");
    World w = measured_retrofit(0.5, 30);
    w.job.measured.watts = {};
    w.job.measured.speed = {};
    SAYS(w("power"), Verdict::does_not_fit, "no tap strong enough");  // nothing measured: the plate
}

BOOST_AUTO_TEST_CASE(a_smaller_motor_passes_by_a_measured_duty_alone) {
    SAYS(measured_retrofit(0.375, 30)("power"), Verdict::fits, "enough for the duty");
    BOOST_TEST(measured_retrofit(0.375, 30)("power").caution);
    SAYS(measured_retrofit(1.0 / 3, 30)("power"), Verdict::not_shown, "duty not sure");
    SAYS(measured_retrofit(0.25, 30)("power"), Verdict::does_not_fit, "too small");
    World w = measured_retrofit(0.375, 30);
    w.job.measured.watts = {};
    w.job.measured.speed = {};
    SAYS(w("power"), Verdict::does_not_fit, "too small");
}

// 0.0185 of a rating are lost for each 1,000 ft above 3,300: 0.9316 x 0.375 hp = 0.3493 hp lie within 0.2817 to 0.3603.
BOOST_AUTO_TEST_CASE(thin_air_leaves_a_smaller_motor_less_of_its_rating) {
    World w = measured_retrofit(0.375, 30);
    w.job.equipment.altitude = known(foot(3300));
    SAYS(w("power"), Verdict::fits, "enough for the duty");
    w.job.equipment.altitude = known(foot(7000));
    SAYS(w("power"), Verdict::not_shown, "duty not sure");
}

// An answer that is kept for jobs alike holds the duty, and with it all that the duty comes from.
BOOST_AUTO_TEST_CASE(jobs_of_another_duty_are_not_alike) {
    const auto world = [](double tons) {
        World w = measured_retrofit(0.375, 30);
        w.job.measured.airflow = known(cfm(1000));
        w.job.equipment.cooling = known(ton_cooling(tons));
        w.job.controls.heat = known(HeatKind::none);
        return w;
    };
    const auto bytes = [](const World& w) {
        const JobBytes all(Query{w.job, facts_of(w.job, w.limits), w.diagnosis, w.limits});
        std::size_t power = 0;
        while (all_rules()[power].id != std::string_view("power")) ++power;
        return all.of_rule(power);
    };
    // 2 tons ask for 800 cfm, (0.8)^3 of the work; 4 tons for 1,600.
    SAYS(world(2)("power"), Verdict::fits, "enough for the duty");
    SAYS(world(4)("power"), Verdict::does_not_fit, "no tap strong enough");
    BOOST_TEST(bytes(world(2)) != bytes(world(4)));
    BOOST_TEST(bytes(world(2)) == bytes(world(2)));
}

// Read on a lower speed, the duty of another call may be greater.
BOOST_AUTO_TEST_CASE(a_duty_that_may_not_be_the_largest_passes_nothing_that_the_plate_would_not) {
    World w = measured_retrofit(0.375, 60);
    w.job.measured.speed = known(rpm(1000));
    SAYS(w("power"), Verdict::not_shown, "duty not sure");
    BOOST_TEST(w("power").asks.front() == "measured.airflow");
    w.motor().ratings = {rating(0.75, plate_volts(115), 6, 1050)};
    SAYS(w("power"), Verdict::fits, "larger with a tap for it");
    w.motor().taps.front().torque = ounce_foot(30);
    SAYS(w("power"), Verdict::not_shown, "duty not sure");
}

BOOST_AUTO_TEST_CASE(unknown_power_asks) {
    World w = blower();
    w.motor().ratings.at(0).power.reset();
    SAYS(w("power"), Verdict::not_shown, "part does not say");
    w.job.plate.power = {};
    SAYS(w("power"), Verdict::not_shown, "power not stated");
    w = module_job();
    SAYS(w("power"), Verdict::fits, "same power");
    w.part.module->power.reset();
    SAYS(w("power"), Verdict::fits, "not stated");
    w.part.module->power = horsepower(0.75);
    SAYS(w("power"), Verdict::does_not_fit, "too large");
}

BOOST_AUTO_TEST_CASE(an_inducer_is_not_sized) {
    SAYS(inducer()("power"), Verdict::fits, "specified assembly");
    World w = inducer();
    w.job.unit.assembly_number = {};
    w.job.plate.power = hp(0.4);
    SAYS(w("power"), Verdict::does_not_fit, "too large");
}

}  // namespace endbell::rule_tests
