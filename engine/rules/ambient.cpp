#include "engine/rules/registry.hpp"

namespace endbell::inline rules::rule {

namespace {

constexpr std::string_view claim = "the motor is rated for air as hot as the old one was";
constexpr std::string_view id = rule_id::ambient;

// A motor that is rated for cooler air than it meets dies early, and nothing else of a part makes up for it.
Finding judge(const Query& q, const Part& part) {
    if (!part.motor) return not_concerned(id);
    const auto old = q.job.plate.ambient.said();
    const auto now = part.motor->ambient;
    FindingDraft say(id, "common-practice", wanted(q.job.plate.ambient), offered(now));
    if (specified_assembly(q.job, part)) return say.from("inducer").fits(Reason::specified_assembly);
    if (old) {
        if (!now) return say.ask(Reason::part_does_not_say, {"motors.ambient_c"});
        const double least = old->in_celsius() - q.limits.value(limit::ambient_short).in(celsius_degree);
        say.limit(q.limits, limit::ambient_short, Temperature::celsius(least));
        if (now->in_celsius() < least - rounding) return say.fails(Reason::rated_too_cool);
        return say.fits(Reason::rated_as_hot);
    }
    if (q.facts.outdoors.value != true) return say.not_stated("plate.ambient");
    // Condenser discharge air is hot: the usual outdoor rating stands in, and it is said.
    const double usual = q.limits.value(limit::ambient_outdoor).in_celsius();
    say.limit(q.limits, limit::ambient_outdoor, Temperature::celsius(usual));
    if (now && now->in_celsius() >= usual - rounding) return say.caution(Reason::usual_outdoor_rating);
    return say.ask(Reason::ambient_not_stated, {"plate.ambient"});
}

}  // namespace

Rule ambient() {
    return {
        id,
        claim,
        Weight::hard,
        {Reason::not_concerned, Reason::specified_assembly, Reason::part_does_not_say, Reason::rated_too_cool,
         Reason::rated_as_hot, Reason::not_stated, Reason::usual_outdoor_rating, Reason::ambient_not_stated},
        {"common-practice", "inducer"},
        {limit::ambient_short, limit::ambient_outdoor},
        {"plate.ambient", "unit.outdoors", "unit.load"},
        {"motors.ambient_c"},
        {{"motors.ambient_c"}},
        judge};
}

}  // namespace endbell::inline rules::rule
