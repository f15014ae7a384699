#include "engine/rules/registry.hpp"

namespace endbell::inline rules::rule {

namespace {

constexpr std::string_view claim = "the set screw lands on a flat";
constexpr std::string_view id = rule_id::shaft_flat;

// Where the flat begins, from the motor's face; the flat runs from there to the shaft's end.
Length flat_start(Length shaft, Length flat) {
    return shaft - flat;
}

Finding judge(const Query& q, const Part& part) {
    if (!part.motor) return not_concerned(id);
    const auto old = q.job.plate.shaft_flat.said();
    const auto now = part.motor->shaft_flat;
    FindingDraft say(id, "common-practice", wanted(q.job.plate.shaft_flat), offered(now));
    if (specified_assembly(q.job, part)) return FindingDraft(id, "inducer").fits(Reason::specified_assembly);
    if (!old) return say.not_stated("plate.shaft_flat");
    if (!now) return say.ask(Reason::part_does_not_say, {"motors.shaft_flat_in"});
    const Length grain = inch(rounding);
    const auto hub = q.job.measured.shaft_needed.said();
    const auto length = part.motor->shaft_length;
    if (hub && length && flat_start(*length, *now) + grain >= *hub)
        return say.fails(Reason::flat_ends_before_the_hub);
    const auto old_length = q.job.plate.shaft_length.said();
    const bool reaches = length && old_length
                             ? flat_start(*length, *now) <= flat_start(*old_length, *old) + grain
                             : *now + grain >= *old;
    if (reaches) return say.fits(Reason::flat_reaches_as_far);
    return say.caution(Reason::check_the_set_screw);
}

}  // namespace

Rule shaft_flat() {
    return {id,
            claim,
            Weight::hard,
            {Reason::not_concerned, Reason::specified_assembly, Reason::not_stated, Reason::part_does_not_say,
             Reason::flat_ends_before_the_hub, Reason::flat_reaches_as_far, Reason::check_the_set_screw},
            {"common-practice", "inducer"},
            {},
            {"plate.shaft_flat", "plate.shaft_length", "measured.shaft_needed"},
            {"motors.shaft_flat_in", "motors.shaft_length_in"},
            {{"motors.shaft_flat_in"}},
            judge};
}

}  // namespace endbell::inline rules::rule
