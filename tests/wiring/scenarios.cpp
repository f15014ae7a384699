// Every kind of system with a part of every signal class. Energised sets: the thermostat tables of the trade
// (a published heat-pump thermostat matrix for the heat-pump rows, common practice for the rest). Taps are
// the air plan's; what must come out is worked out by hand beside each test.
#include <boost/test/unit_test.hpp>

#include "tests/wiring/fixtures.hpp"

using namespace fixture;

namespace {

const AirPlan usual = air({{Call::circulate, 1},
                           {Call::cool_low, 3},
                           {Call::cool_high, 4},
                           {Call::electric_heat, 5},
                           {Call::heat_low, 2},
                           {Call::heat_high, 3},
                           {Call::dehumidify, 2}});

WiringPlan plan(const FailedUnit& job, const Part& part, const AirPlan& taps = usual) {
    return plan_wiring(job, part, taps, limits);
}

void every_row_holds(const WiringPlan& p) {
    BOOST_TEST(p.possible);
    BOOST_TEST(p.proven);
    BOOST_TEST(p.truth.size() == std::size_t{1} << p.signals.size());
    for (const TruthRow& r : p.truth) BOOST_TEST(r.holds);
}

void one_tap_in_every_row(const WiringPlan& p) {
    every_row_holds(p);
    for (const TruthRow& r : p.truth) BOOST_TEST(r.live_taps.size() <= 1u);
}

int tap_in(const WiringPlan& p, std::initializer_list<const char*> live) {
    const TruthRow& r = row(p, live);
    return r.effective_tap.value_or(-1);
}

}  // namespace

BOOST_AUTO_TEST_CASE(straight_cooling_needs_one_relay_to_drop_the_fan_tap) {
    const WiringPlan p =
        plan(thermostat_job(HeatKind::none, {"G", "Y1"}), five_tap_motor(TapRule::one_tap_only));
    one_tap_in_every_row(p);
    BOOST_TEST(coils(p) == 1u);
    BOOST_TEST(tap_in(p, {"G"}) == 1);
    BOOST_TEST(tap_in(p, {"G", "Y1"}) == 4);
    BOOST_TEST(tap_in(p, {}) == 0);
}

BOOST_AUTO_TEST_CASE(an_unstated_tap_rule_is_wired_as_one_tap_only) {
    const WiringPlan p =
        plan(thermostat_job(HeatKind::none, {"G", "Y"}), five_tap_motor(TapRule::not_stated));
    one_tap_in_every_row(p);
    BOOST_TEST(coils(p) == 1u);
    BOOST_TEST(has(p.cautions, WiringCaution::tap_rule_not_stated));
}

BOOST_AUTO_TEST_CASE(where_the_highest_tap_wins_no_relay_is_needed_and_the_relay_plan_is_offered_beside) {
    const WiringPlan p =
        plan(thermostat_job(HeatKind::none, {"G", "Y1"}), five_tap_motor(TapRule::highest_tap_wins));
    every_row_holds(p);
    BOOST_TEST(coils(p) == 0u);
    BOOST_TEST(row(p, {"G", "Y1"}).live_taps == (std::vector<int>{1, 4}));
    BOOST_TEST(tap_in(p, {"G", "Y1"}) == 4);
    BOOST_TEST(has(p.cautions, WiringCaution::verify_the_priority));
    BOOST_REQUIRE(p.alternatives.size() == 1u);
    one_tap_in_every_row(p.alternatives.front());
    BOOST_TEST(coils(p.alternatives.front()) == 1u);
}

BOOST_AUTO_TEST_CASE(a_fan_tap_above_the_cooling_tap_cannot_rely_on_priority) {
    const AirPlan taps = air({{Call::circulate, 5}, {Call::cool_high, 4}});
    const WiringPlan p =
        plan(thermostat_job(HeatKind::none, {"G", "Y1"}), five_tap_motor(TapRule::highest_tap_wins), taps);
    every_row_holds(p);
    BOOST_TEST(coils(p) == 1u);
    BOOST_TEST(tap_in(p, {"G", "Y1"}) == 4);
}

BOOST_AUTO_TEST_CASE(two_stage_cooling_takes_two_relays) {
    const WiringPlan p =
        plan(thermostat_job(HeatKind::none, {"G", "Y1", "Y2"}), five_tap_motor(TapRule::one_tap_only));
    one_tap_in_every_row(p);
    BOOST_TEST(coils(p) == 2u);
    BOOST_TEST(tap_in(p, {"G", "Y1"}) == 3);
    BOOST_TEST(tap_in(p, {"G", "Y1", "Y2"}) == 4);
}

BOOST_AUTO_TEST_CASE(electric_heat_runs_the_blower_whenever_w_is_live) {
    const WiringPlan p =
        plan(thermostat_job(HeatKind::electric, {"G", "Y1", "W1"}), five_tap_motor(TapRule::one_tap_only));
    one_tap_in_every_row(p);
    BOOST_TEST(coils(p) == 2u);
    BOOST_TEST(tap_in(p, {"W1"}) == 5);
    BOOST_TEST(tap_in(p, {"G", "W1"}) == 5);
    for (const TruthRow& r : p.truth) {
        if (r.live & p.heats.all()) BOOST_TEST(!r.live_taps.empty());
    }
}

BOOST_AUTO_TEST_CASE(electric_heat_with_the_fan_sent_still_runs_without_g) {
    FailedUnit job = thermostat_job(HeatKind::electric, {"G", "Y1", "W1"});
    job.controls.fan_with_heat = known(true);
    const WiringPlan p = plan(job, five_tap_motor(TapRule::one_tap_only));
    one_tap_in_every_row(p);
    BOOST_TEST(!row(p, {"W1"}).reachable);
    BOOST_TEST(!row(p, {"W1"}).live_taps.empty());
}

BOOST_AUTO_TEST_CASE(two_stage_electric_heat_shares_one_tap_without_joining_w1_and_w2) {
    const WiringPlan p = plan(thermostat_job(HeatKind::electric, {"G", "Y1", "W1", "W2"}),
                              five_tap_motor(TapRule::one_tap_only));
    one_tap_in_every_row(p);
    BOOST_TEST(tap_in(p, {"W1", "W2"}) == 5);
    BOOST_TEST(tap_in(p, {"G", "W1", "W2"}) == 5);
}

BOOST_AUTO_TEST_CASE(two_wires_wanting_one_tap_get_a_relay_even_where_the_highest_tap_wins) {
    const AirPlan taps = air({{Call::circulate, 1}, {Call::cool_high, 3}, {Call::electric_heat, 3}});
    const WiringPlan p = plan(thermostat_job(HeatKind::electric, {"G", "Y1", "W1"}),
                              five_tap_motor(TapRule::highest_tap_wins), taps);
    every_row_holds(p);
    // One pole chooses between Y1 and W1: they never meet, also while it moves.
    BOOST_TEST(coils(p) == 1u);
    BOOST_TEST(p.relays.front().contacts == 1);
    BOOST_TEST(!has(p.cautions, WiringCaution::moving_relays_tie_calls));
    BOOST_TEST(!(wired(p, "Y1", "tap 3") && wired(p, "W1", "tap 3")));
}

BOOST_AUTO_TEST_CASE(a_heat_pump_with_o_cools_and_heats_at_one_tap) {
    FailedUnit job = thermostat_job(HeatKind::heat_pump, {"G", "Y1", "O", "W1"});
    job.controls.reversing_valve = known(ReversingValve::in_cooling);
    const WiringPlan p = plan(job, five_tap_motor(TapRule::one_tap_only));
    one_tap_in_every_row(p);
    BOOST_TEST(p.signals == (std::vector<std::string>{"G", "Y1", "W1"}));  // O drives no tap
    BOOST_TEST(row(p, {"G", "Y1"}).state == "cool 1 / heat 1");
    BOOST_TEST(has(p.cautions, WiringCaution::compressor_heat_at_the_cooling_tap));
}

BOOST_AUTO_TEST_CASE(a_heat_pump_with_b_never_takes_b_for_common) {
    FailedUnit job = thermostat_job(HeatKind::heat_pump, {"G", "Y1", "B", "W1"});
    job.controls.reversing_valve = known(ReversingValve::in_heating);
    const WiringPlan p = plan(job, five_tap_motor(TapRule::one_tap_only));
    one_tap_in_every_row(p);
    BOOST_TEST(p.signals == (std::vector<std::string>{"G", "Y1", "W1"}));
    for (const Wire& w : p.wires) BOOST_TEST(text_of(p, w.from) != "B");
}

BOOST_AUTO_TEST_CASE(defrost_feeds_w_beside_y_and_g_and_the_heat_tap_is_the_only_one_live) {
    const WiringPlan p =
        plan(thermostat_job(HeatKind::heat_pump, {"G", "Y1", "W1"}), five_tap_motor(TapRule::one_tap_only));
    one_tap_in_every_row(p);
    const TruthRow& r = row(p, {"G", "Y1", "W1"});
    BOOST_TEST(r.state == "heat and auxiliary / defrost");
    BOOST_TEST(r.live_taps == std::vector<int>{5});
}

BOOST_AUTO_TEST_CASE(defrost_takes_the_tap_with_more_air_where_heat_alone_wants_less) {
    AirPlan taps = air({{Call::circulate, 1}, {Call::cool_high, 4}, {Call::electric_heat, 2}});
    const WiringPlan p = plan(thermostat_job(HeatKind::heat_pump, {"G", "Y1", "W1"}),
                              five_tap_motor(TapRule::one_tap_only), taps);
    one_tap_in_every_row(p);
    BOOST_TEST(tap_in(p, {"G", "Y1", "W1"}) == 4);
    BOOST_TEST(tap_in(p, {"G", "W1"}) == 2);
}

BOOST_AUTO_TEST_CASE(emergency_heat_has_its_own_terminal_and_no_y) {
    const WiringPlan p = plan(thermostat_job(HeatKind::heat_pump, {"G", "Y1", "W1", "E"}),
                              five_tap_motor(TapRule::one_tap_only));
    one_tap_in_every_row(p);
    BOOST_TEST(row(p, {"G", "E"}).state == "emergency");
    BOOST_TEST(tap_in(p, {"G", "E"}) == 5);
}

BOOST_AUTO_TEST_CASE(a_two_stage_heat_pump_with_auxiliary_and_emergency_is_proven_over_32_states) {
    const WiringPlan p = plan(thermostat_job(HeatKind::heat_pump, {"G", "Y1", "Y2", "W1", "E", "O"}),
                              five_tap_motor(TapRule::one_tap_only));
    one_tap_in_every_row(p);
    BOOST_TEST(p.truth.size() == 32u);
    BOOST_TEST(tap_in(p, {"G", "Y1"}) == 3);
    BOOST_TEST(tap_in(p, {"G", "Y1", "Y2"}) == 4);
    BOOST_TEST(tap_in(p, {"G", "Y1", "Y2", "W1"}) == 5);
}

BOOST_AUTO_TEST_CASE(six_signals_are_proven_over_64_states) {
    FailedUnit job = thermostat_job(HeatKind::heat_pump, {"G", "Y1", "Y2", "W1", "E", "DH"});
    job.controls.dehumidify = known(DehumidifyLogic::live_is_normal);
    const WiringPlan p = plan(job, five_tap_motor(TapRule::one_tap_only));
    one_tap_in_every_row(p);
    BOOST_TEST(p.truth.size() == 64u);
}

BOOST_AUTO_TEST_CASE(dehumidify_by_a_dropped_signal_moves_cooling_to_the_lower_tap) {
    FailedUnit job = thermostat_job(HeatKind::none, {"G", "Y1", "DH"});
    job.controls.dehumidify = known(DehumidifyLogic::live_is_normal);
    const WiringPlan p = plan(job, five_tap_motor(TapRule::one_tap_only));
    one_tap_in_every_row(p);
    BOOST_TEST(tap_in(p, {"G", "Y1", "DH"}) == 4);
    BOOST_TEST(tap_in(p, {"G", "Y1"}) == 2);
    BOOST_TEST(tap_in(p, {"DH"}) == 0);  // live when all is off
    BOOST_TEST(tap_in(p, {"G", "DH"}) == 1);
}

BOOST_AUTO_TEST_CASE(dehumidify_by_a_live_signal_is_the_mirror) {
    FailedUnit job = thermostat_job(HeatKind::none, {"G", "Y1", "DH"});
    job.controls.dehumidify = known(DehumidifyLogic::live_is_dehumidify);
    const WiringPlan p = plan(job, five_tap_motor(TapRule::one_tap_only));
    one_tap_in_every_row(p);
    BOOST_TEST(tap_in(p, {"G", "Y1"}) == 4);
    BOOST_TEST(tap_in(p, {"G", "Y1", "DH"}) == 2);
}

BOOST_AUTO_TEST_CASE(a_dehumidify_terminal_of_unknown_logic_is_a_question) {
    const WiringPlan p =
        plan(thermostat_job(HeatKind::none, {"G", "Y1", "DH"}), five_tap_motor(TapRule::one_tap_only));
    BOOST_TEST(!p.possible);
    BOOST_TEST(p.lacking == std::vector<std::string>{"controls.dehumidify"});
}

BOOST_AUTO_TEST_CASE(the_thermostat_heat_call_of_a_gas_furnace_never_reaches_a_tap) {
    for (const HeatKind heat : {HeatKind::gas, HeatKind::oil}) {
        const WiringPlan p =
            plan(thermostat_job(heat, {"G", "Y1", "W1"}), five_tap_motor(TapRule::highest_tap_wins));
        BOOST_TEST(!p.possible);
        BOOST_TEST((p.refusal == WiringRefusal::heat_call_past_the_board));
        BOOST_TEST(!p.rescues.empty());
    }
}

BOOST_AUTO_TEST_CASE(dual_fuel_from_the_thermostat_is_refused_for_the_same_reason) {
    const WiringPlan p = plan(thermostat_job(HeatKind::dual_fuel, {"G", "Y1", "W1", "E"}),
                              five_tap_motor(TapRule::one_tap_only));
    BOOST_TEST((p.refusal == WiringRefusal::heat_call_past_the_board));
}

BOOST_AUTO_TEST_CASE(emergency_heat_of_a_dual_fuel_has_the_furnaces_air_with_the_fan_on_too) {
    FailedUnit job = blower_job(ControlSource::board_line, HeatKind::dual_fuel);
    job.controls.terminals = known(letters({"G", "Y1", "W1", "E"}));
    job.controls.run_signal_available = known(true);
    Part part = five_tap_motor(TapRule::one_tap_only);
    part.motor->terminals.push_back({"RUN", "run signal", "lead"});
    const WiringPlan p = plan(job, part);
    one_tap_in_every_row(p);
    BOOST_TEST(row(p, {"G", "E"}).reachable);
    for (const auto& live :
         {row(p, {"E"}), row(p, {"G", "E"}), row(p, {"W1", "E"}), row(p, {"G", "W1", "E"})})
        BOOST_TEST(live.effective_tap.value() == 3);  // heat; circulation has tap 1
}

BOOST_AUTO_TEST_CASE(a_furnace_board_with_24_v_outputs_feeds_the_taps_and_keeps_its_timing) {
    FailedUnit job = blower_job(ControlSource::board_24v, HeatKind::gas);
    job.controls.terminals =
        known(terminals({{"CONT", Call::circulate}, {"COOL", Call::cool_high}, {"HEAT", Call::heat_high}}));
    const WiringPlan p = plan(job, five_tap_motor(TapRule::one_tap_only));
    one_tap_in_every_row(p);
    BOOST_TEST(coils(p) == 2u);
    BOOST_TEST(tap_in(p, {"HEAT"}) == 3);
    BOOST_TEST(has(p.cautions, WiringCaution::the_board_keeps_the_blower));
    BOOST_REQUIRE(p.alternatives.size() == 1u);
    BOOST_TEST(!p.alternatives.front().possible);  // nothing shows that the board never lets two outputs live
}

BOOST_AUTO_TEST_CASE(board_outputs_go_straight_to_taps_where_the_highest_wins) {
    FailedUnit job = blower_job(ControlSource::board_24v, HeatKind::gas);
    job.controls.terminals =
        known(terminals({{"CONT", Call::circulate}, {"COOL", Call::cool_high}, {"HEAT", Call::heat_high}}));
    const WiringPlan p = plan(job, five_tap_motor(TapRule::highest_tap_wins));
    every_row_holds(p);
    BOOST_TEST(coils(p) == 0u);
    BOOST_TEST(wired(p, "COOL", "tap 4"));
}

BOOST_AUTO_TEST_CASE(a_line_voltage_board_works_line_coils_and_its_voltage_reaches_no_tap) {
    FailedUnit job = blower_job(ControlSource::board_line, HeatKind::gas);
    job.controls.terminals = known(terminals({{"COOL", Call::cool_high}, {"HEAT", Call::heat_high}}));
    const WiringPlan p = plan(job, five_tap_motor(TapRule::one_tap_only));
    one_tap_in_every_row(p);
    BOOST_TEST(coils(p) == 2u);
    for (const Relay& r : p.relays) BOOST_TEST((r.line_coil && !r.line_contacts));
    for (const Wire& w : p.wires)
        BOOST_TEST(!(text_of(p, w.from) == "COOL" && w.to.kind == NetPlace::Kind::tap));
    BOOST_TEST(wired(p, "K1.A2", "L2"));  // 240 V: the coil returns to the second line conductor
}

BOOST_AUTO_TEST_CASE(a_run_signal_lets_the_thermostat_choose_the_speed_while_the_board_decides_when) {
    FailedUnit job = blower_job(ControlSource::board_line, HeatKind::gas);
    job.controls.terminals = known(terminals({{"COOL", Call::cool_high},
                                              {"HEAT", Call::heat_high},
                                              {"CONT", Call::circulate},
                                              {"G", Call::circulate},
                                              {"Y1", Call::cool_high},
                                              {"W1", Call::heat_high}}));
    job.controls.run_signal_available = known(true);
    Part part = five_tap_motor(TapRule::highest_tap_wins);
    part.motor->terminals.push_back({"RUN", "run signal", ""});
    const WiringPlan p = plan(job, part);
    every_row_holds(p);
    BOOST_TEST(wired(p, "board COOL", "motor RUN"));
    BOOST_TEST(wired(p, "board HEAT", "motor RUN"));
    BOOST_TEST(wired(p, "board CONT", "motor RUN"));
    BOOST_TEST(p.signals == (std::vector<std::string>{"G", "Y1", "W1"}));
    BOOST_TEST(tap_in(p, {"W1"}) == 3);
    BOOST_TEST(has(p.cautions, WiringCaution::one_relay_group_only));
}

BOOST_AUTO_TEST_CASE(speed_leads_go_to_a_line_voltage_board_and_the_spare_lead_is_capped_alone) {
    FailedUnit job = blower_job(ControlSource::board_line, HeatKind::gas);
    job.controls.terminals = known(terminals({{"COOL", Call::cool_high}, {"HEAT", Call::heat_high}}));
    const WiringPlan p = plan(job, three_lead_motor(), air({{Call::cool_high, 3}, {Call::heat_high, 2}}));
    BOOST_TEST(p.proven);
    for (const TruthRow& r : p.truth)
        BOOST_TEST(r.holds == (r.live != 3u));  // both outputs: kept away by the board
    BOOST_TEST(coils(p) == 0u);
    BOOST_TEST(wired(p, "COOL", "tap 3"));
    BOOST_TEST(wired(p, "HEAT", "tap 2"));
    BOOST_TEST(wired(p, "tap 1", "cap and insulate"));
    BOOST_TEST(p.taps.front().parked);
    BOOST_REQUIRE(!p.settings.empty());
    BOOST_TEST((p.settings.front().what == SettingKind::capacitor));
    BOOST_TEST((p.settings.front().capacitor == microfarad(7.5)));
    BOOST_TEST((p.settings.front().capacitor_volts == volt(370)));
}

BOOST_AUTO_TEST_CASE(two_board_outputs_wanting_one_speed_lead_are_never_joined) {
    FailedUnit job = blower_job(ControlSource::board_line, HeatKind::gas);
    job.controls.terminals = known(terminals({{"COOL", Call::cool_high}, {"HEAT", Call::heat_high}}));
    const WiringPlan p = plan(job, three_lead_motor(), air({{Call::cool_high, 3}, {Call::heat_high, 3}}));
    one_tap_in_every_row(p);
    BOOST_TEST(coils(p) >= 1u);
    BOOST_TEST(!(wired(p, "COOL", "tap 3") && wired(p, "HEAT", "tap 3")));
}

BOOST_AUTO_TEST_CASE(a_thermostat_switches_speed_leads_through_fan_relays_only) {
    const WiringPlan p = plan(thermostat_job(HeatKind::none, {"G", "Y1"}), three_lead_motor(),
                              air({{Call::circulate, 1}, {Call::cool_high, 3}}));
    one_tap_in_every_row(p);
    BOOST_TEST(coils(p) == 2u);
    for (const Relay& r : p.relays) BOOST_TEST((!r.line_coil && r.line_contacts));
}

BOOST_AUTO_TEST_CASE(serial_and_pulse_control_is_refused) {
    FailedUnit job = blower_job(ControlSource::pulse_or_serial, HeatKind::gas);
    BOOST_TEST((plan(job, five_tap_motor(TapRule::one_tap_only)).refusal == WiringRefusal::serial_control));
    Part part = five_tap_motor(TapRule::one_tap_only);
    part.motor->signal = SignalClass::serial;
    BOOST_TEST(
        (plan(thermostat_job(HeatKind::none, {"G", "Y1"}), part).refusal == WiringRefusal::serial_control));
}

BOOST_AUTO_TEST_CASE(without_a_common_wire_a_24_v_part_is_refused_with_the_way_out) {
    FailedUnit job = thermostat_job(HeatKind::none, {"G", "Y1"});
    job.controls.common_present = known(false);
    const WiringPlan p = plan(job, five_tap_motor(TapRule::one_tap_only));
    BOOST_TEST((p.refusal == WiringRefusal::no_common_wire));
    BOOST_TEST(!p.rescues.empty());
}

BOOST_AUTO_TEST_CASE(without_taps_from_the_air_plan_the_lacking_readings_are_named) {
    AirPlan nothing;
    nothing.lacking = {"measured.static_total"};
    const WiringPlan p =
        plan(thermostat_job(HeatKind::none, {"G", "Y1"}), five_tap_motor(TapRule::one_tap_only), nothing);
    BOOST_TEST(!p.possible);
    BOOST_TEST((p.refusal == WiringRefusal::taps_not_chosen));
    BOOST_TEST((std::find(p.lacking.begin(), p.lacking.end(), "measured.static_total") != p.lacking.end()));
}

BOOST_AUTO_TEST_CASE(an_outdoor_fan_hangs_on_the_contactor) {
    FailedUnit job;
    job.unit.load = known(Load::outdoor_fan);
    job.equipment.supply = known(bare_supply(volt(230)));
    Part part = three_lead_motor();
    part.motor->taps.clear();
    part.motor->speeds = 1;
    part.motor->terminals.push_back({"run", "line", ""});
    job.controls.heat = known(HeatKind::none);
    const WiringPlan p = plan(job, part, AirPlan{});
    every_row_holds(p);
    BOOST_TEST(wired(p, "contactor T1", "tap 1"));
    BOOST_TEST(!p.condition);  // a single output needs no interlock
    BOOST_TEST(!p.power.judgement);
    BOOST_TEST(wired(p, "contactor T2", "motor return"));
}

BOOST_AUTO_TEST_CASE(an_inducer_is_wired_by_its_own_diagram) {
    FailedUnit job = blower_job(ControlSource::board_line, HeatKind::gas);
    job.unit.load = known(Load::draft_inducer);
    BOOST_TEST((plan(job, three_lead_motor()).refusal == WiringRefusal::inducer_by_its_own_diagram));
}

BOOST_AUTO_TEST_CASE(a_module_keeps_its_plugs) {
    Part part;
    part.kind = PartKind::module;
    part.module = Module{};
    FailedUnit job = thermostat_job(HeatKind::none, {"G", "Y1"});
    BOOST_TEST((plan(job, part).refusal == WiringRefusal::supply_not_known));  // 240 V is one phase or three
    job.plate.phase = known(1);
    const WiringPlan p = plan(job, part);
    BOOST_TEST(p.possible);
    BOOST_TEST((p.method == WiringMethod::plug_for_plug));
}

BOOST_AUTO_TEST_CASE(a_label_given_twice_or_taken_by_the_netlist_stays_apart) {
    FailedUnit job = blower_job(ControlSource::board_24v, HeatKind::gas);
    job.controls.terminals = known(terminals({{"COOL", Call::cool_high},
                                              {"COOL", Call::cool_low},
                                              {"C", Call::heat_high},
                                              {"tap 4", Call::circulate},
                                              {"K1.A1", Call::heat_low}}));
    const WiringPlan p = plan(job, five_tap_motor(TapRule::one_tap_only));
    one_tap_in_every_row(p);
    BOOST_TEST(p.signals ==
               (std::vector<std::string>{"COOL", "COOL (2)", "board C", "board tap 4", "board K1.A1"}));
}

BOOST_AUTO_TEST_CASE(seven_signals_of_a_heat_pump_are_proven_and_nine_are_refused) {
    FailedUnit job = thermostat_job(HeatKind::heat_pump, {"G", "Y1", "Y2", "W1", "W2", "E", "DH"});
    job.controls.dehumidify = known(DehumidifyLogic::live_is_normal);
    for (const TapRule rule : {TapRule::one_tap_only, TapRule::highest_tap_wins}) {
        const WiringPlan p = plan(job, five_tap_motor(rule));
        every_row_holds(p);
        BOOST_TEST(p.truth.size() == 128u);
    }
    FailedUnit board = blower_job(ControlSource::board_24v, HeatKind::gas);
    std::vector<Terminal> outputs;
    for (int i = 0; i < 40; ++i) outputs.push_back({"OUT " + std::to_string(i), Call::cool_high});
    board.controls.terminals = known(outputs);
    BOOST_TEST(
        (plan(board, five_tap_motor(TapRule::one_tap_only)).refusal == WiringRefusal::too_many_signals));
}
