#include "engine/match/rules/rules.hpp"

namespace endbell::rule {

namespace {

constexpr std::string_view id = "phase";

Finding judge(const Question& q, const Part& part) {
    if (!part.motor) return not_concerned(id);
    const auto family = said(q.job.plate.family);
    auto has = part.motor->phase;
    if (!has && part.motor->family) has = phase_by_construction(*part.motor->family);
    auto needs = said(q.job.plate.phase);
    const bool constructed = !needs && family && phase_by_construction(*family);
    if (constructed) needs = phase_by_construction(*family);
    const Fact want =
        constructed ? Fact{as_value(*needs), q.job.plate.family.origin} : wanted(q.job.plate.phase);
    const Answer say(id, "physics", want, offered(has));
    if (!needs) return say.ask("phase not stated", {"plate.phase"});
    if (!has) return say.ask("part does not say", {"motors.phase"});
    if (*needs != *has) return say.fails("other phase");
    return say.fits("same phase");
}

}  // namespace

Rule phase() {
    return {id,           "the motor takes the phases that the supply has",
            Weight::hard, {"physics"},
            {},           {"plate.phase", "plate.family"},
            judge};
}

}  // namespace endbell::rule
