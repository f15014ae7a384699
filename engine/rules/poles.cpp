#include <string>
#include <vector>

#include "engine/rules/registry.hpp"

namespace endbell::inline rules::rule {

namespace {

constexpr std::string_view claim =
    "an induction motor has the old one's pole count, for the same wheel or blade";
constexpr std::string_view id = rule_id::poles;

// The new motor drags the old wheel towards its own speed: load over the old load, by rated speeds where both
// are known, else by synchronous ones.
double overload(const Query& q, const Part& part, int was, int now) {
    const auto old_speed = q.facts.speed.value;
    const auto rated = speed_in_use(q, part);
    if (old_speed && rated) return cube_law(*old_speed, *rated);
    return cube_law(synchronous(was, hertz(60)), synchronous(now, hertz(60)));
}

// A speed that both 50 and 60 Hz could be is told by the hertz.
std::vector<std::string> asks_of(const Facts& facts) {
    if (facts.speed && !facts.frequency) return {"plate.poles", "plate.frequency"};
    return {"plate.speed", "plate.poles"};
}

Finding judge(const Query& q, const Part& part) {
    if (!part.motor) return not_concerned(id);
    const auto family = q.facts.family.value;
    if (family && is_electronic(*family)) return not_concerned(id);
    if (part.motor->family && is_electronic(*part.motor->family)) return not_concerned(id);
    const DerivedFact<int>& old = q.facts.poles;
    const DerivedFact<int> now = poles_of(*part.motor, speed_in_use(q, part));
    FindingDraft say(id, "fan-laws", wanted(old), offered(now.value));
    if (specified_assembly(q.job, part)) return say.from("inducer").fits(Reason::specified_assembly);
    if (old.disagree) return say.ask(Reason::plate_disagrees_with_itself, {"plate.poles", "plate.speed"});
    if (!old) return say.ask(Reason::poles_not_stated, asks_of(q.facts));
    if (now.disagree)
        return say.ask(Reason::part_disagrees_with_itself, {"motors.poles", "motor_ratings.speed_rpm"});
    if (!now) return say.ask(Reason::part_does_not_say, {"motors.poles"});
    if (*old == *now) return say.from("mg1-10.32").fits(Reason::same_poles);
    say.computed(overload(q, part, *old, *now));
    return say.fails(*now < *old ? Reason::runs_too_fast : Reason::runs_too_slow);
}

}  // namespace

Rule poles() {
    return {id,
            claim,
            Weight::hard,
            {Reason::not_concerned, Reason::specified_assembly, Reason::plate_disagrees_with_itself,
             Reason::poles_not_stated, Reason::part_disagrees_with_itself, Reason::part_does_not_say,
             Reason::same_poles, Reason::runs_too_fast, Reason::runs_too_slow},
            {"fan-laws", "mg1-10.32", "inducer"},
            {},
            {"plate.poles", "plate.speed", "plate.frequency", "plate.family"},
            {"motors.family electronic", "motors.poles", "motors.frequency_hz", "motor_ratings.speed_rpm"},
            {{"motors.poles", Concerns::induction}},
            judge};
}

}  // namespace endbell::inline rules::rule
