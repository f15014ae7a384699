// What can be live at the motor's terminals: which signals there are, and what each stands for.
#pragma once
#include <optional>
#include <string>
#include <vector>

#include "engine/airflow/air_plan.hpp"
#include "engine/wiring/letters.hpp"
#include "engine/wiring/wiring.hpp"

namespace endbell::inline wiring {

/// More signals than this at one motor are refused: 2^n states are all simulated. One more is kept, to see
/// it.
inline constexpr std::size_t most_signals = 8;

struct ControlSignal {
    std::string name;  // as the job labels it; never one of the netlist's own places
    Role role = Role::output;
    Call call = Call::circulate;  // of an output
    std::string label{};          // the job's own terminal; empty: assumed
};

/// What the job's list of terminals comes to.
struct SignalList {
    std::vector<ControlSignal> signals;
    std::vector<IdleTerminal> idle;      // they command nothing, and say why
    std::vector<std::string> not_known;  // no letter, and no call told: nobody may take them for another
    std::vector<std::string> assumed;    // job keys
};

/// The signals' names, bit order.
std::vector<std::string> names_of(const std::vector<ControlSignal>& signals);

/// The signals of a thermostat: the terminals the job names, or those its kind of system has (then `assumed` says so).
/// `air` says whether two cooling or heating stages are in play where the job does not. `letters_only`: the job's
/// other terminals are a board's, not the thermostat's.
SignalList thermostat_signals(const FailedUnit& job, const Heat& heat, const AirPlan& air, bool letters_only);

/// The outputs of a board, each with the call it stands for. `burner`: a thermostat's letter is no output of a furnace
/// board, which answers that call by outputs of its own.
SignalList board_signals(const ControlReadings& controls, bool burner);

}  // namespace endbell::inline wiring
