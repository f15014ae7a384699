#include "engine/wiring/simulate.hpp"

#include <algorithm>
#include <cstdlib>
#include <numeric>

namespace endbell {

namespace {

/// Union-find over place numbers; a place of -1 joins nothing.
class Joints {
  public:
    explicit Joints(std::size_t places) : parent_(places) { std::iota(parent_.begin(), parent_.end(), 0); }
    int root(int p) const {
        while (parent_[static_cast<std::size_t>(p)] != p) p = parent_[static_cast<std::size_t>(p)];
        return p;
    }
    void join(int a, int b) {
        if (a >= 0 && b >= 0) parent_[static_cast<std::size_t>(root(a))] = root(b);
    }

  private:
    std::vector<int> parent_;
};

}  // namespace

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

Simulator::Conductors Simulator::join(const std::vector<bool>& drawn, SignalSet live,
                                      const SingleFault& fault) const {
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
    Conductors conductors;
    conductors.list.resize(places_.size());
    for (std::size_t i = 0; i < places_.size(); ++i)
        conductors.of_place.push_back(joints.root(static_cast<int>(i)));
    charge(conductors, live);
    return conductors;
}

void Simulator::charge(Conductors& conductors, SignalSet live) const {
    for (std::size_t i = 0; i < places_.size(); ++i) {
        Conductor& c = conductors.list[static_cast<std::size_t>(conductors.of_place[i])];
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

Outcome Simulator::run(SignalSet live, const SingleFault& fault) const {
    std::vector<bool> drawn(relays_.size(), false);
    Outcome outcome;
    // Coils hang on signals, so a sound netlist rests after one round; a mutilated one may chatter.
    for (std::size_t round = 0; round <= relays_.size() + 1; ++round) {
        const Conductors conductors = join(drawn, live, fault);
        std::vector<bool> next(relays_.size());
        for (std::size_t r = 0; r < relays_.size(); ++r) {
            const bool open =
                fault.present && fault.kind == FaultKind::coil_open && fault.relay == static_cast<int>(r);
            const Conductor& a = conductors.at(relays_[r].coil_a);
            const Conductor& b = conductors.at(relays_[r].coil_b);
            next[r] = !open && &a != &b && ((a.live && b.returned) || (b.live && a.returned));
        }
        if (next == drawn) return judge(conductors);
        outcome = judge(conductors);
        drawn = next;
    }
    outcome.settled = false;
    return outcome;
}

Outcome Simulator::judge(const Conductors& conductors) const {
    Outcome outcome;
    for (const Conductor& c : conductors.list) {
        outcome.back_feed = outcome.back_feed || c.sources > 1;
        outcome.short_circuit = outcome.short_circuit || ((c.returned || c.earthed) && c.sources > 0);
        outcome.mixed_voltage = outcome.mixed_voltage || (c.line && c.low);
    }
    for (std::size_t i = 0; i < places_.size(); ++i) {
        const bool live = conductors.at(static_cast<int>(i)).live;
        if (places_[i].kind == Kind::tap && live) outcome.live_taps.push_back(places_[i].number);
    }
    std::sort(outcome.live_taps.begin(), outcome.live_taps.end());
    return outcome;
}

}  // namespace endbell
