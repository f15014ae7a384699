// Power, earth, common, settings and the control transformer.
#include <boost/test/unit_test.hpp>

#include "engine/facts/control_power.hpp"
#include "engine/model/limit.hpp"
#include "engine/wiring/line_side.hpp"
#include "engine/wiring/transformer.hpp"
#include "tests/wiring/fixtures.hpp"

using namespace fixture;

namespace {

const AirPlan taps = air({{Call::circulate, 1}, {Call::cool_high, 4}});

WiringPlan plan_at(double volts, Part part = five_tap_motor(TapRule::one_tap_only)) {
    FailedUnit job = thermostat_job(HeatKind::none, {"G", "Y1"});
    job.equipment.supply = known(bare_supply(volt(volts)));
    return plan_wiring(job, part, taps, limits);
}

std::string setting(const WiringPlan& plan, SettingKind what) {
    for (const Setting& s : plan.settings) {
        if (s.what == what) return std::string(word(s.done));
    }
    return "";
}

/// Rated for 115 with its jumper in and for 230 with it out.
Part jumpered_motor() {
    Part part = five_tap_motor(TapRule::one_tap_only);
    Rating low, high;
    low.volts = plate_volts(115);
    low.selection = VoltageSelection::jumper;
    high.volts = plate_volts(208, 230);
    part.motor->ratings = {low, high};
    return part;
}

}  // namespace

BOOST_AUTO_TEST_CASE(at_240_v_the_n_terminal_takes_the_second_line_conductor) {
    // A constant-torque motor's service manual: on 208-240 V L2 lands on N, and G is earth.
    const WiringPlan p = plan_at(240);
    BOOST_TEST(wired(p, "L1", "motor L"));
    BOOST_TEST(wired(p, "L2", "motor N"));
    BOOST_TEST(wired(p, "earth", "motor G"));
    BOOST_TEST(has(p.cautions, WiringCaution::both_line_conductors_live));
}

BOOST_AUTO_TEST_CASE(at_120_v_the_n_terminal_takes_the_neutral) {
    const WiringPlan p = plan_at(120);
    BOOST_TEST(wired(p, "N", "motor N"));
    BOOST_TEST(!has(p.cautions, WiringCaution::both_line_conductors_live));
}

BOOST_AUTO_TEST_CASE(the_thermostat_g_never_lands_on_earth_g) {
    const WiringPlan p = plan_at(240);
    BOOST_TEST(!wired(p, "G", "motor G"));
    BOOST_TEST(has(p.cautions, WiringCaution::earth_g_is_not_fan_g));
}

BOOST_AUTO_TEST_CASE(common_comes_from_the_transformer_of_the_calls) {
    BOOST_TEST(wired(plan_at(240), "C", "motor C"));
    BOOST_TEST(has(plan_at(240).cautions, WiringCaution::common_from_the_same_transformer));
}

BOOST_AUTO_TEST_CASE(terminals_missing_from_the_catalog_are_named_and_not_guessed) {
    Part part = five_tap_motor(TapRule::one_tap_only);
    part.motor->terminals.clear();
    const WiringPlan p = plan_at(240, part);
    BOOST_TEST((p.refusal == WiringRefusal::terminals_not_listed));
    BOOST_TEST(p.lacking ==
               (std::vector<std::string>{"terminals.line", "terminals.second line", "terminals.common"}));
    BOOST_TEST(p.wires.empty());
    BOOST_TEST((verdict_of(p) == Verdict::fits));  // a gap of the catalog says nothing of the part
}

BOOST_AUTO_TEST_CASE(each_line_terminal_that_is_missing_is_a_refusal_and_a_missing_earth_is_the_shell) {
    for (const char* function : {"line", "second line", "common", "earth"}) {
        Part part = five_tap_motor(TapRule::one_tap_only);
        auto& list = part.motor->terminals;
        list.erase(std::find_if(list.begin(), list.end(),
                                [&](const PartTerminal& t) { return t.function == function; }));
        const WiringPlan p = plan_at(240, part);
        const bool earth = std::string(function) == "earth";
        BOOST_TEST(p.possible == earth);
        if (earth) {
            BOOST_TEST(wired(p, "earth", "motor shell"));
        } else {
            BOOST_TEST(p.lacking == (std::vector<std::string>{std::string("terminals.") + function}));
        }
    }
}

BOOST_AUTO_TEST_CASE(a_label_listed_for_two_conductors_is_refused_and_never_landed) {
    Part part = five_tap_motor(TapRule::one_tap_only);
    for (PartTerminal& t : part.motor->terminals) {
        if (t.function == "second line") t.label = "L";  // as the line's
    }
    BOOST_TEST((plan_at(240, part).refusal == WiringRefusal::terminals_not_listed));
}

BOOST_AUTO_TEST_CASE(the_jumper_comes_out_above_150_v_and_goes_in_at_115) {
    // The jumper doubles the rectified line: left in at 240 V it destroys the module.
    BOOST_TEST(setting(plan_at(230, jumpered_motor()), SettingKind::jumper) == "out");
    BOOST_TEST(setting(plan_at(208, jumpered_motor()), SettingKind::jumper) == "out");
    BOOST_TEST(setting(plan_at(115, jumpered_motor()), SettingKind::jumper) == "in");
    BOOST_TEST(setting(plan_at(277, jumpered_motor()), SettingKind::jumper) == "ask");
}

BOOST_AUTO_TEST_CASE(an_electronic_motor_must_not_see_the_old_capacitor) {
    FailedUnit job = thermostat_job(HeatKind::none, {"G", "Y1"});
    job.plate.family = known(Family::capacitor_run);
    const WiringPlan p = plan_wiring(job, five_tap_motor(TapRule::one_tap_only), taps, limits);
    BOOST_TEST(setting(p, SettingKind::capacitor) == "removed");
    BOOST_TEST(has(p.checks, SiteCheck::discharge_the_capacitor));
}

BOOST_AUTO_TEST_CASE(an_unknown_supply_is_lacking_and_no_conductor_is_chosen) {
    FailedUnit job = thermostat_job(HeatKind::none, {"G", "Y1"});
    job.equipment.supply = {};
    const WiringPlan p = plan_wiring(job, five_tap_motor(TapRule::one_tap_only), taps, limits);
    BOOST_TEST((std::find(p.lacking.begin(), p.lacking.end(), "equipment.supply") != p.lacking.end()));
    for (const Wire& w : p.wires) BOOST_TEST((w.to != NetPlace::motor("N")));
}

BOOST_AUTO_TEST_CASE(the_transformer_carries_relays_and_tap_within_80_percent) {
    // 40 VA rated; 21.6 VA there (0.9 A at 24 V). One relay at 6 VA and one tap at 0.02 A x 24 V = 0.48 VA:
    // 28.08 VA, 70.2 %.
    FailedUnit job = thermostat_job(HeatKind::none, {"G", "Y1"});
    job.controls.transformer = known(volt_ampere(40));
    job.controls.transformer_load = known(volt_ampere(21.6));
    const ControlPower power = plan_wiring(job, five_tap_motor(TapRule::one_tap_only), taps, limits).power;
    BOOST_TEST(power.added.in(volt_ampere) == 6.48, boost::test_tools::tolerance(1e-9));
    BOOST_TEST(*power.share == 0.702, boost::test_tools::tolerance(1e-9));
    BOOST_TEST((power.judgement == PowerJudgement::within_plan));
    BOOST_TEST(*power.class2);
    BOOST_TEST(power.rated->in(ampere) == 1.6667, boost::test_tools::tolerance(1e-4));  // 40 / 24
    BOOST_TEST(power.fuse->in(ampere) == 3.0);  // 1.25 x 1.667 = 2.083: the next that is made
}

// A control-power budget page: 75 VA take 4 A. A class 2 source is fused at 100 VA / 24 V = 4.17 A at most: of what is
// made, 4 A.
BOOST_AUTO_TEST_CASE(a_secondary_is_fused_by_its_own_current_and_never_above_class_2) {
    const auto fuse = [](double va) { return secondary_fuse(volt_ampere(va), limits).in(ampere); };
    BOOST_TEST(fuse(20) == 2.0);    // 1.04
    BOOST_TEST(fuse(19.2) == 1.0);  // 0.8 x 1.25 = 1.0 exactly
    BOOST_TEST(fuse(50) == 3.0);    // 2.60
    BOOST_TEST(fuse(75) == 4.0);    // 3.91
    BOOST_TEST(fuse(100) == 4.0);   // 5.21, and class 2 ends before
    Limits tight;                   // 20 VA are 0.83 A: less than any fuse that is made
    BOOST_CHECK(tight.tighten("class2.power", 20, "north yard") == Limits::Tightening::accepted);
    BOOST_TEST(secondary_fuse(volt_ampere(40), tight).in(ampere) == 1.0);
}

BOOST_AUTO_TEST_CASE(a_20_va_transformer_is_overloaded_by_the_same_loads) {
    // 21.6 VA alone is 108 % of 20 VA.
    FailedUnit job = thermostat_job(HeatKind::none, {"G", "Y1"});
    job.controls.transformer = known(volt_ampere(20));
    job.controls.transformer_load = known(volt_ampere(21.6));
    const WiringPlan p = plan_wiring(job, five_tap_motor(TapRule::one_tap_only), taps, limits);
    BOOST_TEST((p.power.judgement == PowerJudgement::over_rating));
    BOOST_TEST(has(p.cautions, WiringCaution::transformer_overloaded));
}

BOOST_AUTO_TEST_CASE(class_2_ends_at_100_va) {
    // 75 VA at 24 V is 3.125 A and class 2; 150 VA is not.
    FailedUnit job = thermostat_job(HeatKind::none, {"G", "Y1"});
    job.controls.transformer = known(volt_ampere(75));
    BOOST_TEST(*plan_wiring(job, five_tap_motor(TapRule::one_tap_only), taps, limits).power.class2);
    BOOST_TEST(secondary_current(volt_ampere(75)).in(ampere) == 3.125, boost::test_tools::tolerance(1e-9));
    job.controls.transformer = known(volt_ampere(150));
    BOOST_TEST(!*plan_wiring(job, five_tap_motor(TapRule::one_tap_only), taps, limits).power.class2);
}

BOOST_AUTO_TEST_CASE(fifty_feet_of_18_awg_lose_little) {
    // 0.9 A over 50 ft one way at 6.385 ohm per 1000 ft: 0.9 x 2 x 50 x 0.006385 = 0.57465 V.
    BOOST_TEST(control_drop(ampere(0.9), foot(50), limits.value(limit::wire_control)).in(volt) == 0.57465,
               boost::test_tools::tolerance(1e-9));
}

// A shop may allow fewer contacts a relay; less than one contact is no relay, and nothing is divided by it.
BOOST_AUTO_TEST_CASE(a_relay_has_a_contact_whatever_a_shop_says) {
    Limits few;
    BOOST_CHECK(few.tighten("relay.poles", 0.5, "north yard") == Limits::Tightening::accepted);
    const FailedUnit job = thermostat_job(HeatKind::none, {"G", "Y1"});
    const WiringPlan plan = plan_wiring(job, five_tap_motor(TapRule::one_tap_only), taps, few);
    BOOST_TEST(!plan.relays.empty());
    for (const Relay& relay : plan.relays) BOOST_TEST(relay.bodies == relay.contacts);
}
