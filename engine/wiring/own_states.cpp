#include "engine/wiring/own_states.hpp"

#include <algorithm>

namespace endbell::inline wiring {

namespace {

bool holds(const std::vector<std::string>& labels, const std::string& label) {
    return std::find(labels.begin(), labels.end(), label) != labels.end();
}

}  // namespace

std::vector<Terminal> named_terminals(const ControlFacts& controls) {
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

bool is_stated(const ControlFacts& controls, const std::string& label) {
    return controls.states && std::any_of(controls.states->begin(), controls.states->end(),
                                          [&](const CustomState& s) { return holds(s.live, label); });
}

std::vector<Demand> own_demands(const ControlFacts& controls, const std::vector<ControlSignal>& signals) {
    std::vector<Demand> demands{{"off", 0, {}}};
    for (const CustomState& state : *controls.states) {
        Demand demand{state.name, 0, {}};
        if (state.call) demand.calls.push_back(*state.call);
        for (std::size_t i = 0; i < signals.size(); ++i) {
            if (holds(state.live, signals[i].label)) demand.live |= 1u << i;
        }
        demands.push_back(std::move(demand));
    }
    return demands;
}

}  // namespace endbell::inline wiring
