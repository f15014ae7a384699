#include "engine/match/rules/rules.hpp"

namespace endbell::rule {

namespace of_enclosure {

constexpr std::string_view id = "enclosure";

Finding judge(const Question& q, const Part& part) {
    if (!part.motor) return not_concerned(id);
    const auto has = part.motor->enclosure;
    const auto old = said(q.job.plate.enclosure);
    const auto outdoors = sits_outdoors(q.job);
    Answer say(id, "common-practice", wanted(q.job.plate.enclosure), offered(has));
    if (specified_assembly(q.job, part)) return say.from("inducer").fits("specified assembly");
    if (has && is_enclosed(*has)) return say.fits("enclosed");
    if (!outdoors) return say.ask("place not stated", {"unit.load", "unit.outdoors"});
    if (*outdoors) {
        if (!has) return say.ask("part does not say", {"motors.enclosure"});
        return say.fails("open motor outdoors");
    }
    if (!old) return say.not_stated("plate.enclosure");
    if (!has) return say.ask("part does not say", {"motors.enclosure"});
    if (is_enclosed(*old)) return say.caution("more open than the old");
    return say.fits("open indoors");
}

}  // namespace of_enclosure

Rule enclosure() {
    using namespace of_enclosure;
    return {id,
            "a motor outdoors is enclosed",
            Weight::hard,
            {"common-practice", "inducer"},
            {},
            {"unit.outdoors", "unit.load", "plate.enclosure"},
            {"motors.enclosure"},
            judge};
}

}  // namespace endbell::rule
