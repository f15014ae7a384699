// The tap that each reachable state wants: what the air plan chose for its call.
#pragma once
#include "engine/wiring/states.hpp"

namespace endbell::inline wiring {

struct TapChoice {
    std::vector<ControlState> states;
    std::vector<std::string> lacking;  // job keys that would settle a tap
    std::optional<WiringRefusal> refusal;
};

/// A part with one tap needs no choosing. Where two calls stand together, the one with more air decides.
TapChoice choose_taps(const Controls& controls, const Part& part, const AirPlan& air);

/// The highest tap number of the part or of the states.
int highest_tap(const Part& part, const std::vector<ControlState>& states);

}  // namespace endbell::inline wiring
