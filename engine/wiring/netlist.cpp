#include "engine/wiring/netlist.hpp"

#include <fmt/format.h>

namespace endbell::inline wiring {

namespace {

/// Hands out poles of the relays and collects the wires between them.
class Writer {
  public:
    Writer(const Circuit& circuit, const CircuitEnds& ends, WiringPlan& plan)
        : circuit_(circuit), ends_(ends), plan_(plan) {
        for (std::size_t i = 0; i < circuit.coils.size(); ++i) {
            Relay relay;
            relay.name = fmt::format("K{}", i + 1);
            relay.coil_signal = circuit.coils[i];
            plan_.relays.push_back(relay);
        }
    }

    void write() {
        for (int r = 0; r < static_cast<int>(plan_.relays.size()); ++r) {
            wire(NetPlace::signal(circuit_.coils[static_cast<std::size_t>(r)]), NetPlace::coil_feed(r));
            wire(NetPlace::coil_return(r), ends_.coil_return);
        }
        for (const auto& [source, tree] : circuit_.tap_trees) {
            spread(source < 0 ? gathered(*circuit_.source_tree, 0) : place_of(source), tree, 0);
        }
        for (const auto& [tap, tree] : circuit_.own_conductors) wire(gathered(tree, 0), NetPlace::tap(tap));
    }

  private:
    void wire(const NetPlace& from, const NetPlace& to) { plan_.wires.push_back({from, to}); }

    NetPlace place_of(int source) const {
        return source < static_cast<int>(plan_.signals.size()) ? NetPlace::signal(source) : ends_.supply;
    }

    /// The next free pole of a coil's relay.
    int next_pole(int coil) { return ++plan_.relays[static_cast<std::size_t>(coil)].contacts; }

    /// A leaf past the supply is no source.
    bool leads_somewhere(const ContactTree& tree, int at) const {
        const ContactTree::Node& node = tree.nodes[static_cast<std::size_t>(at)];
        return node.coil >= 0 || node.leaf <= static_cast<int>(plan_.signals.size());
    }

    /// Sources come together: each throw of a contact is fed, its common is the conductor. Returns its place.
    NetPlace gathered(const ContactTree& tree, int at) {
        const ContactTree::Node& node = tree.nodes[static_cast<std::size_t>(at)];
        if (node.coil < 0) return place_of(node.leaf);
        const int pole = next_pole(node.coil);
        if (leads_somewhere(tree, node.drawn))
            wire(gathered(tree, node.drawn), NetPlace::open(node.coil, pole));
        if (leads_somewhere(tree, node.rest))
            wire(gathered(tree, node.rest), NetPlace::closed(node.coil, pole));
        return NetPlace::common(node.coil, pole);
    }

    /// Taps part: the common of a contact is fed, each throw leads on.
    void spread(const NetPlace& from, const ContactTree& tree, int at) {
        const ContactTree::Node& node = tree.nodes[static_cast<std::size_t>(at)];
        if (node.coil < 0) {
            if (node.leaf != 0) wire(from, NetPlace::tap(node.leaf));
            return;
        }
        const int pole = next_pole(node.coil);
        wire(from, NetPlace::common(node.coil, pole));
        spread(NetPlace::open(node.coil, pole), tree, node.drawn);
        spread(NetPlace::closed(node.coil, pole), tree, node.rest);
    }

    const Circuit& circuit_;
    const CircuitEnds& ends_;
    WiringPlan& plan_;
};

}  // namespace

void write_netlist(const Circuit& circuit, const CircuitEnds& ends, int poles_a_relay, WiringPlan& plan) {
    Writer(circuit, ends, plan).write();
    for (Relay& relay : plan.relays) {
        relay.line_coil = plan.line_signals;
        relay.line_contacts = plan.line_taps;
        relay.bodies = (relay.contacts + poles_a_relay - 1) / poles_a_relay;
    }
}

}  // namespace endbell::inline wiring
