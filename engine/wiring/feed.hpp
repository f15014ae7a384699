// How this job can feed this part: at which voltage, from which conductors, obeying what. Known before any state is.
#pragma once
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "engine/facts/facts.hpp"
#include "engine/model/part.hpp"
#include "engine/wiring/net_place.hpp"
#include "engine/wiring/no_wiring.hpp"

namespace endbell::inline wiring {

/// What sends the signals.
enum class Sender { thermostat, board, contactor };  // the last: one switch with one output

/// What may lead to a tap. With neither there is no circuit.
struct Sources {
    bool supply = true;   // R or L1 is at hand
    bool signals = true;  // a signal may itself feed a tap
};

/// The two ends of every circuit on this job.
struct CircuitEnds {
    NetPlace supply;       // R or L1
    NetPlace coil_return;  // C, N or L2
};

struct MotorFeed {
    std::optional<NoWiring> refused;
    Sender sender = Sender::thermostat;
    Sources sources;
    CircuitEnds ends;
    TapRule rule = TapRule::not_stated;
    Conductors conductors = Conductors::line_and_neutral;  // that feed the motor
    std::optional<LoadSwitch> load_switch;                 // the motor hangs on its load side
    std::string switch_output;                             // the one signal of Sender::contactor
    bool outdoors = false;  // an outdoor fan: its speeds are its leads, and no call of the indoor blower
    std::vector<std::string> assumed;  // job keys
    bool line_signals = false;
    bool line_taps = false;
    bool gated = false;        // the board's line-voltage run signal decides when; the taps only how fast
    bool board_first = false;  // wire straight from the board's outputs; relays are the alternative
};

/// `use_run_signal`: where part and job have a run signal, take it; else turn board outputs into 24 V by
/// relays.
MotorFeed feed_of(const FailedUnit& job, const Facts& facts, const Part& part, bool use_run_signal);
/// The line conductors alone, of a motor or module that no plan of taps feeds.
MotorFeed line_feed(const Facts& facts, const Part& part);
bool has_run_signal(const FailedUnit& job, const Part& part);

/// Of a motor or module.
const std::vector<PartTerminal>& terminals_of(const Part& part);
/// The part's terminal of that function, or null.
const PartTerminal* terminal(const Part& part, std::string_view function);

}  // namespace endbell::inline wiring
