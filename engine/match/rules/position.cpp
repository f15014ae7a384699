#include <algorithm>

#include "engine/match/rules/rules.hpp"

namespace endbell::rule {

namespace of_position {

constexpr std::string_view id = "position";

bool lists(const std::vector<ShaftPosition>& allowed, ShaftPosition position) {
    return std::find(allowed.begin(), allowed.end(), position) != allowed.end();
}

Finding judge(const Question& q, const Part& part) {
    if (!part.motor) return not_concerned(id);
    const std::vector<ShaftPosition>& allowed = part.motor->positions;
    std::string listed;
    for (const ShaftPosition p : allowed) listed += (listed.empty() ? "" : ";") + std::string(word(p));
    Answer say(id, "common-practice", wanted(q.job.unit.shaft_points),
               allowed.empty() ? Fact{} : Fact{listed, Origin::catalog});
    if (specified_assembly(q.job, part)) return say.from("inducer").fits("specified assembly");
    const auto points = said(q.job.unit.shaft_points);
    const bool outdoors = sits_outdoors(q.job).value_or(false);
    const bool any = lists(allowed, ShaftPosition::all);
    if (!points) {
        // Condensers are built shaft up and shaft down: outdoors it cannot be assumed.
        if (outdoors) return say.ask("position not stated", {"unit.shaft_points"});
        return any ? say.fits("any position") : say.not_stated("unit.shaft_points");
    }
    if (allowed.empty()) return say.ask("part does not say", {"motors.positions"});
    if (!any && !lists(allowed, *points)) return say.fails("other position");
    if (outdoors && *points == ShaftPosition::up)
        return say.changes("rain shield", {remedy(Cure::rain_shield)});
    return say.fits("position allowed");
}

}  // namespace of_position

Rule position() {
    using namespace of_position;
    return {id,
            "the motor may be mounted with its shaft pointing this way",
            Weight::hard,
            {"common-practice", "inducer"},
            {},
            {"unit.shaft_points", "unit.outdoors", "unit.load"},
            {"motors.positions"},
            judge};
}

}  // namespace endbell::rule
