// Labels of control terminals. A label alone says little: the same letter is ground on a power strip and the
// fan call on a thermostat strip, so those are questions. Colours are never functions.
#pragma once
#include <string_view>

#include "engine/model/word.hpp"
#include "engine/words/read.hpp"

namespace endbell::inline words {

/// What a control terminal is for.
enum class TerminalUse {
    cooling_call,
    heat_call,
    supply_24v,
    emergency_heat,
    reversing_valve_cooling,
    dehumidify,
    humidify,
    air_cleaner,
    parked  // a dead terminal that holds unused leads: never power
};
constexpr auto words_of(TerminalUse) {
    return std::array{Word<TerminalUse>{TerminalUse::cooling_call, "cooling call"},
                      Word<TerminalUse>{TerminalUse::heat_call, "heat call"},
                      Word<TerminalUse>{TerminalUse::supply_24v, "24 V supply"},
                      Word<TerminalUse>{TerminalUse::emergency_heat, "emergency heat"},
                      Word<TerminalUse>{TerminalUse::reversing_valve_cooling, "reversing valve in cooling"},
                      Word<TerminalUse>{TerminalUse::dehumidify, "dehumidify"},
                      Word<TerminalUse>{TerminalUse::humidify, "humidify"},
                      Word<TerminalUse>{TerminalUse::air_cleaner, "air cleaner"},
                      Word<TerminalUse>{TerminalUse::parked, "parked"}};
}

/// "Y1", "W2", "R", "M1". "G", "C", "B", "COOL" and every colour are questions.
Read<TerminalUse> read_terminal(const Folded& words);

}  // namespace endbell::inline words
