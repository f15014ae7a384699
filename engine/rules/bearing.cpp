#include "engine/rules/registry.hpp"

namespace endbell::inline rules::rule {

namespace {

constexpr std::string_view claim = "the bearing suits the duty, or it is said";
constexpr std::string_view id = rule_id::bearing;

// A preference: it may speak, but never ends a candidate.
Finding judge(const Query& q, const Part& part) {
    if (!part.motor) return not_concerned(id);
    const auto old = q.job.plate.bearing.said();
    const auto now = part.motor->bearing;
    FindingDraft say(id, "common-practice", wanted(q.job.plate.bearing), offered(now));
    const auto points = q.job.unit.shaft_points.said();
    const bool upright = points == ShaftPosition::up || points == ShaftPosition::down;
    const bool hard_duty = upright || q.facts.outdoors.value == true;
    if (now == Bearing::ball) return say.fits(Reason::ball);
    if (!old && !hard_duty) return say.fits(Reason::not_stated);
    if (!now) return say.caution(Reason::part_does_not_say);
    if (hard_duty) return say.caution(Reason::sleeve_upright_or_outdoors);
    if (old == Bearing::ball) return say.caution(Reason::sleeve_for_ball);
    return say.fits(Reason::sleeve_for_sleeve);
}

}  // namespace

Rule bearing() {
    return {id,
            claim,
            Weight::preference,
            {Reason::not_concerned, Reason::ball, Reason::not_stated, Reason::part_does_not_say,
             Reason::sleeve_upright_or_outdoors, Reason::sleeve_for_ball, Reason::sleeve_for_sleeve},
            {"common-practice"},
            {},
            {"plate.bearing", "unit.shaft_points", "unit.outdoors", "unit.load"},
            {},
            {{"motors.bearing"}},
            judge};
}

}  // namespace endbell::inline rules::rule
