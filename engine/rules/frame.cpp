#include "engine/facts/rating.hpp"
#include "engine/rules/registry.hpp"

namespace endbell::inline rules::rule {

namespace {

constexpr std::string_view claim =
    "a motor on feet or in a cradle has the old one's frame: its feet, rings and shaft height";
constexpr std::string_view id = rule_id::frame;

// Only between equal mounts: where they differ, the mount rule has already said so.
Finding judge(const Query& q, const Part& part) {
    if (!part.motor) return not_concerned(id);
    const auto mount = q.job.plate.mount.said();
    if (!mount || !held_by_its_frame(*mount) || part.motor->mount != mount) return not_concerned(id);
    FindingDraft say(id, "common-practice", wanted(q.job.plate.frame), offered(part.motor->frame));
    if (specified_assembly(q.job, part)) return say.from("inducer").fits(Reason::specified_assembly);
    const auto old = q.job.plate.frame.said();
    const auto needs = old ? frame_number(*old) : std::nullopt;
    if (!needs) return say.not_stated("plate.frame");
    const auto has = part.motor->frame ? frame_number(*part.motor->frame) : std::nullopt;
    if (!has) return say.ask(Reason::part_does_not_say, {"motors.frame"});
    if (*needs == *has) return say.fits(Reason::same_frame);
    return say.fails(Reason::other_frame);
}

}  // namespace

Rule frame() {
    return {id,
            claim,
            Weight::hard,
            {Reason::not_concerned, Reason::specified_assembly, Reason::not_stated, Reason::part_does_not_say,
             Reason::same_frame, Reason::other_frame},
            {"common-practice", "inducer"},
            {},
            {"plate.frame", "plate.mount"},
            {"motors.mount", "motors.frame"},
            {{"motors.frame", Concerns::held_by_frame}},
            judge};
}

}  // namespace endbell::inline rules::rule
