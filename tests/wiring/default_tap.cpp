// Line present and no tap live: what the part then does is a column of the catalog (electrical.md 7.6).
#include <boost/test/unit_test.hpp>

#include "tests/wiring/fixtures.hpp"

using namespace fixture;

namespace {

/// A gas furnace whose board's line-voltage outputs say when, and the thermostat how fast.
FailedUnit furnace() {
    FailedUnit job = blower_job(ControlSource::board_line, HeatKind::gas);
    job.controls.run_signal_available = known(true);
    job.controls.terminals = known(terminals({{"G", Call::circulate},
                                              {"Y1", Call::cool_high},
                                              {"W1", Call::heat_high},
                                              {"COOL", Call::cool_high},
                                              {"HEAT", Call::heat_high}}));
    return job;
}

Part gated_part(std::optional<int> default_tap) {
    Part part = five_tap_motor(TapRule::one_tap_only);
    part.motor->terminals.push_back({"RUN", "run signal", "lead"});
    part.motor->default_tap = default_tap;
    return part;
}

/// Heating wants 900 to 1200 cfm at tap 4; tap 3 gives 950 and tap 2 gives 700.
AirPlan furnace_air() {
    AirPlan plan = air({{Call::circulate, 1}, {Call::cool_high, 5}, {Call::heat_high, 4}});
    for (CallAir& call : plan.calls) {
        if (call.call != Call::heat_high) continue;
        call.low = cfm(900);
        call.high = cfm(1200);
    }
    for (const auto& [tap, moved] : {std::pair{1, 500}, {2, 700}, {3, 950}, {4, 1050}, {5, 1180}}) {
        TapAir entry;
        entry.tap = tap;
        entry.airflow = estimate(cfm(moved), 0);
        plan.taps.push_back(entry);
    }
    return plan;
}

WiringPlan plan_of(std::optional<int> default_tap) {
    return plan_wiring(furnace(), gated_part(default_tap), furnace_air(), limits);
}

template <class List, class T>
bool has(const List& list, const T& value) {
    return std::find(list.begin(), list.end(), value) != list.end();
}

}  // namespace

BOOST_AUTO_TEST_CASE(a_part_that_stops_gets_a_tap_held_live) {
    const WiringPlan p = plan_of(0);
    BOOST_REQUIRE(p.proven);
    BOOST_TEST(row(p, {}).live_taps == std::vector<int>{4}, boost::test_tools::per_element());
    BOOST_TEST(has(p.cautions, WiringCaution::stops_without_a_tap));
    BOOST_REQUIRE(p.kept_away.size() == 1u);
    BOOST_TEST((p.kept_away[0].by == Interlock::tap_held_live));
    BOOST_TEST(p.lacking.empty());
    // Lost, that wire leaves the burner's heat without air.
    BOOST_TEST(std::any_of(p.faults.begin(), p.faults.end(),
                           [](const FaultRow& f) { return f.heat_without_air(); }));
}

BOOST_AUTO_TEST_CASE(of_an_empty_column_nothing_is_assumed_and_the_keeper_is_asked) {
    const WiringPlan p = plan_of(std::nullopt);
    BOOST_REQUIRE(p.proven);
    BOOST_TEST(row(p, {}).live_taps == std::vector<int>{4}, boost::test_tools::per_element());
    BOOST_TEST(has(p.cautions, WiringCaution::tap_held_without_a_call));
    BOOST_TEST(has(p.lacking, std::string("motors.default_tap")));
    BOOST_TEST(std::any_of(p.faults.begin(), p.faults.end(),
                           [](const FaultRow& f) { return f.heat_without_air(); }));
}

BOOST_AUTO_TEST_CASE(a_default_tap_with_the_air_needs_no_wire) {
    for (const int tap : {3, 4}) {
        const WiringPlan p = plan_of(tap);
        BOOST_REQUIRE(p.proven);
        const TruthRow& still = row(p, {});
        BOOST_TEST(still.live_taps.empty());
        BOOST_TEST(still.effective_tap.value() == tap);
        BOOST_TEST(still.wanted_tap == tap);
        BOOST_TEST(still.holds);
        BOOST_TEST(p.kept_away.empty());
        BOOST_TEST(has(p.cautions, WiringCaution::runs_at_its_default_tap));
        BOOST_TEST(row(p, {"W1"}).live_taps == std::vector<int>{4}, boost::test_tools::per_element());
        for (const FaultRow& f : p.faults) BOOST_TEST(!f.heat_without_air());
    }
}

BOOST_AUTO_TEST_CASE(a_default_tap_with_too_little_air_is_not_relied_on) {
    for (const int tap : {1, 2}) {
        const WiringPlan p = plan_of(tap);
        BOOST_REQUIRE(p.proven);
        BOOST_TEST(row(p, {}).live_taps == std::vector<int>{4}, boost::test_tools::per_element());
        BOOST_TEST(has(p.cautions, WiringCaution::default_tap_gives_other_air));
        BOOST_REQUIRE(p.kept_away.size() == 1u);
    }
}

BOOST_AUTO_TEST_CASE(a_default_tap_without_a_run_signal_never_stops) {
    Part part = five_tap_motor(TapRule::one_tap_only);
    part.motor->default_tap = 2;
    const FailedUnit job = thermostat_job(HeatKind::none, {"G", "Y1"});
    const AirPlan taps = air({{Call::circulate, 1}, {Call::cool_high, 4}});
    const WiringPlan p = plan_wiring(job, part, taps, limits);
    BOOST_TEST(!p.possible);
    BOOST_TEST((p.refusal == WiringRefusal::runs_without_a_call));
    BOOST_TEST((verdict_of(p) == Verdict::does_not_fit));
    part.motor->default_tap = 0;
    BOOST_TEST(plan_wiring(job, part, taps, limits).proven);
}

// The job's own list says nothing of the run-on, and the board makes it all the same.
BOOST_AUTO_TEST_CASE(the_jobs_own_states_do_not_leave_the_run_on_without_air) {
    FailedUnit job = furnace();
    job.controls.states = known(std::vector<CustomState>{{"cool", {"G", "Y1"}, Call::cool_high},
                                                         {"heat", {"W1"}, Call::heat_high},
                                                         {"fan", {"G"}, Call::circulate}});
    const WiringPlan p = plan_wiring(job, gated_part(0), furnace_air(), limits);
    BOOST_REQUIRE(p.proven);
    BOOST_TEST(row(p, {}).live_taps == std::vector<int>{4}, boost::test_tools::per_element());
    BOOST_TEST(row(p, {}).wanted_tap == 4);
}
