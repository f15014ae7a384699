// The fan energy rating worked through; formula and coefficients from memory of 10 CFR 430.
#include "engine/airflow/fan_energy.hpp"

#include <boost/test/unit_test.hpp>

using namespace endbell;

namespace {

FanEnergyTest single_stage(double cooling, double heating, double circulation) {
    return {cfm(1200), watt(cooling), watt(heating), watt(circulation)};
}

}  // namespace

BOOST_AUTO_TEST_CASE(a_capacitor_run_fan_misses_the_limit_and_a_constant_torque_one_meets_it) {
    // (640 x 560 + 830 x 450 + 400 x 420) / (1870 x 1200) x 1000, by hand; kWh = rating x 1.2 x 1.870.
    const FanEnergyTest psc = single_stage(560, 450, 420), torque = single_stage(390, 260, 60);
    BOOST_CHECK_CLOSE(fan_energy_rating(psc), 401.02, 0.01);
    BOOST_TEST(certified_rating(psc) == 401);
    BOOST_CHECK_CLOSE(fan_energy(psc).in(kilowatt_hour), 899.9, 0.01);
    BOOST_CHECK_CLOSE(fan_energy_rating(torque), 218.09, 0.01);
    BOOST_TEST(certified_rating(torque) == 218);
    BOOST_CHECK_CLOSE(fan_energy(torque).in(kilowatt_hour), 489.4, 0.01);
    const double limit = greatest_rating(FurnaceClass::gas_non_condensing, cfm(1200));
    BOOST_CHECK_CLOSE(limit, 234.8, 1e-9);
    BOOST_TEST(certified_rating(psc) > limit);
    BOOST_TEST(certified_rating(torque) < limit);
}

BOOST_AUTO_TEST_CASE(a_reduced_stage_runs_longer) {
    // Ratio 0.65: 830 / 0.65 = 1276.9 h at 180 W. (640 x 390 + 1276.9 x 180 + 400 x 60) / 2244 = 224.34 W. By
    // hand.
    FanEnergyTest test = single_stage(390, 180, 60);
    test.reduced_heat_ratio = 0.65;
    BOOST_CHECK_CLOSE(fan_energy_rating(test), 224.35, 0.01);
}

BOOST_AUTO_TEST_CASE(limits_rise_with_the_greatest_airflow) {
    // Worked out at 800, 1,200, 1,600 and 2,000 cfm from the remembered coefficients.
    struct Row {
        FurnaceClass furnace;
        double at_800, at_1200, at_1600, at_2000;
    };
    const Row rows[] = {{FurnaceClass::gas_non_condensing, 217.2, 234.8, 252.4, 270.0},
                        {FurnaceClass::gas_condensing, 230.2, 247.8, 265.4, 283.0},
                        {FurnaceClass::gas_weatherized, 234.2, 251.8, 269.4, 287.0},
                        {FurnaceClass::oil, 438.8, 467.2, 495.6, 524.0},
                        {FurnaceClass::electric_or_modular, 200.2, 217.8, 235.4, 253.0},
                        {FurnaceClass::mobile_home_gas_non_condensing, 278.8, 307.2, 335.6, 364.0},
                        {FurnaceClass::mobile_home_gas_condensing, 296.8, 325.2, 353.6, 382.0},
                        {FurnaceClass::mobile_home_electric, 136.2, 153.8, 171.4, 189.0}};
    for (const Row& row : rows) {
        BOOST_CHECK_CLOSE(greatest_rating(row.furnace, cfm(800)), row.at_800, 1e-9);
        BOOST_CHECK_CLOSE(greatest_rating(row.furnace, cfm(1200)), row.at_1200, 1e-9);
        BOOST_CHECK_CLOSE(greatest_rating(row.furnace, cfm(1600)), row.at_1600, 1e-9);
        BOOST_CHECK_CLOSE(greatest_rating(row.furnace, cfm(2000)), row.at_2000, 1e-9);
    }
}
