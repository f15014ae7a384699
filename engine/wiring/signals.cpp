#include "engine/wiring/signals.hpp"

#include <algorithm>

#include "engine/base/text.hpp"

namespace endbell::inline wiring {

namespace {

/// The role of a label that is no letter, by the call that the job tells. A higher stage is one beside a lower.
Role role_of_call(Call call, const std::vector<Terminal>& all) {
    const auto told = [&](Call other) {
        return std::any_of(all.begin(), all.end(), [&](const Terminal& t) { return t.call == other; });
    };
    switch (call) {
        case Call::circulate:
            return Role::fan;
        case Call::cool_low:
            return Role::compressor1;
        case Call::cool_high:
            return told(Call::cool_low) ? Role::compressor2 : Role::compressor1;
        case Call::heat_high:
            return told(Call::heat_low) ? Role::heat2 : Role::heat1;
        case Call::heat_low:
        case Call::electric_heat:
            return Role::heat1;
        case Call::dehumidify:
            return Role::dehumidify;
    }
    return Role::fan;
}

bool heats(const std::optional<Call>& call) {
    return call == Call::heat_low || call == Call::heat_high || call == Call::electric_heat;
}

/// What a terminal is: a signal of that role, or idle, or neither, since nobody has told its call.
struct SignalOrIdle {
    std::optional<Role> role = std::nullopt;
    std::optional<IdleReason> idle = std::nullopt;
};

SignalOrIdle use_of(const Terminal& terminal, const std::vector<Terminal>& all) {
    if (const auto role = role_of(std::string_view(terminal.name))) return {role};
    const auto idle = idle_reason_of(terminal.name);
    // On some thermostats X is the auxiliary heat: told so, it may not be lost.
    if (idle == IdleReason::common_or_lamp && heats(terminal.call)) return {Role::heat2};
    if (idle) return {std::nullopt, idle};
    if (terminal.call) return {role_of_call(*terminal.call, all)};
    return {};
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
            if (!known) list.push_back({label, state.call});
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
    if (!heat.none() && !compressor_heat && heating_two)
        signals.push_back({"W2", Role::heat2, Call::heat_high});
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

SignalList thermostat_signals(const FailedUnit& job, const Heat& heat, const AirPlan& air,
                              bool letters_only) {
    SignalList list;
    const ControlReadings& controls = job.controls;
    const std::vector<Terminal> named = named_terminals(controls);
    const bool dry_unused = controls.dehumidify && *controls.dehumidify == DehumidifyLogic::not_used;
    for (const Terminal& t : named) {
        if (letters_only && !is_thermostat_letter(t.name)) {
            list.idle.push_back({t.name, IdleReason::output_on_the_run_signal});
            continue;
        }
        SignalOrIdle use = use_of(t, named);
        // A state of the job's own may hang on the reversing valve's letter too.
        if (!use.role && is_stated(controls, t.name)) use = {Role::output};
        if (use.role == Role::dehumidify && dry_unused && !controls.states)
            use = {std::nullopt, IdleReason::dehumidify_not_used};
        if (use.idle) list.idle.push_back({t.name, *use.idle});
        if (!use.role && !use.idle) list.not_known.push_back(t.name);
        if (use.role && list.signals.size() <= most_signals) {
            list.signals.push_back(
                {signal_name(t.name, list.signals), *use.role, t.call.value_or(Call::circulate), t.name});
        }
    }
    if (!list.signals.empty() || !list.not_known.empty()) return list;
    list.assumed.emplace_back("controls.terminals");
    list.signals = usual_signals(job, heat, air);
    return list;
}

SignalList board_signals(const ControlReadings& controls, bool burner) {
    SignalList list;
    for (const Terminal& t : named_terminals(controls)) {
        if (burner && role_of(std::string_view(t.name))) {
            list.idle.push_back({t.name, IdleReason::call_of_the_thermostat});
        } else if (!t.call) {
            list.not_known.push_back(t.name);
        } else if (list.signals.size() <= most_signals) {
            list.signals.push_back({signal_name(t.name, list.signals), Role::output, *t.call, t.name});
        }
    }
    return list;
}

}  // namespace endbell::inline wiring
