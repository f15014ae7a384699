#include "engine/wiring/tap_choice.hpp"

#include <algorithm>

#include "engine/facts/rating.hpp"

namespace endbell::inline wiring {

namespace {

const CallAir* entry(const AirPlan& air, Call call) {
    const auto found =
        std::find_if(air.calls.begin(), air.calls.end(), [&](const CallAir& c) { return c.call == call; });
    return found == air.calls.end() ? nullptr : &*found;
}

/// A stage the air plan does not tell apart is served by the plan's one entry for that kind of call.
const CallAir* entry_or_stand_in(const AirPlan& air, Call call) {
    if (const CallAir* own = entry(air, call)) return own;
    switch (call) {
        case Call::cool_low:
            return entry(air, Call::cool_high);
        case Call::cool_high:
            return entry(air, Call::cool_low);
        case Call::heat_low:
            return entry(air, Call::heat_high);
        case Call::heat_high:
            return entry(air, Call::heat_low);
        case Call::electric_heat: {
            const CallAir* heat = entry(air, Call::heat_high);
            return heat != nullptr ? heat : entry(air, Call::heat_low);
        }
        default:
            return nullptr;
    }
}

std::optional<int> only_tap(const Part& part) {
    const Motor& motor = *part.motor;
    if (motor.taps.size() == 1) return motor.taps.front().number;
    if (motor.taps.empty() && (!motor.speeds || *motor.speeds == 1) &&
        signal_of(motor).is(SignalClass::switched_line))
        return 1;
    return std::nullopt;
}

/// Airflow of a tap; a tap without one counts by its number, below any airflow.
Airflow air_of_tap(const AirPlan& air, int tap) {
    for (const TapAir& t : air.taps) {
        if (t.tap == tap) return t.airflow.value();
    }
    return cfm(tap / 1000.0);
}

void add_missing(const std::vector<std::string>& keys, std::vector<std::string>& into) {
    for (const std::string& key : keys) {
        if (std::find(into.begin(), into.end(), key) == into.end()) into.push_back(key);
    }
}

struct ChosenTap {
    int tap = 0;
    std::optional<LeadBasis> provisional = std::nullopt;
};

std::optional<ChosenTap> tap_for(const Demand& demand, const Part& part, const AirPlan& air,
                                 std::vector<std::string>& lacking) {
    if (const auto one = only_tap(part)) return ChosenTap{*one};
    std::optional<ChosenTap> best;
    for (const Call call : demand.calls) {
        const CallAir* found = entry_or_stand_in(air, call);
        if (found == nullptr || !found->tap) {
            add_missing(found != nullptr ? found->lacking : std::vector<std::string>{}, lacking);
            add_missing({"air." + std::string(word(call))}, lacking);
            return std::nullopt;
        }
        if (!best || air_of_tap(air, *found->tap) > air_of_tap(air, best->tap))
            best = ChosenTap{*found->tap, found->provisional};
    }
    return best;
}

bool gives_the_air(const AirPlan& air, const CallAir& call, int tap) {
    if (call.tap == tap) return true;
    return call.high > Airflow() && std::any_of(air.taps.begin(), air.taps.end(), [&](const TapAir& t) {
               const Airflow moved = t.airflow.value();
               return t.tap == tap && t.airflow.known() && moved >= call.low && moved <= call.high;
           });
}

/// With its run signal live and no tap live the part runs at its default tap: where that tap gives each call its air, no wire
/// need hold another.
bool serves_by_default(const Demand& demand, const Part& part, const AirPlan& air) {
    const std::optional<int> tap = part.motor->default_tap;
    if (!tap || *tap == 0 || tap_of(part, *tap) == nullptr || demand.live != 0) return false;
    return std::all_of(demand.calls.begin(), demand.calls.end(), [&](Call call) {
        const CallAir* found = entry_or_stand_in(air, call);
        return found != nullptr && gives_the_air(air, *found, *tap);
    });
}

bool told_apart(const std::vector<ControlState>& states) {
    for (const ControlState& a : states) {
        for (const ControlState& b : states) {
            if (a.live == b.live && a.wanted_tap != b.wanted_tap) return false;
        }
    }
    return true;
}

/// A part may state the voltage of each tap by itself.
bool at_other_voltage(const std::vector<ControlState>& states, const Part& part, bool line_taps) {
    return std::any_of(states.begin(), states.end(), [&](const ControlState& s) {
        const Tap* tap = tap_of(part, s.wanted_tap);
        return tap != nullptr && tap->signal && (*tap->signal != SignalClass::control_24v) != line_taps;
    });
}

}  // namespace

TapChoice choose_taps(const Controls& controls, const Part& part, const AirPlan& air, const MotorFeed& feed) {
    TapChoice choice;
    bool chosen = true;
    std::vector<std::string> lacking;
    for (const Demand& demand : controls.demands) {
        ControlState state{demand.name, demand.live, 0, demand.maker, demand.overlap};
        if (!demand.calls.empty()) {
            state.by_default = feed.gated && serves_by_default(demand, part, air);
            const auto tap =
                state.by_default ? ChosenTap{*part.motor->default_tap} : tap_for(demand, part, air, lacking);
            chosen = chosen && tap;
            if (tap) {
                state.wanted_tap = tap->tap;
                state.provisional = tap->provisional;
            }
        }
        choice.states.push_back(std::move(state));
    }
    if (!chosen) {
        add_missing(air.lacking, lacking);
        choice.refused = NoWiring{WiringRefusal::taps_not_chosen, {}, lacking};
    } else if (!told_apart(choice.states)) {
        choice.refused = NoWiring{WiringRefusal::states_not_told_apart};
    } else if (at_other_voltage(choice.states, part, feed.line_taps)) {
        choice.refused = NoWiring{WiringRefusal::line_voltage_on_24v_tap};
    }
    return choice;
}

const Tap* tap_of(const Part& part, int number) {
    for (const Tap& t : part.motor->taps) {
        if (t.number == number) return &t;
    }
    return nullptr;
}

int highest_tap(const Part& part, const std::vector<ControlState>& states) {
    int highest = 1;
    for (const Tap& tap : part.motor->taps) highest = std::max(highest, tap.number);
    for (const ControlState& state : states) highest = std::max(highest, state.wanted_tap);
    return highest;
}

}  // namespace endbell::inline wiring
