#include "engine/wiring/simulate.hpp"

#include <algorithm>
#include <bit>
#include <numeric>

namespace endbell::inline wiring {

namespace {

constexpr unsigned leg_1 = 1, leg_2 = 2, leg_3 = 4, neutral_leg = 8;

}  // namespace

Simulator::Simulator(const WiringPlan& plan) : plan_(&plan) {
    for (const Wire& wire : plan.wires) {
        const int from = node(wire.from);
        wires_.emplace_back(from, node(wire.to));
    }
    for (int r = 0; r < static_cast<int>(plan.relays.size()); ++r) {
        RelayEnds ends;
        ends.coil_a = node(NetPlace::coil_feed(r));
        ends.coil_b = node(NetPlace::coil_return(r));
        for (int pole = 1; pole <= plan.relays[static_cast<std::size_t>(r)].contacts; ++pole) {
            ends.poles.push_back({node(NetPlace::common(r, pole)), node(NetPlace::open(r, pole)),
                                  node(NetPlace::closed(r, pole))});
        }
        relays_.push_back(ends);
    }
}

int Simulator::node(const NetPlace& place) {
    const auto found = std::find(places_.begin(), places_.end(), place);
    if (found != places_.end()) return static_cast<int>(found - places_.begin());
    places_.push_back(place);
    nodes_.push_back(describe(place));
    return static_cast<int>(places_.size()) - 1;
}

Simulator::Node Simulator::describe(const NetPlace& place) const {
    switch (place.kind) {
        case NetPlace::Kind::signal:
            return {Kind::signal, place.number, plan_->line_signals, plan_->line_signals ? leg_1 : 0};
        case NetPlace::Kind::tap:
            return {Kind::tap, place.number, plan_->line_taps, 0, false, true};
        case NetPlace::Kind::supply_24v:
            return {Kind::low_supply, 0, false};
        case NetPlace::Kind::common_24v:
            return {Kind::low_return, 0, false};
        case NetPlace::Kind::line_1:
            return {Kind::line_supply, 0, true, leg_1, true};
        case NetPlace::Kind::line_2:
            return {Kind::line_return, 0, true, leg_2, true};
        case NetPlace::Kind::line_3:
            return {Kind::line_return, 0, true, leg_3, true};
        case NetPlace::Kind::load_2:
            return {Kind::line_return, 0, true, leg_2};
        case NetPlace::Kind::load_3:
            return {Kind::line_return, 0, true, leg_3};
        case NetPlace::Kind::neutral:
            return {Kind::line_return, 0, true, neutral_leg};
        case NetPlace::Kind::earth:
            return {Kind::earth, 0, false};
        case NetPlace::Kind::motor:
        case NetPlace::Kind::pin:
        case NetPlace::Kind::capacitor:
        case NetPlace::Kind::capacitor_common:
            return {Kind::plain, 0, false, 0, false, true};
        default:
            return {};
    }
}

int Simulator::root(int p) const {
    while (joint_[static_cast<std::size_t>(p)] != p) p = joint_[static_cast<std::size_t>(p)];
    return p;
}

/// A node of -1 joins nothing.
void Simulator::connect(int a, int b) {
    if (a >= 0 && b >= 0) joint_[static_cast<std::size_t>(root(a))] = root(b);
}

void Simulator::join(const SingleFault& fault) {
    joint_.resize(nodes_.size());
    std::iota(joint_.begin(), joint_.end(), 0);
    for (std::size_t w = 0; w < wires_.size(); ++w) {
        const bool off =
            fault.present && fault.kind == FaultKind::wire_off && fault.wire == static_cast<int>(w);
        if (!off) connect(wires_[w].first, wires_[w].second);
    }
    for (std::size_t r = 0; r < relays_.size(); ++r) {
        for (std::size_t p = 0; p < relays_[r].poles.size(); ++p) {
            bool up = drawn_[r] != 0;
            const bool here =
                fault.present && fault.relay == static_cast<int>(r) && fault.pole == static_cast<int>(p) + 1;
            if (here && fault.kind == FaultKind::welded_open_side) up = true;
            if (here && fault.kind == FaultKind::welded_closed_side) up = false;
            const RelayEnds::Pole& pole = relays_[r].poles[p];
            connect(pole.common, up ? pole.open : pole.closed);
        }
    }
    for (std::size_t i = 0; i < nodes_.size(); ++i) joint_[i] = root(static_cast<int>(i));
}

void Simulator::charge(SignalSet live) {
    conductors_.assign(nodes_.size(), {});
    for (std::size_t i = 0; i < nodes_.size(); ++i) {
        Conductor& c = conductors_[static_cast<std::size_t>(joint_[i])];
        const Node& p = nodes_[i];
        const bool supply = p.kind == Kind::low_supply || p.kind == Kind::line_supply;
        const bool signal = p.kind == Kind::signal;
        c.sources += supply || signal ? 1 : 0;
        c.live = c.live || supply || (signal && (live >> p.number & 1u) != 0);
        c.returned = c.returned || p.kind == Kind::low_return || p.kind == Kind::line_return;
        c.earthed = c.earthed || p.kind == Kind::earth;
        c.legs |= p.leg;
        c.unswitched = c.unswitched || p.unswitched;
        c.on_motor = c.on_motor || p.on_motor;
        if (p.kind == Kind::plain || p.kind == Kind::earth) continue;
        c.line = c.line || p.line;
        c.low = c.low || !p.line;
    }
}

/// Draws in the relays whose coils have a live and a returned end. False: none of them moved.
bool Simulator::pull(const SingleFault& fault) {
    bool moved = false;
    for (std::size_t r = 0; r < relays_.size(); ++r) {
        const bool open =
            fault.present && fault.kind == FaultKind::coil_open && fault.relay == static_cast<int>(r);
        const Conductor& a = at(relays_[r].coil_a);
        const Conductor& b = at(relays_[r].coil_b);
        const bool drawn = !open && &a != &b && ((a.live && b.returned) || (b.live && a.returned));
        moved = moved || drawn != (drawn_[r] != 0);
        drawn_[r] = drawn ? 1 : 0;
    }
    return moved;
}

NetState Simulator::run(SignalSet live, const SingleFault& fault) {
    drawn_.assign(relays_.size(), 0);
    // Coils hang on signals, so a sound netlist rests after one round; a mutilated one may chatter.
    for (std::size_t round = 0; round <= relays_.size() + 1; ++round) {
        join(fault);
        charge(live);
        if (!pull(fault)) return judge();
    }
    NetState state = judge();
    state.settled = false;
    return state;
}

NetState Simulator::judge() const {
    NetState state;
    for (const Conductor& c : conductors_) {
        state.back_feed = state.back_feed || c.sources > 1;
        const bool two_legs = std::popcount(c.legs) > 1;
        state.short_circuit = state.short_circuit || two_legs || ((c.returned || c.earthed) && c.sources > 0);
        state.line_side = state.line_side || (plan_->load_switch && c.unswitched && c.on_motor);
        state.mixed_voltage = state.mixed_voltage || (c.line && c.low);
    }
    for (std::size_t i = 0; i < nodes_.size(); ++i) {
        const bool live = at(static_cast<int>(i)).live;
        if (nodes_[i].kind == Kind::tap && live) state.live_taps.push_back(nodes_[i].number);
    }
    std::sort(state.live_taps.begin(), state.live_taps.end());
    return state;
}

}  // namespace endbell::inline wiring
