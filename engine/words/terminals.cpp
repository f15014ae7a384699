#include "engine/words/terminals.hpp"

#include <algorithm>
#include <map>

#include "engine/words/fold.hpp"

namespace endbell::inline words {

namespace {

using Uses = std::map<std::string, TerminalUse, std::less<>>;

// Keys as spelling_key gives them.
const Uses& uses() {
    using enum TerminalUse;
    static const Uses table{
        {"y", cooling_call},      {"y1", cooling_call},       {"y2", cooling_call},
        {"yy2", cooling_call},    {"yl", cooling_call},       {"yh", cooling_call},
        {"w", heat_call},         {"w1", heat_call},          {"w2", heat_call},
        {"w3", heat_call},        {"aux", heat_call},         {"auxw", heat_call},
        {"r", supply_24v},        {"rc", supply_24v},         {"rh", supply_24v},
        {"24vhot", supply_24v},   {"24v", supply_24v},        {"e", emergency_heat},
        {"emht", emergency_heat}, {"emheat", emergency_heat}, {"o", reversing_valve_cooling},
        {"dh", dehumidify},       {"dehum", dehumidify},      {"bk", dehumidify},
        {"hum", humidify},        {"eac", air_cleaner},       {"m1", parked},
        {"m2", parked},           {"park", parked},           {"unused", parked},
        {"spare", parked},        {"dummy", parked}};
    return table;
}

struct OpenTerminal {
    std::vector<std::string> keys;
    std::string question;
    std::vector<std::string> readings;
};

const std::vector<OpenTerminal>& open_terminals() {
    static const std::vector<OpenTerminal> table{
        {{"g"}, "on the thermostat strip, or on the power strip?", {"fan call", "ground"}},
        {{"fan"}, "a thermostat's fan call, or a board's fan output?", {"fan call", "board output"}},
        {{"c", "com", "common", "x"},
         "24 V common, or the common lead of a line motor?",
         {"24 V common", "motor common"}},
        {{"b"}, "24 V common, or a reversing valve?", {"24 V common", "reversing valve in heating"}},
        {{"ob"},
         "set to which: live in cooling, or live in heating?",
         {"reversing valve in cooling", "reversing valve in heating"}},
        {{"cool", "heat", "hiheat", "loheat", "circ", "cont", "low", "med", "high", "hicool", "locool"},
         "a board's speed terminal: line voltage or 24 V? Measure it to common with the call present",
         {"line voltage", "24 V"}},
        {{"green", "yellow", "white", "red", "blue", "black", "brown", "orange", "purple", "pink", "gray",
          "grey"},
         "a wire colour is not a function: which terminal does it land on?",
         {}}};
    return table;
}

}  // namespace

Read<TerminalUse> read_terminal(const Folded& words) {
    if (is_missing(words)) return not_written<TerminalUse>();
    const std::string key = spelling_key(words);
    const auto use = uses().find(key);
    if (use != uses().end()) return read_as<TerminalUse>(words, use->second);
    for (const OpenTerminal& open : open_terminals()) {
        if (std::find(open.keys.begin(), open.keys.end(), key) != open.keys.end()) {
            return ask<TerminalUse>(words, open.question, open.readings);
        }
    }
    return unreadable<TerminalUse>(words, "a terminal's label, such as 'Y1', 'W2' or 'R'");
}

}  // namespace endbell::inline words
