#include <cmath>

#include "engine/rules/registry.hpp"

namespace endbell::inline rules::rule {

namespace {

constexpr std::string_view claim =
    "studs, lugs or a face meet the holes that are there, or an adapter joins them";
constexpr std::string_view id = rule_id::bolt_circle;

bool has_circle(Mount mount) {
    return mount == Mount::studs || mount == Mount::lugs || mount == Mount::face;
}

// Only between equal mounts: where they differ, the mount rule has already named what joins them.
Finding judge(const Query& q, const Part& part) {
    if (!part.motor) return not_concerned(id);
    const auto mount = q.job.plate.mount.said();
    if (!mount || !has_circle(*mount) || part.motor->mount != mount) return not_concerned(id);
    const auto needs = q.job.plate.bolt_circle.said();
    const auto has = part.motor->bolt_circle;
    FindingDraft say(id, "common-practice", wanted(q.job.plate.bolt_circle), offered(has));
    if (specified_assembly(q.job, part)) return say.from("inducer").fits(Reason::specified_assembly);
    if (!needs) return say.not_stated("plate.bolt_circle");
    if (!has) return say.ask(Reason::part_does_not_say, {"motors.bolt_circle_in"});
    const Length play = q.limits.value(limit::bolt_circle_match);
    say.limit(q.limits, limit::bolt_circle_match, play);
    if (std::abs((*has - *needs).in(inch)) <= play.in(inch) + rounding) return say.fits(Reason::same_circle);
    if (*mount == Mount::face) return say.fails(Reason::other_circle);
    Remedy adapter = remedy(Cure::mount_adapter);
    adapter.mount = *mount;
    adapter.from = *has;
    adapter.to = *needs;
    return say.changes(Reason::other_circle, {adapter});
}

}  // namespace

Rule bolt_circle() {
    return {id,
            claim,
            Weight::curable,
            {Reason::not_concerned, Reason::specified_assembly, Reason::not_stated, Reason::part_does_not_say,
             Reason::same_circle, Reason::other_circle},
            {"common-practice", "inducer"},
            {limit::bolt_circle_match},
            {"plate.bolt_circle", "plate.mount"},
            {"motors.mount", "motors.bolt_circle_in"},
            {{"motors.bolt_circle_in", Concerns::bolted}},
            judge};
}

}  // namespace endbell::inline rules::rule
