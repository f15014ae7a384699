#include "engine/match/rules/rules.hpp"

namespace endbell::rule {

namespace of_phase {

constexpr std::string_view id = "phase";

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
    if (needs.disagree) return say.ask("plate disagrees with itself", {"plate.phase", "plate.family"});
    if (!needs.count) return say.ask("phase not stated", {"plate.phase"});
    if (has.disagree) return say.ask("part disagrees with itself", {"motors.phase", "motors.family"});
    if (!has.count) return say.ask("part does not say", {"motors.phase"});
    if (*needs.count != *has.count) return say.fails("other phase");
    return say.fits("same phase");
}

}  // namespace of_phase

Rule phase() {
    using namespace of_phase;
    return {id,
            "the motor takes the phases that the supply has",
            Weight::hard,
            {"physics"},
            {},
            {"plate.phase", "plate.family"},
            {"motors.family", "motors.phase"},
            judge};
}

}  // namespace endbell::rule
