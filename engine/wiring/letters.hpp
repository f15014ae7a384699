// What a terminal's label says of it, by the thermostat convention.
#pragma once
#include <optional>
#include <string_view>

#include "engine/wiring/kinds.hpp"

namespace endbell::inline wiring {

/// What a terminal means, whatever it is labelled. Heat comes in up to three stages; beside a heat pump they are the
/// auxiliary ones.
enum class Role { fan, compressor1, compressor2, heat1, heat2, heat3, emergency, dehumidify, output };

/// The letter's role, in the usual spellings (Y is Y1, W is W1, AUX is W2, EM is E). None: not a terminal that can reach
/// a blower (R, C, O, B, L, H), or no letter at all. Terminal letters: the thermostat convention.
std::optional<Role> role_of(std::string_view letter);

/// Why a letter of the convention commands no blower; none where it does, or is no letter.
std::optional<IdleReason> idle_reason_of(std::string_view letter);

/// A letter of the thermostat convention, whether or not it can reach a blower.
bool is_thermostat_letter(std::string_view label);

}  // namespace endbell::inline wiring
