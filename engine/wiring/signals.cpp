#include "engine/wiring/signals.hpp"

#include <algorithm>

#include "engine/base/text.hpp"

namespace endbell::inline wiring {

namespace {

struct Letter {
    std::string_view text;
    Role role;
};
constexpr Letter letters[] = {
    {"g", Role::fan},
    {"y", Role::compressor1},
    {"y1", Role::compressor1},
    {"y2", Role::compressor2},
    {"w", Role::heat1},
    {"w1", Role::heat1},
    {"aux", Role::heat1},
    {"w2", Role::heat2},
    {"w3", Role::heat2},
    {"e", Role::emergency},
    {"d", Role::dehumidify},
    {"dh", Role::dehumidify},
    {"dehum", Role::dehumidify},
    {"dhum", Role::dehumidify},
    {"bk", Role::dehumidify},
};

/// Letters of the thermostat convention that no blower follows.
constexpr std::string_view not_for_a_blower[] = {"r", "rh", "rc", "c", "o", "b", "x", "l", "h", "hum"};

Role role_of_call(Call call) {
    switch (call) {
        case Call::circulate:
            return Role::fan;
        case Call::cool_low:
        case Call::cool_high:
            return Role::compressor1;
        case Call::heat_low:
        case Call::heat_high:
        case Call::electric_heat:
            return Role::heat1;
        case Call::dehumidify:
            return Role::dehumidify;
    }
    return Role::fan;
}

/// A terminal's role by its letter; one with a label of its own goes by the call the job gives it.
std::optional<Role> role_of_terminal(const Terminal& terminal) {
    if (const auto role = role_of(std::string_view(terminal.name))) return role;
    const std::string key = lower(trimmed(terminal.name));
    for (const std::string_view other : not_for_a_blower) {
        if (other == key) return std::nullopt;
    }
    return role_of_call(terminal.call);
}

/// A label nobody else in the netlist has: the job may give one twice, or one of the netlist's own.
std::string signal_name(const std::string& label, const std::vector<ControlSignal>& taken) {
    const std::string name = reads_like_a_place(label) ? "board " + label : label;
    const auto used = std::count_if(taken.begin(), taken.end(), [&](const ControlSignal& s) {
        return s.name == name || s.name.rfind(name + " (", 0) == 0;
    });
    return used == 0 ? name : name + " (" + std::to_string(used + 1) + ")";
}

bool plans(const AirPlan& air, Call call) {
    return std::any_of(air.calls.begin(), air.calls.end(), [&](const CallAir& c) { return c.call == call; });
}

/// The terminals the job names; else those its own states name.
std::vector<Terminal> named_terminals(const ControlReadings& controls) {
    if (controls.terminals && !controls.terminals->empty()) return *controls.terminals;
    std::vector<Terminal> list;
    if (!controls.states) return list;
    for (const CustomState& state : *controls.states) {
        for (const std::string& label : state.live) {
            const bool known =
                std::any_of(list.begin(), list.end(), [&](const Terminal& t) { return t.name == label; });
            if (!known) list.push_back({label, state.call.value_or(Call::circulate)});
        }
    }
    return list;
}

/// Does one of the job's own states need this terminal?
bool is_stated(const ControlReadings& controls, const std::string& label) {
    return controls.states &&
           std::any_of(controls.states->begin(), controls.states->end(), [&](const CustomState& s) {
               return std::find(s.live.begin(), s.live.end(), label) != s.live.end();
           });
}

/// Those that a kind of system has, where nobody has named them.
std::vector<ControlSignal> usual_signals(const FailedUnit& job, const Heat& heat, const AirPlan& air) {
    std::vector<ControlSignal> signals;
    const ControlReadings& controls = job.controls;
    const bool compressor_heat = heat.compressor.is(true);
    const bool cooling_two =
        job.equipment.cooling_stages ? *job.equipment.cooling_stages > 1 : plans(air, Call::cool_low);
    const bool heating_two =
        job.equipment.heating_stages ? *job.equipment.heating_stages > 1 : plans(air, Call::heat_low);
    const bool cools =
        plans(air, Call::cool_high) || plans(air, Call::cool_low) || job.equipment.cooling || compressor_heat;
    signals.push_back({"G", Role::fan, Call::circulate});
    if (cools) signals.push_back({"Y1", Role::compressor1, Call::cool_high});
    if (cools && cooling_two) signals.push_back({"Y2", Role::compressor2, Call::cool_high});
    if (!heat.none()) signals.push_back({"W1", Role::heat1, Call::heat_high});
    if (!heat.none() && !compressor_heat && heating_two) {
        signals.push_back({"W2", Role::heat2, Call::heat_high});
    }
    if (controls.dehumidify && *controls.dehumidify != DehumidifyLogic::not_used) {
        signals.push_back({"DH", Role::dehumidify, Call::dehumidify});
    }
    return signals;
}

}  // namespace

std::vector<std::string> names_of(const std::vector<ControlSignal>& signals) {
    std::vector<std::string> names;
    names.reserve(signals.size());
    for (const ControlSignal& s : signals) names.push_back(s.name);
    return names;
}

std::optional<Role> role_of(std::string_view letter) {
    const std::string key = lower(trimmed(letter));
    for (const Letter& l : letters) {
        if (l.text == key) return l.role;
    }
    return std::nullopt;
}

bool is_thermostat_letter(std::string_view label) {
    const std::string key = lower(trimmed(label));
    const auto other = std::find(std::begin(not_for_a_blower), std::end(not_for_a_blower), key);
    return role_of(label).has_value() || other != std::end(not_for_a_blower);
}

std::vector<ControlSignal> thermostat_signals(const FailedUnit& job, const Heat& heat, const AirPlan& air,
                                              bool letters_only, std::vector<std::string>& assumed) {
    std::vector<ControlSignal> signals;
    const ControlReadings& controls = job.controls;
    for (const Terminal& t : named_terminals(controls)) {
        auto role = letters_only ? role_of(std::string_view(t.name)) : role_of_terminal(t);
        // A state of the job's own may hang on the reversing valve's letter too.
        const bool own = is_stated(controls, t.name) && (!letters_only || is_thermostat_letter(t.name));
        if (!role && own) role = Role::output;
        if (role && signals.size() <= most_signals)
            signals.push_back({signal_name(t.name, signals), *role, t.call, t.name});
    }
    if (!signals.empty()) return signals;
    assumed.push_back("controls.terminals");
    return usual_signals(job, heat, air);
}

std::vector<ControlSignal> board_signals(const ControlReadings& controls) {
    std::vector<ControlSignal> signals;
    for (const Terminal& t : named_terminals(controls)) {
        if (signals.size() <= most_signals)
            signals.push_back({signal_name(t.name, signals), Role::output, t.call, t.name});
    }
    return signals;
}

}  // namespace endbell::inline wiring
