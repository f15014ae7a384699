#include "engine/match/rules/rules.hpp"

namespace endbell::rule {

namespace of_shaft_diameter {

constexpr std::string_view id = rule_id::shaft_diameter;

// The measured bore decides; else the old shaft stands for it.
Finding judge(const Question& q, const Part& part) {
    if (!part.motor) return not_concerned(id);
    const Reading<Length>& reading =
        q.job.measured.bore.said() ? q.job.measured.bore : q.job.plate.shaft_diameter;
    const auto bore = reading.said();
    const auto shaft = part.motor->shaft_diameter;
    Answer say(id, "common-practice", wanted(reading), offered(shaft));
    if (specified_assembly(q.job, part)) return say.from("inducer").fits(Reason::specified_assembly);
    if (!bore) return say.ask(Reason::bore_not_stated, {"measured.bore", "plate.shaft_diameter"});
    if (!shaft) return say.ask(Reason::part_does_not_say, {"motors.shaft_diameter_in"});
    const Length allowed = q.limits.value(limit::bore_clearance);
    const Length clearance = allowed + inch(rounding);
    say.limit(q.limits, limit::bore_clearance, *bore + allowed);
    if (*shaft > *bore + clearance) return say.fails(Reason::too_thick);
    if (*shaft + clearance >= *bore) return say.fits(Reason::slip_fit);
    Remedy bushing = remedy(Cure::shaft_bushing);
    bushing.from = *shaft;
    bushing.to = *bore;
    return say.changes(Reason::bushing, {bushing});
}

}  // namespace of_shaft_diameter

Rule shaft_diameter() {
    using namespace of_shaft_diameter;
    return {id,
            "the shaft goes into the bore, alone or through a bushing, never by drilling",
            Weight::hard,
            {Reason::not_concerned, Reason::specified_assembly, Reason::bore_not_stated,
             Reason::part_does_not_say, Reason::too_thick, Reason::slip_fit, Reason::bushing},
            {"common-practice", "inducer"},
            {limit::bore_clearance},
            {"measured.bore", "plate.shaft_diameter"},
            {"motors.shaft_diameter_in"},
            judge};
}

}  // namespace endbell::rule
