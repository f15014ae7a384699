#include "tests/rules/world.hpp"

namespace endbell::rule_tests {

namespace {
World supplied(PlateVolts part, double nominal, double measured = 0) {
    World w = blower();
    w.job.equipment.supply = known(bare_supply(volt(nominal)), Origin::equipment);
    if (measured > 0) w.job.measured.line_volts = known<LineVolts>(volt(measured), Origin::measured);
    w.motor().ratings = {rating(0.5, part, 3, 1075)};
    return w;
}
}  // namespace

// NEMA MG 1 12.44.1: plate voltage plus or minus 10 %, limits included. Bands: 230 is 207.0 to 253.0,
// 208-230 is 187.2 to 253.0, 115 is 103.5 to 126.5, 265 reaches 291.5.
BOOST_AUTO_TEST_CASE(the_band_of_each_plate_voltage_with_its_limits_included) {
    SAYS(supplied(plate_volts(230), 230, 206)("supply-voltage"), Verdict::does_not_fit, "outside band");
    SAYS(supplied(plate_volts(230), 230, 207)("supply-voltage"), Verdict::fits, "within band");
    SAYS(supplied(plate_volts(230), 230, 253)("supply-voltage"), Verdict::fits, "within band");
    SAYS(supplied(plate_volts(230), 230, 254)("supply-voltage"), Verdict::does_not_fit, "outside band");
    SAYS(supplied(plate_volts(208, 230), 230, 187.2)("supply-voltage"), Verdict::fits, "within band");
    SAYS(supplied(plate_volts(208, 230), 230, 187)("supply-voltage"), Verdict::does_not_fit, "outside band");
    SAYS(supplied(plate_volts(115), 120, 126.5)("supply-voltage"), Verdict::fits, "within band");
    SAYS(supplied(plate_volts(115), 120, 127)("supply-voltage"), Verdict::does_not_fit, "outside band");
    SAYS(supplied(plate_volts(265), 277)("supply-voltage"), Verdict::fits, "within band");
    SAYS(supplied(plate_volts(230), 277)("supply-voltage"), Verdict::does_not_fit, "outside band");
    SAYS(supplied(plate_volts(208), 240)("supply-voltage"), Verdict::does_not_fit, "outside band");
}

// 208 on a 230 V plate: headroom 1.0 V to 207, torque (208/230)^2 = 81.8 %. In band, and said.
BOOST_AUTO_TEST_CASE(a_230_only_motor_on_208_fits_with_a_caution) {
    const Finding f = supplied(plate_volts(230), 208, 208)("supply-voltage");
    SAYS(f, Verdict::fits, "far from plate volts");
    BOOST_TEST(f.caution);
    BOOST_TEST(std::get<Voltage>(f.limit.value).in(volt) == 207.0, boost::test_tools::tolerance(1e-9));
    BOOST_TEST(f.limit_id == "voltage.band");
}

// ANSI C84.1 range A of 208Y/120 begins at 197 V (from memory).
BOOST_AUTO_TEST_CASE(a_208_service_below_range_a_is_said) {
    SAYS(supplied(plate_volts(208, 230), 208, 196)("supply-voltage"), Verdict::fits, "below range A");
    SAYS(supplied(plate_volts(208, 230), 208, 197)("supply-voltage"), Verdict::fits, "within band");
}

BOOST_AUTO_TEST_CASE(a_two_voltage_motor_is_set_by_its_jumper_plug_or_leads) {
    World w = supplied(plate_volts(208, 230), 115);
    w.motor().ratings.push_back(rating(0.5, plate_volts(115), 6, 1075, VoltageSelection::plug));
    const Finding f = w("supply-voltage");
    SAYS(f, Verdict::fits_with_changes, "voltage to be set");
    BOOST_TEST((task_of(f.remedies.at(0).cure) == ShopTask::voltage_selection));
}

BOOST_AUTO_TEST_CASE(a_rating_that_needs_no_setting_is_taken_first) {
    World w = supplied(plate_volts(115), 115);
    w.motor().ratings.insert(w.motor().ratings.begin(),
                             rating(0.5, plate_volts(115), 6, 1075, VoltageSelection::plug));
    SAYS(w("supply-voltage"), Verdict::fits, "within band");
}

BOOST_AUTO_TEST_CASE(an_old_plate_of_208_230_leaves_both_supplies_open) {
    World w = blower();
    w.job.plate.volts = volts(plate_volts(208, 230));
    w.motor().ratings = {rating(0.5, plate_volts(208, 230), 3, 1075)};
    SAYS(w("supply-voltage"), Verdict::fits, "within band");
    w.motor().ratings = {rating(0.5, plate_volts(230), 3, 1075)};  // in band on either; marginal on 208
    SAYS(w("supply-voltage"), Verdict::fits, "far from plate volts");
    w.motor().ratings = {rating(0.5, plate_volts(208), 3, 1075)};  // 230 is 10.6 % over 208
    SAYS(w("supply-voltage"), Verdict::not_shown, "supply class open");
    w.motor().ratings = {rating(0.5, plate_volts(115), 3, 1075)};
    SAYS(w("supply-voltage"), Verdict::does_not_fit, "outside band");
}

BOOST_AUTO_TEST_CASE(a_reading_in_the_band_of_a_plate_is_not_overruled_by_the_class_nearest_to_it) {
    World w = blower();
    w.job.measured.line_volts = known<LineVolts>(volt(222), Origin::measured);
    w.motor().ratings = {rating(0.5, plate_volts(208), 3, 1075)};  // up to 228.8
    SAYS(w("supply-voltage"), Verdict::not_shown, "supply class open");
}

BOOST_AUTO_TEST_CASE(unknown_volts_on_either_side_are_a_question) {
    World w = blower();
    w.motor().ratings.at(0).volts.reset();
    SAYS(w("supply-voltage"), Verdict::not_shown, "part does not say");
    BOOST_TEST(w("supply-voltage").asks.front() == "motor_ratings.volts");
    w.job.plate.volts = {};
    SAYS(w("supply-voltage"), Verdict::not_shown, "supply not stated");
    w = blower();
    w.job.unit.plate_trusted = known(false);  // an untrusted plate says nothing of the supply
    open_untrusted_plate(w.job);
    SAYS(w("supply-voltage"), Verdict::not_shown, "supply not stated");
}

BOOST_AUTO_TEST_CASE(a_dead_line_judges_no_motor) {
    SAYS(supplied(plate_volts(115), 115, 0.5)("supply-voltage"), Verdict::not_shown, "no live supply");
    SAYS(supplied(plate_volts(115), 115, 91.9)("supply-voltage"), Verdict::not_shown, "no live supply");
    SAYS(supplied(plate_volts(115), 115, 92)("supply-voltage"), Verdict::does_not_fit, "outside band");
}

BOOST_AUTO_TEST_CASE(a_module_has_one_voltage) {
    World w = module_job();
    SAYS(w("supply-voltage"), Verdict::fits, "within band");
    w.part.module->volts = plate_volts(208, 230);
    SAYS(w("supply-voltage"), Verdict::does_not_fit, "outside band");
    w.part.module->volts.reset();
    BOOST_TEST(w("supply-voltage").asks.front() == "modules.volts");
}

}  // namespace endbell::rule_tests
