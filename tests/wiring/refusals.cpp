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

BOOST_AUTO_TEST_CASE(elements_whose_call_has_no_wire_are_refused) {
    const Part part = five_tap_motor(TapRule::one_tap_only);
    BOOST_TEST((laid(thermostat_job(HeatKind::electric, {"G", "Y1"}), part).refusal ==
                WiringRefusal::heat_call_without_a_wire));
    BOOST_TEST(laid(thermostat_job(HeatKind::electric, {"G", "Y1", "W1"}), part).possible);

    FailedUnit pump = thermostat_job(HeatKind::heat_pump, {"G", "Y1", "O"});
    BOOST_TEST(laid(pump, part).possible);  // the compressor heats, on Y1
    pump.equipment.electric_heat = known(kilowatt(10));
    BOOST_TEST((laid(pump, part).refusal == WiringRefusal::heat_call_without_a_wire));
}

BOOST_AUTO_TEST_CASE(a_burner_whose_call_has_no_wire_is_refused) {
    const Part part = five_tap_motor(TapRule::one_tap_only);
    BOOST_TEST((laid(board_job(HeatKind::gas, {{"COOL", Call::cool_high}}), part).refusal ==
                WiringRefusal::heat_call_without_a_wire));
    BOOST_TEST(laid(board_job(HeatKind::gas, {{"COOL", Call::cool_high}, {"HEAT", Call::heat_high}}), part)
                   .possible);

    // The board runs the motor by its run signal; without W no tap is chosen while the burner is on.
    FailedUnit gated = thermostat_job(HeatKind::gas, {"G", "Y1"});
    gated.controls.run_signal_available = known(true);
    BOOST_TEST((laid(gated, run_signal_motor()).refusal == WiringRefusal::heat_call_without_a_wire));
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
