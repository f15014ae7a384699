#include "engine/match/rules/rules.hpp"

namespace endbell::rule {

namespace of_mount {

constexpr std::string_view id = "mount";

// A motor with nothing welded to its shell can be held by a band around it.
bool round_shell(Mount mount) {
    return mount == Mount::band || mount == Mount::studs || mount == Mount::ring;
}

bool adaptable(Mount mount) {
    return mount != Mount::base && mount != Mount::face;
}

Finding judge(const Question& q, const Part& part) {
    if (!part.motor) return not_concerned(id);
    const auto has = part.motor->mount;
    const auto needs = said(q.job.plate.mount);
    Answer say(id, "common-practice", wanted(q.job.plate.mount), offered(has));
    if (specified_assembly(q.job, part)) return say.from("inducer").fits("specified assembly");
    if (!needs) return say.ask("mount not stated", {"plate.mount"});
    if (!has) return say.ask("part does not say", {"motors.mount"});
    if (*needs == *has) return say.fits("same mount");
    if (*needs == Mount::band && round_shell(*has)) return say.fits("band closes on the shell");
    if (!adaptable(*needs) || !adaptable(*has) || *needs == Mount::band) return say.fails("no such adapter");
    Remedy held = remedy(*has == Mount::band ? Cure::mount_band : Cure::mount_adapter);
    held.mount = *needs;
    if (*has == Mount::band) held.from = part.motor->body_diameter;
    return say.changes("other mount", {held});
}

}  // namespace of_mount

Rule mount() {
    using namespace of_mount;
    return {id,
            "the motor is held as the old one was, or a band or adapter holds it",
            Weight::hard,
            {"common-practice", "inducer"},
            {},
            {"plate.mount"},
            {"motors.mount"},
            judge};
}

}  // namespace endbell::rule
