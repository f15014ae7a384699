// What goes on when no call does: heat that is left, and zones that stay closed. No signal shows either.
#pragma once
#include <optional>
#include <vector>

#include "engine/wiring/states.hpp"

namespace endbell::inline wiring {

struct AfterTheCall {
    std::optional<NoWiring> refused;
    std::optional<WiringCondition> condition;
    std::vector<KeptAway> kept_away;
};

/// Elements that a thermostat calls stay on for limit element.run_on after it: a tap with that off-delay, or a fan interlock,
/// keeps the blower running. Where nobody has said that there is one, the plan holds on that condition; where there is none
/// it is refused. A board runs on by itself, and with its run signal live a tap is held where the part's default tap does not
/// give the air.
AfterTheCall after_the_call(const FailedUnit& job, const Facts& facts, const Part& part,
                            const MotorFeed& feed, const Controls& controls,
                            const std::vector<ControlState>& states, const Limits& limits);

/// Calls whose least air the least open zone does not take at the static limit. Empty without a zone panel, or where
/// nobody has said what it takes.
std::vector<Call> short_on_the_least_zone(const FailedUnit& job, const AirPlan& air);

}  // namespace endbell::inline wiring
