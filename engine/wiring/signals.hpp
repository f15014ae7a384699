// What can be live at the motor's terminals: which signals there are, and what each stands for.
#pragma once
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "engine/airflow/air_plan.hpp"
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

/// The signals' names, bit order.
std::vector<std::string> names_of(const std::vector<ControlSignal>& signals);

/// The letter's role, in the usual spellings (Y is Y1, W is W1, DEHUM is dehumidify). None: not a terminal
/// that can reach a blower (R, C, O, B, L, H). Terminal letters: the thermostat convention.
std::optional<Role> role_of(std::string_view letter);
/// A letter of the thermostat convention, whether or not it can reach a blower.
bool is_thermostat_letter(std::string_view label);

/// The signals of a thermostat: the terminals the job names, or those its kind of system has (then `assumed` says so).
/// `air` says whether two cooling or heating stages are in play where the job does not. `letters_only`: the job's
/// other terminals are a board's, not the thermostat's.
std::vector<ControlSignal> thermostat_signals(const FailedUnit& job, const Heat& heat, const AirPlan& air,
                                              bool letters_only, std::vector<std::string>& assumed);

/// The outputs of a board, each with the call it stands for.
std::vector<ControlSignal> board_signals(const ControlReadings& controls);

}  // namespace endbell::inline wiring
