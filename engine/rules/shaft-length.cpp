#include "engine/rules/registry.hpp"
#include "engine/rules/shaft_end.hpp"

namespace endbell::inline rules::rule {

namespace {

constexpr std::string_view claim = "the shaft reaches through the hub, and what is too long can be cut";
constexpr std::string_view id = rule_id::shaft_length;

Finding judge(const Query& q, const Part& part) {
    if (!part.motor) return not_concerned(id);
    const ShaftEnd end = shaft_end(q.job, *part.motor);
    FindingDraft say(id, "common-practice", wanted(end.needed_or_old()), offered(end.length));
    if (specified_assembly(q.job, part)) return say.from("inducer").fits(Reason::specified_assembly);
    return judge_length(end, q.limits, say);
}

}  // namespace

Rule shaft_length() {
    return {id,
            claim,
            Weight::curable,
            {Reason::to_be_cut, Reason::part_does_not_say, Reason::too_long, Reason::may_be_too_long,
             Reason::not_concerned, Reason::specified_assembly, Reason::not_stated, Reason::readings_disagree,
             Reason::too_short, Reason::shorter_than_the_old, Reason::long_enough},
            {"common-practice", "inducer"},
            {limit::shaft_length_slack},
            {"measured.shaft_needed", "plate.shaft_length", "measured.shaft_room"},
            {"motors.shaft_cuttable", "motors.shaft_length_in"},
            {{"motors.shaft_length_in"}, {"motors.shaft_cuttable", Concerns::nobody}},
            judge};
}

}  // namespace endbell::inline rules::rule
