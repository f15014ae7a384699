// What must hold for any job, however much of it is missing or absurd: no throw, no silent gap, no broken
// promise.
#include <boost/test/unit_test.hpp>
#include <cmath>
#include <random>

#include "tests/airflow/fixtures.hpp"

using namespace endbell;
using namespace endbell::test;

namespace {

class Dice {
  public:
    explicit Dice(unsigned seed) : random_(seed) {}
    int roll(int sides) { return static_cast<int>(random_() % static_cast<unsigned>(sides)); }
    double between(double a, double b) { return a + (b - a) * (double(random_()) / 4294967295.0); }
    /// Mostly sensible, sometimes absent, zero, negative or far too large.
    double number(double low, double high) {
        switch (roll(12)) {
            case 0:
                return 0;
            case 1:
                return -between(low, high);
            case 2:
                return between(low, high) * 50;
            default:
                return between(low, high);
        }
    }
    template <class Unit>
    auto reading(Unit unit, double low, double high) {
        auto value = known(unit(number(low, high)));
        if (roll(3) == 0) value.value.reset();
        return value;
    }
    template <class E>
    Reading<E> one_of(std::initializer_list<E> list) {
        if (roll(4) == 0) return {};
        return known(*(list.begin() + roll(static_cast<int>(list.size()))));
    }

  private:
    std::mt19937 random_;
};

constexpr auto families = {Family::shaded_pole,     Family::capacitor_run,    Family::three_phase,
                           Family::constant_torque, Family::constant_airflow, Family::communicating};

FailedUnit any_job(Dice& dice) {
    FailedUnit job;
    job.unit.load = known(Load::indoor_blower);
    job.unit.belt_drive = dice.one_of({true, false});
    job.plate.family = dice.one_of<Family>(families);
    if (dice.roll(3)) job.plate.power = known(std::vector<Power>{horsepower(dice.number(.1, 1))});
    job.plate.speed = dice.reading(rpm, 700, 1700);
    job.plate.poles = dice.one_of({4, 6, 8, 0});
    if (const auto volts = dice.reading(volt, 100, 250)) job.measured.line_volts = known<LineVolts>(*volts);
    if (const auto amps = dice.reading(ampere, 1, 8)) job.measured.amps = known<LineAmps>(*amps);
    job.measured.speed = dice.reading(rpm, 700, 1300);
    job.measured.watts = dice.reading(watt, 100, 700);
    job.measured.airflow = dice.reading(cfm, 500, 2000);
    job.measured.static_total = dice.reading(inch_water, .1, 1.2);
    job.measured.rise = dice.reading(fahrenheit_degree, 20, 80);
    if (const auto volts = dice.reading(volt, 115, 240)) job.equipment.supply = known(bare_supply(*volts));
    job.equipment.cooling = dice.reading(ton_cooling, 1.5, 5);
    job.equipment.cooling_stages = dice.one_of({1, 2});
    job.equipment.heating_stages = dice.one_of({1, 2});
    job.equipment.heat_input = dice.reading(btu_per_hour, 40000, 120000);
    job.equipment.heat_output = dice.reading(btu_per_hour, 30000, 110000);
    job.equipment.rise_low = dice.reading(fahrenheit_degree, 25, 50);
    job.equipment.rise_high = dice.reading(fahrenheit_degree, 50, 85);
    job.equipment.electric_heat = dice.reading(kilowatt, 5, 20);
    job.equipment.altitude = dice.reading(foot, 0, 9000);
    job.equipment.altitude_input = dice.reading(btu_per_hour, 30000, 110000);
    job.equipment.low_heat_output = dice.reading(btu_per_hour, 20000, 70000);
    job.equipment.low_rise_low = dice.reading(fahrenheit_degree, 20, 45);
    job.equipment.low_rise_high = dice.reading(fahrenheit_degree, 45, 75);
    job.equipment.low_cooling = dice.reading(ton_cooling, 1, 4);
    job.equipment.electric_heat_volts = dice.reading(volt, 200, 250);
    job.equipment.heat_least_air = dice.reading(cfm, 400, 1500);
    job.equipment.coil_limit = dice.reading(inch_water, .3, 1);
    job.equipment.efficiency = dice.one_of({.78, .95});
    job.measured.burner_input = dice.reading(btu_per_hour, 30000, 120000);
    job.measured.filter_drop = dice.reading(inch_water, .05, .5);
    job.controls.zone_panel = dice.one_of({true, false});
    job.controls.least_zone = dice.reading(cfm, 300, 900);
    if (dice.roll(3) == 0) job.equipment.return_size = known(dice.number(200, 900));
    if (dice.roll(4) == 0) {
        job.equipment.electric_stages =
            known(std::vector<Power>{kilowatt(dice.between(3, 8)), kilowatt(dice.between(3, 8))});
    }
    job.equipment.climate = dice.one_of({Climate::humid, Climate::normal, Climate::dry});
    job.controls.heat = dice.one_of({HeatKind::none, HeatKind::gas, HeatKind::oil, HeatKind::electric,
                                     HeatKind::heat_pump, HeatKind::dual_fuel});
    if (dice.roll(2)) {
        std::vector<Terminal> terminals;
        for (int i = dice.roll(5); i > 0; --i) terminals.push_back({"T", static_cast<Call>(dice.roll(7))});
        job.controls.terminals = known(terminals);
    }
    if (dice.roll(4) == 0) {
        std::vector<BlowerRow> rows;
        for (int i = dice.roll(12); i > 0; --i) {
            const double q = dice.number(800, 1600), e = dice.number(.1, 1);
            const double n = 1000 * std::sqrt(std::abs(e + .4e-6 * q * q) / 1.1);
            rows.push_back({cfm(q), inch_water(e), rpm(n), horsepower(dice.number(.2, .6))});
        }
        job.equipment.blower_table = known(rows);
    }
    return job;
}

Part any_part(Dice& dice) {
    if (dice.roll(8) == 0) {
        Part part;
        part.module = Module{};
        if (dice.roll(2)) part.module->power = horsepower(dice.number(.3, 1));
        return part;
    }
    const Family family =
        *(families.begin() + dice.roll(6));  // before the power: compilers differ in which comes first
    Part part = motor_part(family, dice.number(.2, 1));
    if (dice.roll(5) == 0) part.motor->family.reset();
    if (dice.roll(3)) part.motor->ratings[0].speed = rpm(dice.number(800, 1650));
    if (dice.roll(4) == 0) part.motor->ratings.clear();
    if (dice.roll(3) == 0) part.motor->speed_limit = rpm(dice.number(900, 1500));
    if (dice.roll(3) == 0) part.motor->efficiency = dice.between(.3, .85);
    for (int i = dice.roll(6); i > 0; --i) {
        Tap tap;
        tap.number = i;
        if (dice.roll(5)) tap.torque = ounce_foot(dice.number(8, 60));
        if (dice.roll(5)) tap.speed = rpm(dice.number(600, 1150));
        part.motor->taps.push_back(tap);
    }
    return part;
}

void sound(const EstimatedNumber& estimate) {
    if (!estimate.known) return;
    BOOST_TEST(std::isfinite(estimate.value));
    BOOST_TEST(std::isfinite(estimate.plus_minus));
    BOOST_TEST(estimate.plus_minus >= 0);
}

void sound(const TapAir& tap) {
    BOOST_TEST(tap.airflow.known());
    BOOST_TEST(tap.airflow.in(cfm).value > 0);
    for (const EstimatedNumber& number :
         {tap.airflow.in(cfm), tap.static_total.in(inch_water), tap.speed.in(rpm), tap.torque.in(pound_foot),
          tap.shaft_power.in(horsepower), tap.input_power.in(watt), tap.line_current.in(ampere), tap.load}) {
        sound(number);
    }
}

void sound(const AirPlan& plan, const CallAir& call) {
    BOOST_TEST((call.low <= call.target && call.target <= call.high));
    BOOST_TEST(call.low.in(cfm) >= 0);
    BOOST_TEST(call.met != call.unmet_reason.has_value());  // unmet always says why, met never does
    BOOST_TEST((call.high > Airflow() || !call.lacking.empty()));
    for (const CallHeat& heat : call.heats) {
        BOOST_TEST((heat.low <= heat.high || call.basis == WindowBasis::electric_elements));
        BOOST_TEST((heat.output.heat <= *call.heat));  // the greatest comes first
        sound(heat.expected_rise.in(fahrenheit_degree));
    }
    if (!call.met) {
        BOOST_TEST(!call.tap.has_value());
        return;
    }
    for (const TapTrade& trade : call.trades) BOOST_TEST(std::isfinite(trade.decibels));
    BOOST_TEST(plan.computed);
    const TapAir* point = air_of(plan, call.call);
    BOOST_REQUIRE(point);
    BOOST_TEST((point->airflow.value() >= call.low));
    BOOST_TEST((point->airflow.value() <= call.high));
    BOOST_TEST(point->caution != LoadCaution::overload);
    // Whatever of two outputs it is, the rise lies in the plate's window.
    for (const CallHeat& heat : call.heats) {
        if (!call.rise_low || !call.rise_high) continue;
        BOOST_TEST((heat.expected_rise.value() >= *call.rise_low * (1 - 1e-9)));
        BOOST_TEST((heat.expected_rise.value() <= *call.rise_high * (1 + 1e-9)));
    }
    if (call.assured) BOOST_TEST((point->airflow.value() - point->airflow.plus_minus() >= call.low));
}

}  // namespace

BOOST_AUTO_TEST_CASE(any_job_and_any_part_give_a_sound_plan) {
    int computed = 0, met = 0;
    for (unsigned seed = 1; seed <= 5000; ++seed) {
        Dice dice(seed);
        const FailedUnit job = any_job(dice);
        const Part part = any_part(dice);
        BOOST_TEST_CONTEXT("seed " << seed) {
            const AirPlan plan = plan_air(job, part, limits);
            computed += plan.computed;
            if (!plan.computed) {
                BOOST_TEST(plan.taps.empty());
                BOOST_TEST((plan.method == AirMethod::by_the_board || !plan.lacking.empty()));
            }
            for (const TapAir& tap : plan.taps) sound(tap);
            if (plan.static_over) BOOST_TEST(plan.static_over->cures.back() == StaticCure::duct);
            for (const CallAir& call : plan.calls) {
                sound(plan, call);
                met += call.met;
            }
        }
    }
    BOOST_TEST(computed > 850);  // the dice do reach the model
    BOOST_TEST(met > 800);
}

BOOST_AUTO_TEST_CASE(more_torque_never_moves_less_air_and_a_tighter_duct_never_more) {
    for (unsigned seed = 1; seed <= 300; ++seed) {
        Dice dice(seed);
        FailedUnit job = furnace();
        job.measured.airflow = known(cfm(dice.between(800, 1600)));
        job.measured.static_total = known(inch_water(dice.between(.2, .9)));
        const AirPlan plan =
            plan_air(job, constant_torque(dice.between(.3, 1), {10, 15, 20, 25, 30, 35, 40}), limits);
        for (std::size_t i = 1; i < plan.taps.size(); ++i) {
            BOOST_TEST(plan.taps[i].airflow.in(cfm).value >= plan.taps[i - 1].airflow.in(cfm).value - 1e-6);
        }
        const BlowerCurve rb1 = reference_blower();
        const double k = dice.between(.2, .6), torque = dice.between(.5, 3);
        const auto loose = run_constant_torque(rb1, {inch_water(0), k}, pound_foot(torque));
        const auto tight = run_constant_torque(rb1, {inch_water(0), k * 1.2}, pound_foot(torque));
        BOOST_TEST(tight->airflow.in(cfm) < loose->airflow.in(cfm));
        BOOST_TEST(tight->speed.in(rpm) > loose->speed.in(rpm));
    }
}
