// How this job can feed this part: which signals, at which voltage, from which supply; or why it cannot.
#pragma once
#include "engine/facts/rating.hpp"
#include "engine/wiring/netlist.hpp"
#include "engine/wiring/states.hpp"

namespace endbell::inline wiring {

struct Setup {
    std::optional<WiringRefusal> refusal;
    std::vector<WiringRescue> rescues;
    std::vector<std::string> lacking;  // job keys or part columns
    Controls controls;
    Sources sources;
    CircuitEnds ends;
    TapRule rule = TapRule::not_stated;
    Conductors conductors = Conductors::line_and_neutral;  // that feed the motor
    bool line_signals = false;
    bool line_taps = false;
    bool gated = false;        // the board's line-voltage run signal decides when; the taps only how fast
    bool board_first = false;  // wire straight from the board's outputs; relays are the alternative
};

/// The signals' names, bit order.
std::vector<std::string> names_of(const std::vector<ControlSignal>& signals);

/// `use_run_signal`: where part and job have a run signal, take it; else turn board outputs into 24 V by
/// relays.
Setup set_up(const FailedUnit& job, const Facts& facts, const Part& part, const AirPlan& air,
             bool use_run_signal);
bool has_run_signal(const FailedUnit& job, const Part& part);

/// The part's terminal of that function, or null.
const PartTerminal* terminal(const Part& part, std::string_view function);

}  // namespace endbell::inline wiring
