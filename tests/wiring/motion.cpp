// What contacts may join on the way, against every position of every pole tried one by one.
#include "engine/wiring/motion.hpp"

#include <boost/test/unit_test.hpp>

#include "engine/wiring/netlist.hpp"
#include "tests/wiring/generated.hpp"
#include "tests/wiring/walker.hpp"

using namespace fixture;

namespace {

using Kind = NetPlace::Kind;

/// The poles of relays that a change moves, each named "K1.COM2".
struct Pole {
    std::string common, open, closed;
    bool moves = false, up = false;
};

std::vector<Pole> poles_of(const WiringPlan& plan, SignalSet before, SignalSet after) {
    std::vector<Pole> poles;
    for (const Relay& relay : plan.relays) {
        const bool up = (before >> relay.coil_signal & 1U) != 0;
        const bool then = (after >> relay.coil_signal & 1U) != 0;
        for (int i = 1; i <= relay.contacts; ++i) {
            const std::string n = std::to_string(i);
            poles.push_back(
                {relay.name + ".COM" + n, relay.name + ".NO" + n, relay.name + ".NC" + n, up != then, up});
        }
    }
    return poles;
}

/// Everything that plain joins lead to from a place.
Places spread_from(const std::string& start, const std::multimap<std::string, std::string>& joins) {
    Places seen{start};
    std::vector<std::string> open{start};
    while (!open.empty()) {
        const std::string at = open.back();
        open.pop_back();
        const auto [first, last] = joins.equal_range(at);
        for (auto each = first; each != last; ++each) {
            if (seen.insert(each->second).second) open.push_back(each->second);
        }
    }
    return seen;
}

/// One moment: `picks` says of each moving pole whether it stands on its open side.
void look(const WiringPlan& plan, const std::vector<Pole>& poles, unsigned picks, SignalSet before,
          SignalSet after, Motion& seen) {
    std::multimap<std::string, std::string> joins;
    const auto join = [&joins](const std::string& a, const std::string& b) {
        joins.emplace(a, b);
        joins.emplace(b, a);
    };
    for (const Wire& wire : plan.wires) {
        if (wire.to.kind != Kind::cap) join(text_of(plan, wire.from), text_of(plan, wire.to));
    }
    unsigned moving = 0;
    for (const Pole& pole : poles) {
        const bool up = pole.moves ? (picks >> moving++ & 1U) != 0 : pole.up;
        join(pole.common, up ? pole.open : pole.closed);
    }
    std::vector<std::string> live{plan.line_taps ? "L1" : "R"}, idle;
    for (std::size_t s = 0; s < plan.signals.size(); ++s) {
        if (((before | after) >> s & 1U) != 0) live.push_back(plan.signals[s]);
        if (((before & after) >> s & 1U) == 0) idle.push_back(plan.signals[s]);
    }
    std::set<std::string> taps;
    for (const std::string& source : live) {
        for (const std::string& place : spread_from(source, joins)) {
            if (place.rfind("tap ", 0) == 0) taps.insert(place);
            const bool other = place != source && std::find(idle.begin(), idle.end(), place) != idle.end();
            seen.ties_calls = seen.ties_calls || other;
        }
    }
    if (plan.tap_rule != TapRule::highest_tap_wins && taps.size() > 1) seen.two_taps_live = true;
}

/// By trying every position of every moving pole; none where there are too many. A pole on neither throw joins less.
std::optional<Motion> by_trying(const WiringPlan& plan) {
    Motion seen;
    for (const ControlState& a : plan.states) {
        for (const ControlState& b : plan.states) {
            const std::vector<Pole> poles = poles_of(plan, a.live, b.live);
            const auto moving =
                std::count_if(poles.begin(), poles.end(), [](const Pole& pole) { return pole.moves; });
            if (moving == 0) continue;
            if (moving > 9) return std::nullopt;
            for (unsigned picks = 0; picks < 1U << moving; ++picks)
                look(plan, poles, picks, a.live, b.live, seen);
        }
    }
    return seen;
}

/// The circuit of a table as a plan: netlist and states, and nothing of a part.
WiringPlan drawn_up(const TapTable& table, const Circuit& circuit, TapRule rule) {
    WiringPlan plan;
    plan.tap_rule = rule;
    for (int s = 0; s < table.signals; ++s) plan.signals.push_back("S" + std::to_string(s + 1));
    for (SignalSet state = 0; state < table.wanted.size(); ++state) {
        if (table.wanted[state]) plan.states.push_back({"state", state, *table.wanted[state]});
    }
    write_netlist(circuit, {{Kind::supply_24v}, {Kind::common_24v}}, 4, plan);
    return plan;
}

/// Two calls and a relay on the second, its poles joined to one tap.
WiringPlan two_calls(int poles) {
    WiringPlan plan;
    plan.signals = {"G", "Y1"};
    Relay relay;
    relay.name = "K1";
    relay.coil_signal = 1;
    relay.contacts = poles;
    plan.relays = {relay};
    plan.states = {{"fan on", 1, 1}, {"cool 1", 3, 1}};
    for (int pole = 1; pole <= poles; ++pole)
        plan.wires.push_back({NetPlace::common(0, pole), NetPlace::tap(1)});
    return plan;
}

}  // namespace

BOOST_AUTO_TEST_CASE(one_change_over_pole_never_ties_what_it_chooses_between) {
    WiringPlan plan = two_calls(1);
    plan.wires.push_back({NetPlace::signal(0), NetPlace::closed(0, 1)});
    plan.wires.push_back({NetPlace::signal(1), NetPlace::open(0, 1)});
    BOOST_TEST(motion_of(plan).steady());
}

BOOST_AUTO_TEST_CASE(two_poles_of_one_relay_that_lag_each_other_tie_two_calls) {
    // G through pole 1 at rest, Y1 through pole 2 drawn in. In no position of the relay do they meet; while pole 2 leads, they do.
    WiringPlan plan = two_calls(2);
    plan.wires.push_back({NetPlace::signal(0), NetPlace::closed(0, 1)});
    plan.wires.push_back({NetPlace::signal(1), NetPlace::open(0, 2)});
    BOOST_TEST(motion_of(plan).ties_calls);
    plan.states = {{"off", 0, 0}, {"fan on", 1, 1}};  // the relay never moves
    BOOST_TEST(motion_of(plan).steady());
}

BOOST_AUTO_TEST_CASE(two_poles_that_lag_each_other_make_two_taps_live) {
    // R to tap 1 through pole 1 at rest, to tap 2 through pole 2 drawn in.
    WiringPlan plan = two_calls(0);
    plan.relays.front().contacts = 2;
    plan.wires = {{{Kind::supply_24v}, NetPlace::common(0, 1)},
                  {{Kind::supply_24v}, NetPlace::common(0, 2)},
                  {NetPlace::closed(0, 1), NetPlace::tap(1)},
                  {NetPlace::open(0, 2), NetPlace::tap(2)}};
    plan.tap_rule = TapRule::one_tap_only;
    BOOST_TEST(motion_of(plan).two_taps_live);
    BOOST_TEST(!motion_of(plan).ties_calls);
    plan.tap_rule = TapRule::highest_tap_wins;
    BOOST_TEST(motion_of(plan).steady());
}

BOOST_AUTO_TEST_CASE(one_conductor_plans_are_steady_over_random_tables) {
    Dice dice(52);
    int plans = 0, tried = 0;
    for (int i = 0; i < 1200; ++i) {
        const TapTable table = random_table(dice, 2 + dice.below(4), 2 + dice.below(4));
        const auto circuit = one_conductor(table, {true, dice.one_in(2)});
        if (!circuit || circuit->coils.empty()) continue;
        const WiringPlan plan = drawn_up(table, *circuit, TapRule::one_tap_only);
        ++plans;
        BOOST_TEST(motion_of(plan).steady());
        if (i % 10 != 0) continue;
        const auto seen = by_trying(plan);
        tried += seen ? 1 : 0;
        if (seen) BOOST_TEST(seen->steady());
    }
    BOOST_TEST(plans > 800);
    BOOST_TEST(tried > 20);
}

BOOST_AUTO_TEST_CASE(the_search_finds_what_trying_every_position_finds) {
    Dice dice(53);
    int plans = 0, unsteady = 0;
    for (int i = 0; i < 600; ++i) {
        const TapTable table = random_table(dice, 2 + dice.below(3), 2 + dice.below(3));
        const auto circuit = highest_wins(table, {true, true});
        if (!circuit || circuit->coils.empty()) continue;
        // Some as if two taps were one too many.
        const TapRule rule = dice.one_in(2) ? TapRule::highest_tap_wins : TapRule::one_tap_only;
        const WiringPlan plan = drawn_up(table, *circuit, rule);
        const auto seen = by_trying(plan);
        if (!seen) continue;
        ++plans;
        const Motion found = motion_of(plan);
        BOOST_TEST(found.ties_calls == seen->ties_calls);
        BOOST_TEST(found.two_taps_live == seen->two_taps_live);
        unsteady += seen->ties_calls ? 1 : 0;
    }
    BOOST_TEST_MESSAGE(plans << " plans that rely on the part's priority, " << unsteady << " tie calls");
    BOOST_TEST(plans >= 100);
    BOOST_TEST(unsteady >= 20);
}

BOOST_AUTO_TEST_CASE(no_plan_that_is_given_ties_calls_where_one_conductor_would_not) {
    Dice dice(54);
    int plans = 0;
    for (int i = 0; i < 400; ++i) {
        Case c = any_case(dice, ControlSource::thermostat);
        c.part = five_tap_motor(TapRule::highest_tap_wins);
        const WiringPlan plan = plan_wiring(c.job, c.part, c.air, limits);
        if (!plan.possible) continue;
        ++plans;
        const bool said = has(plan.cautions, WiringCaution::moving_relays_tie_calls);
        BOOST_TEST(said == motion_of(plan).ties_calls);
        BOOST_TEST(!said);  // of these systems each has a plan of one conductor
        for (const WiringPlan& other : plan.alternatives) BOOST_TEST(motion_of(other).steady());
    }
    BOOST_TEST(plans > 50);
}
