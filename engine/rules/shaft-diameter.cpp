#include "engine/rules/registry.hpp"
#include "engine/rules/shaft_end.hpp"

namespace endbell::inline rules::rule {

namespace {

constexpr std::string_view claim =
    "the shaft goes into the bore, alone or through a bushing, never by drilling";
constexpr std::string_view id = rule_id::shaft_diameter;

Finding judge(const Query& q, const Part& part) {
    if (!part.motor) return not_concerned(id);
    const ShaftEnd end = shaft_end(q.job, *part.motor);
    FindingDraft say(id, "common-practice", wanted(end.bore_or_shaft()), offered(end.diameter));
    if (specified_assembly(q.job, part)) return say.from("inducer").fits(Reason::specified_assembly);
    return judge_diameter(end, q.limits, say);
}

}  // namespace

Rule shaft_diameter() {
    return {id,
            claim,
            Weight::hard,
            {Reason::not_concerned, Reason::specified_assembly, Reason::bore_not_stated,
             Reason::part_does_not_say, Reason::bore_just_short, Reason::too_thick, Reason::slip_fit,
             Reason::bushing},
            {"common-practice", "inducer"},
            {limit::bore_clearance, limit::bore_standard_short},
            {"measured.bore", "plate.shaft_diameter"},
            {"motors.shaft_diameter_in"},
            {{"motors.shaft_diameter_in"}},
            judge};
}

}  // namespace endbell::inline rules::rule
