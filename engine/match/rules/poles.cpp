#include "engine/match/rules/rules.hpp"

namespace endbell::rule {

namespace {

constexpr std::string_view id = "poles";

std::optional<int> poles_of(const Question& q, const Part& part) {
    if (part.motor->poles) return part.motor->poles;
    const auto rating = rating_in_use(q, part);
    if (!rating || !rating->speed) return std::nullopt;
    return poles_from(*rating->speed, part.motor->frequency.value_or(hertz(60)));
}

// The new motor drags the old wheel towards its own speed: load over the old load, by rated speeds where both
// are known, else by synchronous ones.
double overload(const Question& q, const Part& part, int was, int now) {
    const auto old_speed = said(q.job.plate.speed);
    const auto rating = rating_in_use(q, part);
    if (old_speed && rating && rating->speed) return cube_law(*old_speed, *rating->speed);
    return cube_law(synchronous(was, hertz(60)), synchronous(now, hertz(60)));
}

Finding judge(const Question& q, const Part& part) {
    if (!part.motor) return not_concerned(id);
    const auto family = said(q.job.plate.family);
    if (family && is_electronic(*family)) return not_concerned(id);
    if (part.motor->family && is_electronic(*part.motor->family)) return not_concerned(id);
    const Poles old = old_poles(q.job);
    const auto now = poles_of(q, part);
    const Fact want = old.count ? Fact{as_value(*old.count), Origin::plate} : Fact{};
    Answer say(id, "fan-laws", want, offered(now));
    if (specified_assembly(q.job, part)) return say.from("inducer").fits("specified assembly");
    if (old.disagree) return say.ask("plate disagrees with itself", {"plate.poles", "plate.speed"});
    if (!old.count) return say.ask("poles not stated", {"plate.speed", "plate.poles"});
    if (!now) return say.ask("part does not say", {"motors.poles"});
    if (*old.count == *now) return say.from("mg1-10.32").fits("same poles");
    say.computed(overload(q, part, *old.count, *now));
    return say.fails(*now < *old.count ? "runs too fast" : "runs too slow");
}

}  // namespace

Rule poles() {
    return {id,           "an induction motor has the old one's pole count, for the same wheel or blade",
            Weight::hard, {"fan-laws", "mg1-10.32", "inducer"},
            {},           {"plate.poles", "plate.speed", "plate.frequency", "plate.family"},
            judge};
}

}  // namespace endbell::rule
