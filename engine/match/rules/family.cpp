#include <algorithm>

#include "engine/match/rules/rules.hpp"

namespace endbell::rule {

namespace of_family {

constexpr std::string_view id = "family";

// What is lost by the change, or why it cannot be. Empty: the part's own sheet decides.
std::string_view barrier(Family was, Family now) {
    if (was == Family::communicating) return "board gets no reply";
    if (now == Family::communicating) return "nothing commands it";
    if (was == Family::three_phase || now == Family::three_phase) return "other phase";
    if (was == Family::constant_airflow && is_induction(now)) return "loses constant airflow";
    if (was == Family::constant_torque && is_induction(now)) return "loses constant torque";
    if (now == Family::constant_airflow) return "needs its own program";
    if (was == Family::capacitor_run && now == Family::shaded_pole) return "loses torque";
    return "";
}

Finding judge_module(const Question& q, Answer say) {
    const auto was = said(q.job.plate.family);
    if (!was) return say.ask("family not stated", {"plate.family"});
    if (*was != Family::constant_airflow) return say.fails("no separable module");
    return say.fits("same family");
}

Finding judge(const Question& q, const Part& part) {
    if (part.module) {
        return judge_module(q, Answer(id, "two-piece", wanted(q.job.plate.family),
                                      {std::string(word(Family::constant_airflow)), Origin::catalog}));
    }
    if (!part.motor) return not_concerned(id);
    Answer say(id, "common-practice", wanted(q.job.plate.family), offered(part.motor->family));
    const auto was = said(q.job.plate.family);
    if (!was) return say.ask("family not stated", {"plate.family"});
    const auto now = part.motor->family;
    if (!now) return say.ask("part does not say", {"motors.family"});
    if (*was == *now) return say.fits("same family");
    if (said(q.job.unit.load) == Load::draft_inducer)
        return say.from("inducer").fails("not the specified kind");
    const std::string_view lost = barrier(*was, *now);
    if (!lost.empty()) return say.fails(lost);
    const std::vector<Family>& listed = part.motor->retrofit_for;
    say.from("retrofit-wiring");
    if (std::find(listed.begin(), listed.end(), *was) == listed.end())
        return say.fails("not listed as retrofit");
    // Constant torque in place of constant airflow gives up the held cfm: that is said.
    const bool gives_up_airflow = *was == Family::constant_airflow;
    return say.changes(gives_up_airflow ? "retrofit without constant airflow" : "listed retrofit",
                       {remedy(Cure::airflow_setup)}, gives_up_airflow);
}

}  // namespace of_family

Rule family() {
    using namespace of_family;
    return {id,
            "the motor makes its torque as the old one did, or its own sheet lists the retrofit",
            Weight::hard,
            {"common-practice", "two-piece", "inducer", "retrofit-wiring"},
            {},
            {"plate.family", "unit.load"},
            {"motors.family", "motors.retrofit_for"},
            judge};
}

}  // namespace endbell::rule
