// The proof against a second reading of the netlist, and against netlists spoiled on purpose.
#include <boost/test/unit_test.hpp>

#include "engine/wiring/proof.hpp"
#include "engine/wiring/simulate.hpp"
#include "tests/wiring/generated.hpp"
#include "tests/wiring/walker.hpp"

using namespace fixture;

namespace {

std::vector<WiringPlan> some_plans(int count, std::uint64_t seed) {
    Dice dice(seed);
    std::vector<WiringPlan> plans;
    while (static_cast<int>(plans.size()) < count) {
        const ControlSource source =
            Words<ControlSource>::table[static_cast<std::size_t>(dice.below(3))].value;
        const Case c = any_case(dice, source);
        WiringPlan plan = plan_wiring(c.job, c.part, c.air, limits);
        if (!plan.possible) continue;
        for (WiringPlan& other : plan.alternatives) {
            if (other.possible) plans.push_back(std::move(other));
        }
        plan.alternatives.clear();
        plans.push_back(std::move(plan));
    }
    return plans;
}

/// One wire's end moved, two ends exchanged, a wire gone, or a wire too many.
WiringPlan spoiled(const WiringPlan& plan, Dice& dice) {
    WiringPlan bad = plan;
    std::vector<NetPlace> places{{NetPlace::Kind::supply_24v}, {NetPlace::Kind::common_24v}};
    for (const Wire& w : plan.wires) {
        places.push_back(w.from);
        places.push_back(w.to);
    }
    const auto any_wire = [&]() {
        return static_cast<std::size_t>(dice.below(static_cast<int>(bad.wires.size())));
    };
    const auto any_place = [&]() {
        return places[static_cast<std::size_t>(dice.below(static_cast<int>(places.size())))];
    };
    const std::size_t w = any_wire();
    switch (dice.below(5)) {
        case 0:
            bad.wires[w].to = any_place();
            break;
        case 1:
            bad.wires[w].from = any_place();
            break;
        case 2:
            std::swap(bad.wires[w].to, bad.wires[any_wire()].to);
            break;
        case 3:
            bad.wires.erase(bad.wires.begin() + static_cast<std::ptrdiff_t>(w));
            break;
        default:
            bad.wires.push_back({any_place(), any_place()});
            break;
    }
    return bad;
}

/// Does the second reading differ from the table printed with the sound plan?
bool changed(const WiringPlan& sound, const WiringPlan& bad) {
    const Walker walker(bad);
    for (const TruthRow& row : sound.truth) {
        const Walk walk = walker.walk(row.live);
        if (!walk.rests || walk.wrong_meeting || walk.live_taps != row.live_taps) return true;
    }
    return false;
}

}  // namespace

BOOST_AUTO_TEST_CASE(the_simulator_and_a_walk_along_the_wires_agree_in_every_state) {
    for (const WiringPlan& plan : some_plans(60, 3)) {
        const Walker walker(plan);
        for (const TruthRow& row : plan.truth) {
            const Walk walk = walker.walk(row.live);
            BOOST_TEST(walk.live_taps == row.live_taps);
            BOOST_TEST(live_taps(plan, row.live) == row.live_taps);
            BOOST_TEST(!walk.wrong_meeting);
            BOOST_TEST(walk.rests);
        }
    }
}

BOOST_AUTO_TEST_CASE(every_spoiled_netlist_that_changes_the_table_fails_the_proof) {
    Dice dice(4);
    int that_change = 0, caught = 0, made = 0;
    for (const WiringPlan& plan : some_plans(70, 5)) {
        for (int i = 0; i < 50; ++i) {
            const WiringPlan bad = spoiled(plan, dice);
            ++made;
            if (!changed(plan, bad)) continue;
            ++that_change;
            if (!is_proven(prove(bad))) ++caught;
        }
    }
    BOOST_TEST_MESSAGE(made << " spoiled, " << that_change << " change the table, " << caught << " caught");
    BOOST_TEST(that_change >= 2000);
    BOOST_TEST(caught == that_change);
}

BOOST_AUTO_TEST_CASE(with_one_conductor_no_single_fault_makes_two_taps_live_or_joins_two_wires) {
    int plans = 0;
    for (const WiringPlan& plan : some_plans(80, 6)) {
        if (plan.method != WiringMethod::one_conductor) continue;
        ++plans;
        for (const FaultRow& fault : plan.faults) {
            BOOST_TEST(!fault.two_taps);
            // No wiring parts coils that have lost what they return to.
            BOOST_TEST((!fault.back_feed || fault.kind == FaultKind::lost_common));
        }
    }
    BOOST_TEST(plans >= 20);
}

BOOST_AUTO_TEST_CASE(a_coil_open_leaves_the_fan_tap_in_cooling_and_nothing_else) {
    // G through a contact of Y1's relay: drawn to tap 4, at rest to tap 1. Worked out by hand.
    const WiringPlan p =
        plan_wiring(thermostat_job(HeatKind::none, {"G", "Y1"}), five_tap_motor(TapRule::one_tap_only),
                    air({{Call::circulate, 1}, {Call::cool_high, 4}}), limits);
    const FaultRow& fault = p.faults.front();
    BOOST_TEST((fault.kind == FaultKind::coil_open));
    // With G the fan tap is left; without G, nothing, and the compressor runs without air.
    BOOST_REQUIRE(fault.effects.size() == 2u);
    for (const FaultEffect& effect : fault.effects) {
        const bool with_fan = effect.state == "cool 1";
        BOOST_TEST((with_fan || effect.state == "cool 1, no G"));
        BOOST_TEST(effect.live_taps == (with_fan ? std::vector<int>{1} : std::vector<int>{}));
    }
    BOOST_TEST((fault.without_air == std::vector{HeatSource::compressor}));
}

BOOST_AUTO_TEST_CASE(a_plan_is_proven_when_it_is_laid_and_annotated_for_who_wires_by_it) {
    const FailedUnit job = thermostat_job(HeatKind::none, {"G", "Y1"});
    const Part part = five_tap_motor(TapRule::one_tap_only);
    WiringPlan plan = lay_wiring(job, part, air({{Call::circulate, 1}, {Call::cool_high, 4}}), limits);
    BOOST_TEST(plan.proven);
    BOOST_TEST(!plan.relays.empty());
    BOOST_TEST((plan.faults.empty() && plan.cautions.empty() && plan.checks.empty()));
    annotate(plan, job, facts_of(job, limits), part, limits);
    BOOST_TEST((!plan.faults.empty() && !plan.cautions.empty() && !plan.checks.empty()));
}

BOOST_AUTO_TEST_CASE(wires_joined_on_one_tap_back_feed) {
    // Y1 and W1 both on tap 3: a cooling call would draw in the heat relay.
    WiringPlan plan;
    plan.signals = {"Y1", "W1"};
    plan.wires = {{NetPlace::signal(0), NetPlace::tap(3)}, {NetPlace::signal(1), NetPlace::tap(3)}};
    BOOST_TEST(Simulator(plan).run(1).back_feed);
    BOOST_TEST(live_taps(plan, 1) == std::vector<int>{3});
}

BOOST_AUTO_TEST_CASE(a_relay_that_cuts_its_own_coil_never_rests) {
    WiringPlan plan;
    plan.signals = {"Y1"};
    Relay k;
    k.name = "K1";
    k.contacts = 1;
    plan.relays = {k};
    plan.wires = {{NetPlace::signal(0), NetPlace::common(0, 1)},
                  {NetPlace::closed(0, 1), NetPlace::coil_feed(0)},
                  {NetPlace::coil_return(0), {NetPlace::Kind::common_24v}}};
    BOOST_TEST(!Simulator(plan).run(1).settled);
    BOOST_TEST(Simulator(plan).run(0).settled);
}
