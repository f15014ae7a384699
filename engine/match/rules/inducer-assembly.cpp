#include <algorithm>

#include "engine/base/text.hpp"
#include "engine/match/rules/rules.hpp"

namespace endbell::rule {

namespace of_inducer_assembly {

constexpr std::string_view id = "inducer-assembly";

// Part of a certified combustion system: no sizing up or down and no look-alikes.
Finding judge(const Question& q, const Part& part) {
    if (!part.motor || said(q.job.unit.load) != Load::draft_inducer) return not_concerned(id);
    Answer say(id, "inducer", wanted(q.job.unit.assembly_number), offered(part.motor->assembly));
    const auto number = said(q.job.unit.assembly_number);
    if (!number) return say.ask("assembly not stated", {"unit.assembly_number"});
    if (!part.motor->assembly) return say.ask("part does not say", {"motors.assembly"});
    if (number_key(*number) != number_key(*part.motor->assembly)) return say.fails("other assembly");
    return say.fits("specified assembly");
}

}  // namespace of_inducer_assembly

Rule inducer_assembly() {
    using namespace of_inducer_assembly;
    return {id,
            "a draft inducer is the assembly that the equipment specifies",
            Weight::hard,
            {"inducer"},
            {},
            {"unit.load", "unit.assembly_number"},
            {"motors.assembly"},
            judge};
}

}  // namespace endbell::rule
