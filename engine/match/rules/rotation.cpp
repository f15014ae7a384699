#include "engine/match/rules/rules.hpp"

namespace endbell::rule {

namespace of_rotation {

constexpr std::string_view id = "rotation";

// Both sides are already normalised to the shaft end; a bare CW never gets this far as a value.
Finding judge(const Question& q, const Part& part) {
    if (!part.motor) return not_concerned(id);
    const auto has = part.motor->rotation;
    const auto needs = said(q.job.plate.rotation);
    Answer say(id, "rotation-words", wanted(q.job.plate.rotation), offered(has));
    if (specified_assembly(q.job, part)) return say.from("inducer").fits("specified assembly");
    if (!has) return say.ask("part does not say", {"motors.rotation"});
    if (*has == Rotation::reversible) {
        return say.changes("to be set", {remedy(Cure::rotation_selection)},
                           !needs || *needs == Rotation::reversible);
    }
    if (!needs) return say.ask("rotation not stated", {"plate.rotation"});
    if (*needs == Rotation::reversible) return say.ask("old motor was set either way", {"plate.rotation"});
    if (*needs != *has) return say.fails("turns the other way");
    return say.fits("same rotation");
}

}  // namespace of_rotation

Rule rotation() {
    using namespace of_rotation;
    return {id,
            "the motor turns the way the old one did, or can be set to",
            Weight::hard,
            {"rotation-words", "mg1-2.24", "iec-60034-8", "inducer"},
            {},
            {"plate.rotation"},
            {"motors.rotation"},
            judge};
}

}  // namespace endbell::rule
