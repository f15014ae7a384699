// The witness by volts, against circuits worked out by hand. A coil of 6 VA at 24 V is 576 / 6 = 96 ohm, a call's load of 1.2 VA
// 480 ohm, a tap of 20 mA at 24 V 1200 ohm. Wires, contacts and the source take some hundredths of a volt: 0.05 V is allowed.
#include "engine/wiring/nodal.hpp"

#include <boost/test/unit_test.hpp>

#include "engine/model/limit.hpp"
#include "tests/wiring/generated.hpp"

using namespace fixture;

namespace {

using Kind = NetPlace::Kind;
const NetPlace common{Kind::common_24v};
const NetPlace hot{Kind::supply_24v};
using Taps = std::vector<std::vector<int>>;

/// The program's own limits at 24 V, of a motor whose taps return to "motor C".
ElectricalLoads usual_loads() {
    const FailedUnit job = thermostat_job(HeatKind::none, {"G"});
    return loads_of(WiringPlan{}, facts_of(job, limits), five_tap_motor(TapRule::one_tap_only), limits);
}

/// Calls by name; relay i hangs on nothing yet and has `poles`.
WiringPlan bare(std::vector<std::string> signals, std::vector<int> poles) {
    WiringPlan plan;
    plan.signals = std::move(signals);
    for (std::size_t i = 0; i < poles.size(); ++i) {
        Relay relay;
        relay.name = "K" + std::to_string(i + 1);
        relay.contacts = poles[i];
        plan.relays.push_back(relay);
    }
    plan.wires = {{common, NetPlace::motor("C"), WireNote::same_transformer}};
    return plan;
}

void wire(WiringPlan& plan, const NetPlace& from, const NetPlace& to) {
    plan.wires.push_back({from, to});
}

/// Each relay's coil from the call of its number to C.
WiringPlan with_coils(std::vector<std::string> signals, std::vector<int> poles) {
    WiringPlan plan = bare(std::move(signals), std::move(poles));
    for (int r = 0; r < static_cast<int>(plan.relays.size()); ++r) {
        wire(plan, NetPlace::signal(r), NetPlace::coil_feed(r));
        wire(plan, NetPlace::coil_return(r), common);
    }
    return plan;
}

void is_near(double found, double by_hand) {
    BOOST_TEST_CONTEXT(found << " V, by hand " << by_hand << " V") {
        BOOST_TEST(std::abs(found - by_hand) < 0.05);
    }
}

const SingleFault lost_at_the_panel{true, FaultKind::lost_common, 0, 0, -1, Kind::common_24v};

}  // namespace

BOOST_AUTO_TEST_CASE(a_live_call_draws_its_relay_in_and_an_idle_one_does_not) {
    const WiringPlan plan = with_coils({"Y1", "W1"}, {0, 0});
    const ElectricalLoads loads = usual_loads();
    Nodal nodal(plan, loads);
    const NodalVolts volts = nodal.hold(1, 0);
    is_near(volts.coils[0], 24);
    is_near(volts.coils[1], 0);
    is_near(volts.calls[0], 24);
    is_near(volts.calls[1], 0);
    const NodalState state = nodal.run(1, nodal.starts());
    BOOST_TEST(state.rests == std::vector<Drawn>{1});
    BOOST_TEST(state.undecided == 0U);
    BOOST_TEST(state.fed == 0U);
}

BOOST_AUTO_TEST_CASE(two_equal_coils_in_series_see_half_the_volts_and_count_both_ways) {
    // Y1 to K1, K1 to K2, K2 to C: 12 V each, between a drop-out of 2.4 and a pull-in of 20.4 V.
    WiringPlan plan = bare({"Y1"}, {1, 0});
    wire(plan, NetPlace::signal(0), NetPlace::coil_feed(0));
    wire(plan, NetPlace::coil_return(0), NetPlace::coil_feed(1));
    wire(plan, NetPlace::coil_return(1), common);
    wire(plan, hot, NetPlace::common(0, 1));
    wire(plan, NetPlace::open(0, 1), NetPlace::tap(2));
    wire(plan, NetPlace::closed(0, 1), NetPlace::tap(1));
    const ElectricalLoads loads = usual_loads();
    Nodal nodal(plan, loads);
    const NodalVolts volts = nodal.hold(1, 0);
    is_near(volts.coils[0], 12);
    is_near(volts.coils[1], 12);
    const NodalState state = nodal.run(1, {0});
    BOOST_TEST(state.undecided == 3U);
    BOOST_TEST(state.outcomes == (Taps{{1}, {2}}));
}

BOOST_AUTO_TEST_CASE(a_lost_common_feeds_an_idle_call_through_the_other_relays_coil) {
    // Y1 live: 96, 96 and 480 ohm in series across 24 V. 24 * 96 / 672 = 3.43 V on each coil, 17.14 V on W1's load.
    const WiringPlan plan = with_coils({"Y1", "W1"}, {0, 0});
    const ElectricalLoads loads = usual_loads();
    Nodal nodal(plan, loads);
    const NodalVolts volts = nodal.hold(1, 0, lost_at_the_panel);
    is_near(volts.coils[0], 3.43);
    is_near(volts.coils[1], 3.43);
    is_near(volts.calls[1], 17.14);
    const NodalState state = nodal.run(1, nodal.starts(), lost_at_the_panel);
    BOOST_TEST(state.fed == 2U);
    BOOST_TEST(state.undecided == 3U);  // 3.43 V is over the drop-out of 2.4 V
}

BOOST_AUTO_TEST_CASE(with_a_load_like_the_coils_each_of_three_sees_a_third) {
    const WiringPlan plan = with_coils({"Y1", "W1"}, {0, 0});
    ElectricalLoads loads = usual_loads();
    loads.call = volt_ampere(6);
    const NodalVolts volts = Nodal(plan, loads).hold(1, 0, lost_at_the_panel);
    is_near(volts.coils[0], 8);
    is_near(volts.coils[1], 8);
    is_near(volts.calls[1], 8);
}

BOOST_AUTO_TEST_CASE(a_motor_that_loses_its_common_feeds_an_idle_call_through_two_taps) {
    // G on tap 1, Y1 on tap 4: 1200, 1200 and 480 ohm: 8.33 mA, 10 V on each tap, 4 V on Y1's load.
    WiringPlan plan = bare({"G", "Y1"}, {});
    wire(plan, NetPlace::signal(0), NetPlace::tap(1));
    wire(plan, NetPlace::signal(1), NetPlace::tap(4));
    const ElectricalLoads loads = usual_loads();
    Nodal nodal(plan, loads);
    const SingleFault off{true, FaultKind::lost_common, 0, 0, 0};
    const NodalVolts volts = nodal.hold(1, 0, off);
    is_near(volts.taps.at(1), 10);
    is_near(volts.taps.at(4), 10);
    is_near(volts.calls[1], 4);
    const NodalState state = nodal.run(1, {0}, off);
    BOOST_TEST(state.fed == 2U);
    BOOST_TEST(state.half_live_tap);
    BOOST_TEST(state.outcomes == Taps{{}});
    BOOST_TEST(nodal.run(1, {0}).outcomes == Taps{{1}});
}

BOOST_AUTO_TEST_CASE(two_calls_on_one_tap_feed_each_other) {
    WiringPlan plan = bare({"Y1", "W1"}, {});
    wire(plan, NetPlace::signal(0), NetPlace::tap(3));
    wire(plan, NetPlace::signal(1), NetPlace::tap(3));
    const ElectricalLoads loads = usual_loads();
    Nodal nodal(plan, loads);
    is_near(nodal.hold(1, 0).calls[1], 24);
    BOOST_TEST(nodal.run(1, {0}).fed == 2U);
    BOOST_TEST(nodal.run(0, {0}).fed == 0U);
}

BOOST_AUTO_TEST_CASE(a_relay_that_cuts_its_own_coil_chatters) {
    WiringPlan plan = bare({"Y1"}, {1});
    wire(plan, NetPlace::signal(0), NetPlace::common(0, 1));
    wire(plan, NetPlace::closed(0, 1), NetPlace::coil_feed(0));
    wire(plan, NetPlace::coil_return(0), common);
    const ElectricalLoads loads = usual_loads();
    Nodal nodal(plan, loads);
    BOOST_TEST(nodal.run(1, {0}).chatters);
    BOOST_TEST(!nodal.run(0, nodal.starts()).chatters);
}

BOOST_AUTO_TEST_CASE(a_relay_that_holds_itself_rests_where_it_started) {
    WiringPlan plan = with_coils({"Y1"}, {1});
    wire(plan, hot, NetPlace::common(0, 1));
    wire(plan, NetPlace::open(0, 1), NetPlace::coil_feed(0));
    wire(plan, NetPlace::open(0, 1), NetPlace::tap(2));
    const ElectricalLoads loads = usual_loads();
    Nodal nodal(plan, loads);
    BOOST_TEST(nodal.run(0, {0}).outcomes == Taps{{}});
    BOOST_TEST(nodal.run(0, {1}).outcomes == Taps{{2}});
    BOOST_TEST(nodal.run(0, nodal.starts()).outcomes == (Taps{{}, {2}}));
    BOOST_TEST(nodal.run(0, {1}).fed == 1U);
}

BOOST_AUTO_TEST_CASE(a_short_circuit_takes_the_volts_of_every_call) {
    WiringPlan plan = bare({"G"}, {});
    wire(plan, NetPlace::signal(0), NetPlace::tap(1));
    wire(plan, hot, common);
    const ElectricalLoads loads = usual_loads();
    Nodal nodal(plan, loads);
    BOOST_TEST(nodal.run(1, {0}).outcomes == Taps{{}});
}

BOOST_AUTO_TEST_CASE(a_coil_between_two_supplies_that_do_not_meet_sees_nothing) {
    // From a 24 V call to the neutral: the secondary is tied to no line conductor.
    WiringPlan plan = bare({"Y1"}, {0});
    wire(plan, NetPlace::signal(0), NetPlace::coil_feed(0));
    wire(plan, NetPlace::coil_return(0), {Kind::neutral});
    const ElectricalLoads loads = usual_loads();
    is_near(Nodal(plan, loads).hold(1, 0).coils[0], 0);
}

BOOST_AUTO_TEST_CASE(a_wire_beside_an_open_circuit_costs_no_digits) {
    // 100 S to a source of 10 V, 1e-9 S to ground at the far end of twenty wires: the far end floats at 10 V.
    std::vector<int> order(21);
    for (int i = 0; i < 21; ++i) order[static_cast<std::size_t>(i)] = 20 - i;
    Network network(order);
    network.source(0, 1, 10, 100);
    network.to_ground(1, 100);
    for (int i = 2; i < 21; ++i) network.join(i == 2 ? 0 : i - 1, i, 100);
    network.to_ground(20, 1e-9);
    BOOST_TEST(std::abs(network.solve()[20] - 10) < 1e-8);
}

BOOST_AUTO_TEST_CASE(every_plan_agrees_with_the_witness_and_says_what_a_lost_common_does) {
    Dice dice(41);
    int plans = 0, fed = 0;
    while (plans < 60) {
        const ControlSource source =
            Words<ControlSource>::table[static_cast<std::size_t>(dice.below(3))].value;
        const Case c = any_case(dice, source);
        const WiringPlan plan = plan_wiring(c.job, c.part, c.air, limits);
        BOOST_TEST((plan.refusal != WiringRefusal::electrical_check_disagrees));
        if (!plan.possible) continue;
        ++plans;
        for (const FaultRow& fault : plan.faults)
            fed += fault.kind == FaultKind::lost_common && fault.back_feed ? 1 : 0;
    }
    BOOST_TEST(fed > 0);
}

BOOST_AUTO_TEST_CASE(a_plan_that_does_not_do_what_its_table_says_is_refused_before_somebody_wires_by_it) {
    const FailedUnit job = thermostat_job(HeatKind::none, {"G", "Y1"});
    const Part part = five_tap_motor(TapRule::one_tap_only);
    WiringPlan plan = lay_wiring(job, part, air({{Call::circulate, 1}, {Call::cool_high, 4}}), limits);
    for (Wire& each : plan.wires) {
        if (each.to == NetPlace::tap(4)) each.to = NetPlace::tap(5);
    }
    annotate(plan, job, facts_of(job, limits), part, limits);
    BOOST_TEST(!plan.possible);
    BOOST_TEST(!plan.proven);
    BOOST_TEST((plan.refusal == WiringRefusal::electrical_check_disagrees));
    BOOST_TEST(plan.wires.empty());
    BOOST_CHECK(verdict_of(plan) == Verdict::not_shown);
}

BOOST_AUTO_TEST_CASE(what_is_drawn_in_and_what_has_let_go_are_limits) {
    // A shop that wants 0.6 of rated volts to count as let go is refused; one that wants more to draw in is heard.
    Limits own;
    BOOST_CHECK(own.tighten("relay.pull_in", 0.90, "north yard") == Limits::Tightening::accepted);
    BOOST_CHECK(own.tighten("relay.drop_out", 0.60, "north yard") == Limits::Tightening::looser);
    const FailedUnit job = thermostat_job(HeatKind::none, {"G"});
    const ElectricalLoads loads =
        loads_of(WiringPlan{}, facts_of(job, own), five_tap_motor(TapRule::one_tap_only), own);
    BOOST_TEST(loads.pull_in == 0.90);
    BOOST_TEST(loads.drop_out == 0.10);
    BOOST_TEST(loads.tap_runs == 0.5);  // 12 V of 24
}
