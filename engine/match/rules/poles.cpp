#include "engine/match/rules/rules.hpp"

namespace endbell::rule {

namespace of_poles {

constexpr std::string_view id = rule_id::poles;

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
    if (specified_assembly(q.job, part)) return say.from("inducer").fits(Reason::specified_assembly);
    if (old.disagree) return say.ask(Reason::plate_disagrees_with_itself, {"plate.poles", "plate.speed"});
    if (!old.count) return say.ask(Reason::poles_not_stated, {"plate.speed", "plate.poles"});
    if (now.disagree)
        return say.ask(Reason::part_disagrees_with_itself, {"motors.poles", "motor_ratings.speed_rpm"});
    if (!now.count) return say.ask(Reason::part_does_not_say, {"motors.poles"});
    if (*old.count == *now.count) return say.from("mg1-10.32").fits(Reason::same_poles);
    say.computed(overload(q, part, *old.count, *now.count));
    return say.fails(*now.count < *old.count ? Reason::runs_too_fast : Reason::runs_too_slow);
}

}  // namespace of_poles

Rule poles() {
    using namespace of_poles;
    return {id,
            "an induction motor has the old one's pole count, for the same wheel or blade",
            Weight::hard,
            {Reason::not_concerned, Reason::specified_assembly, Reason::plate_disagrees_with_itself,
             Reason::poles_not_stated, Reason::part_disagrees_with_itself, Reason::part_does_not_say,
             Reason::same_poles, Reason::runs_too_fast, Reason::runs_too_slow},
            {"fan-laws", "mg1-10.32", "inducer"},
            {},
            {"plate.poles", "plate.speed", "plate.frequency", "plate.family"},
            {"motors.family electronic", "motors.poles", "motors.frequency_hz", "motor_ratings.speed_rpm"},
            judge};
}

}  // namespace endbell::rule
