#include "engine/wiring/simulate.hpp"

#include <algorithm>
#include <cstdlib>
#include <numeric>

namespace endbell {

Simulator::Simulator(const WiringPlan& plan) : plan_(&plan) {
    for (const Wire& wire : plan.wires) {
        const int from = place(wire.from);
        wires_.emplace_back(from, place(wire.to));
    }
    for (const Relay& relay : plan.relays) {
        RelayEnds ends;
        ends.coil_a = place(relay.name + ".A1");
        ends.coil_b = place(relay.name + ".A2");
        for (int pole = 1; pole <= relay.contacts; ++pole) {
            const std::string number = std::to_string(pole);
            ends.poles.push_back({place(relay.name + ".COM" + number), place(relay.name + ".NO" + number),
                                  place(relay.name + ".NC" + number)});
        }
        relays_.push_back(ends);
    }
}

int Simulator::place(const std::string& name) {
    const auto found = std::find(names_.begin(), names_.end(), name);
    if (found != names_.end()) return static_cast<int>(found - names_.begin());
    names_.push_back(name);
    places_.push_back(describe(name));
    return static_cast<int>(names_.size()) - 1;
}

Simulator::Place Simulator::describe(const std::string& name) const {
    const auto signal = std::find(plan_->signals.begin(), plan_->signals.end(), name);
    if (signal != plan_->signals.end()) {
        return {Kind::signal, static_cast<int>(signal - plan_->signals.begin()), plan_->line_signals};
    }
    if (name.rfind("tap ", 0) == 0) return {Kind::tap, std::atoi(name.c_str() + 4), plan_->line_taps};
    if (name == "R") return {Kind::low_supply, 0, false};
    if (name == "C") return {Kind::low_return, 0, false};
    if (name == "L1") return {Kind::line_supply, 0, true};
    if (name == "L2" || name == "N") return {Kind::line_return, 0, true};
    if (name == "earth") return {Kind::earth, 0, false};
    return {};
}

int Simulator::root(int p) const {
    while (joint_[static_cast<std::size_t>(p)] != p) p = joint_[static_cast<std::size_t>(p)];
    return p;
}

/// A place of -1 joins nothing.
void Simulator::connect(int a, int b) {
    if (a >= 0 && b >= 0) joint_[static_cast<std::size_t>(root(a))] = root(b);
}

void Simulator::join(const SingleFault& fault) {
    joint_.resize(places_.size());
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
    for (std::size_t i = 0; i < places_.size(); ++i) joint_[i] = root(static_cast<int>(i));
}

void Simulator::charge(SignalSet live) {
    conductors_.assign(places_.size(), {});
    for (std::size_t i = 0; i < places_.size(); ++i) {
        Conductor& c = conductors_[static_cast<std::size_t>(joint_[i])];
        const Place& p = places_[i];
        const bool supply = p.kind == Kind::low_supply || p.kind == Kind::line_supply;
        const bool signal = p.kind == Kind::signal;
        c.sources += supply || signal ? 1 : 0;
        c.live = c.live || supply || (signal && (live >> p.number & 1u) != 0);
        c.returned = c.returned || p.kind == Kind::low_return || p.kind == Kind::line_return;
        c.earthed = c.earthed || p.kind == Kind::earth;
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
        state.short_circuit = state.short_circuit || ((c.returned || c.earthed) && c.sources > 0);
        state.mixed_voltage = state.mixed_voltage || (c.line && c.low);
    }
    for (std::size_t i = 0; i < places_.size(); ++i) {
        const bool live = at(static_cast<int>(i)).live;
        if (places_[i].kind == Kind::tap && live) state.live_taps.push_back(places_[i].number);
    }
    std::sort(state.live_taps.begin(), state.live_taps.end());
    return state;
}

}  // namespace endbell
