#include "engine/wiring/proof.hpp"

#include <algorithm>

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

bool kept_away_by_the_board(const TruthRow& row) {
    return row.kept_away_by == Interlock::one_board_output_at_a_time;
}

void name_the_state(const WiringPlan& plan, TruthRow& row) {
    for (const ControlState& state : plan.states) {
        if (state.live != row.live) continue;
        row.state += (row.state.empty() ? "" : " / ") + state.name;
        row.wanted_tap = state.wanted_tap;
        row.reachable = true;
        if (std::find(row.makers.begin(), row.makers.end(), state.maker) == row.makers.end())
            row.makers.push_back(state.maker);
    }
    if (!row.reachable && row.live < plan.interlocks.size()) row.kept_away_by = plan.interlocks[row.live];
}

bool as_meant(const WiringPlan& plan, const TruthRow& row, const NetState& state) {
    if (!state.settled || state.back_feed || state.short_circuit || state.mixed_voltage || state.line_side)
        return false;
    return row.live_taps == plan.intended[row.live];
}

bool holds(const WiringPlan& plan, const TruthRow& row) {
    if (!row.as_meant || !row.effective_tap) return false;
    if ((row.live & plan.heats.all()) != 0 && row.live_taps.empty()) return false;
    return !row.reachable || *row.effective_tap == row.wanted_tap;
}

void name_the_unaired(const WiringPlan& plan, SignalSet live, FaultRow& row) {
    const auto name = [&](SignalSet signals, HeatSource source) {
        const bool there =
            std::find(row.without_air.begin(), row.without_air.end(), source) != row.without_air.end();
        if ((live & signals) != 0 && !there) row.without_air.push_back(source);
    };
    name(plan.heats.elements, HeatSource::elements);
    name(plan.heats.burner, HeatSource::burner);
    name(plan.heats.compressor, HeatSource::compressor);
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
        // A tap wanted without a call carries off the heat that is left of one.
        const bool after_a_call = normal.live == 0 && normal.wanted_tap != 0;
        const SignalSet hot = after_a_call ? plan_.heats.burner | plan_.heats.elements : normal.live;
        // At its default tap the motor still moves air.
        if (normal.reachable && taps.empty() && !plan_.default_tap) name_the_unaired(plan_, hot, row);
        if (taps == normal.live_taps || kept_away_by_the_board(normal)) return;
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
        // What wants the motor off has no run signal.
        if (row.live_taps.empty() && row.wanted_tap != 0 && plan.default_tap)
            row.effective_tap = plan.default_tap;
        row.as_meant = as_meant(plan, row, state);
        row.holds = holds(plan, row);
        truth.push_back(std::move(row));
    }
    return truth;
}

bool is_proven(const std::vector<TruthRow>& truth) {
    return std::all_of(truth.begin(), truth.end(), [](const TruthRow& row) {
        return row.holds || (row.as_meant && kept_away_by_the_board(row));
    });
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
