#include "engine/rules/registry.hpp"

namespace endbell::inline rules::rule {

namespace {

constexpr std::string_view claim = "the body clears the wheel housing or the blade guard";
constexpr std::string_view id = rule_id::body_length;

// Two-piece motors are longer than what they replace, and no plate tells how much room there is.
Finding judge(const Query& q, const Part& part) {
    if (!part.motor) return not_concerned(id);
    const auto room = q.job.measured.body_room.said();
    const auto length = part.motor->body_length;
    FindingDraft say(id, "common-practice", wanted(q.job.measured.body_room), offered(length));
    if (specified_assembly(q.job, part)) return FindingDraft(id, "inducer").fits(Reason::specified_assembly);
    if (!room) return say.not_stated("measured.body_room");
    if (!length) return say.ask(Reason::part_does_not_say, {"motors.body_length_in"});
    if (*length > *room + inch(rounding)) return say.fails(Reason::body_too_long);
    return say.fits(Reason::body_clears);
}

}  // namespace

Rule body_length() {
    return {id,
            claim,
            Weight::hard,
            {Reason::not_concerned, Reason::specified_assembly, Reason::not_stated, Reason::part_does_not_say,
             Reason::body_too_long, Reason::body_clears},
            {"common-practice", "inducer"},
            {},
            {"measured.body_room"},
            {"motors.body_length_in"},
            {{"motors.body_length_in"}},
            judge};
}

}  // namespace endbell::inline rules::rule
