#include "engine/rules/registry.hpp"

namespace endbell::inline rules::rule {

namespace {

constexpr std::string_view claim =
    "the motor drives as many wheels as the old one; an unused end is cut or guarded";
constexpr std::string_view id = rule_id::double_shaft;

Finding judge(const Question& q, const Part& part) {
    if (!part.motor) return not_concerned(id);
    const auto has = part.motor->double_shaft;
    const auto needs = q.job.plate.double_shaft.said();
    Answer say(id, "common-practice", wanted(q.job.plate.double_shaft), offered(has));
    if (specified_assembly(q.job, part)) return say.from("inducer").fits(Reason::specified_assembly);
    if (!needs && has != true) return say.not_stated("plate.double_shaft");
    if (!has) return say.ask(Reason::part_does_not_say, {"motors.double_shaft"});
    if (needs == true && !*has) return say.fails(Reason::single_shaft);
    if (needs == true || !*has) return say.fits(Reason::same_shafts);
    if (part.motor->shaft_cuttable == false) return say.caution(Reason::unused_end_to_guard);
    return say.changes(Reason::unused_end_to_cut, {remedy(Cure::shaft_cut)}, !needs);
}

}  // namespace

Rule double_shaft() {
    return {id,
            claim,
            Weight::hard,
            {Reason::not_concerned, Reason::specified_assembly, Reason::not_stated, Reason::part_does_not_say,
             Reason::single_shaft, Reason::same_shafts, Reason::unused_end_to_guard,
             Reason::unused_end_to_cut, Reason::bushing, Reason::too_thick, Reason::bore_just_short,
             Reason::bore_not_stated, Reason::to_be_cut, Reason::too_long, Reason::may_be_too_long,
             Reason::too_short, Reason::shorter_than_the_old, Reason::readings_disagree},
            {"common-practice", "inducer"},
            {},
            {"plate.double_shaft"},
            {"motors.double_shaft", "motors.shaft_cuttable"},
            {{"motors.double_shaft"}},
            judge};
}

}  // namespace endbell::inline rules::rule
