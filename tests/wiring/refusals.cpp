// What may not be wired as it stands: each case sold as proven once. Facts: common practice for supplies and fuel
// furnaces (the trade's own papers), the part's own sheet for what two live taps do.
#include <boost/test/unit_test.hpp>

#include "tests/wiring/fixtures.hpp"

using namespace fixture;

namespace {

const AirPlan every_tap = air({{Call::circulate, 1},
                               {Call::cool_low, 2},
                               {Call::cool_high, 4},
                               {Call::electric_heat, 5},
                               {Call::heat_low, 2},
                               {Call::heat_high, 3}});

WiringPlan laid(const FailedUnit& job, const Part& part) {
    return plan_wiring(job, part, every_tap, limits);
}

/// 24 V taps and a run-signal lead that the board's line-voltage outputs drive.
Part run_signal_motor() {
    Part part = five_tap_motor(TapRule::one_tap_only);
    part.motor->terminals.push_back({"RUN", "run signal", "power"});
    return part;
}

FailedUnit board_job(HeatKind heat, std::initializer_list<std::pair<const char*, Call>> outputs) {
    FailedUnit job = blower_job(ControlSource::board_24v, heat);
    job.controls.terminals = known(terminals(outputs));
    return job;
}

bool two_taps_live(const WiringPlan& p) {
    return std::any_of(p.truth.begin(), p.truth.end(),
                       [](const TruthRow& row) { return row.live_taps.size() > 1; });
}

}  // namespace

BOOST_AUTO_TEST_CASE(on_277_v_the_return_is_the_neutral) {
    // 480Y/277: line to line is 480 V. A motor for 277 V between two lines is destroyed.
    FailedUnit job = thermostat_job(HeatKind::none, {"G", "Y1"});
    for (const double volts : {265.0, 277.0, 290.0}) {
        job.equipment.supply = known(bare_supply(volt(volts)));
        const WiringPlan p = laid(job, five_tap_motor(TapRule::one_tap_only));
        BOOST_TEST(wired(p, "N", "motor N"));
        BOOST_TEST(!wired(p, "L2", "motor N"));
    }
}

BOOST_AUTO_TEST_CASE(three_phase_on_fewer_than_three_line_wires_is_refused) {
    // A three-phase motor on two wires does not start, and burns.
    FailedUnit job = board_job(HeatKind::none, {{"COOL", Call::cool_high}});
    job.equipment.supply = known(bare_supply(volt(460)));
    Part part = three_lead_motor();
    part.motor->terminals.push_back({"L1", "line", ""});
    for (const bool by_family : {false, true}) {
        part.motor->family = by_family ? std::optional(Family::three_phase) : std::nullopt;
        part.motor->phase = by_family ? std::nullopt : std::optional(3);
        const WiringPlan p = laid(job, part);
        BOOST_TEST(!p.possible);
        BOOST_TEST((p.refusal == WiringRefusal::fewer_than_three_line_wires));
    }
}

void is_without_a_wire(const WiringPlan& p, std::vector<Call> calls) {
    BOOST_TEST((p.refusal == WiringRefusal::call_without_a_wire));
    BOOST_TEST((p.refused_calls == calls));
    BOOST_TEST((p.rescues == std::vector{WiringRescue::terminal_of_the_call}));
}

BOOST_AUTO_TEST_CASE(elements_whose_call_has_no_wire_are_refused) {
    const Part part = five_tap_motor(TapRule::one_tap_only);
    is_without_a_wire(laid(thermostat_job(HeatKind::electric, {"G", "Y1"}), part), {Call::electric_heat});
    BOOST_TEST(laid(thermostat_job(HeatKind::electric, {"G", "Y1", "W1"}), part).possible);

    FailedUnit pump = thermostat_job(HeatKind::heat_pump, {"G", "Y1", "O"});
    is_without_a_wire(laid(pump, part), {Call::electric_heat});
    pump.equipment.electric_heat = known(kilowatt(0));
    BOOST_TEST(laid(pump, part).possible);  // the compressor heats, on Y1
    pump.equipment.electric_heat = {};      // nobody has said whether there are any
    BOOST_TEST(laid(pump, part).lacking == std::vector<std::string>{"equipment.electric_heat"});
}

BOOST_AUTO_TEST_CASE(a_burner_whose_call_has_no_wire_is_refused) {
    const Part part = five_tap_motor(TapRule::one_tap_only);
    is_without_a_wire(laid(board_job(HeatKind::gas, {{"COOL", Call::cool_high}}), part), {Call::heat_high});
    BOOST_TEST(laid(board_job(HeatKind::gas, {{"COOL", Call::cool_high}, {"HEAT", Call::heat_high}}), part)
                   .possible);

    // The board runs the motor by its run signal; without W no tap is chosen while the burner is on.
    FailedUnit gated = thermostat_job(HeatKind::gas, {"G", "Y1"});
    gated.controls.run_signal_available = known(true);
    is_without_a_wire(laid(gated, run_signal_motor()), {Call::heat_high});
    // On a furnace W2 alone is only a broken wire.
    FailedUnit broken = thermostat_job(HeatKind::gas, {"G", "Y1", "W2"});
    broken.controls.run_signal_available = known(true);
    is_without_a_wire(laid(broken, run_signal_motor()), {Call::heat_high});
}

BOOST_AUTO_TEST_CASE(a_stage_without_a_wire_is_refused_where_more_air_does_not_serve_it) {
    const Part part = five_tap_motor(TapRule::one_tap_only);
    // Cooling: one wire at the high stage's air serves both; at the low stage's it does not.
    FailedUnit cooling = thermostat_job(HeatKind::none, {"G", "Y1"});
    cooling.equipment.cooling = known(ton_cooling(3));
    cooling.equipment.cooling_stages = known(2);
    BOOST_TEST(laid(cooling, part).possible);
    FailedUnit low = board_job(HeatKind::none, {{"LOW", Call::cool_low}});
    low.equipment = cooling.equipment;
    is_without_a_wire(laid(low, part), {Call::cool_high});
    // A burner's low stage at the high stage's air: its rise falls under its range.
    FailedUnit furnace = board_job(HeatKind::gas, {{"COOL", Call::cool_high}, {"HEAT", Call::heat_high}});
    furnace.equipment.heating_stages = known(2);
    is_without_a_wire(laid(furnace, part), {Call::heat_low});
}

BOOST_AUTO_TEST_CASE(circulation_and_drier_air_that_the_job_states_need_their_wires) {
    const Part part = five_tap_motor(TapRule::one_tap_only);
    FailedUnit job = thermostat_job(HeatKind::none, {"Y1"});
    BOOST_TEST(laid(job, part).possible);
    job.controls.circulate_hours = known(400.0);
    is_without_a_wire(laid(job, part), {Call::circulate});
    FailedUnit drier = thermostat_job(HeatKind::none, {"G", "Y1"});
    drier.controls.dehumidify = known(DehumidifyLogic::live_is_normal);
    is_without_a_wire(laid(drier, part), {Call::dehumidify});
}

BOOST_AUTO_TEST_CASE(auxiliary_heat_is_known_by_every_label) {
    const Part part = five_tap_motor(TapRule::one_tap_only);
    for (const char* label : {"W", "W1", "W2", "W3", "AUX", "Aux", "E", "EM"}) {
        FailedUnit job = thermostat_job(HeatKind::heat_pump, {"G", "Y1", "O"});
        job.controls.terminals.value->push_back({label, Call::electric_heat});
        const WiringPlan p = laid(job, part);
        BOOST_REQUIRE(p.possible);
        BOOST_TEST(row(p, {"G", label}).wanted_tap == 5);  // emergency: this label alone, a normal state
        BOOST_TEST(row(p, {label}).effective_tap.value() == 5);
        const bool emergency = label[0] == 'E';
        BOOST_TEST(row(p, {"G", "Y1", label}).reachable == !emergency);
        if (emergency) BOOST_TEST((row(p, {"G", "Y1", label}).kept_away_by == Interlock::emergency_alone));
        BOOST_TEST(!row(p, {"G", "Y1", label}).live_taps.empty());
    }
}

BOOST_AUTO_TEST_CASE(a_terminal_that_nobody_knows_is_never_taken_for_another) {
    const Part part = five_tap_motor(TapRule::one_tap_only);
    for (const ControlSource source : {ControlSource::thermostat, ControlSource::board_24v}) {
        FailedUnit job = blower_job(source, HeatKind::none);
        job.controls.terminals = known(
            std::vector<Terminal>{{"COOL", Call::cool_high}, {"FAN", Call::circulate}, {"Z9", std::nullopt}});
        const WiringPlan p = laid(job, part);
        BOOST_TEST((p.refusal == WiringRefusal::terminal_not_known));
        BOOST_TEST(p.refused_terminals == std::vector<std::string>{"Z9"});
        BOOST_TEST(p.lacking == std::vector<std::string>{"controls.terminals"});
        BOOST_TEST((verdict_of(p) == Verdict::not_shown));
        job.controls.terminals.value->pop_back();
        BOOST_TEST(laid(job, part).possible);
    }
}

BOOST_AUTO_TEST_CASE(a_terminal_that_should_command_the_blower_and_does_not_is_refused) {
    const Part part = five_tap_motor(TapRule::one_tap_only);
    const auto refused_for = [&](HeatKind heat, std::initializer_list<const char*> names) {
        const WiringPlan p = laid(thermostat_job(heat, names), part);
        BOOST_TEST((p.refusal == WiringRefusal::terminal_without_a_state));
        return p.refused_terminals;
    };
    BOOST_TEST(refused_for(HeatKind::none, {"G", "Y1", "W1"}) == std::vector<std::string>{"W1"});
    BOOST_TEST(refused_for(HeatKind::none, {"G", "Y2"}) == std::vector<std::string>{"Y2"});
}

BOOST_AUTO_TEST_CASE(terminals_that_command_nothing_say_why) {
    FailedUnit job = thermostat_job(HeatKind::heat_pump, {"R", "C", "O", "L", "G", "Y1", "W2", "X", "D"});
    job.controls.dehumidify = known(DehumidifyLogic::not_used);
    const WiringPlan p = laid(job, five_tap_motor(TapRule::one_tap_only));
    BOOST_REQUIRE(p.possible);
    std::vector<std::string> said;
    for (const IdleTerminal& t : p.idle) said.push_back(t.name + ": " + std::string(word(t.why)));
    BOOST_TEST(said == (std::vector<std::string>{"R: 24 V hot", "C: 24 V common", "O: reversing valve",
                                                 "L: fault lamp", "X: common or lamp of an old thermostat",
                                                 "D: dehumidify not used"}),
               boost::test_tools::per_element());
    BOOST_TEST(p.signals == (std::vector<std::string>{"G", "Y1", "W2"}), boost::test_tools::per_element());
    // Told that X is the auxiliary heat, it is no longer idle.
    job.controls.terminals.value->back() = {"X", Call::electric_heat};
    job.controls.terminals.value->erase(job.controls.terminals.value->end() - 2);
    BOOST_TEST(row(laid(job, five_tap_motor(TapRule::one_tap_only)), {"X"}).effective_tap.value() == 5);
}

BOOST_AUTO_TEST_CASE(thermostat_letters_are_no_outputs_of_a_furnace_board) {
    const Part part = five_tap_motor(TapRule::one_tap_only);
    const WiringPlan letters_only =
        laid(board_job(HeatKind::gas, {{"Y", Call::cool_high}, {"W", Call::heat_high}}), part);
    BOOST_TEST((letters_only.refusal == WiringRefusal::controls_not_known));
    BOOST_TEST((letters_only.rescues == std::vector{WiringRescue::board_blower_outputs}));
    const WiringPlan both =
        laid(board_job(HeatKind::gas,
                       {{"W1", Call::heat_high}, {"COOL", Call::cool_high}, {"HEAT", Call::heat_high}}),
             part);
    BOOST_REQUIRE(both.possible);
    BOOST_TEST(both.signals == (std::vector<std::string>{"COOL", "HEAT"}), boost::test_tools::per_element());
    BOOST_REQUIRE(both.idle.size() == 1u);
    BOOST_TEST((both.idle.front().why == IdleReason::call_of_the_thermostat));
}

BOOST_AUTO_TEST_CASE(what_the_heat_is_must_be_known_whatever_gives_the_calls) {
    FailedUnit job = board_job(HeatKind::none, {{"COOL", Call::cool_high}});
    job.controls.heat = {};
    BOOST_TEST(laid(job, five_tap_motor(TapRule::one_tap_only)).lacking ==
               std::vector<std::string>{"controls.heat"});
}

BOOST_AUTO_TEST_CASE(an_own_state_that_heats_with_the_motor_off_is_refused) {
    FailedUnit job = thermostat_job(HeatKind::electric, {"G", "W1"});
    job.controls.states = known(
        std::vector<CustomState>{{"heat", {"G", "W1"}, Call::electric_heat}, {"idle", {"W1"}, std::nullopt}});
    BOOST_TEST((laid(job, five_tap_motor(TapRule::one_tap_only)).refusal ==
                WiringRefusal::motor_still_while_heating));
}

BOOST_AUTO_TEST_CASE(a_fuel_furnaces_blower_stays_on_its_board) {
    for (const HeatKind heat : {HeatKind::gas, HeatKind::oil, HeatKind::dual_fuel}) {
        for (const Part& part : {five_tap_motor(TapRule::one_tap_only), three_lead_motor()}) {
            const WiringPlan p = laid(thermostat_job(heat, {"G", "Y1"}), part);
            BOOST_TEST(!p.possible);
            BOOST_TEST((p.refusal == WiringRefusal::blower_off_its_board));
        }
        // A retrofit that the board runs: W only chooses the speed.
        FailedUnit gated = thermostat_job(heat, {"G", "Y1", "W1"});
        gated.controls.run_signal_available = known(true);
        BOOST_TEST(laid(gated, run_signal_motor()).possible);
    }
}

BOOST_AUTO_TEST_CASE(another_way_never_makes_two_taps_live_on_a_one_tap_part) {
    // Wired straight, two outputs live together are two taps live together; nothing shows that the board never does.
    const FailedUnit job = board_job(HeatKind::gas, {{"COOL", Call::cool_high}, {"HEAT", Call::heat_high}});
    for (const TapRule rule : {TapRule::one_tap_only, TapRule::not_stated}) {
        const WiringPlan p = laid(job, five_tap_motor(rule));
        BOOST_REQUIRE(p.possible);
        BOOST_TEST(!two_taps_live(p));
        BOOST_REQUIRE(p.alternatives.size() == 1u);
        BOOST_TEST(!p.alternatives.front().possible);
        BOOST_TEST((p.alternatives.front().method == WiringMethod::direct));
        BOOST_TEST((p.alternatives.front().refusal == WiringRefusal::two_taps_on_one_tap_part));
        BOOST_TEST(p.alternatives.front().wires.empty());
    }
}
