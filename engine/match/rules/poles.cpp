#include "engine/match/rules/rules.hpp"

namespace endbell::rule {

namespace of_poles {

constexpr std::string_view id = "poles";

Poles new_poles(const Question& q, const Part& part) {
    const auto stated = part.motor->poles;
    const auto rated = speed_in_use(q, part);
    std::optional<int> derived;
    if (rated) derived = poles_from(*rated, part.motor->frequency.value_or(hertz(60)));
    if (stated && derived && *stated != *derived) return {std::nullopt, true};
    return {stated ? stated : derived, false};
}

// The new motor drags the old wheel towards its own speed: load over the old load, by rated speeds where both
// are known, else by synchronous ones.
double overload(const Question& q, const Part& part, int was, int now) {
    const auto old_speed = said(q.job.plate.speed);
    const auto rated = speed_in_use(q, part);
    if (old_speed && rated) return cube_law(*old_speed, *rated);
    return cube_law(synchronous(was, hertz(60)), synchronous(now, hertz(60)));
}

Finding judge(const Question& q, const Part& part) {
    if (!part.motor) return not_concerned(id);
    const auto family = said(q.job.plate.family);
    if (family && is_electronic(*family)) return not_concerned(id);
    if (part.motor->family && is_electronic(*part.motor->family)) return not_concerned(id);
    const Poles old = old_poles(q.job);
    const Poles now = new_poles(q, part);
    const Fact want = old.count ? Fact{as_value(*old.count), Origin::plate} : Fact{};
    Answer say(id, "fan-laws", want, offered(now.count));
    if (specified_assembly(q.job, part)) return say.from("inducer").fits("specified assembly");
    if (old.disagree) return say.ask("plate disagrees with itself", {"plate.poles", "plate.speed"});
    if (!old.count) return say.ask("poles not stated", {"plate.speed", "plate.poles"});
    if (now.disagree)
        return say.ask("part disagrees with itself", {"motors.poles", "motor_ratings.speed_rpm"});
    if (!now.count) return say.ask("part does not say", {"motors.poles"});
    if (*old.count == *now.count) return say.from("mg1-10.32").fits("same poles");
    say.computed(overload(q, part, *old.count, *now.count));
    return say.fails(*now.count < *old.count ? "runs too fast" : "runs too slow");
}

}  // namespace of_poles

Rule poles() {
    using namespace of_poles;
    return {id,
            "an induction motor has the old one's pole count, for the same wheel or blade",
            Weight::hard,
            {"fan-laws", "mg1-10.32", "inducer"},
            {},
            {"plate.poles", "plate.speed", "plate.frequency", "plate.family"},
            {"motors.family electronic", "motors.poles", "motors.frequency_hz", "motor_ratings.speed_rpm"},
            judge};
}

}  // namespace endbell::rule
