#include "engine/wiring/thermostat.hpp"

#include <algorithm>

namespace endbell::inline wiring {

namespace {

SignalSet bits_of(const std::vector<ControlSignal>& signals, std::initializer_list<Role> roles) {
    SignalSet found = 0;
    for (std::size_t i = 0; i < signals.size(); ++i) {
        if (std::find(roles.begin(), roles.end(), signals[i].role) != roles.end()) found |= 1u << i;
    }
    return found;
}

bool has_state(const std::vector<Demand>& demands, SignalSet live) {
    return std::any_of(demands.begin(), demands.end(), [&](const Demand& d) { return d.live == live; });
}

/// Collects the states of one thermostat.
class Thermostat {
  public:
    Thermostat(const std::vector<ControlSignal>& signals, const ControlReadings& facts, const Heat& heat)
        : signals_(signals), facts_(facts), heat_(heat) {
        for (const Role role : {Role::heat1, Role::heat2, Role::heat3}) {
            for (std::size_t i = 0; i < signals_.size(); ++i) {
                if (signals_[i].role == role) stages_.push_back(i);
            }
        }
    }

    std::vector<Demand> demands(bool gated) {
        if (gated) {
            without_a_call();
        } else {
            add("off", 0, {});
        }
        if (has(Role::fan)) add("fan on", bit(Role::fan), {Call::circulate});
        cooling();
        if (heat_.compressor.is(true)) {
            compressor_heat();
        } else if (!heat_.none()) {
            plain_heat();
        }
        without_fan();
        return dehumidified();
    }

    std::vector<Demand> behind_a_run_signal() {
        without_a_call();
        return demands_;
    }

  private:
    bool has(Role role) const { return bit(role) != 0; }
    SignalSet bit(Role role) const { return bits_of(signals_, {role}); }
    SignalSet stage(std::size_t n) const { return SignalSet{1} << stages_[n]; }
    /// The first `n` stages of heat together.
    SignalSet stages(std::size_t n) const {
        SignalSet all = 0;
        for (std::size_t i = 0; i < n; ++i) all |= stage(i);
        return all;
    }
    bool burns() const { return heat_.burner.is(true); }
    Call first_cooling() const { return has(Role::compressor2) ? Call::cool_low : Call::cool_high; }
    Call first_flame() const { return stages_.size() > 1 ? Call::heat_low : Call::heat_high; }

    Demand& add(std::string name, SignalSet live, std::vector<Call> calls) {
        demands_.push_back({std::move(name), live, std::move(calls)});
        return demands_.back();
    }

    // The board alone says when the motor runs. After a call, and while a limit is open, it runs with no thermostat wire
    // live: the tap that is live then must carry off the heat that is left.
    void without_a_call() {
        const bool heats = !stages_.empty() || has(Role::emergency);
        const Call air = heats                    ? (burns() ? Call::heat_high : Call::electric_heat)
                         : has(Role::compressor1) ? Call::cool_high
                                                  : Call::circulate;
        add("off by the run signal", 0, {air}).maker = StateMaker::board;
        add("run-on after a call", 0, {air}).maker = StateMaker::board;
        if (heats) add("limit open", 0, {air}).maker = StateMaker::board;
        if (!has(Role::fan)) add("fan on by the board", 0, {air}).maker = StateMaker::board;
    }

    void cooling() {
        if (!has(Role::compressor1)) return;
        const SignalSet one = bit(Role::compressor1) | bit(Role::fan);
        add("cool 1", one, {first_cooling()}).cooling = true;
        if (has(Role::compressor2))
            add("cool 2", one | bit(Role::compressor2), {Call::cool_high}).cooling = true;
    }

    // A furnace thermostat leaves G out of a heat call; an electric-heat one sends it. Where the job does not
    // say, both can happen. On a furnace W2 without W1 is a broken wire; elements start with the stage there is.
    void plain_heat() {
        if (burns() && !has(Role::heat1)) return;
        const bool fan_sent = facts_.fan_with_heat && *facts_.fan_with_heat;
        heat_stages("", fan_sent ? bit(Role::fan) : 0u);
        if (!fan_sent && has(Role::fan)) heat_stages(", fan on", bit(Role::fan));
        if (!burns() && has(Role::emergency))
            add("emergency", bit(Role::emergency) | bit(Role::fan), {Call::electric_heat});
    }
    void heat_stages(const std::string& tail, SignalSet fan) {
        const std::size_t most = burns() ? std::min<std::size_t>(2, stages_.size()) : stages_.size();
        for (std::size_t n = 1; n <= most; ++n) {
            const Call call = !burns() ? Call::electric_heat : n == 1 ? first_flame() : Call::heat_high;
            add("heat " + std::to_string(n) + tail, stages(n) | fan, {call});
        }
    }

    // The reversing valve (O or B) is all that tells compressor heat from cooling, and it drives no tap: both
    // run at the cooling tap. In defrost the outdoor board feeds the W line while the thermostat still sends
    // Y and G.
    void compressor_heat() {
        const SignalSet one = bit(Role::compressor1) | bit(Role::fan);
        const SignalSet two = one | bit(Role::compressor2);
        if (has(Role::compressor1)) {
            add("heat 1", one, {first_cooling()});
            if (has(Role::compressor2)) add("heat 2", two, {Call::cool_high});
        }
        if (burns()) {
            fuel_heat(one, two);
        } else {
            auxiliary_heat(one, two);
        }
    }
    void auxiliary_heat(SignalSet one, SignalSet two) {
        const Call air = Call::electric_heat;
        if (!stages_.empty() && has(Role::compressor1)) {
            add("heat and auxiliary", one | stage(0), {first_cooling(), air});
            add("defrost", one | stage(0), {first_cooling(), air}).maker = StateMaker::defrost_board;
            if (two != one) {
                add("heat 2 and auxiliary", two | stage(0), {Call::cool_high, air});
                add("defrost 2", two | stage(0), {Call::cool_high, air}).maker = StateMaker::defrost_board;
            }
            for (std::size_t n = 2; n <= stages_.size(); ++n) {
                const std::string name =
                    n == stages_.size() ? "all heat" : "heat and auxiliary " + std::to_string(n);
                add(name, two | stages(n), {Call::cool_high, air});
            }
        }
        elements_alone(air);
    }
    // Beside a heat pump any stage alone is emergency heat: the compressor is locked out, or has failed.
    void elements_alone(Call air) {
        const SignalSet fan = bit(Role::fan), emergency = bit(Role::emergency);
        const std::string alone = emergency ? "auxiliary alone" : "emergency";
        for (std::size_t n = 0; n < stages_.size(); ++n) {
            add(n == 0 ? alone : alone + " (" + signals_[stages_[n]].name + ")", stage(n) | fan, {air});
            if (n > 0) add(alone + " " + std::to_string(n + 1), stages(n + 1) | fan, {air});
        }
        if (!emergency) return;
        add("emergency", emergency | fan, {air});
        for (std::size_t n = 1; n <= stages_.size(); ++n) {
            add("emergency and auxiliary" + (n > 1 ? " " + std::to_string(n) : ""),
                emergency | stages(n) | fan, {air});
        }
    }
    // Dual fuel: the furnace burns with the compressor off and no G, but defrost brings both together.
    void fuel_heat(SignalSet one, SignalSet two) {
        if (!stages_.empty()) {
            add("furnace", stage(0), {first_flame()});
            if (stages_.size() > 1) add("furnace 2", stages(2), {Call::heat_high});
            add("furnace, fan on", stage(0) | bit(Role::fan), {first_flame()});
            if (stages_.size() > 1) add("furnace 2, fan on", stages(2) | bit(Role::fan), {Call::heat_high});
            if (has(Role::compressor1)) {
                add("defrost", one | stage(0), {first_cooling(), Call::heat_high}).maker =
                    StateMaker::defrost_board;
                if (two != one)
                    add("defrost 2", two | stage(0), {Call::cool_high, Call::heat_high}).maker =
                        StateMaker::defrost_board;
            }
        }
        if (has(Role::emergency)) furnace_alone();
    }
    // With the compressor locked out the furnace burns at its full rate, beside the wire of its stages or without it.
    void furnace_alone() {
        const SignalSet emergency = bit(Role::emergency), fan = bit(Role::fan);
        const auto each = [&](const std::string& name, SignalSet live) {
            add(name, live, {Call::heat_high});
            if (fan != 0) add(name + ", fan on", live | fan, {Call::heat_high});
        };
        each("emergency", emergency);
        for (std::size_t n = 1; n <= stages_.size(); ++n)
            each("emergency and furnace" + (n > 1 ? " " + std::to_string(n) : ""), emergency | stages(n));
    }

    // G may drop before the call, or there is none: whatever cools or heats moves air by itself. Only where the job says that
    // the thermostat sends G with W is heat without G left out.
    void without_fan() {
        const SignalSet fan = bit(Role::fan), compressor = bit(Role::compressor1);
        if (!fan) return;
        const bool fan_sent = facts_.fan_with_heat && *facts_.fan_with_heat;
        const std::vector<Demand> all = demands_;
        for (Demand d : all) {
            const SignalSet live = d.live & ~fan;
            if (live == d.live || live == 0 || (fan_sent && !(live & compressor))) continue;
            if (has_state(all, live)) continue;
            d.name += ", no G";
            d.live = live;
            demands_.push_back(std::move(d));
        }
    }

    // Drier air is less air, and only where cooling alone is called: asked at any other time it changes nothing.
    std::vector<Demand> dehumidified() const {
        const SignalSet dry = bit(Role::dehumidify);
        if (!dry || !facts_.dehumidify || *facts_.dehumidify == DehumidifyLogic::not_used) return demands_;
        const bool live_is_normal = *facts_.dehumidify == DehumidifyLogic::live_is_normal;
        const auto cools = [&](SignalSet live) {
            return std::any_of(demands_.begin(), demands_.end(),
                               [&](const Demand& d) { return d.cooling && d.live == live; });
        };
        std::vector<Demand> all;
        for (Demand d : demands_) {
            const bool other_heat = !d.cooling && cools(d.live);
            if (live_is_normal) d.live |= dry;
            all.push_back(d);
            if (other_heat) continue;
            d.name += ", dehumidify";
            d.live ^= dry;
            if (d.cooling) d.calls = {Call::dehumidify};
            all.push_back(d);
        }
        return all;
    }

    const std::vector<ControlSignal>& signals_;
    const ControlReadings& facts_;
    const Heat& heat_;
    std::vector<std::size_t> stages_;  // signals of heat, lowest stage first
    std::vector<Demand> demands_;
};

}  // namespace

bool may_run_elements(const Heat& heat) {
    return heat.elements.is(true) || heat.kind == HeatKind::electric || heat.kind == HeatKind::heat_pump;
}

std::vector<Demand> thermostat_demands(const std::vector<ControlSignal>& signals,
                                       const ControlReadings& facts, const Heat& heat, bool gated) {
    return Thermostat(signals, facts, heat).demands(gated);
}

std::vector<Demand> run_signal_demands(const std::vector<ControlSignal>& signals,
                                       const ControlReadings& facts, const Heat& heat) {
    return Thermostat(signals, facts, heat).behind_a_run_signal();
}

Interlock what_keeps_away(SignalSet live, const std::vector<ControlSignal>& signals,
                          const ControlReadings& facts, const Heat& heat) {
    const auto any = [&](std::initializer_list<Role> roles) { return (live & bits_of(signals, roles)) != 0; };
    const auto missing = [&](Role role) {
        const SignalSet bits = bits_of(signals, {role});
        return bits != 0 && (live & bits) != bits;
    };
    const bool compressor = any({Role::compressor1, Role::compressor2});
    const bool heats = any({Role::heat1, Role::heat2, Role::heat3});
    if (any({Role::compressor2}) && missing(Role::compressor1)) return Interlock::stages_in_order;
    if (any({Role::emergency}) && compressor) return Interlock::emergency_alone;
    if (any({Role::heat2, Role::heat3}) && missing(Role::heat1)) return Interlock::stages_in_order;
    if (any({Role::heat3}) && missing(Role::heat2)) return Interlock::stages_in_order;
    if (compressor && heats && !heat.compressor.is(true)) return Interlock::heat_or_cool;
    const bool fan_sent = facts.fan_with_heat && *facts.fan_with_heat;
    if (heats && fan_sent && !any({Role::fan})) return Interlock::fan_sent_with_heat;
    return Interlock::no_such_call;
}

}  // namespace endbell::inline wiring
