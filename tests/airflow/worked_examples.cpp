// Worked examples as tables: inputs, the expected value, its tolerance, and where it comes from.
#include <boost/test/unit_test.hpp>

#include "engine/airflow/air.hpp"
#include "engine/airflow/blower.hpp"
#include "engine/airflow/electric.hpp"
#include "engine/airflow/fan_laws.hpp"
#include "engine/airflow/induction.hpp"
#include "tests/airflow/fixtures.hpp"

using namespace endbell;
using endbell::test::reference_blower;

namespace {

struct Row {
    const char* what;
    double got;
    double expected;
    double percent;  // tolerance
    const char* source;
};

void check_rows(const std::vector<Row>& rows) {
    for (const Row& row : rows) {
        BOOST_TEST_INFO(row.what << " (" << row.source << ")");
        BOOST_CHECK_CLOSE(row.got, row.expected, row.percent);
    }
}

constexpr HeatFactor standard_factor = btu_per_hour_cfm_degree(1.08);

double flow(double btu, double rise, HeatFactor factor = standard_factor) {
    return airflow_for(btu_per_hour(btu), fahrenheit_degree(rise), factor).in(cfm);
}
double element_rise(double kw, double q) {
    return rise_for(kilowatt_heat(kw), cfm(q), standard_factor).in(fahrenheit_degree);
}
double density(double feet, double fahrenheit) {
    return air_density(foot(feet), Temperature::fahrenheit(fahrenheit)).in(pound_per_cubic_foot);
}

constexpr const char* hand = "calculated by hand";
constexpr const char* gas_manual = "a gas-furnace service manual's table, recomputed";

}  // namespace

BOOST_AUTO_TEST_CASE(airflow_from_heat_and_rise) {
    check_rows({
        {"57,000 at 65 F", flow(60000 * 0.95, 65), 812.0, 0.1, hand},
        {"57,000 at 35 F", flow(57000, 35), 1507.9, 0.1, hand},
        {"57,000 at 50 F", flow(57000, 50), 1055.6, 0.1, hand},
        {"64,000 through 1,200 cfm",
         rise_for(btu_per_hour(64000), cfm(1200), standard_factor).in(fahrenheit_degree), 49.38, 0.1, hand},
        {"15 kW at 40 F", flow(kilowatt_heat(15).in(btu_per_hour), 40), 1184.8, 0.1, hand},
        {"20 kW at 50 F", flow(kilowatt_heat(20).in(btu_per_hour), 50), 1263.8, 0.1, hand},
        {"235 V x 75 A x 3.414 at 36 F", flow(235 * 75 * 3.414, 36), 1547.6, 0.1,
         "an air-handler service manual"},
        {"40,000 input at 0.92, 875 cfm",
         rise_for(btu_per_hour(36800), cfm(875), standard_factor).in(fahrenheit_degree), 38.94, 0.1,
         gas_manual},
        // A service manual prints 32, 27, 40, 53 and 40 F for these.
        {"10 kW, 1,000 cfm", element_rise(10, 1000), 31.6, 0.1, hand},
        {"10 kW, 1,200 cfm", element_rise(10, 1200), 26.3, 0.2, hand},
        {"15 kW, 1,200 cfm", element_rise(15, 1200), 39.5, 0.1, hand},
        {"20 kW, 1,200 cfm", element_rise(20, 1200), 52.7, 0.1, hand},
        {"20 kW, 1,600 cfm", element_rise(20, 1600), 39.5, 0.1, hand},
        {"1 kW at 50 F", flow(kilowatt_heat(1).in(btu_per_hour), 50), 63.2, 0.1, hand},
        {"1 kW at 40 F", flow(kilowatt_heat(1).in(btu_per_hour), 40), 79.0, 0.1, hand},
        {"64,000 at 50 F, sea level", flow(64000, 50), 1185.2, 0.1, hand},
        {"64,000 at 50 F, 5,000 ft by exact density",
         flow(64000, 50, heat_factor(pound_per_cubic_foot(0.062312))), 1426.5, 0.1,
         "psychrolib 1.1.1 dry-air density"},
        // The formula's standard air is 0.15 % heavier than dry air at 70 F.
        {"64,000 at 50 F, 5,000 ft by formula",
         flow(64000, 50, heat_factor(air_density(foot(5000), Temperature::fahrenheit(70)))), 1426.5, 0.2,
         "psychrolib 1.1.1 dry-air density"},
    });
}

BOOST_AUTO_TEST_CASE(a_manual_prints_rises_that_agree_with_its_airflows) {
    // 80,000 Btu/h input condensing furnace: cfm and rise pairs; their product spreads 1.3 % from rounding of
    // the rise.
    const std::vector<std::pair<double, double>> pairs{
        {1460, 46}, {1400, 48}, {1330, 51}, {1260, 54}, {1180, 57}};
    for (const auto& [q, rise] : pairs) {
        BOOST_CHECK_CLOSE(heat_for(cfm(q), fahrenheit_degree(rise), standard_factor).in(btu_per_hour), 72900,
                          1.3);
    }
}

BOOST_AUTO_TEST_CASE(air_density_follows_altitude_and_temperature) {
    // Cells of psychrolib 1.1.1 GetDryAirDensity, IP; the formula's standard air is 0.15 % heavier.
    struct Cell {
        double feet, fahrenheit, density;
    };
    const Cell cells[] = {
        {0, 40, .07939},    {0, 70, .07489},     {0, 140, .06615},     {500, 55, .07569},
        {1000, 70, .07222}, {2000, 100, .06590}, {3000, 70, .06712},   {4000, 120, .05910},
        {5000, 70, .06231}, {5280, 40, .06536},  {6000, 70, .06002},   {7000, 140, .05104},
        {8000, 70, .05563}, {10000, 40, .05459}, {10000, 70, .051500}, {10000, 140, .04549}};
    for (const Cell& cell : cells) {
        BOOST_TEST_INFO(cell.feet << " ft " << cell.fahrenheit << " F");
        BOOST_CHECK_CLOSE(density(cell.feet, cell.fahrenheit), cell.density, 0.2);
    }
    check_rows({
        {"standard air", density(0, 70), 0.075, 1e-9, "definition"},
        {"1.08", heat_factor(air_density(foot(0), Temperature::fahrenheit(70))).in(btu_per_hour_cfm_degree),
         1.08, 1e-9, "definition"},
        {"5,000 ft over sea level", density(5000, 70) / density(0, 70), 0.8321, 0.1, "psychrolib 1.1.1"},
        {"same mass at 120 F", density(0, 70) / density(0, 120), 1.0944, 0.01, hand},
        {"1,000 cfm against 1 in.", air_power(cfm(1000), inch_water(1)).in(watt), 117.557, 0.001,
         "GNU units 2.22"},
    });
}

BOOST_AUTO_TEST_CASE(fan_laws_move_a_point_along_its_duct) {
    const FanPoint one{cfm(1150), inch_water(0.72), rpm(1000), horsepower(1)};
    const FanPoint more = scaled(one, 1350.0 / 1150.0);
    const FanPoint propeller = scaled({cfm(1), inch_water(1), rpm(1075), horsepower(1)}, 825.0 / 1075.0);
    const FanPoint faster = scaled({cfm(1), inch_water(1), rpm(825), horsepower(1)}, 1075.0 / 825.0);
    check_rows({
        {"static", more.pressure.in(inch_water), .9922, 0.1, hand},
        {"torque", torque_for(cfm(1350), pound_foot(1), cfm(1150)).in(pound_foot), 1.3781, 0.1, hand},
        {"power", more.shaft.in(horsepower), 1.6177, 0.1, hand},
        {"1075 to 825: cfm", propeller.airflow.in(cfm), .7674, 0.1, hand},
        {"1075 to 825: pressure and torque", propeller.pressure.in(inch_water), .5890, 0.1, hand},
        {"1075 to 825: power", propeller.shaft.in(horsepower), .4520, 0.1, hand},
        {"825 to 1075: power", faster.shaft.in(horsepower), 2.2124, 0.1, hand},
        {"1050 to 1200 cfm from 31.3 oz-ft",
         torque_for(cfm(1200), ounce_foot(31.3), cfm(1050)).in(ounce_foot), 40.88, 0.1, hand},
        {"and back", airflow_at(ounce_foot(40.88), ounce_foot(31.3), cfm(1050)).in(cfm), 1200, 0.1, hand},
    });
}

BOOST_AUTO_TEST_CASE(torque_is_power_over_speed) {
    check_rows({
        {"1/2 hp at 1,075", torque_of(horsepower(0.5), rpm(1075)).in(ounce_foot), 39.09, 0.1, hand},
        {"1/2 hp at 1,075, lb-ft", torque_of(horsepower(0.5), rpm(1075)).in(pound_foot), 2.4428, 0.1, hand},
        {"1/3 hp at 825", torque_of(horsepower(1.0 / 3), rpm(825)).in(ounce_foot), 33.95, 0.1, hand},
        {"1/3 hp at 825, N m", torque_of(horsepower(1.0 / 3), rpm(825)).in(newton_metre), 2.8771, 0.1, hand},
        {"1/5 hp at 1,140", torque_of(horsepower(0.2), rpm(1140)).in(ounce_foot), 14.74, 0.1, hand},
        {"480 W at 0.58", watt(480 * .58).in(horsepower), .3733, 0.1, hand},
        {"480 W at 0.58 and 1,000 rpm", torque_of(watt(480 * .58), rpm(1000)).in(ounce_foot), 31.37, 0.1,
         hand},
        {"25.73 oz-ft as a share of 1 hp at 1,050", ounce_foot(25.73) / torque_of(horsepower(1), rpm(1050)),
         .3216, 0.1, "an equipment manual's tap table"},
        {"read table cell 4,750 at 0.40", torque_of(horsepower(1.10), rpm(575)).in(pound_foot), 10.048, 0.1,
         "a published blower table"},
        {"read table cell 3,000 at 1.40", torque_of(horsepower(1.70), rpm(885)).in(pound_foot), 10.089, 0.1,
         "a published blower table"},
    });
}

BOOST_AUTO_TEST_CASE(induction_motors_slip_below_their_poles) {
    check_rows({
        {"6 poles", synchronous(6, hertz(60)).in(rpm), 1200, 1e-9, hand},
        {"8 poles 50 Hz", synchronous(8, hertz(50)).in(rpm), 750, 1e-9, hand},
    });
    BOOST_TEST(poles_from(rpm(1075), hertz(60)).value() == 6);
    BOOST_TEST(poles_from(rpm(825), hertz(60)).value() == 8);
    BOOST_TEST(poles_from(rpm(1625), hertz(60)).value() == 4);
    BOOST_TEST(poles_from(rpm(1550), hertz(60)).value() == 4);
    BOOST_TEST(poles_from(rpm(3250), hertz(60)).value() == 2);
    BOOST_TEST(!poles_from(rpm(1195), hertz(60)).has_value());  // 0.4 % slip: not such a motor
    BOOST_TEST(!poles_from(rpm(1300), hertz(60)).has_value());  // 28 %
}

BOOST_AUTO_TEST_CASE(another_motor_on_the_same_fan_settles_on_the_slip_line) {
    // Motor hp and rpm, fan hp at rpm, expected rpm and shaft hp: the linear-slip table, common practice as a
    // model.
    struct Swap {
        double hp, rated, fan_hp, fan_rpm, rpm_reached, shaft, synchronous, volts;
    };
    const Swap swaps[] = {
        {.25, 1075, .25, 1075, 1075.0, .2500, 1200, 1},
        {1.0 / 3, 1075, .25, 1075, 1101.6, .2690, 1200, 1},
        {.5, 1075, .25, 1075, 1130.8, .2910, 1200, 1},
        {.2, 1075, .25, 1075, 1050.7, .2334, 1200, 1},
        {1.0 / 6, 1075, .25, 1075, 1028.4, .2189, 1200, 1},
        {.25, 1075, 1.0 / 3, 1075, 1043.1, .3045, 1200, 1},
        {.25, 1075, .25, 825, 973.3, .4105, 1200, 1},
        {1.0 / 3, 1075, .25, 825, 1015.1, .4657, 1200, 1},
        {.25, 1625, .25, 1075, 1370.2, .5177, 1800, 1},
        {.25, 825, .25, 1075, 862.9, .1293, 900, 1},
        {.25, 1075, .25, 1075, 1053.3, .2351, 1200, 208.0 / 230},
        {.25, 1075, .25, 1075, 1027.3, .2182, 1200, 187.0 / 230},
    };
    for (const Swap& s : swaps) {
        const SlipLine line{rpm(s.synchronous), rpm(s.rated), torque_of(horsepower(s.hp), rpm(s.rated)),
                            s.volts * s.volts};
        const Torque fan = torque_of(horsepower(s.fan_hp), rpm(s.fan_rpm));
        const Speed reached = settle(line, fan, rpm(s.fan_rpm));
        BOOST_TEST_INFO(s.hp << " hp " << s.rated << " on " << s.fan_hp << " at " << s.fan_rpm);
        BOOST_CHECK_SMALL(reached.in(rpm)-s.rpm_reached, 0.5);
        BOOST_CHECK_CLOSE(shaft_power(line.at(reached), reached).in(horsepower), s.shaft, 0.2);
    }
}

BOOST_AUTO_TEST_CASE(an_oversized_tapped_motor_loses_its_low_speeds) {
    // A tap leaves half or a quarter of the torque; the fan takes 1/4 hp at 1,075. Same model as above.
    struct Tapped {
        double hp, full, half, quarter;
    };
    const Tapped rows[] = {{.25, 1075.0, 988.6, 871.4},
                           {1.0 / 3, 1101.6, 1028.4, 923.3},
                           {.5, 1130.8, 1075.0, 988.6},
                           {.75, 1152.1, 1111.0, 1043.1}};
    for (const Tapped& row : rows) {
        const Torque fan = torque_of(horsepower(.25), rpm(1075));
        auto at = [&](double strength) {
            return settle({rpm(1200), rpm(1075), torque_of(horsepower(row.hp), rpm(1075)), strength}, fan,
                          rpm(1075))
                .in(rpm);
        };
        BOOST_CHECK_SMALL(at(1) - row.full, 0.5);
        BOOST_CHECK_SMALL(at(.5) - row.half, 0.5);
        BOOST_CHECK_SMALL(at(.25) - row.quarter, 0.5);
    }
}

BOOST_AUTO_TEST_CASE(watts_follow_from_shaft_power) {
    check_rows({
        {"1/2 hp at 60 %", horsepower(.5).in(watt) / .60, 621.7, 0.1, hand},
        {"PSC at 1,075 of 1,200", induction_efficiency(Family::capacitor_run, rpm(1075), rpm(1200)), .627,
         0.1, hand},
        {"PSC at 825", induction_efficiency(Family::capacitor_run, rpm(825), rpm(1200)), .481, 0.1, hand},
        {"PSC at 700", induction_efficiency(Family::capacitor_run, rpm(700), rpm(1200)), .408, 0.1, hand},
        {"electronic at full load", electronic_efficiency(1), .80, 1e-9, "common practice"},
        {"electronic at a tenth", electronic_efficiency(.1), .62, 1e-9, "common practice"},
        {"electronic at 0.375", electronic_efficiency(.375), .75, 1e-9, "common practice, linear between"},
        {"scaled through a plate's 0.76", electronic_efficiency(.1, .76), .589, 0.1, hand},
        {"351 W at 120 V, PF 0.60", line_current(watt(351), volt(120), .6).in(ampere), 4.875, 0.1,
         "an outside fluids library"},
        {"486 W at 240 V, PF 0.95", line_current(watt(486), volt(240), .95).in(ampere), 2.132, 0.1,
         "an outside fluids library"},
    });
}
