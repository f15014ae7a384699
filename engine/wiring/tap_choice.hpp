// The tap that each reachable state wants: what the air plan chose for its call.
#pragma once
#include "engine/wiring/states.hpp"

namespace endbell::inline wiring {

struct TapChoice {
    std::optional<NoWiring> refused;
    std::vector<ControlState> states;
};

/// A part with one tap needs no choosing. Where two calls stand together, the one with more air decides. A tap of another
/// voltage than taps are fed with here is no choice. What a run signal gates may serve a state by its default tap.
TapChoice choose_taps(const Controls& controls, const Part& part, const AirPlan& air, const MotorFeed& feed);

/// The part's tap of that number, or null.
const Tap* tap_of(const Part& part, int number);

/// The highest tap number of the part or of the states.
int highest_tap(const Part& part, const std::vector<ControlState>& states);

}  // namespace endbell::inline wiring
