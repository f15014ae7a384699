#include "engine/wiring/states.hpp"

#include <algorithm>

#include "engine/base/text.hpp"
#include "engine/wiring/own_states.hpp"

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

/// A heat call may mean elements: they are in, or nobody has said that beside a heat pump there are none.
bool may_run_elements(const Heat& heat) {
    return heat.elements.is(true) || heat.kind == HeatKind::electric || heat.kind == HeatKind::heat_pump;
}

bool plans(const AirPlan& air, Call call) {
    return std::any_of(air.calls.begin(), air.calls.end(), [&](const CallAir& c) { return c.call == call; });
}

/// The terminals the job names, or those its kind of system has.
std::vector<ControlSignal> thermostat_signals(const FailedUnit& job, const Heat& heat, const AirPlan& air,
                                              bool letters_only, Controls& into) {
    std::vector<ControlSignal> signals;
    const ControlFacts& controls = job.controls;
    for (const Terminal& t : named_terminals(controls)) {
        auto role = letters_only ? role_of(std::string_view(t.name)) : role_of_terminal(t);
        // A state of the job's own may hang on the reversing valve's letter too.
        const bool own = is_stated(controls, t.name) && (!letters_only || is_thermostat_letter(t.name));
        if (!role && own) role = Role::output;
        if (role && signals.size() <= most_signals)
            signals.push_back({signal_name(t.name, signals), *role, t.call, t.name});
    }
    if (!signals.empty()) return signals;
    into.assumed.push_back("controls.terminals");
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

/// Collects the states of one thermostat.
class Thermostat {
  public:
    Thermostat(const std::vector<ControlSignal>& signals, const ControlFacts& facts, const Heat& heat)
        : signals_(signals), facts_(facts), heat_(heat) {}

    std::vector<Demand> demands() {
        add("off", 0, {});
        if (has(Role::fan)) add("fan on", bit(Role::fan), {Call::circulate});
        const HeatKind heat = *heat_.kind;
        cooling();
        if (heat_.compressor.is(true)) {
            compressor_heat(heat);
        } else if (heat != HeatKind::none && has(Role::heat1)) {
            plain_heat(heat);
        }
        return dehumidified();
    }

  private:
    bool has(Role role) const { return bit(role) != 0; }
    SignalSet bit(Role role) const {
        SignalSet found = 0;
        for (std::size_t i = 0; i < signals_.size(); ++i) {
            if (signals_[i].role == role) found |= 1u << i;
        }
        return found;
    }
    Call first_cooling() const { return has(Role::compressor2) ? Call::cool_low : Call::cool_high; }

    void add(std::string name, SignalSet live, std::vector<Call> calls) {
        demands_.push_back({std::move(name), live, std::move(calls)});
    }

    void cooling() {
        if (!has(Role::compressor1)) return;
        const SignalSet one = bit(Role::compressor1) | bit(Role::fan);
        add("cool 1", one, {first_cooling()});
        if (has(Role::compressor2)) add("cool 2", one | bit(Role::compressor2), {Call::cool_high});
        for (Demand& d : demands_) d.cooling = (d.live & bit(Role::compressor1)) != 0;
    }

    // A furnace thermostat leaves G out of a heat call; an electric-heat one sends it. Where the job does not
    // say, both can happen.
    void plain_heat(HeatKind heat) {
        const bool electric = heat == HeatKind::electric;
        const Call low = electric ? Call::electric_heat : has(Role::heat2) ? Call::heat_low : Call::heat_high;
        const Call high = electric ? Call::electric_heat : Call::heat_high;
        const bool fan_sent = facts_.fan_with_heat && *facts_.fan_with_heat;
        heat_stages("", low, high, fan_sent ? bit(Role::fan) : 0u);
        if (!fan_sent && has(Role::fan)) heat_stages(", fan on", low, high, bit(Role::fan));
    }
    void heat_stages(const std::string& tail, Call low, Call high, SignalSet fan) {
        add("heat 1" + tail, bit(Role::heat1) | fan, {low});
        if (has(Role::heat2)) add("heat 2" + tail, bit(Role::heat1) | bit(Role::heat2) | fan, {high});
    }

    // The reversing valve (O or B) is all that tells compressor heat from cooling, and it drives no tap: both
    // run at the cooling tap. In defrost the outdoor board feeds the W line while the thermostat still sends
    // Y and G.
    void compressor_heat(HeatKind heat) {
        const SignalSet one = bit(Role::compressor1) | bit(Role::fan);
        const SignalSet two = one | bit(Role::compressor2);
        add("heat 1", one, {first_cooling()});
        if (has(Role::compressor2)) add("heat 2", two, {Call::cool_high});
        if (heat == HeatKind::heat_pump) {
            auxiliary_heat(one, two);
        } else {
            fuel_heat(one, two);
        }
    }
    void auxiliary_heat(SignalSet one, SignalSet two) {
        const SignalSet strips = bit(Role::heat1);
        const Call air = Call::electric_heat;
        if (strips) {
            for (const char* name : {"heat and auxiliary", "defrost"})
                add(name, one | strips, {first_cooling(), air});
            if (two != one) {
                for (const char* name : {"heat 2 and auxiliary", "defrost 2"})
                    add(name, two | strips, {Call::cool_high, air});
            }
            if (has(Role::heat2)) {
                add("all heat", two | strips | bit(Role::heat2), {Call::cool_high, air});
            }
            add(has(Role::emergency) ? "auxiliary alone" : "emergency", strips | bit(Role::fan), {air});
        }
        if (has(Role::emergency)) {
            add("emergency", bit(Role::emergency) | bit(Role::fan), {air});
        }
    }
    // Dual fuel: the furnace burns with the compressor off and no G, but defrost brings both together.
    void fuel_heat(SignalSet one, SignalSet two) {
        const SignalSet flame = bit(Role::heat1);
        if (flame) {
            add("furnace", flame, {has(Role::heat2) ? Call::heat_low : Call::heat_high});
            if (has(Role::heat2)) add("furnace 2", flame | bit(Role::heat2), {Call::heat_high});
            add("furnace, fan on", flame | bit(Role::fan),
                {has(Role::heat2) ? Call::heat_low : Call::heat_high});
            add("defrost", one | flame, {first_cooling(), Call::heat_high});
            if (two != one) add("defrost 2", two | flame, {Call::cool_high, Call::heat_high});
        }
        if (has(Role::emergency)) add("emergency", bit(Role::emergency), {Call::heat_high});
    }

    std::vector<Demand> dehumidified() const {
        const SignalSet dry = bit(Role::dehumidify);
        if (!dry || !facts_.dehumidify || *facts_.dehumidify == DehumidifyLogic::not_used) return demands_;
        const bool live_is_normal = *facts_.dehumidify == DehumidifyLogic::live_is_normal;
        std::vector<Demand> all;
        for (Demand d : demands_) {
            if (live_is_normal) d.live |= dry;
            all.push_back(d);
            if (!d.cooling) continue;
            d.name += ", dehumidify";
            d.live ^= dry;
            d.calls = {Call::dehumidify};
            all.push_back(d);
        }
        return all;
    }

    const std::vector<ControlSignal>& signals_;
    const ControlFacts& facts_;
    const Heat& heat_;
    std::vector<Demand> demands_;
};

}  // namespace

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

Controls thermostat_controls(const FailedUnit& job, const Facts& facts, const AirPlan& air,
                             bool letters_only) {
    Controls controls;
    if (!facts.heat.kind) {
        controls.lacking.push_back("controls.heat");
        return controls;
    }
    controls.signals = thermostat_signals(job, facts.heat, air, letters_only, controls);
    const bool dehumidifies = std::any_of(controls.signals.begin(), controls.signals.end(),
                                          [](const ControlSignal& s) { return s.role == Role::dehumidify; });
    const bool logic_matters = dehumidifies && !job.controls.states;
    if (logic_matters && !job.controls.dehumidify) controls.lacking.push_back("controls.dehumidify");
    if (may_run_elements(facts.heat)) {
        for (std::size_t i = 0; i < controls.signals.size(); ++i) {
            const Role role = controls.signals[i].role;
            if (role == Role::heat1 || role == Role::heat2 || role == Role::emergency)
                controls.must_run |= 1u << i;
        }
    }
    controls.demands = job.controls.states ? own_demands(job.controls, controls.signals)
                                           : Thermostat(controls.signals, job.controls, facts.heat).demands();
    return controls;
}

Controls board_controls(const FailedUnit& job) {
    Controls controls;
    controls.exclusive = true;
    controls.demands.push_back({"off", 0, {}});
    const std::vector<Terminal> terminals = named_terminals(job.controls);
    if (terminals.empty()) {
        controls.lacking.push_back("controls.terminals");
        return controls;
    }
    for (const Terminal& t : terminals) {
        if (controls.signals.size() > most_signals) break;
        const SignalSet live = 1u << controls.signals.size();
        controls.signals.push_back({signal_name(t.name, controls.signals), Role::output, t.call, t.name});
        controls.demands.push_back({std::string(word(t.call)) + " (" + t.name + ")", live, {t.call}});
    }
    if (job.controls.states) {
        controls.exclusive = false;  // the job says what is live together
        controls.demands = own_demands(job.controls, controls.signals);
    }
    return controls;
}

}  // namespace endbell::inline wiring
