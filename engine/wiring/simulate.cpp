#include "engine/wiring/simulate.hpp"

#include <algorithm>
#include <cstdlib>
#include <numeric>

namespace endbell {

/// Places joined into conductors, by union-find.
struct Simulator::Joints {
    explicit Joints(std::size_t places) : parent(places) { std::iota(parent.begin(), parent.end(), 0); }
    int root(int p) const {
        while (parent[static_cast<std::size_t>(p)] != p) p = parent[static_cast<std::size_t>(p)];
        return p;
    }
    void join(int a, int b) {
        if (a >= 0 && b >= 0) parent[static_cast<std::size_t>(root(a))] = root(b);
    }
    std::vector<int> parent;
};

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

bool Simulator::is_live(const Place& p, SignalSet live) const {
    return p.kind == Kind::low_supply || p.kind == Kind::line_supply ||
           (p.kind == Kind::signal && (live >> p.number & 1u) != 0);
}

Simulator::Joints Simulator::join(const std::vector<bool>& drawn, const SingleFault& fault) const {
    Joints joints(places_.size());
    for (std::size_t w = 0; w < wires_.size(); ++w) {
        const bool off =
            fault.present && fault.kind == FaultKind::wire_off && fault.wire == static_cast<int>(w);
        if (!off) joints.join(wires_[w].first, wires_[w].second);
    }
    for (std::size_t r = 0; r < relays_.size(); ++r) {
        for (std::size_t p = 0; p < relays_[r].poles.size(); ++p) {
            bool up = drawn[r];
            const bool here =
                fault.present && fault.relay == static_cast<int>(r) && fault.pole == static_cast<int>(p) + 1;
            if (here && fault.kind == FaultKind::welded_open_side) up = true;
            if (here && fault.kind == FaultKind::welded_closed_side) up = false;
            const RelayEnds::Pole& pole = relays_[r].poles[p];
            joints.join(pole.common, up ? pole.open : pole.closed);
        }
    }
    return joints;
}

bool Simulator::has_voltage(const RelayEnds& relay, const Joints& joints, SignalSet live) const {
    const int a = joints.root(relay.coil_a);
    const int b = joints.root(relay.coil_b);
    bool live_a = false, live_b = false, return_a = false, return_b = false;
    for (std::size_t i = 0; i < places_.size(); ++i) {
        const int at = joints.root(static_cast<int>(i));
        const bool returned = places_[i].kind == Kind::low_return || places_[i].kind == Kind::line_return;
        if (at == a) {
            live_a = live_a || is_live(places_[i], live);
            return_a = return_a || returned;
        }
        if (at == b) {
            live_b = live_b || is_live(places_[i], live);
            return_b = return_b || returned;
        }
    }
    return a != b && ((live_a && return_b) || (live_b && return_a));
}

Outcome Simulator::run(SignalSet live, const SingleFault& fault) const {
    std::vector<bool> drawn(relays_.size(), false);
    Outcome outcome;
    // Coils hang on signals, so a sound netlist rests after one round; a mutilated one may chatter.
    for (std::size_t round = 0; round <= relays_.size() + 1; ++round) {
        const Joints joints = join(drawn, fault);
        std::vector<bool> next(relays_.size());
        for (std::size_t r = 0; r < relays_.size(); ++r) {
            const bool open =
                fault.present && fault.kind == FaultKind::coil_open && fault.relay == static_cast<int>(r);
            next[r] = !open && has_voltage(relays_[r], joints, live);
        }
        outcome = judge(joints, live);
        if (next == drawn) return outcome;
        drawn = next;
    }
    outcome.settled = false;
    return outcome;
}

Outcome Simulator::judge(const Joints& joints, SignalSet live) const {
    Outcome outcome;
    struct Conductor {
        int sources = 0;  // the supply counts; so does every signal, live or idle
        bool live = false, returned = false, line = false, low = false;
    };
    std::vector<Conductor> conductors(places_.size());
    for (std::size_t i = 0; i < places_.size(); ++i) {
        Conductor& c = conductors[static_cast<std::size_t>(joints.root(static_cast<int>(i)))];
        const Place& p = places_[i];
        const bool source =
            p.kind == Kind::low_supply || p.kind == Kind::line_supply || p.kind == Kind::signal;
        c.sources += source ? 1 : 0;
        c.live = c.live || is_live(p, live);
        c.returned =
            c.returned || p.kind == Kind::low_return || p.kind == Kind::line_return || p.kind == Kind::earth;
        if (p.kind == Kind::plain) continue;
        c.line = c.line || p.line;
        c.low = c.low || (!p.line && p.kind != Kind::earth);
    }
    for (std::size_t i = 0; i < places_.size(); ++i) {
        const Conductor& c = conductors[static_cast<std::size_t>(joints.root(static_cast<int>(i)))];
        outcome.back_feed = outcome.back_feed || c.sources > 1;
        outcome.short_circuit = outcome.short_circuit || (c.returned && c.sources > 0);
        outcome.mixed_voltage = outcome.mixed_voltage || (c.line && c.low);
        if (places_[i].kind == Kind::tap && c.live) outcome.live_taps.push_back(places_[i].number);
    }
    std::sort(outcome.live_taps.begin(), outcome.live_taps.end());
    return outcome;
}

}  // namespace endbell
