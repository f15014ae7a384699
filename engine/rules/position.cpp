#include <algorithm>

#include "engine/rules/registry.hpp"

namespace endbell::inline rules::rule {

namespace {

constexpr std::string_view claim = "the motor may be mounted with its shaft pointing this way";
constexpr std::string_view id = rule_id::position;

bool lists(const std::vector<ShaftPosition>& allowed, ShaftPosition position) {
    return std::find(allowed.begin(), allowed.end(), position) != allowed.end();
}

// Shaft up needs a slinger and an end seal, shaft down a thrust bearing: a motor is built for the one, the other, or all.
Finding judge(const Query& q, const Part& part) {
    if (!part.motor) return not_concerned(id);
    const std::vector<ShaftPosition>& allowed = part.motor->positions;
    std::string listed;
    for (const ShaftPosition p : allowed) listed += (listed.empty() ? "" : ";") + std::string(word(p));
    FindingDraft say(id, "common-practice", wanted(q.job.unit.shaft_points),
                     allowed.empty() ? Datum{} : Datum{listed, Origin::catalog});
    if (specified_assembly(q.job, part)) return say.from("inducer").fits(Reason::specified_assembly);
    const auto points = q.job.unit.shaft_points.said();
    const bool outdoors = q.facts.outdoors.value.value_or(false);
    const bool any = lists(allowed, ShaftPosition::all);
    if (!points) {
        // Condensers are built shaft up and shaft down: outdoors it cannot be assumed.
        if (outdoors) return say.ask(Reason::position_not_stated, {"unit.shaft_points"});
        return any ? say.fits(Reason::any_position) : say.not_stated("unit.shaft_points");
    }
    if (allowed.empty()) return say.ask(Reason::part_does_not_say, {"motors.positions"});
    if (!any && !lists(allowed, *points)) return say.fails(Reason::other_position);
    if (outdoors && *points == ShaftPosition::up) {
        Remedy shield = remedy(Cure::rain_shield);
        shield.from = part.motor->shaft_diameter;  // a shield for a thicker shaft lets the rain in
        return say.changes(Reason::rain_shield, {shield});
    }
    return say.fits(Reason::position_allowed);
}

}  // namespace

Rule position() {
    return {id,
            claim,
            Weight::hard,
            {Reason::not_concerned, Reason::specified_assembly, Reason::position_not_stated,
             Reason::any_position, Reason::not_stated, Reason::part_does_not_say, Reason::other_position,
             Reason::rain_shield, Reason::position_allowed},
            {"common-practice", "inducer"},
            {},
            {"unit.shaft_points", "unit.outdoors", "unit.load"},
            {"motors.positions", "motors.shaft_diameter_in"},
            {{"motors.positions"}},
            judge};
}

}  // namespace endbell::inline rules::rule
