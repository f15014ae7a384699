#include "engine/rules/registry.hpp"

namespace endbell::inline rules::rule {

namespace {

constexpr std::string_view claim = "a motor outdoors is enclosed";
constexpr std::string_view id = rule_id::enclosure;

// Rain ends an open motor outdoors; indoors the old enclosure is only what one would like to keep.
Finding judge(const Query& q, const Part& part) {
    if (!part.motor) return not_concerned(id);
    const auto has = part.motor->enclosure;
    const auto old = q.job.plate.enclosure.said();
    const auto outdoors = q.facts.outdoors.value;
    FindingDraft say(id, "common-practice", wanted(q.job.plate.enclosure), offered(has));
    if (specified_assembly(q.job, part)) return say.from("inducer").fits(Reason::specified_assembly);
    if (has && is_enclosed(*has)) return say.fits(Reason::enclosed);
    if (!outdoors) return say.ask(Reason::place_not_stated, {"unit.load", "unit.outdoors"});
    if (*outdoors) {
        if (!has) return say.ask(Reason::part_does_not_say, {"motors.enclosure"});
        return say.fails(Reason::open_motor_outdoors);
    }
    if (!old) return say.not_stated("plate.enclosure");
    if (!has) return say.ask(Reason::part_does_not_say, {"motors.enclosure"});
    if (is_enclosed(*old)) return say.caution(Reason::more_open_than_the_old);
    return say.fits(Reason::open_indoors);
}

}  // namespace

Rule enclosure() {
    return {id,
            claim,
            Weight::hard,
            {Reason::not_concerned, Reason::specified_assembly, Reason::enclosed, Reason::place_not_stated,
             Reason::part_does_not_say, Reason::open_motor_outdoors, Reason::not_stated,
             Reason::more_open_than_the_old, Reason::open_indoors},
            {"common-practice", "inducer"},
            {},
            {"unit.outdoors", "unit.load", "plate.enclosure"},
            {"motors.enclosure"},
            {{"motors.enclosure", Concerns::outdoor_fans}},
            judge};
}

}  // namespace endbell::inline rules::rule
