#include "engine/wiring/proof.hpp"

#include <algorithm>
#include <bit>

#include <fmt/format.h>

#include "engine/base/ensure.hpp"
#include "engine/wiring/simulate.hpp"

namespace endbell::inline wiring {

namespace {

SignalSet states_of(const WiringPlan& plan) {
    return SignalSet{1} << plan.signals.size();
}

std::optional<int> effective(const WiringPlan& plan, const std::vector<int>& live) {
    if (live.empty()) return 0;
    if (live.size() > 1 && plan.tap_rule != TapRule::highest_tap_wins) return std::nullopt;
    return live.back();
}

bool prevented_by_the_board(const WiringPlan& plan, SignalSet live) {
    return plan.condition && std::popcount(live) > 1;
}

void name_the_state(const WiringPlan& plan, TruthRow& row) {
    for (const ControlState& state : plan.states) {
        if (state.live != row.live) continue;
        row.state += (row.state.empty() ? "" : " / ") + state.name;
        row.wanted_tap = state.wanted_tap;
        row.reachable = true;
    }
}

bool holds(const WiringPlan& plan, const TruthRow& row, const NetState& state) {
    if (!state.settled || state.back_feed || state.short_circuit || state.mixed_voltage) return false;
    if (row.live_taps != plan.intended[row.live]) return false;
    if (prevented_by_the_board(plan, row.live)) return true;
    if (!row.effective_tap) return false;
    if ((row.live & plan.must_run) != 0 && row.live_taps.empty()) return false;
    return !row.reachable || *row.effective_tap == row.wanted_tap;
}

FaultRow try_fault(const WiringPlan& plan, Simulator& simulator, const SingleFault& fault,
                   std::string where) {
    FaultRow row;
    row.kind = fault.kind;
    row.where = std::move(where);
    for (const TruthRow& normal : plan.truth) {
        const NetState state = simulator.run(normal.live, fault);
        const bool barred = prevented_by_the_board(plan, normal.live);
        const bool counts = !barred && state.live_taps != normal.live_taps;
        row.two_taps = row.two_taps || (counts && state.live_taps.size() > 1);
        row.back_feed = row.back_feed || state.back_feed;
        row.heat_without_air =
            row.heat_without_air ||
            (normal.reachable && (normal.live & plan.must_run) != 0 && state.live_taps.empty());
        if (normal.reachable && counts) {
            row.effects.push_back({normal.live, normal.state, normal.wanted_tap, state.live_taps});
        }
    }
    return row;
}

bool is_control(const Wire& wire) {
    return !wire.note;
}

}  // namespace

std::vector<TruthRow> prove(const WiringPlan& plan) {
    ensure(plan.intended.size() == states_of(plan), "the synthesis says what it means for every state");
    Simulator simulator(plan);
    std::vector<TruthRow> truth;
    for (SignalSet live = 0; live < states_of(plan); ++live) {
        TruthRow row;
        row.live = live;
        const NetState state = simulator.run(live);
        row.live_taps = state.live_taps;
        row.effective_tap = effective(plan, row.live_taps);
        name_the_state(plan, row);
        row.holds = holds(plan, row, state);
        truth.push_back(std::move(row));
    }
    return truth;
}

bool all_hold(const std::vector<TruthRow>& truth) {
    return std::all_of(truth.begin(), truth.end(), [](const TruthRow& row) { return row.holds; });
}

std::vector<FaultRow> single_faults(const WiringPlan& plan) {
    Simulator simulator(plan);
    std::vector<FaultRow> rows;
    for (std::size_t r = 0; r < plan.relays.size(); ++r) {
        const Relay& relay = plan.relays[r];
        const int index = static_cast<int>(r);
        rows.push_back(try_fault(plan, simulator, {true, FaultKind::coil_open, index, 0, 0}, relay.name));
        for (int pole = 1; pole <= relay.contacts; ++pole) {
            const std::string where = fmt::format("{} pole {}", relay.name, pole);
            for (const FaultKind kind : {FaultKind::welded_open_side, FaultKind::welded_closed_side}) {
                rows.push_back(try_fault(plan, simulator, {true, kind, index, pole, 0}, where));
            }
        }
    }
    for (std::size_t w = 0; w < plan.wires.size(); ++w) {
        const Wire& wire = plan.wires[w];
        if (!is_control(wire)) continue;
        rows.push_back(try_fault(plan, simulator, {true, FaultKind::wire_off, 0, 0, static_cast<int>(w)},
                                 text_of(plan, wire.from) + " to " + text_of(plan, wire.to)));
    }
    return rows;
}

std::vector<int> live_taps(const WiringPlan& plan, SignalSet live) {
    return Simulator(plan).run(live).live_taps;
}

}  // namespace endbell::inline wiring
