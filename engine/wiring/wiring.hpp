// From thermostat or board terminals to the part's taps, proven over every signal state.
#pragma once
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "engine/airflow/air_plan.hpp"
#include "engine/kit/kit.hpp"

namespace endbell {

/// A set of signals as bits; signal i is WiringPlan::signals[i].
using SignalSet = unsigned;

/// One reachable state of the controls and the tap that should be live in it. 0: motor off.
struct ControlState {
    std::string name;  // "cool 1", "defrost", "fan on"
    SignalSet live = 0;
    int wanted_tap = 0;
};

/// An isolation relay: coil from one signal to C; its contacts stand in the netlist.
struct Relay {
    std::string name;  // "K1"
    int coil_signal = 0;
    int contacts = 0;  // poles used
};

/// One conductor from a place to a place: "Y1", "K1.NO", "tap 4", "L1".
struct Wire {
    std::string from;
    std::string to;
    std::string note_id;  // "", "second line conductor", "earth": a stable word for explain/
};

/// What one state of the signals does: every live tap, and the tap the motor obeys.
struct TruthRow {
    SignalSet live = 0;
    std::vector<int> live_taps;
    std::optional<int> effective_tap;  // absent: two live and the tap rule does not say
    int wanted_tap = 0;
    bool reachable = false;
    std::string state;  // name where reachable
    bool holds = false;
};

struct WiringPlan {
    bool possible = false;
    std::string_view refusal;            // "serial control", "line voltage on a 24 V tap": a stable word
    std::vector<std::string> lacking;    // job keys or part columns
    std::vector<std::string> signals;    // names, bit order
    std::vector<ControlState> states;
    std::vector<Relay> relays;
    std::vector<Wire> wires;             // control wires, then line wires
    std::vector<TruthRow> truth;         // all 2^n
    bool proven = false;                 // the simulator agreed with the intended table on every row
    std::vector<std::string_view> cautions;  // stable words; explain/ has the sentences
};

/// `air` names the wanted tap of each call.
WiringPlan plan_wiring(const FailedUnit& job, const Part& part, const AirPlan& air, const Limits& limits);

/// The plan's netlist, evaluated by relay logic alone: which taps are live when `live` signals are.
/// Shares no code with the synthesis.
std::vector<int> live_taps(const WiringPlan& plan, SignalSet live);

}  // namespace endbell
