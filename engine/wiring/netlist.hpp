// A circuit written out as relays and wires.
#pragma once
#include <string>
#include <vector>

#include "engine/wiring/synthesis.hpp"

namespace endbell {

/// What the circuit's two ends are called on this job.
struct NetlistNames {
    std::vector<std::string> signals;
    std::string supply;       // "R" or "L1"
    std::string coil_return;  // "C", "N" or "L2"
};

/// Adds the circuit's relays and control wires to `plan`; relays take the order of their signals. A pole more
/// than `poles_a_relay` needs another relay body with its coil beside the first.
void write_netlist(const Circuit& circuit, const NetlistNames& names, int poles_a_relay, WiringPlan& plan);

}  // namespace endbell
