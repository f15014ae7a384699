// How a person on the job spells what runs the blower, what heats, which call it is and what goes wrong.
#pragma once
#include "engine/model/kinds.hpp"
#include "engine/words/spelling_list.hpp"

namespace endbell::inline words {

template <>
inline SpellingList<ControlSource> spellings<ControlSource>() {
    using enum ControlSource;
    return {{"stat", thermostat},
            {"t-stat", thermostat},
            {"board 24V", board_24v},
            {"24V board", board_24v},
            {"24 V control board", board_24v},
            {"line board", board_line},
            {"board line", board_line},
            {"line voltage board", board_line},
            {"115 V board", board_line},
            {"230 V board", board_line},
            {"serial", pulse_or_serial},
            {"pulse", pulse_or_serial},
            {"PWM", pulse_or_serial},
            {"communicating", pulse_or_serial}};
}
template <>
inline const std::vector<OpenSpelling>& open_spellings<ControlSource>() {
    static const std::vector<OpenSpelling> list{
        {"board",
         "are the board's blower outputs line voltage or 24 V? Measure to common",
         {"24 V board", "line-voltage board"}},
        {"furnace board",
         "are the board's blower outputs line voltage or 24 V? Measure to common",
         {"24 V board", "line-voltage board"}},
        {"IFC",
         "are the board's blower outputs line voltage or 24 V? Measure to common",
         {"24 V board", "line-voltage board"}}};
    return list;
}

template <>
inline SpellingList<HeatKind> spellings<HeatKind>() {
    using enum HeatKind;
    return {{"gas", gas},
            {"furnace gas", gas},
            {"natural gas", gas},
            {"propane", gas},
            {"oil", oil},
            {"electric", electric},
            {"strip", electric},
            {"strip heat", electric},
            {"electric strip", electric},
            {"HP", heat_pump},
            {"heatpump", heat_pump},
            {"hybrid", dual_fuel},
            {"no heat", none},
            {"cooling only", none}};
}
template <>
inline const std::vector<OpenSpelling>& open_spellings<HeatKind>() {
    static const std::vector<OpenSpelling> list{
        {"furnace", "a furnace of which fuel?", {"gas furnace", "oil furnace", "electric heat"}}};
    return list;
}

template <>
inline SpellingList<RiseHeat> spellings<RiseHeat>() {
    using enum RiseHeat;
    return {{"gas", burner},
            {"oil", burner},
            {"furnace", burner},
            {"heat pump", compressor},
            {"elements alone", elements},
            {"electric heat", elements},
            {"strips", elements},
            {"emergency heat", elements},
            {"both", compressor_and_elements}};
}

template <>
inline SpellingList<ReversingValve> spellings<ReversingValve>() {
    using enum ReversingValve;
    return {{"in cooling", in_cooling},
            {"cooling", in_cooling},
            {"in heating", in_heating},
            {"heating", in_heating}};
}
template <>
inline const std::vector<OpenSpelling>& open_spellings<ReversingValve>() {
    static const std::vector<OpenSpelling> list{
        {"O/B", "set to which: live in cooling (O), or live in heating (B)?", {"O", "B"}}};
    return list;
}

template <>
inline SpellingList<DehumidifyLogic> spellings<DehumidifyLogic>() {
    using enum DehumidifyLogic;
    return {{"none", not_used},
            {"no", not_used},
            {"unused", not_used},
            {"live normal", live_is_normal},
            {"live dehumidify", live_is_dehumidify}};
}
template <>
inline const std::vector<OpenSpelling>& open_spellings<DehumidifyLogic>() {
    static const std::string which =
        "is the dehumidify terminal live normally, or live when it wants less air? Both are sold";
    static const std::vector<std::string> both{"live is normal", "live is dehumidify"};
    static const std::vector<OpenSpelling> list{
        {"DH", which, both}, {"DEHUM", which, both}, {"BK", which, both}, {"yes", which, both}};
    return list;
}

template <>
inline SpellingList<SpeedLead> spellings<SpeedLead>() {
    using enum SpeedLead;
    return {{"LO", low},         {"L", low},      {"med low", medium_low}, {"med lo", medium_low},
            {"ML", medium_low},  {"med", medium}, {"M", medium},           {"med high", medium_high},
            {"MH", medium_high}, {"HI", high},    {"med hi", medium_high}, {"H", high}};
}

template <>
inline SpellingList<FanCommand> spellings<FanCommand>() {
    using enum FanCommand;
    return {{"compressor contactor", contactor}, {"relay", fan_relay}, {"defrost board", board}};
}

template <>
inline SpellingList<Call> spellings<Call>() {
    using enum Call;
    return {{"circ", circulate},           {"fan", circulate},
            {"continuous fan", circulate}, {"fan only", circulate},
            {"constant fan", circulate},   {"cool high", cool_high},
            {"cooling", cool_high},        {"high cool", cool_high},
            {"cool 2", cool_high},         {"low cool", cool_low},
            {"cool 1", cool_low},          {"heat high", heat_high},
            {"heating", heat_high},        {"high heat", heat_high},
            {"hi heat", heat_high},        {"heat 2", heat_high},
            {"low heat", heat_low},        {"lo heat", heat_low},
            {"heat 1", heat_low},          {"strip heat", electric_heat},
            {"aux heat", electric_heat},   {"electric", electric_heat},
            {"dehum", dehumidify},         {"DH", dehumidify}};
}

template <>
inline SpellingList<Symptom> spellings<Symptom>() {
    using enum Symptom;
    return {{"dead", no_run},
            {"does not run", no_run},
            {"won't run", no_run},
            {"not running", no_run},
            {"no start", no_run},
            {"humming", hums},
            {"hum", hums},
            {"rocks then runs", rocks_then_starts},
            {"rocks", rocks_never_starts},
            {"slow", runs_slow},
            {"runs on", runs_on_after_call},
            {"won't stop", runs_on_after_call},
            {"trips", trips_hot},
            {"overheats", trips_hot},
            {"trips on overload", trips_hot},
            {"noise", noisy},
            {"squeals", noisy},
            {"backwards", runs_backwards},
            {"wrong way", runs_backwards},
            {"low air", weak_air},
            {"low airflow", weak_air},
            {"weak airflow", weak_air},
            {"too fast", wrong_speed},
            {"water", wet},
            {"got wet", wet}};
}

template <>
inline SpellingList<ControlVoltsKind> spellings<ControlVoltsKind>() {
    using enum ControlVoltsKind;
    return {{"vac", ac}, {"vdc", dc}, {"pulse", pulsing}, {"pulses", pulsing}, {"pwm", pulsing}};
}

template <>
inline SpellingList<BeltState> spellings<BeltState>() {
    using enum BeltState;
    return {{"ok", sound},       {"good", sound},   {"tight", sound},  {"loose", slack},
            {"slips", slack},    {"cracked", worn}, {"glazed", worn},  {"frayed", worn},
            {"snapped", broken}, {"off", broken},   {"thrown", broken}};
}
template <>
inline SpellingList<Cleanness> spellings<Cleanness>() {
    using enum Cleanness;
    return {{"new", clean}, {"loaded", dirty}, {"plugged", dirty}, {"filthy", dirty}, {"caked", dirty}};
}

template <>
inline SpellingList<Sign> spellings<Sign>() {
    using enum Sign;
    return {{"burned", burnt},    {"smells burnt", burnt}, {"bulged", swollen},
            {"swelled", swollen}, {"water", wet},          {"damp", wet}};
}

template <>
inline SpellingList<ChangedPart> spellings<ChangedPart>() {
    using enum ChangedPart;
    return {{"cap", ChangedPart::capacitor},
            {"stat", thermostat},
            {"control board", board},
            {"blower wheel", wheel}};
}

}  // namespace endbell::inline words
