#include <algorithm>

#include "engine/base/text.hpp"
#include "engine/rules/registry.hpp"

namespace endbell::inline rules::rule {

namespace {

constexpr std::string_view claim = "a draft inducer is the assembly that the equipment specifies";
constexpr std::string_view id = rule_id::inducer_assembly;

// Part of a certified combustion system: no sizing up or down and no look-alikes.
Finding judge(const Query& q, const Part& part) {
    if (!part.motor || q.job.unit.load.said() != Load::draft_inducer) return not_concerned(id);
    FindingDraft say(id, "inducer", wanted(q.job.unit.assembly_number), offered(part.motor->assembly));
    const auto number = q.job.unit.assembly_number.said();
    if (!number) return say.ask(Reason::assembly_not_stated, {"unit.assembly_number"});
    if (!part.motor->assembly) return say.ask(Reason::part_does_not_say, {"motors.assembly"});
    if (number_key(*number) != number_key(*part.motor->assembly)) return say.fails(Reason::other_assembly);
    return say.fits(Reason::specified_assembly);
}

}  // namespace

Rule inducer_assembly() {
    return {id,
            claim,
            Weight::hard,
            {Reason::not_concerned, Reason::assembly_not_stated, Reason::part_does_not_say,
             Reason::other_assembly, Reason::specified_assembly},
            {"inducer"},
            {},
            {"unit.load", "unit.assembly_number"},
            {"motors.assembly"},
            {{"motors.assembly", Concerns::inducers}},
            judge};
}

}  // namespace endbell::inline rules::rule
