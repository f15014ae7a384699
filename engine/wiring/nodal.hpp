// The fourth witness: what a plan's wires carry, by volts. Every place is a node; sources, coils, taps, windings and what the
// equipment hangs on its calls are resistances, V²/VA at their rated volts. It knows the plan's wires and what the catalog and
// the limits say of the loads; no table, no circuit and no relay logic: a coil is drawn in by the volts across it.
//
// It sees what relay logic cannot: coils in series behind a lost common, a relay that is half drawn in, a call that is fed
// backwards through a coil or a tap.
#pragma once
#include <map>
#include <string>
#include <vector>

#include "engine/facts/control_power.hpp"
#include "engine/wiring/network.hpp"
#include "engine/wiring/single_fault.hpp"

namespace endbell::inline wiring {

/// What hangs on the places of a plan, and what counts as drawn in, fed and live.
struct ElectricalLoads {
    Voltage control = control_volts;
    Voltage line = volt(120);
    ApparentPower coil;   // of one relay, at its own volts
    ApparentPower call;   // what the equipment hangs on a call
    Current tap;          // a tap at its own volts: an input, or the winding behind a lead
    Current motor;        // of a motor whose line is always there; none: fed by its leads
    double pull_in = 1;   // shares of rated volts: a relay is drawn in for sure,
    double drop_out = 0;  // and at rest for sure below
    double tap_runs = 1;  // a tap runs for sure
    std::string
        common;  // labels of the part's terminals; empty: it has none, and its place is the panel's own
    std::string line_feed;
    std::string line_return;
};
ElectricalLoads loads_of(const WiringPlan& plan, const Facts& facts, const Part& part, const Limits& limits);

/// Relays that are drawn in, as bits.
using Drawn = unsigned;

/// Volts across what a plan works, its relays held as they are.
struct NodalVolts {
    std::vector<double> coils;   // of each relay
    std::map<int, double> taps;  // against the part's own return
    std::vector<double> calls;   // of each signal's load
};

/// What a set of signals comes to, whatever way the relays go.
struct NodalState {
    std::vector<std::vector<int>>
        outcomes;                // taps that run, one list a rest of the relays; sorted, each once
    std::vector<Drawn> rests;    // where the relays come to rest
    SignalSet fed = 0;           // idle calls whose load sees more than it must drop out at
    Drawn undecided = 0;         // relays with too little to draw in and too much to let go
    bool half_live_tap = false;  // the same of a tap
    bool chatters = false;       // some way of the relays has no rest
};

class Nodal {
  public:
    /// Both must outlive it.
    Nodal(const WiringPlan& plan, const ElectricalLoads& loads);

    NodalVolts hold(SignalSet live, Drawn drawn, const SingleFault& fault = {});
    /// From each start the relays move as their coils tell them; one between its limits goes both ways.
    NodalState run(SignalSet live, const std::vector<Drawn>& starts, const SingleFault& fault = {});
    /// Every start up to 64; of more, none drawn in, all, each alone and all but each.
    std::vector<Drawn> starts() const;

  private:
    struct Join {
        int a = 0, b = 0;
        double conductance = 0;
    };
    struct RelayNodes {
        int feed = 0, back = 0;
        struct Pole {
            int common = 0, open = 0, closed = 0;
        };
        std::vector<Pole> poles;
    };
    struct Walk;

    int node(const NetPlace& place);
    int own_terminal(const std::string& label, const NetPlace& otherwise);
    void add_places();
    void add_loads();
    std::vector<int> by_neighbours() const;
    void connect(SignalSet live, Drawn drawn, const SingleFault& fault);
    void close_contacts(Drawn drawn, const SingleFault& fault);
    void feed_calls(SignalSet live);
    void follow(Walk& walk, Drawn drawn);
    Voltage rated(bool line) const { return line ? loads_->line : loads_->control; }

    const WiringPlan* plan_;
    const ElectricalLoads* loads_;
    std::vector<NetPlace> places_;  // of each node but the last two, which are the returns
    int supply_ = 0, line_ = 0;     // R and L1
    std::vector<std::pair<NetPlace::Kind, int>>
        commons_;                                   // of the panel: C, N, and line conductors but the first
    int transformer_return_ = 0, line_return_ = 0;  // what they are landed on
    std::vector<std::pair<int, int>> wires_;
    std::vector<RelayNodes> relays_;
    std::vector<int> signals_;
    std::map<int, int> taps_;  // number to node
    int tap_return_ = 0;
    std::vector<Join> joins_;  // loads that nothing switches
    Network network_;
};

/// The truth rows with which the witness does not agree: in each, and from each start of the relays, the taps that run are
/// the simulator's, no idle call is fed, and no relay or tap is left between its limits.
std::vector<SignalSet> disagreements(const WiringPlan& plan, const ElectricalLoads& loads);

}  // namespace endbell::inline wiring
