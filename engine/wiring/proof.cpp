#include "engine/wiring/proof.hpp"

#include <algorithm>
#include <bit>

#include <fmt/format.h>

#include "engine/base/ensure.hpp"
#include "engine/wiring/nodal.hpp"
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
    if (!state.settled || state.back_feed || state.short_circuit || state.mixed_voltage || state.line_side)
        return false;
    if (row.live_taps != plan.intended[row.live]) return false;
    if (prevented_by_the_board(plan, row.live)) return true;
    if (!row.effective_tap) return false;
    if ((row.live & plan.must_run) != 0 && row.live_taps.empty()) return false;
    return !row.reachable || *row.effective_tap == row.wanted_tap;
}

/// Tries one fault after another against every state of a sound plan.
class Breaker {
  public:
    Breaker(const WiringPlan& plan, const ElectricalLoads& loads)
        : plan_(plan), simulator_(plan), nodal_(plan, loads) {
        for (const TruthRow& row : plan.truth) {
            const NodalState sound = row.reachable ? nodal_.run(row.live, {0}) : NodalState{};
            starts_.push_back(sound.rests.empty() ? std::vector<Drawn>{0}
                                                  : std::vector<Drawn>{0, sound.rests.front()});
        }
    }

    FaultRow attempt(const SingleFault& fault, std::string where) {
        FaultRow row;
        row.kind = fault.kind;
        row.where = std::move(where);
        for (const TruthRow& normal : plan_.truth) {
            // Relay logic takes a place for a return or none: of a lost common it sees nothing.
            if (fault.kind != FaultKind::lost_common) by_logic(fault, normal, row);
            if (normal.reachable) by_volts(fault, normal, row);
        }
        return row;
    }

  private:
    void by_logic(const SingleFault& fault, const TruthRow& normal, FaultRow& row) {
        const NetState state = simulator_.run(normal.live, fault);
        row.back_feed = row.back_feed || state.back_feed;
        note(normal, state.live_taps, row);
    }
    void by_volts(const SingleFault& fault, const TruthRow& normal, FaultRow& row) {
        const NodalState state = nodal_.run(normal.live, starts_[normal.live], fault);
        row.back_feed = row.back_feed || state.fed != 0;
        for (const std::vector<int>& taps : state.outcomes) note(normal, taps, row);
    }
    void note(const TruthRow& normal, const std::vector<int>& taps, FaultRow& row) {
        if (normal.reachable && (normal.live & plan_.must_run) != 0 && taps.empty())
            row.heat_without_air = true;
        if (taps == normal.live_taps || prevented_by_the_board(plan_, normal.live)) return;
        row.two_taps = row.two_taps || taps.size() > 1;
        const bool known =
            std::any_of(row.effects.begin(), row.effects.end(), [&](const FaultEffect& effect) {
                return effect.live == normal.live && effect.live_taps == taps;
            });
        if (normal.reachable && !known)
            row.effects.push_back({normal.live, normal.state, normal.wanted_tap, taps});
    }

    const WiringPlan& plan_;
    Simulator simulator_;
    Nodal nodal_;
    std::vector<std::vector<Drawn>>
        starts_;  // of each state: at rest, and as it stood while nothing was broken
};

/// The returns that control hangs on: the transformer's where coils or taps are at 24 V, the line's where they are not.
std::vector<NetPlace> commons_of(const WiringPlan& plan) {
    std::vector<NetPlace> found;
    for (const Wire& wire : plan.wires) {
        for (const NetPlace& place : {wire.from, wire.to}) {
            const bool low = place.kind == NetPlace::Kind::common_24v;
            const bool line = place.kind == NetPlace::Kind::line_2 || place.kind == NetPlace::Kind::neutral;
            const bool controls = low || (line && (plan.line_signals || plan.line_taps));
            if (controls && std::find(found.begin(), found.end(), place) == found.end())
                found.push_back(place);
        }
    }
    return found;
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

std::vector<FaultRow> single_faults(const WiringPlan& plan, const ElectricalLoads& loads) {
    Breaker breaker(plan, loads);
    std::vector<FaultRow> rows;
    for (std::size_t r = 0; r < plan.relays.size(); ++r) {
        const Relay& relay = plan.relays[r];
        const int index = static_cast<int>(r);
        rows.push_back(breaker.attempt({true, FaultKind::coil_open, index}, relay.name));
        for (int pole = 1; pole <= relay.contacts; ++pole) {
            const std::string where = fmt::format("{} pole {}", relay.name, pole);
            for (const FaultKind kind : {FaultKind::welded_open_side, FaultKind::welded_closed_side})
                rows.push_back(breaker.attempt({true, kind, index, pole}, where));
        }
    }
    for (std::size_t w = 0; w < plan.wires.size(); ++w) {
        const Wire& wire = plan.wires[w];
        const bool common = wire.note == WireNote::same_transformer;
        if (!is_control(wire) && !common) continue;
        const FaultKind kind = common ? FaultKind::lost_common : FaultKind::wire_off;
        rows.push_back(breaker.attempt({true, kind, 0, 0, static_cast<int>(w)},
                                       text_of(plan, wire.from) + " to " + text_of(plan, wire.to)));
    }
    for (const NetPlace& place : commons_of(plan))
        rows.push_back(
            breaker.attempt({true, FaultKind::lost_common, 0, 0, -1, place.kind}, text_of(plan, place)));
    return rows;
}

std::vector<int> live_taps(const WiringPlan& plan, SignalSet live) {
    return Simulator(plan).run(live).live_taps;
}

}  // namespace endbell::inline wiring
