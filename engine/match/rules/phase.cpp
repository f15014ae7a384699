#include "engine/match/rules/rules.hpp"

namespace endbell::rule {

namespace of_phase {

constexpr std::string_view id = rule_id::phase;

// What the text says and what the family is by construction, where they contradict each other, prove nothing.
struct Phases {
    std::optional<int> count;
    bool disagree = false;
};

Phases phases(std::optional<int> stated, std::optional<Family> family) {
    const auto built = family ? phase_by_construction(*family) : std::nullopt;
    if (stated && built && *stated != *built) return {std::nullopt, true};
    return {stated ? stated : built, false};
}

Finding judge(const Question& q, const Part& part) {
    if (!part.motor) return not_concerned(id);
    const Phases needs = phases(said(q.job.plate.phase), said(q.job.plate.family));
    const Phases has = phases(part.motor->phase, part.motor->family);
    const bool stated = said(q.job.plate.phase).has_value();
    const Origin origin = stated ? q.job.plate.phase.origin : q.job.plate.family.origin;
    Answer say(id, "physics", needs.count ? Fact{as_value(*needs.count), origin} : Fact{},
               offered(has.count));
    if (needs.disagree) return say.ask(Reason::plate_disagrees_with_itself, {"plate.phase", "plate.family"});
    if (!needs.count) return say.ask(Reason::phase_not_stated, {"plate.phase"});
    if (has.disagree) return say.ask(Reason::part_disagrees_with_itself, {"motors.phase", "motors.family"});
    if (!has.count) return say.ask(Reason::part_does_not_say, {"motors.phase"});
    if (*needs.count != *has.count) return say.fails(Reason::other_phase);
    return say.fits(Reason::same_phase);
}

}  // namespace of_phase

Rule phase() {
    using namespace of_phase;
    return {id,
            "the motor takes the phases that the supply has",
            Weight::hard,
            {Reason::not_concerned, Reason::plate_disagrees_with_itself, Reason::phase_not_stated,
             Reason::part_disagrees_with_itself, Reason::part_does_not_say, Reason::other_phase,
             Reason::same_phase},
            {"physics"},
            {},
            {"plate.phase", "plate.family"},
            {"motors.family", "motors.phase"},
            judge};
}

}  // namespace endbell::rule
