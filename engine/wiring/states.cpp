#include "engine/wiring/states.hpp"

#include <algorithm>
#include <bit>

#include "engine/wiring/table.hpp"
#include "engine/wiring/thermostat.hpp"

namespace endbell::inline wiring {

namespace {

bool contains(const std::vector<std::string>& labels, const std::string& label) {
    return std::find(labels.begin(), labels.end(), label) != labels.end();
}

/// The states the job lists itself, and "off". A terminal that is no signal here (a board's, where the run signal takes
/// those) is left out of them.
std::vector<Demand> own_demands(const ControlReadings& controls, const std::vector<ControlSignal>& signals) {
    std::vector<Demand> demands{{"off", 0, {}, StateMaker::job}};
    for (const CustomState& state : *controls.states) {
        Demand demand{state.name, 0, {}, StateMaker::job};
        if (state.call) demand.calls.push_back(*state.call);
        for (std::size_t i = 0; i < signals.size(); ++i) {
            if (contains(state.live, signals[i].label)) demand.live |= 1u << i;
        }
        demands.push_back(std::move(demand));
    }
    return demands;
}

HeatSignals thermostat_heats(const std::vector<ControlSignal>& signals, const Heat& heat) {
    HeatSignals found;
    for (std::size_t i = 0; i < signals.size(); ++i) {
        const SignalSet bit = SignalSet{1} << i;
        switch (signals[i].role) {
            case Role::compressor1:
            case Role::compressor2:
                found.compressor |= bit;
                break;
            case Role::heat1:
            case Role::heat2:
            case Role::heat3:
            case Role::emergency:
                if (heat.burner.is(true)) {
                    found.burner |= bit;
                } else if (may_run_elements(heat)) {
                    found.elements |= bit;
                }
                break;
            default:
                break;
        }
    }
    return found;
}

HeatSignals board_heats(const std::vector<ControlSignal>& outputs, const Heat& heat) {
    HeatSignals found;
    for (std::size_t i = 0; i < outputs.size(); ++i) {
        const SignalSet bit = SignalSet{1} << i;
        switch (outputs[i].call) {
            case Call::circulate:
                break;
            case Call::cool_low:
            case Call::cool_high:
            case Call::dehumidify:
                found.compressor |= bit;
                break;
            case Call::electric_heat:
                found.elements |= bit;
                break;
            case Call::heat_low:
            case Call::heat_high:
                if (heat.burner.is(true)) found.burner |= bit;
                if (!heat.burner.is(true) && heat.compressor.is(true)) found.compressor |= bit;
                if (!heat.burner.is(true) && may_run_elements(heat)) found.elements |= bit;
                break;
        }
    }
    return found;
}

/// Of each set that no demand stands for, what `keeps` it away.
template <class Keeps>
void name_interlocks(Controls& controls, Keeps keeps) {
    if (controls.signals.size() > most_signals) return;
    controls.interlocks.resize(std::size_t{1} << controls.signals.size());
    for (SignalSet live = 0; live < controls.interlocks.size(); ++live) {
        const bool occurs = std::any_of(controls.demands.begin(), controls.demands.end(),
                                        [&](const Demand& d) { return d.live == live && !d.overlap; });
        if (!occurs) controls.interlocks[live] = keeps(live);
    }
}

Controls of_list(SignalList list) {
    Controls controls;
    controls.signals = std::move(list.signals);
    controls.idle = std::move(list.idle);
    controls.not_known = std::move(list.not_known);
    controls.assumed = std::move(list.assumed);
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

void take_own_states(Controls& controls, const ControlReadings& readings) {
    controls.demands = own_demands(readings, controls.signals);
    name_interlocks(controls, [](SignalSet) { return Interlock::not_in_the_jobs_list; });
}

/// The board runs the motor on with no wire of the job's own list live: "off" is its run signal's to say.
void add_run_signal(Controls& controls, const ControlReadings& readings, const Heat& heat) {
    std::vector<Demand> demands = run_signal_demands(controls.signals, readings, heat);
    demands.insert(demands.end(), controls.demands.begin() + 1, controls.demands.end());
    controls.demands = std::move(demands);
}

Controls thermostat_controls(const FailedUnit& job, const Facts& facts, const AirPlan& air, bool gated) {
    Controls controls = of_list(thermostat_signals(job, facts.heat, air, gated));
    controls.heats = thermostat_heats(controls.signals, facts.heat);
    if (job.controls.states) {
        take_own_states(controls, job.controls);
        if (gated) add_run_signal(controls, job.controls, facts.heat);
        return controls;
    }
    const bool dehumidifies = std::any_of(controls.signals.begin(), controls.signals.end(),
                                          [](const ControlSignal& s) { return s.role == Role::dehumidify; });
    if (dehumidifies && !job.controls.dehumidify) controls.lacking.emplace_back("controls.dehumidify");
    controls.demands = thermostat_demands(controls.signals, job.controls, facts.heat, gated);
    if (job.controls.zone_panel && *job.controls.zone_panel) {
        for (Demand& d : controls.demands) {
            if (d.maker == StateMaker::thermostat) d.maker = StateMaker::zone_panel;
        }
    }
    name_interlocks(controls, [&](SignalSet live) {
        return what_keeps_away(live, controls.signals, job.controls, facts.heat);
    });
    return controls;
}

bool calls_for_heat(Call call) {
    return call == Call::heat_low || call == Call::heat_high || call == Call::electric_heat;
}

/// A board's outputs: each alone; kept on by the board after its call, and on an open limit; and, at a change of stage or
/// with the continuous fan, several together.
/// What is outdoors stops with its call, and has no limit.
std::vector<Demand> board_demands(const std::vector<ControlSignal>& outputs, bool burner, bool outdoors) {
    std::vector<Demand> demands{{"off", 0, {}, StateMaker::board}};
    const auto add = [&](std::string name, SignalSet live, std::vector<Call> calls) {
        demands.push_back({std::move(name), live, std::move(calls), StateMaker::board});
    };
    const auto label = [](const ControlSignal& s) { return s.label.empty() ? s.name : s.label; };
    for (std::size_t i = 0; i < outputs.size(); ++i) {
        const ControlSignal& s = outputs[i];
        const SignalSet live = SignalSet{1} << i;
        const std::string at = " (" + label(s) + ")";
        add(std::string(word(s.call)) + at, live, {s.call});
        if (outdoors) continue;
        if (s.call != Call::circulate) add("run-on" + at, live, {s.call});
        if (burner && calls_for_heat(s.call)) add("limit open" + at, live, {s.call});
    }
    for (SignalSet live = 0; live < SignalSet{1} << outputs.size(); ++live) {
        if (std::popcount(live) < 2) continue;
        Demand both{"", live, {}, StateMaker::board};
        for (const int i : members(live)) {
            const ControlSignal& s = outputs[static_cast<std::size_t>(i)];
            both.name += (both.name.empty() ? "" : " + ") + label(s);
            both.calls.push_back(s.call);
        }
        both.overlap = true;
        demands.push_back(std::move(both));
    }
    return demands;
}

Controls board_controls(const FailedUnit& job, const Facts& facts, const AirPlan& air,
                        const MotorFeed& feed) {
    const bool burner = facts.heat.burner.is(true);
    Controls controls = of_list(board_signals(job.controls, burner));
    controls.exclusive = !job.controls.states;  // else the job says what is live together
    const bool unnamed = controls.signals.empty() && controls.not_known.empty() && controls.idle.empty();
    if (unnamed && feed.board_first && feed.line_signals && !feed.outdoors) {
        controls.signals = usual_outputs(air);
        controls.assumed.emplace_back("controls.terminals");
    }
    controls.heats = board_heats(controls.signals, facts.heat);
    if (controls.signals.empty() && controls.not_known.empty())
        controls.lacking.emplace_back("controls.terminals");
    if (job.controls.states) {
        take_own_states(controls, job.controls);
    } else if (controls.signals.size() <= most_signals) {
        controls.demands = board_demands(controls.signals, burner, feed.outdoors);
        name_interlocks(controls, [](SignalSet) { return Interlock::one_board_output_at_a_time; });
    }
    return controls;
}

/// What hangs on a load side has one output, live while its contactor, starter, relay or board output is.
Controls contactor_controls(const MotorFeed& feed) {
    Controls controls;
    controls.exclusive = true;
    controls.signals.push_back({feed.switch_output, Role::output, Call::circulate});
    controls.demands = {{"off", 0, {}, StateMaker::contactor},
                        {"run", 1, {Call::circulate}, StateMaker::contactor}};
    name_interlocks(controls, [](SignalSet) { return Interlock::no_such_call; });
    return controls;
}

/// The defrost board takes its output away while the compressor runs on.
void add_defrost(Controls& controls, const Facts& facts, const MotorFeed& feed) {
    if (feed.outdoors && facts.heat.compressor.is(true))
        controls.demands.push_back({"defrost", 0, {}, StateMaker::defrost_board});
}

}  // namespace

Controls controls_of(const FailedUnit& job, const Facts& facts, const AirPlan& air, const MotorFeed& feed) {
    if (feed.sender == Sender::contactor) {
        Controls controls = contactor_controls(feed);
        add_defrost(controls, facts, feed);
        return controls;
    }
    if (!facts.heat.kind && !feed.outdoors) {
        Controls controls;
        controls.lacking.emplace_back("controls.heat");
        return controls;
    }
    if (feed.sender == Sender::thermostat) return thermostat_controls(job, facts, air, feed.gated);
    Controls controls = board_controls(job, facts, air, feed);
    add_defrost(controls, facts, feed);
    return controls;
}

}  // namespace endbell::inline wiring
