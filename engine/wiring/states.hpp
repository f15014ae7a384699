// Which signals a set of controls can send together, and which call each set stands for.
#pragma once
#include <optional>
#include <string>
#include <vector>

#include "engine/wiring/feed.hpp"
#include "engine/wiring/signals.hpp"

namespace endbell::inline wiring {

/// A reachable state before a tap is chosen for it.
struct Demand {
    std::string name;
    SignalSet live = 0;
    std::vector<Call> calls;  // empty: motor off. Two: the one with more air decides
    StateMaker maker = StateMaker::thermostat;
    bool cooling = false;  // the thermostat cools: it may ask for drier air, too
    bool overlap = false;  // several outputs of a board live together
};

struct Controls {
    std::vector<ControlSignal> signals;
    std::vector<IdleTerminal> idle;
    std::vector<std::string> not_known;  // terminals whose call nobody has told
    std::vector<Demand> demands;
    std::vector<std::optional<Interlock>> interlocks;  // of each of the 2^n sets that no demand stands for
    HeatSignals heats;
    bool exclusive = false;            // a board may let one output live at a time
    std::vector<std::string> lacking;  // job keys
    std::vector<std::string> assumed;
};

/// The states of whatever sends the signals; the job's own where it lists them. Energised sets of a thermostat:
/// heat-pump rows from a published thermostat matrix; the rest common practice. A board's outputs: each alone, none, and,
/// since nothing shows that they exclude each other, any together.
Controls controls_of(const FailedUnit& job, const Facts& facts, const AirPlan& air, const MotorFeed& feed);

}  // namespace endbell::inline wiring
