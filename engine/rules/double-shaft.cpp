#include <utility>

#include "engine/rules/registry.hpp"
#include "engine/rules/shaft_end.hpp"

namespace endbell::inline rules::rule {

namespace {

constexpr std::string_view claim =
    "the motor drives as many wheels as the old one, each by a shaft that fits it; an unused end is cut or "
    "guarded";
constexpr std::string_view id = rule_id::double_shaft;

ShaftEnd second_end(const FailedUnit& job, const Motor& motor) {
    return {job.measured.second_bore,
            job.plate.second_shaft_diameter,
            job.measured.second_shaft_needed,
            job.plate.second_shaft_length,
            job.measured.second_shaft_room,
            motor.second_shaft_diameter,
            motor.second_shaft_length,
            motor.shaft_cuttable,
            "measured.second_bore",
            "plate.second_shaft_diameter",
            "measured.second_shaft_needed",
            "measured.second_shaft_room",
            "motors.second_shaft_diameter_in",
            "motors.second_shaft_length_in"};
}

// The worse of the two, with what either needs to be done or asked.
Finding both(Finding a, Finding b) {
    if (b.verdict > a.verdict) std::swap(a, b);
    if (b.verdict == a.verdict) {
        a.remedies.insert(a.remedies.end(), b.remedies.begin(), b.remedies.end());
        a.asks.insert(a.asks.end(), b.asks.begin(), b.asks.end());
    }
    a.caution = a.caution || b.caution;
    return a;
}

// The first end is judged by shaft-diameter and shaft-length.
Finding judge_second_end(const Query& q, const Motor& motor) {
    const ShaftEnd end = second_end(q.job, motor);
    Finding found =
        both(judge_diameter(end, q.limits,
                            {id, "common-practice", wanted(end.bore_or_shaft()), offered(end.diameter)}),
             judge_length(end, q.limits,
                          {id, "common-practice", wanted(end.needed_or_old()), offered(end.length)}));
    if (found.verdict == Verdict::fits) found.reason = Reason::same_shafts;
    return found;
}

Finding judge(const Query& q, const Part& part) {
    if (!part.motor) return not_concerned(id);
    const auto has = part.motor->double_shaft;
    const auto needs = q.job.plate.double_shaft.said();
    FindingDraft say(id, "common-practice", wanted(q.job.plate.double_shaft), offered(has));
    if (specified_assembly(q.job, part)) return say.from("inducer").fits(Reason::specified_assembly);
    if (!needs && has != true) return say.not_stated("plate.double_shaft");
    if (!has) return say.ask(Reason::part_does_not_say, {"motors.double_shaft"});
    if (needs == true && !*has) return say.fails(Reason::single_shaft);
    if (needs == true) return judge_second_end(q, *part.motor);
    if (!*has) return say.fits(Reason::same_shafts);
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
            {limit::bore_clearance, limit::bore_standard_short, limit::shaft_length_slack},
            {"plate.double_shaft", "measured.second_bore", "plate.second_shaft_diameter",
             "measured.second_shaft_needed", "plate.second_shaft_length", "measured.second_shaft_room"},
            {"motors.double_shaft", "motors.second_shaft_diameter_in", "motors.second_shaft_length_in",
             "motors.shaft_cuttable"},
            {{"motors.double_shaft"},
             {"motors.second_shaft_diameter_in", Concerns::nobody},
             {"motors.second_shaft_length_in", Concerns::nobody}},
            judge};
}

}  // namespace endbell::inline rules::rule
