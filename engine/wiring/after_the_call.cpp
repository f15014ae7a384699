#include "engine/wiring/after_the_call.hpp"

#include <algorithm>

#include "engine/model/limit.hpp"
#include "engine/wiring/tap_choice.hpp"

namespace endbell::inline wiring {

namespace {

/// Every tap that the elements run at keeps the motor on as long as they may stay hot.
bool taps_run_on(const Part& part, const Controls& controls, const std::vector<ControlState>& states,
                 Duration least) {
    return std::all_of(states.begin(), states.end(), [&](const ControlState& s) {
        if ((s.live & controls.heats.elements) == 0) return true;
        const Tap* tap = tap_of(part, s.wanted_tap);
        return tap != nullptr && tap->off_delay && *tap->off_delay >= least;
    });
}

}  // namespace

AfterTheCall after_the_call(const FailedUnit& job, const Facts& facts, const Part& part,
                            const MotorFeed& feed, const Controls& controls,
                            const std::vector<ControlState>& states, const Limits& limits) {
    AfterTheCall after;
    const bool held = feed.gated && std::none_of(states.begin(), states.end(),
                                                 [](const ControlState& s) { return s.by_default; });
    if (held)
        after.kept_away.push_back(
            {"line present, no tap live", StateMaker::board, Interlock::tap_held_live, true});
    const bool by_thermostat = feed.sender == Sender::thermostat && !feed.gated;
    if (!by_thermostat || controls.heats.elements == 0 || facts.heat.elements.is(false)) return after;
    KeptAway state{"elements after their call", StateMaker::sequencer,
                   Interlock::fan_interlock_of_the_elements, true};
    if (taps_run_on(part, controls, states, limits.value(limit::element_run_on))) {
        state.by = Interlock::off_delay_of_the_tap;
    } else if (!job.controls.fan_interlock) {
        state.shown = false;
        after.condition = WiringCondition::blower_runs_while_elements_are_hot;
    } else if (!*job.controls.fan_interlock) {
        after.refused = NoWiring{WiringRefusal::elements_hot_after_their_call,
                                 {WiringRescue::run_on_of_the_elements},
                                 {},
                                 {Call::electric_heat}};
        return after;
    }
    after.kept_away.push_back(std::move(state));
    return after;
}

std::vector<Call> short_on_the_least_zone(const FailedUnit& job, const AirPlan& air) {
    std::vector<Call> calls;
    const ControlReadings& controls = job.controls;
    if (!controls.zone_panel || !*controls.zone_panel || !controls.least_zone) return calls;
    for (const CallAir& call : air.calls) {
        if (call.call != Call::circulate && call.low > *controls.least_zone) calls.push_back(call.call);
    }
    return calls;
}

}  // namespace endbell::inline wiring
