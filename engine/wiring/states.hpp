// Which signals a set of controls can send together, and which call each set stands for.
#pragma once
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
    bool cooling = false;     // the thermostat cools: it may ask for drier air, too
};

/// A call for which something gets hot: a burner's or the elements'.
bool calls_for_heat(Call call);

struct Controls {
    std::vector<ControlSignal> signals;
    std::vector<Demand> demands;
    SignalSet must_run = 0;            // electric elements
    bool exclusive = false;            // a board lets one output live at a time
    std::vector<std::string> lacking;  // job keys
    std::vector<std::string> assumed;
};

/// The states of whatever sends the signals; the job's own where it lists them. Energised sets of a thermostat:
/// heat-pump rows from a published thermostat matrix; the rest common practice. A board's outputs: each alone, and none.
Controls controls_of(const FailedUnit& job, const Facts& facts, const AirPlan& air, const MotorFeed& feed);

}  // namespace endbell::inline wiring
