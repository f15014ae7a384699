#include "engine/match/rules/rules.hpp"

namespace endbell::rule {

namespace of_shaft_diameter {

constexpr std::string_view id = "shaft-diameter";

// The measured bore decides; else the old shaft stands for it.
Finding judge(const Question& q, const Part& part) {
    if (!part.motor) return not_concerned(id);
    const Reading<Length>& reading =
        said(q.job.measured.bore) ? q.job.measured.bore : q.job.plate.shaft_diameter;
    const auto bore = said(reading);
    const auto shaft = part.motor->shaft_diameter;
    Answer say(id, "common-practice", wanted(reading), offered(shaft));
    if (specified_assembly(q.job, part)) return say.from("inducer").fits("specified assembly");
    if (!bore) return say.ask("bore not stated", {"measured.bore", "plate.shaft_diameter"});
    if (!shaft) return say.ask("part does not say", {"motors.shaft_diameter_in"});
    const Length allowed = inch(q.limits.value("shaft.bore_clearance"));
    const Length clearance = allowed + inch(rounding);
    say.limit(q.limits, "shaft.bore_clearance", *bore + allowed);
    if (*shaft > *bore + clearance) return say.fails("too thick");
    if (*shaft + clearance >= *bore) return say.fits("slip fit");
    Remedy bushing = remedy(Cure::shaft_bushing);
    bushing.from = *shaft;
    bushing.to = *bore;
    return say.changes("bushing", {bushing});
}

}  // namespace of_shaft_diameter

Rule shaft_diameter() {
    using namespace of_shaft_diameter;
    return {id,
            "the shaft goes into the bore, alone or through a bushing, never by drilling",
            Weight::hard,
            {"common-practice", "inducer"},
            {"shaft.bore_clearance"},
            {"measured.bore", "plate.shaft_diameter"},
            {"motors.shaft_diameter_in"},
            judge};
}

}  // namespace endbell::rule
