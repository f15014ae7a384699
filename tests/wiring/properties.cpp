// Random controls, supplies and parts, each plan judged by volts (judge.hpp): what holds moves air wherever something calls for
// it, every line terminal is landed, no part that obeys one tap gets two, and no transformer is loaded over its plan
// without a larger one wanted. Jobs drawn complete and curable get a plan.
#include <boost/test/unit_test.hpp>
#include <cstdlib>
#include <map>

#include "tests/wiring/judge.hpp"

using namespace fixture;

namespace {

int wanted_runs() {
    const char* said = std::getenv("ENDBELL_WIRING_JOBS");
    return said != nullptr ? std::atoi(said) : 2000;
}

/// A heat pump on a thermostat, with a part that obeys one tap: three calls, and elements beside the compressor.
DrawnJob heat_pump() {
    DrawnJob drawn;
    drawn.job = thermostat_job(HeatKind::heat_pump, {"G", "Y1", "W2"});
    drawn.job.plate.phase = known(1);
    drawn.job.equipment.supply = known(bare_supply(volt(240)));
    drawn.job.controls.fan_interlock = known(true);
    drawn.job.controls.transformer = known(volt_ampere(75));
    drawn.job.controls.transformer_load = known(volt_ampere(30));
    drawn.part = five_tap_motor(TapRule::one_tap_only);
    drawn.air = air({{Call::circulate, 1}, {Call::cool_high, 3}, {Call::electric_heat, 5}});
    return drawn;
}

std::string why_refused(const WiringPlan& plan, bool curable) {
    std::string why(word(*plan.refusal));
    return curable ? why + " (complete)" : why;
}

}  // namespace

BOOST_AUTO_TEST_CASE(what_holds_has_air_and_one_tap_whatever_the_controls_the_supply_and_the_part) {
    Dice dice(19);
    std::map<std::string, int> refused;
    const int runs = wanted_runs();
    int plans = 0, ways = 0, curable = 0, cured = 0;
    for (int run = 0; run < runs; ++run) {
        const DrawnJob drawn = draw(dice);
        const WiringPlan plan = lay_wiring(drawn.job, drawn.part, drawn.air, limits);
        curable += drawn.curable ? 1 : 0;
        if (!plan.possible) {
            BOOST_REQUIRE(plan.refusal);
            ++refused[why_refused(plan, drawn.curable)];
            continue;
        }
        ++plans;
        cured += drawn.curable ? 1 : 0;
        std::string fault = fault_of(plan, drawn);
        for (const WiringPlan& other : plan.alternatives) {
            if (!other.possible) continue;
            ++ways;
            if (fault.empty()) fault = fault_of(other, drawn);
        }
        BOOST_TEST(fault.empty(), "run " << run << ": " << fault);
    }
    BOOST_TEST_MESSAGE(runs << " jobs: " << plans << " plans, " << ways << " other ways; of " << curable
                            << " complete, " << cured);
    for (const auto& [why, count] : refused) BOOST_TEST_MESSAGE("refused, " << why << ": " << count);
    BOOST_TEST(cured * 10 >= curable * 9);
}

BOOST_AUTO_TEST_CASE(the_judge_finds_nothing_wrong_with_a_sound_plan) {
    const DrawnJob drawn = heat_pump();
    BOOST_TEST(fault_of(lay_wiring(drawn.job, drawn.part, drawn.air, limits), drawn) == "");
}

BOOST_AUTO_TEST_CASE(the_judge_sees_each_line_terminal_that_is_not_landed) {
    const DrawnJob drawn = heat_pump();
    const WiringPlan sound = lay_wiring(drawn.job, drawn.part, drawn.air, limits);
    int taken = 0;
    for (std::size_t i = 0; i < sound.wires.size(); ++i) {
        if (!sound.wires[i].note) continue;
        WiringPlan bad = sound;
        bad.wires.erase(bad.wires.begin() + static_cast<std::ptrdiff_t>(i));
        BOOST_TEST(fault_of(bad, drawn) != "", text_of(sound, sound.wires[i].from));
        ++taken;
    }
    BOOST_TEST(taken == 4);  // line, second line, common and earth
}

BOOST_AUTO_TEST_CASE(the_judge_sees_each_control_wire_that_is_off) {
    const DrawnJob drawn = heat_pump();
    const WiringPlan sound = lay_wiring(drawn.job, drawn.part, drawn.air, limits);
    int taken = 0;
    for (std::size_t i = 0; i < sound.wires.size(); ++i) {
        if (sound.wires[i].note) continue;
        WiringPlan bad = sound;
        bad.wires.erase(bad.wires.begin() + static_cast<std::ptrdiff_t>(i));
        BOOST_TEST(fault_of(bad, drawn) != "", text_of(sound, sound.wires[i].from)
                                                   << " to " << text_of(sound, sound.wires[i].to));
        ++taken;
    }
    BOOST_TEST(taken > 3);
}

BOOST_AUTO_TEST_CASE(the_judge_sees_a_second_tap_tied_to_another) {
    const DrawnJob drawn = heat_pump();
    const WiringPlan sound = lay_wiring(drawn.job, drawn.part, drawn.air, limits);
    for (const auto& [one, other] : {std::pair{1, 2}, {3, 4}, {5, 4}, {1, 5}}) {
        WiringPlan bad = sound;
        bad.wires.push_back({NetPlace::tap(one), NetPlace::tap(other)});
        BOOST_TEST(fault_of(bad, drawn).find("two taps") != std::string::npos, one << " and " << other);
    }
}

BOOST_AUTO_TEST_CASE(the_judge_sees_a_coil_that_nobody_counted_and_a_transformer_over_its_plan) {
    const DrawnJob drawn = heat_pump();
    WiringPlan bad = lay_wiring(drawn.job, drawn.part, drawn.air, limits);
    Relay more;
    more.name = "K9";
    bad.relays.push_back(more);
    const int at = static_cast<int>(bad.relays.size()) - 1;
    bad.wires.push_back({NetPlace::signal(0), NetPlace::coil_feed(at)});
    bad.wires.push_back({NetPlace::coil_return(at), {NetPlace::Kind::common_24v}});
    BOOST_TEST(fault_of(bad, drawn).find("VA are added") != std::string::npos);

    WiringPlan heavy = lay_wiring(drawn.job, drawn.part, drawn.air, limits);
    DrawnJob loaded = drawn;
    loaded.job.controls.transformer_load = known(volt_ampere(59));  // 80 % of 75 VA is 60
    BOOST_TEST(fault_of(heavy, loaded).find("no larger one") != std::string::npos);
    BOOST_TEST(fault_of(lay_wiring(loaded.job, loaded.part, loaded.air, limits), loaded) == "");
}

BOOST_AUTO_TEST_CASE(the_judge_sees_a_leg_of_three_that_is_not_landed) {
    Dice dice(5);
    DrawnJob drawn = draw(dice);
    while (drawn.third.empty() || !drawn.curable) drawn = draw(dice);
    const WiringPlan sound = lay_wiring(drawn.job, drawn.part, drawn.air, limits);
    BOOST_TEST(fault_of(sound, drawn) == "");
    for (std::size_t i = 0; i < sound.wires.size(); ++i) {
        WiringPlan bad = sound;
        bad.wires.erase(bad.wires.begin() + static_cast<std::ptrdiff_t>(i));
        BOOST_TEST(fault_of(bad, drawn) != "", text_of(sound, sound.wires[i].from));
    }
}
