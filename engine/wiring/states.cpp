#include "engine/wiring/states.hpp"

#include <algorithm>

namespace endbell::inline wiring {

namespace {

/// A heat call may mean elements: they are in, or nobody has said that beside a heat pump there are none.
bool may_run_elements(const Heat& heat) {
    return heat.elements.is(true) || heat.kind == HeatKind::electric || heat.kind == HeatKind::heat_pump;
}

/// Collects the states of one thermostat.
class Thermostat {
  public:
    Thermostat(const std::vector<ControlSignal>& signals, const ControlReadings& facts, const Heat& heat)
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
    const ControlReadings& facts_;
    const Heat& heat_;
    std::vector<Demand> demands_;
};

/// The states the job lists itself, and "off". A terminal that is no signal here (a board's, where the run signal takes
/// those) is left out of them.
bool holds(const std::vector<std::string>& labels, const std::string& label) {
    return std::find(labels.begin(), labels.end(), label) != labels.end();
}

std::vector<Demand> own_demands(const ControlReadings& controls, const std::vector<ControlSignal>& signals) {
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

Controls thermostat_controls(const FailedUnit& job, const Facts& facts, const AirPlan& air,
                             bool letters_only) {
    Controls controls;
    if (!facts.heat.kind) {
        controls.lacking.push_back("controls.heat");
        return controls;
    }
    controls.signals = thermostat_signals(job, facts.heat, air, letters_only, controls.assumed);
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

/// The outputs that a board has for the calls of the job, where nobody has named them and each gets a speed lead.
std::vector<ControlSignal> usual_outputs(const AirPlan& air) {
    std::vector<ControlSignal> signals;
    for (const CallAir& call : air.calls) {
        if (call.call != Call::circulate && call.tap)
            signals.push_back({std::string(word(call.call)) + " output", Role::output, call.call});
    }
    return signals;
}

Controls board_controls(const FailedUnit& job, const AirPlan& air, const MotorFeed& feed) {
    Controls controls;
    controls.exclusive = !job.controls.states;  // else the job says what is live together
    controls.signals = board_signals(job.controls);
    if (controls.signals.empty() && feed.board_first && feed.line_signals && !feed.outdoors) {
        controls.signals = usual_outputs(air);
        controls.assumed.push_back("controls.terminals");
    }
    if (controls.signals.empty()) controls.lacking.push_back("controls.terminals");
    controls.demands.push_back({"off", 0, {}});
    for (std::size_t i = 0; i < controls.signals.size(); ++i) {
        const ControlSignal& s = controls.signals[i];
        const std::string label = s.label.empty() ? "" : " (" + s.label + ")";
        controls.demands.push_back({std::string(word(s.call)) + label, 1u << i, {s.call}});
    }
    if (job.controls.states) controls.demands = own_demands(job.controls, controls.signals);
    return controls;
}

/// What hangs on a load side has one output, live while its contactor, starter, relay or board output is.
Controls contactor_controls(const MotorFeed& feed) {
    Controls controls;
    controls.exclusive = true;
    controls.signals.push_back({feed.switch_output, Role::output, Call::circulate});
    controls.demands = {{"off", 0, {}}, {"run", 1, {Call::circulate}}};
    return controls;
}

}  // namespace

bool calls_for_heat(Call call) {
    return call == Call::heat_low || call == Call::heat_high || call == Call::electric_heat;
}

Controls controls_of(const FailedUnit& job, const Facts& facts, const AirPlan& air, const MotorFeed& feed) {
    Controls controls;
    switch (feed.sender) {
        case Sender::thermostat:
            return thermostat_controls(job, facts, air, feed.gated);
        case Sender::board:
            controls = board_controls(job, air, feed);
            break;
        case Sender::contactor:
            controls = contactor_controls(feed);
            break;
    }
    // The defrost board takes its output away while the compressor runs on.
    if (feed.outdoors && facts.heat.compressor.is(true)) controls.demands.push_back({"defrost", 0, {}});
    return controls;
}

}  // namespace endbell::inline wiring
