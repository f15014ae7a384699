#include "engine/match/rules/rules.hpp"

namespace endbell::rule {

namespace of_body_length {

constexpr std::string_view id = "body-length";

Finding judge(const Question& q, const Part& part) {
    if (!part.motor) return not_concerned(id);
    const auto room = said(q.job.measured.body_room);
    const auto length = part.motor->body_length;
    Answer say(id, "common-practice", wanted(q.job.measured.body_room), offered(length));
    if (specified_assembly(q.job, part)) return Answer(id, "inducer").fits("specified assembly");
    if (!room) return say.not_stated("measured.body_room");
    if (!length) return say.ask("part does not say", {"motors.body_length_in"});
    if (*length > *room + inch(rounding)) return say.fails("body too long");
    return say.fits("body clears");
}

}  // namespace of_body_length

Rule body_length() {
    using namespace of_body_length;
    return {id,
            "the body clears the wheel housing or the blade guard",
            Weight::hard,
            {"common-practice", "inducer"},
            {},
            {"measured.body_room"},
            {"motors.body_length_in"},
            judge};
}

}  // namespace endbell::rule
