// A public packaged-unit blower table (cfm, in. w.c., rpm, bhp): the cells that were read, the curves fitted
// to all 55.
#include <boost/test/unit_test.hpp>
#include <cmath>

#include "engine/airflow/blower_fit.hpp"
#include "tests/airflow/fixtures.hpp"

using namespace endbell;
using namespace endbell::test;

namespace {

struct Cell {
    double flow, esp, speed, bhp;
};
const Cell cells[] = {{4750, .20, 470, .75},   {2750, 1.20, 820, 1.30}, {4750, .40, 575, 1.10},
                      {4000, .80, 715, 1.40},  {3000, 1.40, 885, 1.70}, {2750, .40, 505, .50},
                      {4000, 1.00, 785, 1.70}, {3500, 1.00, 775, 1.45}};

/// Least squares over the whole table: R^2 0.99996 (static) and 0.9994 (torque).
const BlowerCurve whole_table{2.01706, -0.04834, 0.00599, 3.21753, 2.41545, 0.11491};

BlowerRow row(double q, double e, double n, double hp) {
    return {cfm(q), inch_water(e), rpm(n), horsepower(hp)};
}

std::vector<BlowerRow> rows_of_cells() {
    std::vector<BlowerRow> rows;
    for (const Cell& c : cells) rows.push_back(row(c.flow, c.esp, c.speed, c.bhp));
    return rows;
}

/// RB-1 as a table would print it: cells of the reference table at constant airflow and constant torque.
std::vector<BlowerRow> reference_rows() {
    return {row(1200, .1, 784, .238),  row(1200, .3, 892, .306),  row(1200, .5, 989, .376),
            row(1200, .7, 1077, .447), row(1200, .9, 1158, .520), row(1355, .1, 871, .332),
            row(1277, .3, 930, .354),  row(1201, .5, 989, .377),  row(1128, .7, 1048, .399),
            row(1058, .9, 1107, .422), row(1025, 1.0, 1136, .433)};
}

}  // namespace

BOOST_AUTO_TEST_CASE(the_fitted_curves_pass_through_the_printed_cells) {
    for (const Cell& c : cells) {
        BOOST_TEST_CONTEXT(c.flow << " cfm at " << c.esp) {
            const double e = static_of(whole_table, rpm(c.speed), cfm(c.flow)).in(inch_water);
            BOOST_CHECK_SMALL(e - c.esp, 0.0103 + 0.0005);  // largest residual of the whole table
            const double t = torque_of(whole_table, rpm(c.speed), cfm(c.flow)).in(pound_foot);
            BOOST_CHECK_CLOSE(t, 5252.113 * c.bhp / c.speed, 5.1);  // likewise
        }
    }
}

BOOST_AUTO_TEST_CASE(one_torque_walks_across_the_table) {
    // 10.05, 10.28 and 10.09 lb-ft in the cells; the mean of the outer two is held. 5 % is the torque
    // residual.
    const std::pair<double, double> walk[] = {{.40, 4750}, {.80, 4000}, {1.40, 3000}};
    for (const auto& [esp, q] : walk) {
        const auto p = run_constant_torque(whole_table, {inch_water(esp), 0}, pound_foot(10.07));
        BOOST_REQUIRE(p);
        BOOST_CHECK_CLOSE(p->airflow.in(cfm), q, 5.1);
    }
    const auto at_low = run_constant_torque(whole_table, {inch_water(.40), 0}, pound_foot(10.07));
    const auto at_high = run_constant_torque(whole_table, {inch_water(1.40), 0}, pound_foot(10.07));
    // The product of rpm and cfm holds within 3 to 5 % on one tap, while cfm falls 37 % and rpm rises 54 %.
    BOOST_CHECK_CLOSE(at_low->airflow.in(cfm)*at_low->speed.in(rpm),
                      at_high->airflow.in(cfm)*at_high->speed.in(rpm), 5.0);
    BOOST_CHECK_SMALL(at_high->airflow / at_low->airflow - (1 - .368), 0.03);
    BOOST_CHECK_SMALL(at_high->speed / at_low->speed - 1.539, 0.03);
}

BOOST_AUTO_TEST_CASE(a_fit_of_the_read_cells_is_accepted_and_close_to_them) {
    const BlowerFit fit = fit_blower(rows_of_cells());
    BOOST_REQUIRE(fit.curve);
    BOOST_TEST(!fit.refusal);
    BOOST_TEST(fit.pressure.r_squared > 0.999);
    BOOST_TEST(fit.torque.r_squared > 0.99);
    BOOST_TEST(fit.pressure.greatest.in(inch_water) < 0.0103);
    BOOST_TEST(fit.torque.greatest < 0.051);
    BOOST_CHECK_CLOSE(fit.curve->static_nn, 2.01706, 2.0);
}

BOOST_AUTO_TEST_CASE(a_fit_finds_the_reference_blower_in_its_own_rounded_table) {
    const BlowerFit fit = fit_blower(reference_rows());
    BOOST_REQUIRE(fit.curve);
    // The printed digits leave the coefficients loose and the curves tight.
    for (const BlowerRow& r : reference_rows()) {
        BOOST_CHECK_SMALL(
            static_of(*fit.curve, r.speed, r.airflow).in(inch_water)-r.static_total.in(inch_water), .002);
        BOOST_CHECK_CLOSE(torque_of(*fit.curve, r.speed, r.airflow).in(pound_foot),
                          torque_of(r.shaft, r.speed).in(pound_foot), 0.3);
    }
    BOOST_CHECK_CLOSE(fit.curve->static_nn, 1.10, 3.0);
}

BOOST_AUTO_TEST_CASE(a_table_that_does_not_decide_is_refused) {
    std::vector<BlowerRow> rows = rows_of_cells();
    rows.resize(5);
    BOOST_TEST(fit_blower(rows).refusal == TableRefusal::too_few_rows);
    BOOST_TEST(!fit_blower(rows).curve.has_value());

    // One line of the fan laws: Q, n in one ratio, so the three columns are one.
    std::vector<BlowerRow> line;
    for (double x : {.5, .6, .7, .8, .9, 1.0, 1.1})
        line.push_back(row(1200 * x, .5 * x * x, 990 * x, .376 * x * x * x));
    BOOST_TEST(fit_blower(line).refusal == TableRefusal::rows_do_not_decide);

    // Two rows swapped by the typist.
    std::vector<BlowerRow> swapped = rows_of_cells();
    std::swap(swapped[0].static_total, swapped[4].static_total);
    BOOST_TEST(fit_blower(swapped).refusal == TableRefusal::fit_too_loose);

    // A torque that falls as the wheel turns faster is no blower.
    std::vector<BlowerRow> odd;
    for (double n : {700.0, 800.0, 900.0}) {
        for (double q : {800.0, 1200.0, 1500.0}) {
            const double nn = n / 1000, qq = q / 1000, t = 4 - 2 * nn * nn;
            odd.push_back(row(q, 1.1 * nn * nn - .2 * qq * qq, n, t * n / 5252.113));
        }
    }
    BOOST_TEST(!fit_blower(odd).curve.has_value());
}

BOOST_AUTO_TEST_CASE(a_job_with_its_blower_table_is_solved_on_it) {
    FailedUnit job = furnace();
    job.measured.speed = known(rpm(989.03));
    job.measured.airflow = known(cfm(1200));
    job.measured.static_total = known(inch_water(0.5));
    job.equipment.blower_table = known(reference_rows());
    AirPlan plan = plan_air(job, constant_torque(0.75, {20, 32}), limits);
    BOOST_TEST(plan.method == AirMethod::blower_table);
    BOOST_TEST(plan.point.torque_from == TorqueSource::blower_table);
    BOOST_CHECK_CLOSE(plan.point.torque.in(pound_foot).value, 1.998, 0.5);
    BOOST_REQUIRE(plan.taps.size() == 2u);
    BOOST_CHECK_CLOSE(plan.taps[1].airflow.in(cfm).value, 1200.5, 0.5);
    BOOST_CHECK_CLOSE(plan.taps[1].speed.in(rpm).value, 989.5, 0.5);

    // No airflow reading: speed and static place the point on the table.
    job.measured.airflow = {};
    plan = plan_air(job, constant_torque(0.75, {20, 32}), limits);
    BOOST_TEST(plan.point.airflow_from == AirflowSource::blower_table);
    BOOST_CHECK_CLOSE(plan.point.airflow.in(cfm).value, 1200, 1.0);

    // No speed either, but an airflow: the table alone gives the torque of every tap.
    job.measured.airflow = known(cfm(1200));
    job.measured.speed = {};
    job.plate = {};
    plan = plan_air(job, constant_torque(0.75, {20, 32}), limits);
    BOOST_TEST(plan.computed);
    BOOST_CHECK_CLOSE(plan.taps[1].airflow.in(cfm).value, 1200.5, 0.5);

    job.unit.belt_drive = known(true);
    plan = plan_air(job, constant_torque(0.75, {20, 32}), limits);
    BOOST_TEST(plan.table_refused == TableRefusal::belt_drive);
    BOOST_TEST(!plan.computed);
}

BOOST_AUTO_TEST_CASE(a_table_without_a_static_reading_falls_back_on_the_torque_ratio) {
    FailedUnit job = furnace();
    job.measured.static_total = {};
    job.equipment.blower_table = known(reference_rows());
    const AirPlan plan = plan_air(job, constant_torque(0.75, {20, 32}), limits);
    BOOST_TEST(plan.method == AirMethod::torque_ratio);
    BOOST_TEST(plan.computed);
    job.plate = {};
    BOOST_TEST(!plan_air(job, constant_torque(0.75, {20, 32}), limits).computed);
}
