// A circuit written out as relays and wires.
#pragma once
#include "engine/wiring/circuit.hpp"
#include "engine/wiring/feed.hpp"

namespace endbell::inline wiring {

/// Adds the circuit's relays and control wires to `plan`, which knows its signals; relays take the order of their
/// signals. A pole more than `poles_a_relay` needs another relay body with its coil beside the first.
void write_netlist(const Circuit& circuit, const CircuitEnds& ends, int poles_a_relay, WiringPlan& plan);

}  // namespace endbell::inline wiring
