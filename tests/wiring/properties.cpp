// Random controls, parts and air. Judged by a flood along the wires (plain_relays.hpp) and by what the letters mean, never
// by the planner or its simulator: what holds moves air wherever something calls for it, and no part that obeys one tap
// gets two. Jobs drawn complete and curable get a plan.
#include <boost/test/unit_test.hpp>
#include <cstdlib>
#include <map>

#include "tests/wiring/generated.hpp"
#include "tests/wiring/plain_relays.hpp"

using namespace fixture;

namespace {

int wanted_runs() {
    const char* said = std::getenv("ENDBELL_WIRING_JOBS");
    return said != nullptr ? std::atoi(said) : 2000;
}

struct Drawn {
    FailedUnit job;
    Part part;
    AirPlan air;
    bool curable = true;  // complete, and there is a way to wire it
};

template <class T>
T any_of(Dice& dice, std::initializer_list<T> list) {
    return *(list.begin() + dice.below(static_cast<int>(list.size())));
}

void add(FailedUnit& job, const char* label, std::optional<Call> call) {
    if (!job.controls.terminals) job.controls.terminals = known(std::vector<Terminal>{});
    job.controls.terminals.value->push_back({label, call});
}

void draw_cooling(Dice& dice, FailedUnit& job) {
    job.equipment.cooling = known(ton_cooling(3));
    const bool two = dice.one_in(3);
    job.equipment.cooling_stages = known(two ? 2 : 1);
    add(job, two ? "Y1" : any_of(dice, {"Y", "Y1"}), two ? Call::cool_low : Call::cool_high);
    if (two) add(job, "Y2", Call::cool_high);
}

void draw_heat(Dice& dice, FailedUnit& job, HeatKind heat) {
    const bool fuel = heat == HeatKind::gas || heat == HeatKind::oil || heat == HeatKind::dual_fuel;
    if (fuel) {
        const bool two = dice.one_in(3);
        job.equipment.heating_stages = known(two ? 2 : 1);
        add(job, any_of(dice, {"W", "W1"}), two ? Call::heat_low : Call::heat_high);
        if (two) add(job, "W2", Call::heat_high);
        if (heat == HeatKind::dual_fuel && dice.one_in(3)) add(job, "E", Call::heat_high);
    } else if (heat != HeatKind::none) {
        job.equipment.electric_heat = known(kilowatt(10));
        add(job, any_of(dice, {"W", "W1", "W2", "AUX"}), Call::electric_heat);
        if (dice.one_in(3)) add(job, "W3", Call::electric_heat);
        if (heat == HeatKind::heat_pump && dice.one_in(2))
            add(job, any_of(dice, {"E", "EM"}), Call::electric_heat);
        if (dice.one_in(2)) job.controls.fan_with_heat = known(dice.one_in(2));
    }
}

void draw_thermostat(Dice& dice, FailedUnit& job, HeatKind heat) {
    if (!dice.one_in(5)) add(job, "G", Call::circulate);
    draw_cooling(dice, job);
    draw_heat(dice, job, heat);
    for (const char* idle : {"R", "C", "O", "L"}) {
        if (dice.one_in(4)) add(job, idle, Call::circulate);
    }
    if (!dice.one_in(4)) return;
    add(job, "DH", Call::dehumidify);
    job.controls.dehumidify =
        known(any_of(dice, {DehumidifyLogic::live_is_normal, DehumidifyLogic::live_is_dehumidify,
                            DehumidifyLogic::not_used}));
}

void draw_board(Dice& dice, FailedUnit& job, HeatKind heat) {
    const bool fuel = heat == HeatKind::gas || heat == HeatKind::oil || heat == HeatKind::dual_fuel;
    job.equipment.cooling = known(ton_cooling(3));
    add(job, "COOL", Call::cool_high);
    if (heat != HeatKind::none) add(job, "HEAT", Call::heat_high);
    if (dice.one_in(2)) add(job, "CONT", Call::circulate);
    if (dice.one_in(3)) add(job, "LO COOL", Call::cool_low);
    if (fuel && dice.one_in(3)) {
        add(job, "LO HEAT", Call::heat_low);
        job.equipment.heating_stages = known(2);
    }
    if (!fuel && heat != HeatKind::none) job.equipment.electric_heat = known(kilowatt(10));
}

Part draw_part(Dice& dice) {
    if (dice.one_in(5)) return three_lead_motor();
    Part part = five_tap_motor(any_rule(dice));
    const double off_delay = any_of(dice, {0.0, 60.0, 120.0});
    for (Tap& tap : part.motor->taps) {
        if (off_delay > 0) tap.off_delay = second(off_delay);
    }
    if (dice.one_in(3)) part.motor->terminals.push_back({"RUN", "run signal", ""});
    return part;
}

/// One thing wrong with the job's list; it may still be wired where the fault does no harm.
void spoil(Dice& dice, Drawn& drawn) {
    std::vector<Terminal>& list = *drawn.job.controls.terminals.value;
    drawn.curable = false;
    switch (dice.below(6)) {
        case 0:
            list.erase(list.begin() + dice.below(static_cast<int>(list.size())));
            break;
        case 1:
            list.push_back({"Z9", std::nullopt});
            break;
        case 2:
            list.push_back({any_of(dice, {"E", "W2", "W3", "AUX", "Y2", "DH"}), Call::heat_high});
            break;
        case 3:
            drawn.job.controls.heat = {};
            break;
        case 4:
            drawn.job.equipment.electric_heat = {};
            drawn.job.controls.fan_interlock = known(false);
            break;
        default:
            drawn.job.controls.circulate_hours = known(400.0);
            drawn.job.controls.common_present = known(!dice.one_in(2));
            break;
    }
}

Drawn draw(Dice& dice) {
    const HeatKind heat = Words<HeatKind>::table[static_cast<std::size_t>(dice.below(6))].value;
    const bool fuel = heat == HeatKind::gas || heat == HeatKind::oil || heat == HeatKind::dual_fuel;
    const ControlSource source =
        any_of(dice, {ControlSource::thermostat, ControlSource::board_24v, ControlSource::board_line});
    Drawn drawn{blower_job(source, heat), draw_part(dice), {}, true};
    const bool run_signal = drawn.part.motor->terminals.back().function == "run signal";
    if (source == ControlSource::thermostat || (fuel && run_signal)) {
        draw_thermostat(dice, drawn.job, heat);
        drawn.job.controls.run_signal_available = known(run_signal);
        drawn.curable = !fuel || run_signal;  // a thermostat alone never commands a furnace's blower
    } else {
        draw_board(dice, drawn.job, heat);
    }
    if (dice.one_in(2)) drawn.job.controls.fan_interlock = known(true);
    drawn.job.equipment.supply = known(bare_supply(volt(dice.one_in(2) ? 120 : 240)));
    drawn.air = any_air(dice, drawn.part.id == "three-lead" ? 3 : 5);
    if (dice.one_in(4)) spoil(dice, drawn);
    return drawn;
}

/// Something live calls for air: any signal but the one that only asks for drier air.
bool calls_for_air(const WiringPlan& plan, SignalSet live) {
    for (std::size_t i = 0; i < plan.signals.size(); ++i) {
        if ((live >> i & 1u) && plan.signals[i].rfind("DH", 0) != 0) return true;
    }
    return false;
}

/// What is wrong with a plan that is given; empty: nothing.
std::string fault_of(const WiringPlan& plan) {
    PlainRelays relays(plan);
    const bool one_tap = plan.tap_rule != TapRule::highest_tap_wins;
    for (const TruthRow& row : plan.truth) {
        const std::vector<int> taps = relays.taps(row.live);
        std::string where;
        for (std::size_t i = 0; i < plan.signals.size(); ++i) {
            if (row.live >> i & 1u) where += plan.signals[i] + " ";
        }
        where += "(" + row.state + "): ";
        if (taps != row.live_taps) return where + "the wires do something else";
        if (row.reachable && !row.holds) return where + "reached, and does not hold";
        if (row.reachable && row.makers.empty()) return where + "nobody makes it";
        if (!row.reachable && !row.kept_away_by) return where + "nothing keeps it away";
        if (!row.holds && !plan.condition) return where + "does not hold, and no condition is told";
        if (row.holds && calls_for_air(plan, row.live) && taps.empty()) return where + "no air";
        if (row.holds && one_tap && taps.size() > 1) return where + "two taps";
        const int obeyed = taps.empty() ? 0 : taps.back();
        if (row.reachable && obeyed != row.wanted_tap) return where + "another tap than is wanted";
    }
    return "";
}

}  // namespace

BOOST_AUTO_TEST_CASE(what_holds_has_air_and_one_tap_whatever_the_controls_and_the_part) {
    Dice dice(19);
    std::map<std::string, int> refused;
    const int runs = wanted_runs();
    int plans = 0, curable = 0, cured = 0;
    for (int run = 0; run < runs; ++run) {
        const Drawn drawn = draw(dice);
        const WiringPlan plan = lay_wiring(drawn.job, drawn.part, drawn.air, limits);
        curable += drawn.curable ? 1 : 0;
        if (!plan.possible) {
            BOOST_REQUIRE(plan.refusal);
            ++refused[std::string(word(*plan.refusal)) + (drawn.curable ? " (complete)" : "")];
            continue;
        }
        ++plans;
        cured += drawn.curable ? 1 : 0;
        std::string fault = fault_of(plan);
        for (const WiringPlan& other : plan.alternatives) {
            if (other.possible && fault.empty()) fault = fault_of(other);
        }
        BOOST_REQUIRE_MESSAGE(fault.empty(), "run " << run << ": " << fault);
    }
    BOOST_TEST_MESSAGE(runs << " jobs: " << plans << " plans; of " << curable << " complete, " << cured);
    for (const auto& [why, count] : refused) BOOST_TEST_MESSAGE("refused, " << why << ": " << count);
    BOOST_TEST(cured * 10 >= curable * 9);
}
