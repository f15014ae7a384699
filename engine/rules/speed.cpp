#include "engine/rules/registry.hpp"

namespace endbell::inline rules::rule {

namespace {

constexpr std::string_view claim =
    "the rated speed is the old one's, within a tolerance that the cube law makes small";
constexpr std::string_view id = rule_id::speed;

// An electronic motor's plate speed says nothing of the line; only a stated ceiling can end it.
Finding judge_electronic(const Query& q, const Part& part) {
    const auto top = part.motor->speed_limit;
    const auto was = q.facts.speed.value;
    if (!top) return not_concerned(id);
    FindingDraft say(id, "physics", wanted(q.facts.speed));
    say.own_limit(*top);
    if (!was) return say.not_stated("plate.speed");
    if (*was > *top) return say.fails(Reason::above_its_speed_limit);
    return say.fits(Reason::within_its_speed_limit);
}

Finding judge(const Query& q, const Part& part) {
    if (!part.motor) return not_concerned(id);
    if (part.motor->family && is_electronic(*part.motor->family)) return judge_electronic(q, part);
    const auto family = q.facts.family.value;
    if (family && is_electronic(*family)) return not_concerned(id);
    const auto now = speed_in_use(q, part);
    const auto was = q.facts.speed.value;
    FindingDraft say(id, "common-practice", wanted(q.facts.speed), offered(now));
    if (specified_assembly(q.job, part)) return say.from("inducer").fits(Reason::specified_assembly);
    // Poles alone place the speed within the slip of small motors; the poles rule asks when there are none.
    if (!was) return say.not_stated("plate.speed");
    if (!now) return say.ask(Reason::part_does_not_say, {"motor_ratings.speed_rpm"});
    const double most = q.limits.value(limit::speed_match);
    const double off = (*now - *was) / *was;
    say.limit(q.limits, limit::speed_match, *was * (off < 0 ? 1 - most : 1 + most))
        .computed(cube_law(*was, *now));
    if (off > most + rounding) return say.fails(Reason::too_fast);
    if (off < -most - rounding) return say.fails(Reason::too_slow);
    return say.fits(Reason::same_speed);
}

}  // namespace

Rule speed() {
    return {id,
            claim,
            Weight::hard,
            {Reason::not_concerned, Reason::not_stated, Reason::above_its_speed_limit,
             Reason::within_its_speed_limit, Reason::specified_assembly, Reason::part_does_not_say,
             Reason::too_fast, Reason::too_slow, Reason::same_speed},
            {"common-practice", "inducer", "physics"},
            {limit::speed_match},
            {"plate.speed", "plate.family"},
            {"motors.family electronic", "motors.speed_limit_rpm", "motor_ratings.speed_rpm"},
            {{"motor_ratings.speed_rpm"}},
            judge};
}

}  // namespace endbell::inline rules::rule
