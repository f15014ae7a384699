// RB-1 (docs/explanation/physics.md): published cell by cell, then walked by a second method that shares no code.
#include <boost/test/unit_test.hpp>
#include <cmath>
#include <random>

#include "engine/airflow/blower.hpp"
#include "engine/airflow/electric.hpp"
#include "engine/airflow/fan_laws.hpp"
#include "engine/airflow/induction.hpp"
#include "tests/airflow/fixtures.hpp"

using namespace endbell;
using endbell::test::reference_blower;

namespace {

const BlowerCurve rb1 = reference_blower();
constexpr double rated_hp = 0.5, volts = 120;
const BreakdownCurve psc{rpm(1200), pound_foot(2.12333), 0.25, 1};

Duct held(double inches) {
    return {inch_water(inches), 0};
}
Duct base_duct(double times = 1, double fixed = 0) {
    return {inch_water(fixed), times * (0.5 - fixed) / (1.2 * 1.2)};
}

double electronic_watts(const OperatingPoint& p) {
    return p.shaft.in(watt) / electronic_efficiency(p.shaft.in(horsepower) / rated_hp);
}
double psc_watts(const OperatingPoint& p) {
    return p.shaft.in(watt) / induction_efficiency(Family::capacitor_run, p.speed, rpm(1200));
}
double amps(double w, double factor) {
    return line_current(watt(w), volt(volts), factor).in(ampere);
}

/// Half a unit of the last digit that the table prints.
void near(double got, double printed, double half_unit) {
    BOOST_CHECK_SMALL(got - printed, half_unit * 1.02);
}

}  // namespace

// All expected cells below: the reference table of the research behind this model, solved there by another
// program.
BOOST_AUTO_TEST_CASE(the_base_point) {
    const Speed n = speed_for(rb1, cfm(1200), inch_water(0.5));
    const Torque t = torque_of(rb1, n, cfm(1200));
    BOOST_CHECK_CLOSE(n.in(rpm), 989.03, 0.001);
    BOOST_CHECK_CLOSE(t.in(ounce_foot), 31.971, 0.002);
    BOOST_CHECK_CLOSE(shaft_power(t, n).in(horsepower), 0.37628, 0.002);
    BOOST_CHECK_CLOSE(shaft_power(t, n).in(watt), 280.59, 0.002);
}

BOOST_AUTO_TEST_CASE(capacitor_run_against_rising_static) {
    struct Cell {
        double esp, q, n, t, w, a;
    };
    const Cell cells[] = {{.1, 1399, 896, 2.123, 517, 4.53},  {.2, 1358, 923, 2.116, 515, 4.52},
                          {.3, 1311, 947, 2.092, 509, 4.47},  {.4, 1258, 969, 2.052, 500, 4.38},
                          {.5, 1200, 989, 1.998, 486, 4.27},  {.6, 1136, 1007, 1.931, 470, 4.12},
                          {.7, 1066, 1024, 1.851, 451, 3.95}, {.8, 989, 1041, 1.759, 428, 3.75},
                          {.9, 905, 1056, 1.653, 402, 3.53},  {1.0, 812, 1072, 1.534, 373, 3.27}};
    for (const Cell& cell : cells) {
        BOOST_TEST_CONTEXT(cell.esp << " in.") {
            const auto p = run_induction(rb1, held(cell.esp), motor_of(psc));
            BOOST_REQUIRE(p);
            near(p->airflow.in(cfm), cell.q, 0.5);
            near(p->speed.in(rpm), cell.n, 0.5);
            near(p->torque.in(pound_foot), cell.t, 0.0005);
            near(psc_watts(*p), cell.w, 0.5);
            near(amps(psc_watts(*p), 0.95), cell.a, 0.005);
        }
    }
}

BOOST_AUTO_TEST_CASE(constant_torque_against_rising_static) {
    struct Cell {
        double esp, q, n, hp, w, a;
    };
    const Cell cells[] = {{.1, 1355, 871, .332, 312, 4.33},  {.2, 1316, 901, .343, 322, 4.47},
                          {.3, 1277, 930, .354, 332, 4.61},  {.4, 1238, 960, .365, 341, 4.74},
                          {.5, 1201, 989, .377, 351, 4.88},  {.6, 1164, 1019, .388, 362, 5.02},
                          {.7, 1128, 1048, .399, 372, 5.17}, {.8, 1093, 1078, .410, 383, 5.31},
                          {.9, 1058, 1107, .422, 393, 5.46}, {1.0, 1025, 1136, .433, 403, 5.60}};
    for (const Cell& cell : cells) {
        BOOST_TEST_CONTEXT(cell.esp << " in.") {
            const auto p = run_constant_torque(rb1, held(cell.esp), pound_foot(2));
            BOOST_REQUIRE(p);
            near(p->airflow.in(cfm), cell.q, 0.5);
            near(p->speed.in(rpm), cell.n, 0.5);
            near(p->shaft.in(horsepower), cell.hp, 0.0005);
            near(electronic_watts(*p), cell.w, 0.5);
            near(amps(electronic_watts(*p), 0.60), cell.a, 0.005);
            BOOST_TEST(!p->bound);
        }
    }
}

BOOST_AUTO_TEST_CASE(constant_airflow_against_rising_static) {
    struct Cell {
        double esp, n, t, hp, w, a;
    };
    const Cell cells[] = {{.1, 784, 1.592, .238, 229, 3.18},  {.2, 840, 1.700, .272, 259, 3.59},
                          {.3, 892, 1.803, .306, 290, 4.02},  {.4, 942, 1.902, .341, 320, 4.45},
                          {.5, 989, 1.998, .376, 351, 4.87},  {.6, 1034, 2.091, .412, 384, 5.33},
                          {.7, 1077, 2.182, .447, 417, 5.79}, {.8, 1118, 2.270, .483, 451, 6.26},
                          {.9, 1158, 2.357, .520, 484, 6.73}, {1.0, 1197, 2.441, .556, 519, 7.20}};
    for (const Cell& cell : cells) {
        BOOST_TEST_CONTEXT(cell.esp << " in.") {
            const auto p = run_constant_airflow(rb1, held(cell.esp), cfm(1200));
            BOOST_REQUIRE(p);
            near(p->airflow.in(cfm), 1200, 1e-6);
            near(p->speed.in(rpm), cell.n, 0.5);
            near(p->torque.in(pound_foot), cell.t, 0.0005);
            near(p->shaft.in(horsepower), cell.hp, 0.0005);
            near(electronic_watts(*p), cell.w, 0.5);
            near(amps(electronic_watts(*p), 0.60), cell.a, 0.005);
        }
    }
}

BOOST_AUTO_TEST_CASE(the_same_duct_getting_tighter) {
    struct Row {
        double times, psc_q, psc_e, psc_w, ct_q, ct_n, ct_e, ct_w, ca_n, ca_e, ca_oz, ca_hp, ca_w;
    };
    const Row rows[] = {
        {1.0, 1200.0, .500, 486.4, 1200.5, 989.5, .5004, 351.2, 989.0, .500, 31.97, .376, 350.7},
        {1.5, 1108.6, .640, 462.5, 1137.4, 1040.6, .6737, 369.4, 1097.9, .750, 35.62, .465, 433.8},
        {2.0, 1034.1, .743, 441.3, 1086.1, 1083.4, .8192, 384.6, 1197.0, 1.000, 39.06, .556, 518.6},
        {3.0, 920.5, .883, 407.1, 1006.6, 1152.3, 1.0554, 409.0, 1373.8, 1.500, 45.48, .744, 693.1}};
    for (const Row& row : rows) {
        BOOST_TEST_CONTEXT("k x " << row.times) {
            const Duct duct = base_duct(row.times);
            const auto a = run_induction(rb1, duct, motor_of(psc));
            const auto b = run_constant_torque(rb1, duct, pound_foot(2));
            const auto c = run_constant_airflow(rb1, duct, cfm(1200));
            BOOST_REQUIRE((a && b && c));
            near(a->airflow.in(cfm), row.psc_q, 0.05);
            near(a->pressure.in(inch_water), row.psc_e, 0.0005);
            near(psc_watts(*a), row.psc_w, 0.05);
            near(b->airflow.in(cfm), row.ct_q, 0.05);
            near(b->speed.in(rpm), row.ct_n, 0.05);
            near(b->pressure.in(inch_water), row.ct_e, 0.00005);
            near(electronic_watts(*b), row.ct_w, 0.05);
            near(c->speed.in(rpm), row.ca_n, 0.05);
            near(c->pressure.in(inch_water), row.ca_e, 0.0005);
            near(c->torque.in(ounce_foot), row.ca_oz, 0.005);
            near(c->shaft.in(horsepower), row.ca_hp, 0.0005);
            near(electronic_watts(*c), row.ca_w, 0.05);
        }
    }
}

BOOST_AUTO_TEST_CASE(limits_are_solved_again) {
    const auto speed = run_constant_torque(rb1, held(1.0), ounce_foot(32), {rpm(1100), {}, {}});
    BOOST_TEST(speed->bound == MotorLimit::speed);
    near(speed->speed.in(rpm), 1100, 1e-6);
    near(speed->airflow.in(cfm), 909.7, 0.05);
    near(speed->torque.in(ounce_foot), 27.81, 0.005);
    const auto power = run_constant_torque(rb1, held(0.8), ounce_foot(32), {{}, horsepower(0.40), {}});
    BOOST_TEST(power->bound == MotorLimit::power);
    near(power->speed.in(rpm), 1071.7, 0.05);
    near(power->airflow.in(cfm), 1076.3, 0.05);
    near(power->torque.in(ounce_foot), 31.36, 0.005);
    const auto airflow = run_constant_airflow(rb1, base_duct(2), cfm(1200), {{}, horsepower(0.5), {}});
    BOOST_TEST(airflow->bound == MotorLimit::power);
    BOOST_TEST(airflow->airflow.in(cfm) < 1200);
    near(airflow->shaft.in(horsepower), 0.5, 1e-9);
    // At 1.5 in. even no airflow needs sqrt(1.5 / 1.10) = 1,168 rpm: by hand.
    BOOST_TEST(!run_constant_torque(rb1, held(1.5), ounce_foot(32), {rpm(1150), {}, {}}).has_value());
}

BOOST_AUTO_TEST_CASE(filter_loading_costs_a_constant_airflow_motor_watts) {
    near(electronic_watts(*run_constant_airflow(rb1, held(.50), cfm(1200))), 350.74, 0.005);
    near(electronic_watts(*run_constant_airflow(rb1, held(.65), cfm(1200))), 400.39, 0.005);
}

BOOST_AUTO_TEST_CASE(the_square_root_law_is_exact_without_a_fixed_pressure) {
    const double base = run_constant_torque(rb1, base_duct(), ounce_foot(32))->airflow.in(cfm);
    for (double torque : {28.0, 20.0, 12.0, 8.0}) {
        const double solved = run_constant_torque(rb1, base_duct(), ounce_foot(torque))->airflow.in(cfm);
        BOOST_CHECK_CLOSE(airflow_at(ounce_foot(torque), ounce_foot(32), cfm(base)).in(cfm), solved, 1e-6);
    }
}

BOOST_AUTO_TEST_CASE(the_square_root_law_promises_too_much_where_part_of_the_pressure_is_fixed) {
    const Duct duct = base_duct(1, 0.10);
    const Torque one = torque_of(rb1, speed_for(rb1, cfm(1200), inch_water(.5)), cfm(1200));
    const std::pair<double, double> rows[] = {
        {.75, 0.8}, {.50, 2.5}, {.25, 7.9}};  // torque ratio, percent over
    for (const auto& [ratio, percent] : rows) {
        const double solved = run_constant_torque(rb1, duct, one * ratio)->airflow.in(cfm);
        near(100 * (1200 * std::sqrt(ratio) / solved - 1), percent, 0.05);
    }
}

BOOST_AUTO_TEST_CASE(a_tenth_more_torque_is_a_twentieth_more_air) {
    const double one = run_constant_torque(rb1, base_duct(), pound_foot(2.0))->airflow.in(cfm);
    near(100 * (run_constant_torque(rb1, base_duct(), pound_foot(2.2))->airflow.in(cfm) / one - 1), 4.9,
         0.05);
}

BOOST_AUTO_TEST_CASE(a_tenth_of_an_inch_costs_a_constant_torque_tap_37_cfm) {
    const Torque tap = torque_of(rb1, speed_for(rb1, cfm(1200), inch_water(.5)), cfm(1200));
    const double more = run_constant_torque(rb1, held(.501), tap)->airflow.in(cfm);
    const double less = run_constant_torque(rb1, held(.499), tap)->airflow.in(cfm);
    near((more - less) / 0.002 * 0.1, -37.2, 0.05);
}

BOOST_AUTO_TEST_CASE(altitude_moves_each_kind_of_motor_its_own_way) {
    const double s = 0.8321;  // 5,000 ft over sea level
    const auto low = run_constant_torque(rb1, base_duct(), pound_foot(2));
    const auto high = run_constant_torque(rb1, base_duct(), pound_foot(2), {}, s);
    BOOST_CHECK_CLOSE(high->airflow / low->airflow, 1 / std::sqrt(s), 1e-6);  // 9.6 % more cfm
    BOOST_CHECK_CLOSE(high->airflow / low->airflow * s, 0.912, 0.1);          // 8.8 % less mass
    BOOST_CHECK_CLOSE(high->pressure / low->pressure, 1.0, 1e-6);
    BOOST_CHECK_CLOSE(high->speed / low->speed, 1 / std::sqrt(s), 1e-6);
    BOOST_CHECK_CLOSE(high->shaft / low->shaft, 1 / std::sqrt(s), 1e-6);
    const auto held_low = run_constant_airflow(rb1, base_duct(), cfm(1200));
    const auto held_high = run_constant_airflow(rb1, base_duct(), cfm(1200), {}, s);
    BOOST_CHECK_CLOSE(held_high->pressure / held_low->pressure, s, 1e-6);
    BOOST_CHECK_CLOSE(held_high->speed / held_low->speed, 1.0, 1e-6);
    BOOST_CHECK_CLOSE(held_high->shaft / held_low->shaft, s, 1e-6);
}

namespace {

/// The blower's equations once more, in plain numbers: krpm, kcfm, in., lb-ft, hp.
struct Plain {
    BlowerCurve k;
    double fixed, r, s;
    double n(double q) const {
        const double e = fixed + s * r * q * q;
        const double c = e / s + k.static_qq * q * q;
        return (-k.static_nq * q + std::sqrt(k.static_nq * k.static_nq * q * q + 4 * k.static_nn * c)) /
               (2 * k.static_nn);
    }
    double t(double q) const {
        return s * (k.torque_nn * n(q) * n(q) + k.torque_nq * n(q) * q + k.torque_qq * q * q);
    }
    double hp(double q) const { return t(q) * n(q) * 1000 / 5252.113; }
};

/// The first airflow of a dense scan, in kcfm, at which `stop` holds; -1 where none does.
template <class Stop>
double scan(Stop stop) {
    for (double q = 1e-4; q < 6; q += 1e-4) {
        if (stop(q)) return q;
    }
    return -1;
}

}  // namespace

BOOST_AUTO_TEST_CASE(a_dense_scan_finds_the_same_operating_points) {
    std::mt19937 random(20240711);
    auto between = [&](double a, double b) { return a + (b - a) * (double(random()) / 4294967295.0); };
    for (int i = 0; i < 300; ++i) {
        const BlowerCurve k{between(.8, 2.2), between(-.05, .05), between(.05, .6),
                            between(.2, 3),   between(.8, 2.5),   between(.05, .3)};
        const Plain plain{k, between(0, .3), between(.05, .9), between(.7, 1.05)};
        const Duct duct{inch_water(plain.fixed), plain.r};
        const double tap = between(.8, 3), most_n = between(.9, 1.5), most_hp = between(.2, .8);
        BOOST_TEST_CONTEXT("instance " << i) {
            const double q = scan([&](double x) {
                return plain.t(x) >= tap || plain.n(x) >= most_n || plain.hp(x) >= most_hp;
            });
            const auto solved = run_constant_torque(k, duct, pound_foot(tap),
                                                    {rpm(most_n * 1000), horsepower(most_hp), {}}, plain.s);
            BOOST_REQUIRE(solved.has_value() == (q > 2e-4));
            if (solved) BOOST_CHECK_SMALL(solved->airflow.in(cfm)-q * 1000, 0.11);

            // Capacitor run: of all crossings the last one below synchronous speed, so scan downward.
            const BreakdownCurve motor{rpm(1200), pound_foot(tap), between(.2, .35), between(.85, 1)};
            double top = -1;
            for (double x = 6; x > 0; x -= 1e-4) {
                if (plain.n(x) < 1.2 && plain.t(x) <= motor.at(rpm(plain.n(x) * 1000)).in(pound_foot)) {
                    top = x;
                    break;
                }
            }
            const auto turned = run_induction(k, duct, motor_of(motor), plain.s);
            if (top > 0.02) {
                BOOST_REQUIRE(turned);
                BOOST_CHECK_SMALL(turned->airflow.in(cfm)-top * 1000, 0.11);
            }
        }
    }
}

BOOST_AUTO_TEST_CASE(a_printed_line_of_cfm_and_static_crosses_the_duct_where_interpolation_says) {
    // A furnace manual's three speeds, cfm at 0.1 to 0.7 in.; crossings worked by linear interpolation.
    const double high[] = {1150, 1095, 1045, 1025, 950, 865, 775};
    const double medium[] = {890, 855, 835, 775, 715, 665, 605};
    auto crossing = [](const double(&line)[7], const Duct& duct) {
        for (int i = 0; i < 6; ++i) {
            for (int part = 0; part < 10000; ++part) {
                const double share = part / 10000.0;
                const double q = line[i] + (line[i + 1] - line[i]) * share;
                const double e = 0.1 * (i + 1) + 0.1 * share;
                if (static_of(duct, cfm(q)).in(inch_water) <= e) return std::pair(q, e);
            }
        }
        return std::pair(0.0, 0.0);
    };
    Duct duct = duct_through(cfm(950), inch_water(.5));
    BOOST_CHECK_CLOSE(duct.resistance, .5540, 0.1);
    BOOST_CHECK_CLOSE(crossing(medium, duct).first, 801.5, 0.1);
    BOOST_CHECK_CLOSE(crossing(medium, duct).second, .3559, 0.1);
    duct.resistance *= 1.5;
    BOOST_CHECK_CLOSE(crossing(high, duct).first, 856.4, 0.1);
    BOOST_CHECK_CLOSE(crossing(high, duct).second, .6095, 0.1);
}
