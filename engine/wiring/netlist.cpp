#include "engine/wiring/netlist.hpp"

#include <fmt/format.h>

namespace endbell {

namespace {

/// Hands out poles of the relays and collects the wires between them.
class Writer {
  public:
    Writer(const Circuit& circuit, const NetlistNames& names, WiringPlan& plan)
        : circuit_(circuit), names_(names), plan_(plan) {
        for (std::size_t i = 0; i < circuit.coils.size(); ++i) {
            Relay relay;
            relay.name = fmt::format("K{}", i + 1);
            relay.coil_signal = circuit.coils[i];
            plan_.relays.push_back(relay);
        }
    }

    void write() {
        for (const Relay& relay : plan_.relays) {
            wire(names_.signals[static_cast<std::size_t>(relay.coil_signal)], relay.name + ".A1");
            wire(relay.name + ".A2", names_.coil_return);
        }
        for (const auto& [source, tree] : circuit_.tap_trees) {
            const std::string from = source < 0 ? gathered(*circuit_.source_tree, 0) : name_of(source);
            spread(from, tree, 0);
        }
    }

  private:
    void wire(const std::string& from, const std::string& to) { plan_.wires.push_back({from, to}); }

    std::string name_of(int source) const {
        const auto s = static_cast<std::size_t>(source);
        return s < names_.signals.size() ? names_.signals[s] : names_.supply;
    }

    /// The next free pole of a coil's relay: "K2.{}3", to be filled with COM, NO or NC.
    struct Pole {
        std::string relay;
        int number;
        std::string end(const char* which) const { return fmt::format("{}.{}{}", relay, which, number); }
    };
    Pole next_pole(int coil) {
        Relay& relay = plan_.relays[static_cast<std::size_t>(coil)];
        return {relay.name, ++relay.contacts};
    }

    /// Sources come together: each throw of a contact is fed, its common is the conductor. Returns its place.
    std::string gathered(const ContactTree& tree, int at) {
        const ContactTree::Node& node = tree.nodes[static_cast<std::size_t>(at)];
        if (node.coil < 0) return name_of(node.leaf);
        const Pole pole = next_pole(node.coil);
        wire(gathered(tree, node.drawn), pole.end("NO"));
        wire(gathered(tree, node.rest), pole.end("NC"));
        return pole.end("COM");
    }

    /// Taps part: the common of a contact is fed, each throw leads on.
    void spread(const std::string& from, const ContactTree& tree, int at) {
        const ContactTree::Node& node = tree.nodes[static_cast<std::size_t>(at)];
        if (node.coil < 0) {
            if (node.leaf != 0) wire(from, fmt::format("tap {}", node.leaf));
            return;
        }
        const Pole pole = next_pole(node.coil);
        wire(from, pole.end("COM"));
        spread(pole.end("NO"), tree, node.drawn);
        spread(pole.end("NC"), tree, node.rest);
    }

    const Circuit& circuit_;
    const NetlistNames& names_;
    WiringPlan& plan_;
};

}  // namespace

void write_netlist(const Circuit& circuit, const NetlistNames& names, int poles_a_relay, WiringPlan& plan) {
    Writer(circuit, names, plan).write();
    for (Relay& relay : plan.relays) {
        relay.line_coil = plan.line_signals;
        relay.line_contacts = plan.line_taps;
        relay.bodies = (relay.contacts + poles_a_relay - 1) / poles_a_relay;
    }
}

}  // namespace endbell
