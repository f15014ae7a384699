#include "engine/rules/registry.hpp"

namespace endbell::inline rules::rule {

namespace {

constexpr std::string_view claim = "the motor is made for the belt, or for the shaft, that it drives by";
constexpr std::string_view id = rule_id::drive;

/// A belt pulls at the shaft from one side and starts hard; a wheel on the shaft pushes along it and cools the shell.
Finding judge(const Query& q, const Part& part) {
    if (!part.motor) return not_concerned(id);
    const DerivedFact<bool>& belt = q.facts.belt;
    const DerivedFact<Drive> made_for = drive_of(*part.motor);
    FindingDraft say(id, "common-practice", wanted(belt), offered(made_for.value));
    if (specified_assembly(q.job, part)) return say.from("inducer").fits(Reason::specified_assembly);
    if (made_for.is(Drive::either)) return say.fits(Reason::made_for_either_drive);
    if (!belt) return say.ask(Reason::drive_not_stated, {"unit.belt_drive"});
    if (!made_for) return say.ask(Reason::part_does_not_say, {"motors.drive"});
    if (*belt == (*made_for == Drive::belt)) return say.fits(Reason::same_drive);
    if (!*belt) return say.fails(Reason::made_for_a_belt);
    return say.fails(made_for.because == Because::air_over ? Reason::no_air_over_it_on_a_belt
                                                           : Reason::not_made_for_a_belt);
}

}  // namespace

Rule drive() {
    return {id,
            claim,
            Weight::hard,
            {Reason::not_concerned, Reason::specified_assembly, Reason::made_for_either_drive,
             Reason::drive_not_stated, Reason::part_does_not_say, Reason::same_drive, Reason::made_for_a_belt,
             Reason::no_air_over_it_on_a_belt, Reason::not_made_for_a_belt},
            {"common-practice", "inducer"},
            {},
            {"unit.belt_drive", "unit.load", "plate.family"},
            {"motors.drive", "motors.family", "motors.enclosure"},
            {{"motors.drive", Concerns::made_for_belts_too}},
            judge};
}

}  // namespace endbell::inline rules::rule
