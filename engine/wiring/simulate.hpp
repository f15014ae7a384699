// What a netlist does, by relay logic alone: wires and closed contacts join places; a coil with a live end
// and a returned end draws in. Knows the plan's wires and signals; nothing of how they were found.
#pragma once
#include <vector>

#include "engine/wiring/single_fault.hpp"

namespace endbell::inline wiring {

struct NetState {
    std::vector<int> live_taps;  // ascending
    bool back_feed = false;      // two sources joined: thermostat wires, or a wire and the supply
    bool short_circuit = false;  // a source joined to a return, to earth, or one line conductor to another
    bool mixed_voltage = false;  // line voltage on a 24 V place, or 24 V on a line place
    bool line_side = false;      // a lead of the motor hangs before the contactor or starter that switches it
    bool settled = true;         // the relays came to rest
    friend bool operator==(const NetState&, const NetState&) = default;
};

/// The netlist with its places numbered once; then every state is cheap: a plan is run some hundred times, with
/// every fault in every state, and each run works in the room of the last.
class Simulator {
  public:
    explicit Simulator(const WiringPlan& plan);
    NetState run(SignalSet live, const SingleFault& fault = {});

  private:
    enum class Kind { plain, tap, low_supply, line_supply, low_return, line_return, signal, earth };
    struct Node {
        Kind kind = Kind::plain;
        int number = 0;  // of a tap or signal
        bool line = false;
        unsigned leg = 0;         // which line conductor, as a bit; the neutral is one
        bool unswitched = false;  // before the contactor or starter
        bool on_motor = false;
    };
    struct RelayEnds {
        int coil_a = -1, coil_b = -1;
        struct Pole {
            int common = -1, open = -1, closed = -1;
        };
        std::vector<Pole> poles;
    };
    /// Places that are joined, and what they bring together.
    struct Conductor {
        int sources = 0;  // the supply counts; so does every signal, live or idle
        bool live = false, returned = false, earthed = false, line = false, low = false;
        bool unswitched = false, on_motor = false;
        unsigned legs = 0;
    };
    const Conductor& at(int node) const {
        return conductors_[static_cast<std::size_t>(joint_[static_cast<std::size_t>(node)])];
    }

    int node(const NetPlace& place);
    Node describe(const NetPlace& place) const;
    int root(int node) const;
    void connect(int a, int b);
    void join(const SingleFault& fault);
    void charge(SignalSet live);
    bool pull(const SingleFault& fault);
    NetState judge() const;

    const WiringPlan* plan_;
    std::vector<NetPlace> places_;
    std::vector<Node> nodes_;  // of each place
    std::vector<std::pair<int, int>> wires_;
    std::vector<RelayEnds> relays_;

    // Of the present run.
    std::vector<char> drawn_;  // of each relay
    std::vector<int>
        joint_;  // of each place: another place of its conductor, in the end the same for all of it
    std::vector<Conductor> conductors_;  // by the place that stands for them
};

}  // namespace endbell::inline wiring
