// Every line conductor of every supply, what switches it, and what is set before power. Facts: the trade's own paper on supplies,
// run capacitors and defrost (common practice), a two-piece motor's manual for its jumper.
#include <boost/test/unit_test.hpp>

#include "engine/wiring/proof.hpp"
#include "engine/wiring/simulate.hpp"
#include "tests/wiring/line_parts.hpp"

using namespace fixture;

namespace {

using Kind = NetPlace::Kind;

WiringPlan laid(const FailedUnit& job, const Part& part) {
    return plan_wiring(job, part, AirPlan{}, limits);
}

const Setting* setting(const WiringPlan& plan, SettingKind what) {
    for (const Setting& s : plan.settings) {
        if (s.what == what) return &s;
    }
    return nullptr;
}

}  // namespace

BOOST_AUTO_TEST_CASE(three_legs_land_through_the_starter) {
    const WiringPlan p = laid(three_phase_job(460), three_phase_motor());
    BOOST_REQUIRE(p.possible);
    BOOST_TEST(p.proven);
    BOOST_TEST(wired(p, "starter T1", "tap 1"));
    BOOST_TEST(p.taps.front().terminal == "T1");
    BOOST_TEST(wired(p, "starter T2", "motor T2"));
    BOOST_TEST(wired(p, "starter T3", "motor T3"));
    BOOST_TEST(wired(p, "earth", "motor GND"));
    BOOST_TEST(has(p.cautions, WiringCaution::reverse_by_this_motors_leads));
    BOOST_TEST(has(p.cautions, WiringCaution::load_side_only));
    BOOST_TEST(has(p.checks, SiteCheck::amps_of_each_leg));
}

BOOST_AUTO_TEST_CASE(a_three_phase_motor_has_its_leads_and_its_overload_set) {
    const WiringPlan high = laid(three_phase_job(460), three_phase_motor());
    BOOST_REQUIRE(setting(high, SettingKind::leads));
    BOOST_TEST((setting(high, SettingKind::leads)->done == SettingDone::high));
    BOOST_TEST((setting(high, SettingKind::overload)->amps == ampere(1.8)));
    BOOST_TEST((setting(high, SettingKind::rotation_leads)->done == SettingDone::ask));
    const WiringPlan low = laid(three_phase_job(230), three_phase_motor());
    BOOST_TEST((setting(low, SettingKind::leads)->done == SettingDone::low));
    BOOST_TEST((setting(low, SettingKind::overload)->amps == ampere(3.5)));
}

BOOST_AUTO_TEST_CASE(without_a_third_terminal_or_a_third_line_it_is_refused) {
    Part part = three_phase_motor();
    part.motor->terminals[2].function = "second line";
    WiringPlan p = laid(three_phase_job(460), part);
    BOOST_TEST((p.refusal == WiringRefusal::fewer_than_three_line_wires));
    BOOST_TEST(p.lacking == (std::vector<std::string>{"terminals.third line"}));
    BOOST_TEST((verdict_of(p) == Verdict::not_shown));

    FailedUnit one = three_phase_job(230);
    one.plate.phase = {};
    one.plate.family = {};
    p = laid(one, three_phase_motor());  // 230 V alone may be one phase
    BOOST_TEST((p.refusal == WiringRefusal::fewer_than_three_line_wires));
    BOOST_TEST(p.lacking == (std::vector<std::string>{"equipment.supply"}));
    one.equipment.supply = known(SupplySystem{SupplyKind::three_phase, volt(230), {}, hertz(60)});
    BOOST_TEST(laid(one, three_phase_motor()).possible);
}

BOOST_AUTO_TEST_CASE(two_line_conductors_that_meet_fail_the_proof) {
    const WiringPlan sound = laid(three_phase_job(460), three_phase_motor());
    const std::vector<NetPlace> legs{NetPlace::signal(0), {Kind::load_2}, {Kind::load_3}};
    for (const NetPlace& a : legs) {
        for (const NetPlace& b : legs) {
            if (a == b) continue;
            WiringPlan bad = sound;
            bad.wires.push_back({a, b});
            BOOST_TEST(Simulator(bad).run(0).short_circuit);
            BOOST_TEST(!is_proven(prove(bad)));
        }
    }
}

BOOST_AUTO_TEST_CASE(a_lead_before_the_contactor_fails_the_proof) {
    const WiringPlan sound = laid(three_phase_job(460), three_phase_motor());
    BOOST_TEST(is_proven(prove(sound)));
    for (const Kind line : {Kind::line_2, Kind::line_3}) {
        WiringPlan bad = sound;
        for (Wire& w : bad.wires) {
            if (w.from.kind == (line == Kind::line_2 ? Kind::load_2 : Kind::load_3)) w.from = {line};
        }
        BOOST_TEST(Simulator(bad).run(0).line_side);
        BOOST_TEST(!is_proven(prove(bad)));
    }
}

BOOST_AUTO_TEST_CASE(on_a_high_leg_two_lines_land_and_208_to_the_neutral_is_refused) {
    const SupplySystem delta{SupplyKind::high_leg, volt(230), volt(115), {}};
    FailedUnit job = thermostat_job(HeatKind::none, {"G", "Y1"});
    job.plate.phase = known(1);
    const AirPlan taps = air({{Call::circulate, 1}, {Call::cool_high, 4}});
    job.equipment.supply = known(delta);
    job.measured.line_volts = known<LineVolts>(volt(239), Origin::measured);
    const WiringPlan p = plan_wiring(job, five_tap_motor(TapRule::one_tap_only), taps, limits);
    BOOST_TEST(wired(p, "L2", "motor N"));
    BOOST_TEST(has(p.cautions, WiringCaution::a_high_leg_is_there));
    job.measured.line_volts = known<LineVolts>(volt(207), Origin::measured);
    const WiringPlan bad = plan_wiring(job, five_tap_motor(TapRule::one_tap_only), taps, limits);
    BOOST_TEST((bad.refusal == WiringRefusal::load_on_the_high_leg));
    BOOST_TEST((verdict_of(bad) == Verdict::not_shown));
}

BOOST_AUTO_TEST_CASE(a_rooftops_condenser_fan_hangs_on_two_of_three_lines) {
    FailedUnit job = fan_job({SupplyKind::three_phase, volt(460), {}, {}});
    job.controls.heat = known(HeatKind::none);
    const WiringPlan p = laid(job, fan_motor(2));
    BOOST_TEST(wired(p, "contactor T2", "motor PUR"));
    BOOST_TEST(has(p.cautions, WiringCaution::both_line_conductors_live));
}

BOOST_AUTO_TEST_CASE(three_wires_share_a_load_side_leg_and_four_go_to_a_capacitor_of_their_own) {
    FailedUnit job = fan_job(bare_supply(volt(230)));
    job.controls.fan_command = known(FanCommand::contactor);
    job.controls.heat = known(HeatKind::none);
    const WiringPlan three = laid(job, fan_motor(1));
    BOOST_TEST(wired(three, "contactor T1", "tap 1"));
    BOOST_TEST(wired(three, "contactor T1", "capacitor common"));
    BOOST_TEST(wired(three, "capacitor", "motor CAP 1"));
    BOOST_TEST(wired(three, "contactor T2", "motor PUR"));
    BOOST_TEST(three.proven);

    const WiringPlan four = laid(job, fan_motor(2));
    BOOST_TEST(wired(four, "capacitor", "motor CAP 1"));
    BOOST_TEST(wired(four, "capacitor common", "motor CAP 2"));
    BOOST_TEST(!wired(four, "contactor T1", "capacitor common"));
    BOOST_TEST(has(four.cautions, WiringCaution::fourth_lead_on_a_dual_capacitor));

    WiringPlan bad = three;  // the capacitor's common on a line-side terminal
    for (Wire& w : bad.wires) {
        if (w.note == WireNote::capacitor_common) w.from = {Kind::line_1};
    }
    BOOST_TEST(!is_proven(prove(bad)));
}

BOOST_AUTO_TEST_CASE(what_switches_the_fan_of_a_heat_pump_is_asked_and_never_assumed) {
    FailedUnit job = fan_job(bare_supply(volt(230)));
    for (const std::optional<HeatKind> heat :
         {std::optional<HeatKind>(), std::optional(HeatKind::heat_pump)}) {
        job.controls.heat = heat ? known(*heat) : Reading<HeatKind>{};
        const WiringPlan p = laid(job, fan_motor(2));
        BOOST_TEST((p.refusal == WiringRefusal::controls_not_known));
        BOOST_TEST(p.lacking == (std::vector<std::string>{"controls.fan_command"}));
    }
    job.controls.heat = known(HeatKind::gas);  // no defrost: the contactor, and it says that it was assumed
    BOOST_TEST(laid(job, fan_motor(2)).assumed == (std::vector<std::string>{"controls.fan_command"}));
}

BOOST_AUTO_TEST_CASE(on_the_contactor_alone_a_heat_pumps_fan_would_run_on_in_defrost) {
    FailedUnit job = fan_job(bare_supply(volt(230)));
    job.controls.fan_command = known(FanCommand::contactor);
    BOOST_TEST(laid(job, fan_motor(2)).lacking == (std::vector<std::string>{"controls.heat"}));
    job.controls.heat = known(HeatKind::heat_pump);
    const WiringPlan p = laid(job, fan_motor(2));
    BOOST_TEST((p.refusal == WiringRefusal::fan_runs_in_defrost));
    BOOST_TEST(has(p.rescues, WiringRescue::fan_output_of_the_defrost_board));
}

BOOST_AUTO_TEST_CASE(by_relay_or_board_the_fan_stands_still_in_defrost) {
    FailedUnit job = fan_job(bare_supply(volt(230)));
    job.controls.heat = known(HeatKind::heat_pump);
    for (const auto& [command, output] :
         {std::pair{FanCommand::fan_relay, "fan relay NO"}, std::pair{FanCommand::board, "board FAN"}}) {
        job.controls.fan_command = known(command);
        const WiringPlan p = laid(job, fan_motor(2));
        BOOST_TEST(p.proven);
        BOOST_TEST(wired(p, output, "tap 1"));
        BOOST_TEST(row(p, {}).state == "off / defrost");
        BOOST_TEST(row(p, {output}).state == "run");
        BOOST_TEST(has(p.checks, SiteCheck::fan_stops_in_a_forced_defrost));
    }
}

BOOST_AUTO_TEST_CASE(the_low_and_the_high_output_of_a_board_each_have_their_lead) {
    FailedUnit job = fan_job(bare_supply(volt(230)));
    job.controls.heat = known(HeatKind::heat_pump);
    job.controls.fan_command = known(FanCommand::board);
    BOOST_TEST(laid(job, two_speed_fan()).lacking == (std::vector<std::string>{"controls.terminals"}));
    job.controls.terminals = known(terminals({{"LOW", Call::cool_low}, {"HIGH", Call::cool_high}}));
    const WiringPlan p = laid(job, two_speed_fan());
    BOOST_TEST(p.proven);
    BOOST_TEST(wired(p, "LOW", "tap 1"));
    BOOST_TEST(wired(p, "HIGH", "tap 2"));
    BOOST_TEST((p.condition == WiringCondition::one_board_output_at_a_time));
    BOOST_TEST(row(p, {}).state == "off / defrost");
}

BOOST_AUTO_TEST_CASE(one_output_takes_the_fast_lead_and_caps_the_other) {
    FailedUnit job = fan_job(bare_supply(volt(230)));
    job.controls.heat = known(HeatKind::none);
    const WiringPlan p = laid(job, two_speed_fan());
    BOOST_TEST(wired(p, "contactor T1", "tap 2"));
    BOOST_TEST(wired(p, "tap 1", "cap and insulate"));
    BOOST_REQUIRE(setting(p, SettingKind::speed));
    BOOST_TEST(setting(p, SettingKind::speed)->lead == "HI");
}

BOOST_AUTO_TEST_CASE(a_module_lands_pin_by_pin_and_its_jumper_follows_the_supply) {
    Part part;
    part.id = "module";
    part.module = Module{};
    const std::string plug = "5-pin power plug";
    part.module->terminals = {{"1", "jumper", plug}, {"2", "jumper", plug},
                              {"3", "earth", plug},  {"4", "second line", plug},
                              {"5", "line", plug},   {"A", "winding", "3-pin plug"}};
    FailedUnit job = thermostat_job(HeatKind::electric, {"G", "Y1", "W1"});
    job.plate.phase = known(1);
    job.equipment.supply = known(bare_supply(volt(230)));
    const WiringPlan at_230 = laid(job, part);
    BOOST_REQUIRE(at_230.possible);
    BOOST_TEST((at_230.method == WiringMethod::plug_for_plug));
    BOOST_TEST(wired(at_230, "L1", "5-pin power plug 5"));
    BOOST_TEST(wired(at_230, "L2", "5-pin power plug 4"));
    BOOST_TEST(wired(at_230, "earth", "5-pin power plug 3"));
    BOOST_TEST(wired(at_230, "3-pin plug A", "motor half A"));
    BOOST_TEST(!wired(at_230, "5-pin power plug 1", "5-pin power plug 2"));
    BOOST_TEST((setting(at_230, SettingKind::jumper)->done == SettingDone::out));
    BOOST_TEST(at_230.lacking == (std::vector<std::string>{"terminals.common"}));

    job.equipment.supply = known(bare_supply(volt(115)));
    const WiringPlan at_115 = laid(job, part);
    BOOST_TEST(wired(at_115, "N", "5-pin power plug 4"));
    BOOST_TEST(wired(at_115, "5-pin power plug 1", "5-pin power plug 2"));
    BOOST_TEST((setting(at_115, SettingKind::jumper)->done == SettingDone::in));
    BOOST_TEST(has(at_115.cautions, WiringCaution::line_power_always_present));

    job.equipment.supply = {};
    const WiringPlan unknown = laid(job, part);
    BOOST_TEST((unknown.refusal == WiringRefusal::supply_not_known));
    BOOST_TEST((setting(unknown, SettingKind::jumper)->done == SettingDone::ask));
}

BOOST_AUTO_TEST_CASE(a_jumper_is_asked_where_the_stated_supply_and_the_reading_contradict_each_other) {
    Part part;
    part.module = Module{};
    part.module->terminals = {{"1", "jumper", ""}, {"2", "jumper", ""}};
    FailedUnit job;
    job.plate.phase = known(1);
    job.equipment.supply = known(bare_supply(volt(115)));
    job.measured.line_volts = known<LineVolts>(volt(238), Origin::measured);
    BOOST_TEST((laid(job, part).settings.front().done == SettingDone::ask));
}
