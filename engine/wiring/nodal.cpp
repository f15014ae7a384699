#include "engine/wiring/nodal.hpp"

#include <algorithm>
#include <cmath>
#include <numeric>

namespace endbell::inline wiring {

namespace {

// The idle parts of the model. No answer hangs on them: tests/outside/nodal_spice.py has others. A wire and a contact are
// small beside a source, so that a short circuit takes its volts away; a source is small beside every load; what is open
// leaks little beside every load.
constexpr double wire = 100;          // 0.01 ohm
constexpr double contact = 100;       // 0.01 ohm
constexpr double source = 10;         // 0.1 ohm
constexpr double leakage = 1e-8;      // of an idle output, and of a secondary to ground: 100 Mohm
constexpr double insulation = 1e-11;  // of any place to ground

double conductance_of(ApparentPower power, Voltage rated) {
    const double volts = rated.in(volt);
    return power.in(volt_ampere) / (volts * volts);
}

double conductance_of(Current current, Voltage rated) {
    return current.in(ampere) / rated.in(volt);
}

}  // namespace

Nodal::Nodal(const WiringPlan& plan, const ElectricalLoads& loads)
    : plan_(&plan), loads_(&loads), network_({}) {
    add_places();
    add_loads();
    network_ = Network(by_neighbours());
}

int Nodal::node(const NetPlace& place) {
    const auto found = std::find(places_.begin(), places_.end(), place);
    if (found != places_.end()) return static_cast<int>(found - places_.begin());
    places_.push_back(place);
    return static_cast<int>(places_.size()) - 1;
}

int Nodal::own_terminal(const std::string& label, const NetPlace& otherwise) {
    return node(label.empty() ? otherwise : NetPlace::motor(label));
}

void Nodal::add_places() {
    using Kind = NetPlace::Kind;
    supply_ = node({Kind::supply_24v});
    line_ = node({Kind::line_1});
    // Of several line conductors each is a return of the first: volts between the others prove nothing of a tap.
    for (const Kind kind :
         {Kind::common_24v, Kind::line_2, Kind::line_3, Kind::load_2, Kind::load_3, Kind::neutral})
        commons_.emplace_back(kind, node({kind}));
    for (int s = 0; s < static_cast<int>(plan_->signals.size()); ++s)
        signals_.push_back(node(NetPlace::signal(s)));
    for (int r = 0; r < static_cast<int>(plan_->relays.size()); ++r) {
        RelayNodes relay{node(NetPlace::coil_feed(r)), node(NetPlace::coil_return(r)), {}};
        for (int pole = 1; pole <= plan_->relays[static_cast<std::size_t>(r)].contacts; ++pole)
            relay.poles.push_back({node(NetPlace::common(r, pole)), node(NetPlace::open(r, pole)),
                                   node(NetPlace::closed(r, pole))});
        relays_.push_back(relay);
    }
    for (const Wire& each : plan_->wires) wires_.emplace_back(node(each.from), node(each.to));
    for (const TapRow& tap : plan_->taps) node(NetPlace::tap(tap.tap));
    for (std::size_t i = 0; i < places_.size(); ++i) {
        if (places_[i].kind == Kind::tap) taps_[places_[i].number] = static_cast<int>(i);
    }
}

void Nodal::add_loads() {
    using Kind = NetPlace::Kind;
    const auto leads = [this](Kind kind) {
        return std::any_of(plan_->wires.begin(), plan_->wires.end(),
                           [kind](const Wire& each) { return each.from.kind == kind; });
    };
    const NetPlace line_back{leads(Kind::load_2)   ? Kind::load_2
                             : leads(Kind::line_2) ? Kind::line_2
                                                   : Kind::neutral};
    const int motor_return = own_terminal(loads_->line_return, line_back);
    tap_return_ = plan_->line_taps ? motor_return : own_terminal(loads_->common, {Kind::common_24v});
    const double input = conductance_of(loads_->tap, rated(plan_->line_taps));
    for (const auto& [number, tap] : taps_) joins_.push_back({tap, tap_return_, input});
    if (!loads_->line_feed.empty())
        joins_.push_back({node(NetPlace::motor(loads_->line_feed)), motor_return,
                          conductance_of(loads_->motor, loads_->line)});
    transformer_return_ = static_cast<int>(places_.size());
    line_return_ = transformer_return_ + 1;
    const double call = conductance_of(loads_->call, rated(plan_->line_signals));
    for (const int signal : signals_)
        joins_.push_back({signal, plan_->line_signals ? line_return_ : transformer_return_, call});
}

/// Places with few neighbours first; the two returns, which most things lead to, last.
std::vector<int> Nodal::by_neighbours() const {
    const int count = static_cast<int>(places_.size()) + 2;
    std::vector<int> neighbours(static_cast<std::size_t>(count), 0), order(static_cast<std::size_t>(count));
    const auto meet = [&](int a, int b) {
        ++neighbours[static_cast<std::size_t>(a)];
        ++neighbours[static_cast<std::size_t>(b)];
    };
    for (const auto& [a, b] : wires_) meet(a, b);
    for (const Join& each : joins_) meet(each.a, each.b);
    for (const RelayNodes& relay : relays_) {
        meet(relay.feed, relay.back);
        for (const RelayNodes::Pole& pole : relay.poles) {
            meet(pole.common, pole.open);
            meet(pole.common, pole.closed);
        }
    }
    std::iota(order.begin(), order.end(), 0);
    std::stable_sort(order.begin(), order.end() - 2, [&](int a, int b) {
        return neighbours[static_cast<std::size_t>(a)] < neighbours[static_cast<std::size_t>(b)];
    });
    return order;
}

void Nodal::close_contacts(Drawn drawn, const SingleFault& fault) {
    for (std::size_t r = 0; r < relays_.size(); ++r) {
        const bool here = fault.relay == static_cast<int>(r);
        const Relay& relay = plan_->relays[r];
        if (!here || !fault.is(FaultKind::coil_open))
            network_.join(relays_[r].feed, relays_[r].back,
                          conductance_of(loads_->coil, rated(relay.line_coil)) * relay.bodies);
        for (std::size_t p = 0; p < relays_[r].poles.size(); ++p) {
            const RelayNodes::Pole& pole = relays_[r].poles[p];
            const bool stuck = here && fault.pole == static_cast<int>(p) + 1;
            bool up = (drawn >> r & 1U) != 0;
            if (stuck && fault.is(FaultKind::welded_open_side)) up = true;
            if (stuck && fault.is(FaultKind::welded_closed_side)) up = false;
            network_.join(pole.common, up ? pole.open : pole.closed, contact);
        }
    }
}

void Nodal::feed_calls(SignalSet live) {
    const int from = plan_->line_signals ? line_ : supply_;
    for (std::size_t s = 0; s < signals_.size(); ++s)
        network_.join(signals_[s], from, (live >> s & 1U) != 0 ? contact : leakage);
}

void Nodal::connect(SignalSet live, Drawn drawn, const SingleFault& fault) {
    const bool named = fault.is(FaultKind::wire_off) || fault.is(FaultKind::lost_common);
    for (std::size_t w = 0; w < wires_.size(); ++w) {
        if (!named || fault.wire != static_cast<int>(w))
            network_.join(wires_[w].first, wires_[w].second, wire);
    }
    close_contacts(drawn, fault);
    for (const Join& each : joins_) network_.join(each.a, each.b, each.conductance);
    feed_calls(live);
    network_.source(supply_, transformer_return_, loads_->control.in(volt), source);
    network_.source(line_, line_return_, loads_->line.in(volt), source);
    const bool panel = fault.is(FaultKind::lost_common) && fault.wire < 0;
    for (const auto& [kind, place] : commons_) {
        const bool low = kind == NetPlace::Kind::common_24v;
        if (!panel || fault.place != kind)
            network_.join(place, low ? transformer_return_ : line_return_, wire);
    }
    for (std::size_t i = 0; i < places_.size(); ++i) network_.to_ground(static_cast<int>(i), insulation);
    network_.to_ground(transformer_return_, leakage);
    network_.to_ground(line_return_, wire);
}

NodalVolts Nodal::hold(SignalSet live, Drawn drawn, const SingleFault& fault) {
    network_.clear();
    connect(live, drawn, fault);
    const std::vector<double>& volts = network_.solve();
    const auto across = [&](int a, int b) {
        return std::abs(volts[static_cast<std::size_t>(a)] - volts[static_cast<std::size_t>(b)]);
    };
    NodalVolts found;
    for (std::size_t r = 0; r < relays_.size(); ++r) {
        const bool open = fault.is(FaultKind::coil_open) && fault.relay == static_cast<int>(r);
        found.coils.push_back(open ? 0.0 : across(relays_[r].feed, relays_[r].back));
    }
    for (const auto& [number, tap] : taps_) found.taps[number] = across(tap, tap_return_);
    const int back = plan_->line_signals ? line_return_ : transformer_return_;
    for (const int signal : signals_) found.calls.push_back(across(signal, back));
    return found;
}

std::vector<Drawn> Nodal::starts() const {
    const std::size_t count = relays_.size();
    const Drawn all = (Drawn{1} << count) - 1;
    std::vector<Drawn> list;
    if (count <= 6) {
        for (Drawn drawn = 0; drawn <= all; ++drawn) list.push_back(drawn);
        return list;
    }
    list = {0, all};
    for (std::size_t r = 0; r < count; ++r) {
        list.push_back(Drawn{1} << r);
        list.push_back(all ^ Drawn{1} << r);
    }
    return list;
}

}  // namespace endbell::inline wiring
