// What a netlist does, by relay logic alone: wires and closed contacts join places; a coil with a live end
// and a returned end draws in. Knows the plan's wires and signals; nothing of how they were found.
#pragma once
#include <string>
#include <vector>

#include "engine/wiring/wiring.hpp"

namespace endbell {

/// One broken thing. `relay`, `pole` (from 1) and `wire` are read where the kind asks for them.
struct SingleFault {
    bool present = false;
    FaultKind kind = FaultKind::coil_open;
    int relay = 0;
    int pole = 0;
    int wire = 0;
};

struct Outcome {
    std::vector<int> live_taps;  // ascending
    bool back_feed = false;      // two sources joined: thermostat wires, or a wire and the supply
    bool short_circuit = false;  // a source joined to a return, to earth, or one line conductor to another
    bool mixed_voltage = false;  // line voltage on a 24 V place, or 24 V on a line place
    bool settled = true;         // the relays came to rest
    friend bool operator==(const Outcome&, const Outcome&) = default;
};

/// The netlist with its places numbered once; then every state is cheap.
class Simulator {
  public:
    explicit Simulator(const WiringPlan& plan);
    Outcome run(SignalSet live, const SingleFault& fault = {}) const;

  private:
    enum class Kind { plain, tap, low_supply, line_supply, low_return, line_return, signal, earth };
    struct Place {
        Kind kind = Kind::plain;
        int number = 0;  // of a tap or signal
        bool line = false;
    };
    struct RelayEnds {
        int coil_a = -1, coil_b = -1;
        struct Pole {
            int common = -1, open = -1, closed = -1;
        };
        std::vector<Pole> poles;
    };
    struct Joints;

    int place(const std::string& name);
    Place describe(const std::string& name) const;
    Joints join(const std::vector<bool>& drawn, const SingleFault& fault) const;
    bool has_voltage(const RelayEnds& relay, const Joints& joints, SignalSet live) const;
    Outcome judge(const Joints& joints, SignalSet live) const;
    bool is_live(const Place& place, SignalSet live) const;

    const WiringPlan* plan_;
    std::vector<std::string> names_;
    std::vector<Place> places_;
    std::vector<std::pair<int, int>> wires_;
    std::vector<RelayEnds> relays_;
};

}  // namespace endbell
