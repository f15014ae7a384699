#include <algorithm>

#include "engine/base/text.hpp"
#include "engine/fields/key_row.hpp"

namespace endbell::inline fields {

namespace {

struct LabelAndWord {
    std::string label, word;
};

/// "G = circulate; Y1 = cool": what stands on both sides of each sign; none where a side is missing.
std::optional<std::vector<LabelAndWord>> pairs_of(std::string_view text) {
    std::vector<LabelAndWord> pairs;
    for (const std::string& part : split(text, ';')) {
        if (trimmed(part).empty()) continue;
        const std::vector<std::string> sides = split(part, '=');
        if (sides.size() != 2 || trimmed(sides[0]).empty()) return std::nullopt;
        pairs.push_back({std::string(trimmed(sides[0])), sides[1]});
    }
    return pairs;
}

/// A label and the call it stands for. One whose call is unknown stays in the list: it reaches the motor, and nobody may
/// take it for another.
Read<std::vector<Terminal>> read_terminals(const Folded& words) {
    using List = std::vector<Terminal>;
    if (is_missing(words)) return not_written<List>();
    const auto pairs = pairs_of(words.raw());
    if (!pairs)
        return unreadable<List>(words, "labels with their calls, such as {G = \"circulate\", Y1 = \"cool\"}");
    List list;
    for (const auto& [label, word] : *pairs) {
        const Read<Call> call = read_kind<Call>(fold(word));
        if (call.failed()) return unreadable<List>(words, "for " + label + " one of " + call.expected);
        list.push_back({label, call.reading.value});
    }
    return read_as<List>(words, list);
}

/// "cool = high; heat = medium low": a call and the lead that ran in it, each call once.
Read<std::vector<LeadInUse>> read_leads(const Folded& words) {
    using List = std::vector<LeadInUse>;
    if (is_missing(words)) return not_written<List>();
    const auto pairs = pairs_of(words.raw());
    if (!pairs)
        return unreadable<List>(words,
                                "calls with their leads, such as {cool = \"high\", heat = \"medium low\"}");
    List list;
    for (const auto& [label, word] : *pairs) {
        const Read<Call> call = read_kind<Call>(fold(label));
        if (call.failed()) return unreadable<List>(words, "before each sign one of " + call.expected);
        if (!call.reading) return unreadable<List>(words, "a call, such as cool or heat, before each sign");
        const Read<SpeedLead> lead = read_kind<SpeedLead>(fold(word));
        if (lead.failed()) return unreadable<List>(words, "for " + label + " one of " + lead.expected);
        const bool twice = std::any_of(list.begin(), list.end(),
                                       [&](const LeadInUse& l) { return l.call == *call.reading; });
        if (twice) return unreadable<List>(words, "each call once; " + label + " stands twice");
        if (lead.reading) list.push_back({*call.reading, *lead.reading});
    }
    return read_as<List>(words, list);
}

/// "Y1 + G: cool" under its name. The call "off" keeps the motor still.
std::optional<CustomState> read_state(std::string_view name, std::string_view text) {
    const std::size_t colon = text.rfind(':');
    if (colon == std::string_view::npos) return std::nullopt;
    CustomState state{std::string(trimmed(name)), {}, std::nullopt};
    for (const std::string& label : split(text.substr(0, colon), '+')) {
        if (trimmed(label).empty()) return std::nullopt;
        state.live.emplace_back(trimmed(label));
    }
    const std::string_view asked = trimmed(text.substr(colon + 1));
    if (lower(asked) == "off") return state;
    const Read<Call> call = read_kind<Call>(fold(asked));
    if (call.failed() || !call.reading) return std::nullopt;
    state.call = *call.reading;
    return state;
}

/// "boost = Y1 + G: cool; idle = DH: off": every state that occurs, under a name.
Read<std::vector<CustomState>> read_states(const Folded& words) {
    using List = std::vector<CustomState>;
    if (is_missing(words)) return not_written<List>();
    List list;
    for (const std::string& part : split(words.raw(), ';')) {
        if (trimmed(part).empty()) continue;
        const std::size_t equals = part.find('=');
        const std::string name(trimmed(std::string_view(part).substr(0, equals)));
        const auto state = equals == std::string::npos || name.empty()
                               ? std::nullopt
                               : read_state(name, std::string_view(part).substr(equals + 1));
        if (!state) {
            return unreadable<List>(words,
                                    "for the state " + (name.empty() ? "without a name" : name) +
                                        " the live terminals and the call, or off, such as \"Y1 + G: cool\"");
        }
        list.push_back(*state);
    }
    return read_as<List>(words, list);
}

}  // namespace

JobKeys controls_keys() {
    const GroupOf<ControlReadings> controls{"controls", Origin::job, &FailedUnit::controls};
    using F = ControlReadings;
    return {
        row(controls, &F::source,
            {"source", "what gives the blower its calls today", "", "thermostat",
             "What gives the blower its calls: thermostat wires, a board with 24 V outputs, or a board with "
             "line-voltage outputs?"},
            read_kind<ControlSource>, {240, 60, 0.70, any_word<ControlSource>}),
        row(controls, &F::heat,
            {"heat", "kind of heat", "", "gas furnace",
             "What heats: gas, oil, electric elements, a heat pump, or both pump and furnace?"},
            read_kind<HeatKind>, {250, 5, 1.00, any_word<HeatKind>}),
        row(controls, &F::reversing_valve,
            {"reversing_valve", "O: live in cooling, B: live in heating", "", "O",
             "Is the reversing valve live in cooling (O) or in heating (B)?"},
            read_kind<ReversingValve>),
        row(controls, &F::dehumidify,
            {"dehumidify", "what a live dehumidify terminal means", "", "not used",
             "Is a dehumidify terminal wired, and does live mean normal or dehumidify?"},
            read_kind<DehumidifyLogic>),
        row(controls, &F::fan_with_heat,
            {"fan_with_heat", "the thermostat sends G with W", "", "no",
             "Does the thermostat send G together with W?"},
            read_yes_no),
        row(controls, &F::fan_command,
            {"fan_command", "what switches the outdoor fan", "", "contactor",
             "What switches the outdoor fan: the compressor's contactor alone, a fan relay, or an output of "
             "the "
             "(defrost) board?"},
            read_kind<FanCommand>),
        row(controls, &F::fan_interlock,
            {"fan_interlock", "sequencer or element relay runs the blower while an element is hot", "", "yes",
             "Does the sequencer or the element relay keep the blower running while an element is hot?"},
            read_yes_no),
        row(controls, &F::zone_panel,
            {"zone_panel", "a zone panel closes parts of the duct by dampers", "", "no",
             "Does a zone panel close parts of the duct by dampers?"},
            read_yes_no),
        row(controls, &F::least_zone,
            {"least_zone", "airflow that the least open zone and its by-pass take at the static limit", "CFM",
             "700 CFM",
             "How much air do the least open zone and its by-pass take at equipment.static_limit?"},
            read_airflow),
        row(controls, &F::terminals,
            {"terminals", "terminals that give a call, and the call", "",
             "G = circulate; Y1 = cool; W1 = heat",
             "Which thermostat or board terminals reach the motor, and for which call is each?"},
            read_terminals),
        row(controls, &F::leads,
            {"leads", "speed lead of the old motor that ran in each call", "",
             "cool = high; heat = medium low",
             "Which speed lead of the old motor was on the cooling output, and which on the heating output?"},
            read_leads),
        row(controls, &F::states,
            {"states", "what is live together, and the call, where the usual states do not hold", "",
             "boost = Y1 + G: cool; idle = DH: off"},
            read_states),
        row(controls, &F::transformer,
            {"transformer", "rating of the control transformer", "VA", "40 VA",
             "How many VA is the control transformer?"},
            read_apparent_power),
        row(controls, &F::transformer_load,
            {"transformer_load", "what hangs on it already", "VA", "21.6",
             "How many VA are already on the control transformer?"},
            read_apparent_power),
        row(controls, &F::fuse,
            {"fuse", "rating of the 24 V circuit's fuse, printed beside it", "A", "5",
             "Which amps are printed beside the board's fuse: 3 or 5?"},
            read_current),
        row(controls, &F::coil,
            {"coil", "volts on the coil of the contactor or relay that switches the motor", "V", "24",
             "Which volts are printed on the coil of the contactor or relay?"},
            read_voltage),
        row(controls, &F::output,
            {"output_volts", "what the board's blower outputs carry, live to its return", "V", "120",
             "Volts from a live blower output of the board to its return?"},
            read_voltage, {265, 120, 0.60, nominals}),
        row(controls, &F::common_present,
            {"common_present", "a C wire reaches the motor", "", "yes",
             "Does a 24 V common (C) reach the motor?"},
            read_yes_no, {260, 60, 0.70, yes_or_no}),
        row(controls, &F::run_signal_available,
            {"run_signal_available", "the board has a line-voltage blower output", "", "yes",
             "Does the board give a line-voltage blower output?"},
            read_yes_no, {270, 120, 0.40, yes_or_no}),
        row(controls, &F::cool_hours, {"cool_hours", "cooling hours a year", "h", "800"}, read_number),
        row(controls, &F::heat_hours, {"heat_hours", "heating hours a year", "h", "900"}, read_number),
        row(controls, &F::circulate_hours, {"circulate_hours", "fan-only hours a year", "h", "400"},
            read_number),
    };
}

}  // namespace endbell::inline fields
