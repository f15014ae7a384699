#include "engine/rules/registry.hpp"

namespace endbell::inline rules::rule {

namespace {

constexpr std::string_view claim = "the motor turns the way the old one did, or can be set to";
constexpr std::string_view id = rule_id::rotation;

// Both sides are already normalised to the shaft end; a bare CW never gets this far as a value.
Finding judge(const Query& q, const Part& part) {
    if (!part.motor) return not_concerned(id);
    const auto has = part.motor->rotation;
    const auto needs = q.job.plate.rotation.said();
    FindingDraft say(id, "rotation-words", wanted(q.job.plate.rotation), offered(has));
    if (specified_assembly(q.job, part)) return say.from("inducer").fits(Reason::specified_assembly);
    if (!has) return say.ask(Reason::part_does_not_say, {"motors.rotation"});
    if (*has == Rotation::reversible) {
        return say.changes(Reason::to_be_set, {remedy(Cure::rotation_selection)},
                           !needs || *needs == Rotation::reversible);
    }
    if (!needs) return say.ask(Reason::rotation_not_stated, {"plate.rotation"});
    if (*needs == Rotation::reversible)
        return say.ask(Reason::old_motor_was_set_either_way, {"plate.rotation"});
    if (*needs != *has) return say.fails(Reason::turns_the_other_way);
    return say.fits(Reason::same_rotation);
}

}  // namespace

Rule rotation() {
    return {id,
            claim,
            Weight::hard,
            {Reason::not_concerned, Reason::specified_assembly, Reason::part_does_not_say, Reason::to_be_set,
             Reason::rotation_not_stated, Reason::old_motor_was_set_either_way, Reason::turns_the_other_way,
             Reason::same_rotation},
            {"rotation-words", "mg1-2.24", "iec-60034-8", "inducer"},
            {},
            {"plate.rotation"},
            {"motors.rotation"},
            {{"motors.rotation"}, {"motors.rotation_viewed_from", Concerns::nobody}},
            judge};
}

}  // namespace endbell::inline rules::rule
