// States that no thermostat call shows: who makes each, and what keeps the others away. Facts: what the equipment does by
// itself, common practice in the trade; taps are the air plan's, and what must come out is worked out by hand.
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

WiringPlan laid(const FailedUnit& job, const Part& part = five_tap_motor(TapRule::one_tap_only)) {
    return plan_wiring(job, part, usual, limits);
}

bool made_by(const TruthRow& r, StateMaker maker) {
    return has(r.makers, maker);
}

FailedUnit gas_board(std::initializer_list<std::pair<const char*, Call>> outputs, ControlSource source) {
    FailedUnit job = blower_job(source, HeatKind::gas);
    job.controls.terminals = known(terminals(outputs));
    return job;
}

Part with_off_delay(double seconds) {
    Part part = five_tap_motor(TapRule::one_tap_only);
    for (Tap& tap : part.motor->taps) tap.off_delay = second(seconds);
    return part;
}

}  // namespace

BOOST_AUTO_TEST_CASE(the_compressor_call_alone_moves_the_cooling_air) {
    for (const TapRule rule : {TapRule::one_tap_only, TapRule::highest_tap_wins}) {
        for (const HeatKind heat : {HeatKind::none, HeatKind::heat_pump}) {
            FailedUnit job = thermostat_job(heat, {"G", "Y1"});
            job.equipment.electric_heat = known(kilowatt(0));
            const WiringPlan p = laid(job, five_tap_motor(rule));
            BOOST_REQUIRE(p.possible);
            const TruthRow& r = row(p, {"Y1"});
            BOOST_TEST(r.reachable);
            BOOST_TEST(r.effective_tap.value() == 4);
            BOOST_TEST(made_by(r, StateMaker::thermostat));
        }
    }
}

BOOST_AUTO_TEST_CASE(defrost_is_made_by_the_defrost_board) {
    const WiringPlan p = laid(thermostat_job(HeatKind::heat_pump, {"G", "Y1", "W1"}));
    BOOST_TEST(made_by(row(p, {"G", "Y1", "W1"}), StateMaker::defrost_board));
    BOOST_TEST(made_by(row(p, {"G", "Y1", "W1"}), StateMaker::thermostat));
    BOOST_TEST(!made_by(row(p, {"G", "Y1"}), StateMaker::defrost_board));
}

BOOST_AUTO_TEST_CASE(two_outputs_of_a_board_together_get_the_tap_with_more_air) {
    const FailedUnit job =
        gas_board({{"CONT", Call::circulate}, {"COOL", Call::cool_high}, {"HEAT", Call::heat_high}},
                  ControlSource::board_24v);
    for (const TapRule rule : {TapRule::one_tap_only, TapRule::highest_tap_wins}) {
        const WiringPlan p = laid(job, five_tap_motor(rule));
        BOOST_REQUIRE(p.possible);
        BOOST_TEST(!p.condition);
        BOOST_TEST(row(p, {"CONT", "HEAT"}).effective_tap.value() == 3);
        BOOST_TEST(row(p, {"COOL", "HEAT"}).effective_tap.value() == 4);
        BOOST_TEST(row(p, {"COOL", "HEAT"}).reachable);
        BOOST_TEST(row(p, {"HEAT"}).state == "heat (HEAT) / run-on (HEAT) / limit open (HEAT)");
        BOOST_TEST(made_by(row(p, {"HEAT"}), StateMaker::board));
    }
}

BOOST_AUTO_TEST_CASE(rows_that_a_condition_keeps_away_say_so_and_do_not_hold) {
    const FailedUnit job =
        gas_board({{"COOL", Call::cool_high}, {"HEAT", Call::heat_high}}, ControlSource::board_line);
    const WiringPlan p =
        plan_wiring(job, three_lead_motor(), air({{Call::cool_high, 3}, {Call::heat_high, 2}}), limits);
    BOOST_REQUIRE(p.possible);
    BOOST_TEST((p.condition == WiringCondition::one_board_output_at_a_time));
    const TruthRow& both = row(p, {"COOL", "HEAT"});
    BOOST_TEST(both.live_taps == (std::vector<int>{2, 3}), boost::test_tools::per_element());
    BOOST_TEST(!both.holds);
    BOOST_TEST(!both.reachable);
    BOOST_TEST((both.kept_away_by == Interlock::one_board_output_at_a_time));
    BOOST_REQUIRE(p.kept_away.size() == 1u);
    BOOST_TEST(!p.kept_away.front().shown);
}

BOOST_AUTO_TEST_CASE(what_is_kept_away_names_the_interlock) {
    FailedUnit job = thermostat_job(HeatKind::electric, {"G", "Y1", "Y2", "W1", "W2"});
    job.controls.fan_with_heat = known(true);
    const WiringPlan p = laid(job);
    BOOST_TEST((row(p, {"G", "Y2"}).kept_away_by == Interlock::stages_in_order));
    BOOST_TEST((row(p, {"G", "W2"}).kept_away_by == Interlock::stages_in_order));
    BOOST_TEST((row(p, {"G", "Y1", "W1"}).kept_away_by == Interlock::heat_or_cool));
    BOOST_TEST((row(p, {"W1"}).kept_away_by == Interlock::fan_sent_with_heat));
    for (const TruthRow& r : p.truth) BOOST_TEST(r.reachable != r.kept_away_by.has_value());
}

BOOST_AUTO_TEST_CASE(elements_hot_after_their_call_need_a_blower_that_runs_on) {
    FailedUnit job = thermostat_job(HeatKind::electric, {"G", "Y1", "W1"});
    const WiringPlan open = laid(job);
    BOOST_TEST((open.condition == WiringCondition::blower_runs_while_elements_are_hot));
    BOOST_TEST(has(open.cautions, WiringCaution::elements_hold_the_blower));
    // A sequencer takes up to 110 s to let go.
    BOOST_TEST(laid(job, with_off_delay(60)).condition.has_value());
    const WiringPlan by_tap = laid(job, with_off_delay(120));
    BOOST_TEST(!by_tap.condition);
    BOOST_REQUIRE(by_tap.kept_away.size() == 1u);
    BOOST_TEST((by_tap.kept_away.front().by == Interlock::off_delay_of_the_tap));
    BOOST_TEST((by_tap.kept_away.front().maker == StateMaker::sequencer));
    job.controls.fan_interlock = known(true);
    BOOST_TEST(!laid(job).condition);
    job.controls.fan_interlock = known(false);
    BOOST_TEST((laid(job).refusal == WiringRefusal::elements_hot_after_their_call));
    BOOST_TEST(laid(job, with_off_delay(120)).possible);
}

BOOST_AUTO_TEST_CASE(a_board_that_runs_the_motor_on_finds_a_tap_live_without_any_call) {
    FailedUnit job = gas_board({{"COOL", Call::cool_high},
                                {"HEAT", Call::heat_high},
                                {"G", Call::circulate},
                                {"Y1", Call::cool_high},
                                {"W1", Call::heat_high}},
                               ControlSource::board_line);
    job.controls.run_signal_available = known(true);
    for (const TapRule rule : {TapRule::one_tap_only, TapRule::highest_tap_wins}) {
        Part part = five_tap_motor(rule);
        part.motor->terminals.push_back({"RUN", "run signal", ""});
        const WiringPlan p = laid(job, part);
        BOOST_REQUIRE(p.possible);
        const TruthRow& rest = row(p, {});
        BOOST_TEST(rest.state == "off by the run signal / run-on after a call / limit open");
        BOOST_TEST(rest.effective_tap.value() == 3);  // the heat tap, whatever the part does without one
        BOOST_TEST(made_by(rest, StateMaker::board));
        for (const TruthRow& r : p.truth) BOOST_TEST(!r.live_taps.empty());
    }
}

BOOST_AUTO_TEST_CASE(drier_air_is_asked_in_both_senses_and_lowers_cooling_alone) {
    for (const bool live_is_normal : {true, false}) {
        FailedUnit job = thermostat_job(HeatKind::electric, {"G", "Y1", "W1", "DH"});
        job.controls.dehumidify =
            known(live_is_normal ? DehumidifyLogic::live_is_normal : DehumidifyLogic::live_is_dehumidify);
        const WiringPlan p = laid(job);
        BOOST_REQUIRE(p.possible);
        BOOST_TEST(row(p, {"G", "Y1", "DH"}).effective_tap.value() == (live_is_normal ? 4 : 2));
        BOOST_TEST(row(p, {"G", "Y1"}).effective_tap.value() == (live_is_normal ? 2 : 4));
        for (const auto& heat : {row(p, {"G", "W1", "DH"}), row(p, {"G", "W1"})}) {
            BOOST_TEST(heat.reachable);
            BOOST_TEST(heat.effective_tap.value() == 5);
        }
    }
}

BOOST_AUTO_TEST_CASE(a_zone_panel_makes_the_calls_and_names_the_air_it_cannot_take) {
    FailedUnit job = thermostat_job(HeatKind::none, {"G", "Y1"});
    job.controls.zone_panel = known(true);
    AirPlan plan = usual;
    for (CallAir& call : plan.calls) call.low = cfm(900);
    const Part part = five_tap_motor(TapRule::one_tap_only);
    const WiringPlan open = plan_wiring(job, part, plan, limits);
    BOOST_TEST(made_by(row(open, {"G", "Y1"}), StateMaker::zone_panel));
    BOOST_TEST(has(open.cautions, WiringCaution::zone_air_not_known));
    job.controls.least_zone = known(cfm(700));
    const WiringPlan small = plan_wiring(job, part, plan, limits);
    BOOST_TEST(has(small.cautions, WiringCaution::zone_static_over_the_limit));
    BOOST_TEST(has(small.short_of_air, Call::cool_high));
    job.controls.least_zone = known(cfm(900));
    BOOST_TEST(plan_wiring(job, part, plan, limits).short_of_air.empty());
}

BOOST_AUTO_TEST_CASE(a_fault_names_what_it_leaves_without_air) {
    const WiringPlan p =
        laid(gas_board({{"COOL", Call::cool_high}, {"HEAT", Call::heat_high}}, ControlSource::board_24v),
             five_tap_motor(TapRule::highest_tap_wins));
    std::vector<HeatSource> of_heat, of_cool;
    for (const FaultRow& fault : p.faults) {
        if (fault.where == "HEAT to tap 3") of_heat = fault.without_air;
        if (fault.where == "COOL to tap 4") of_cool = fault.without_air;
    }
    BOOST_TEST((of_heat == std::vector{HeatSource::burner}));
    BOOST_TEST((of_cool == std::vector{HeatSource::compressor}));
}
