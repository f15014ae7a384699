#include "engine/rules/registry.hpp"

namespace endbell::inline rules::rule {

namespace {

constexpr std::string_view claim = "the motor takes the phases that the supply has";
constexpr std::string_view id = rule_id::phase;

// The supply is known by what ran on it: the old motor's phases, as its plate says or its family has them.
Finding judge(const Query& q, const Part& part) {
    if (!part.motor) return not_concerned(id);
    const DerivedFact<int>& needs = q.facts.phase;
    const DerivedFact<int> has = phase_of(*part.motor);
    FindingDraft say(id, "physics", wanted(needs), offered(has.value));
    if (needs.disagree)
        return say.ask(Reason::plate_disagrees_with_itself,
                       {"plate.phase", "plate.family", "equipment.supply"});
    if (!needs) return say.ask(Reason::phase_not_stated, {"plate.phase"});
    if (has.disagree) return say.ask(Reason::part_disagrees_with_itself, {"motors.phase", "motors.family"});
    if (!has) return say.ask(Reason::part_does_not_say, {"motors.phase"});
    if (*needs != *has) return say.fails(Reason::other_phase);
    return say.fits(Reason::same_phase);
}

}  // namespace

Rule phase() {
    return {id,
            claim,
            Weight::hard,
            {Reason::not_concerned, Reason::plate_disagrees_with_itself, Reason::phase_not_stated,
             Reason::part_disagrees_with_itself, Reason::part_does_not_say, Reason::other_phase,
             Reason::same_phase},
            {"physics"},
            {},
            {"plate.phase", "plate.family"},
            {"motors.family", "motors.phase"},
            {{"motors.phase"}},
            judge};
}

}  // namespace endbell::inline rules::rule
