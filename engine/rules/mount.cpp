#include "engine/rules/registry.hpp"

namespace endbell::inline rules::rule {

namespace {

constexpr std::string_view claim = "the motor is held as the old one was, or a band or adapter holds it";
constexpr std::string_view id = rule_id::mount;

// A motor with nothing welded to its shell can be held by a band around it.
bool round_shell(Mount mount) {
    return mount == Mount::band || mount == Mount::studs || mount == Mount::ring;
}

// A base and a face are of one piece with the motor: nothing is slipped over them.
bool adaptable(Mount mount) {
    return mount != Mount::base && mount != Mount::face;
}

Finding judge(const Query& q, const Part& part) {
    if (!part.motor) return not_concerned(id);
    const auto has = part.motor->mount;
    const auto needs = q.job.plate.mount.said();
    FindingDraft say(id, "common-practice", wanted(q.job.plate.mount), offered(has));
    if (specified_assembly(q.job, part)) return say.from("inducer").fits(Reason::specified_assembly);
    if (!needs) return say.ask(Reason::mount_not_stated, {"plate.mount"});
    if (!has) return say.ask(Reason::part_does_not_say, {"motors.mount"});
    if (*needs == *has) return say.fits(Reason::same_mount);
    if (*needs == Mount::band && round_shell(*has)) return say.fits(Reason::band_closes_on_the_shell);
    if (!adaptable(*needs) || !adaptable(*has) || *needs == Mount::band)
        return say.fails(Reason::no_such_adapter);
    Remedy held = remedy(*has == Mount::band ? Cure::mount_band : Cure::mount_adapter);
    held.mount = *needs;
    if (*has == Mount::band) held.from = part.motor->body_diameter;
    return say.changes(Reason::other_mount, {held});
}

}  // namespace

Rule mount() {
    return {id,
            claim,
            Weight::hard,
            {Reason::not_concerned, Reason::specified_assembly, Reason::mount_not_stated,
             Reason::part_does_not_say, Reason::same_mount, Reason::band_closes_on_the_shell,
             Reason::no_such_adapter, Reason::other_mount},
            {"common-practice", "inducer"},
            {},
            {"plate.mount"},
            {"motors.mount"},
            {{"motors.mount"}},
            judge};
}

}  // namespace endbell::inline rules::rule
