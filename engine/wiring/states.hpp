// Which signals a set of controls can send together, and which call each set stands for.
#pragma once
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "engine/wiring/wiring.hpp"

namespace endbell::inline wiring {

/// What a terminal means, whatever it is labelled.
enum class Role { fan, compressor1, compressor2, heat1, heat2, emergency, dehumidify, output };

/// More signals than this at one motor are refused: 2^n states are all simulated. One more is kept, to see
/// it.
inline constexpr std::size_t most_signals = 8;

struct ControlSignal {
    std::string name;  // as the job labels it; never one of the netlist's own places
    Role role = Role::output;
    Call call = Call::circulate;  // of an output
    std::string label{};          // the job's own terminal; empty: assumed
};

/// A reachable state before a tap is chosen for it.
struct Demand {
    std::string name;
    SignalSet live = 0;
    std::vector<Call> calls;  // empty: motor off. Two: the one with more air decides
    bool cooling = false;     // the thermostat cools: it may ask for drier air, too
};

struct Controls {
    std::vector<ControlSignal> signals;
    std::vector<Demand> demands;
    SignalSet must_run = 0;            // electric elements
    bool exclusive = false;            // a board lets one output live at a time
    std::vector<std::string> lacking;  // job keys
    std::vector<std::string> assumed;
};

/// The letter's role, in the usual spellings (Y is Y1, W is W1, DEHUM is dehumidify). None: not a terminal
/// that can reach a blower (R, C, O, B, L, H). Terminal letters: the thermostat convention.
std::optional<Role> role_of(std::string_view letter);
/// A letter of the thermostat convention, whether or not it can reach a blower.
bool is_thermostat_letter(std::string_view label);

/// The thermostat's states; the job's own where it lists them. Energised sets: heat-pump rows from a
/// published thermostat matrix; the rest common practice. `air` says whether two cooling or heating stages
/// are in play where the job does not. `letters_only`: the job's other terminals are a board's, not the
/// thermostat's.
Controls thermostat_controls(const FailedUnit& job, const Facts& facts, const AirPlan& air,
                             bool letters_only);

/// A board's outputs: each alone, and none; the job's own states where it lists them.
Controls board_controls(const FailedUnit& job);

}  // namespace endbell::inline wiring
