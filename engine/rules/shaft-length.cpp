#include <algorithm>

#include "engine/rules/registry.hpp"

namespace endbell::inline rules::rule {

namespace {

constexpr std::string_view claim = "the shaft reaches through the hub, and what is too long can be cut";
constexpr std::string_view id = rule_id::shaft_length;

// A shaft longer than what clears is cut back, where its maker lets it be cut.
Finding judge_excess(const Motor& motor, Length longest, bool room_measured, Answer say) {
    if (motor.shaft_cuttable == true) {
        Remedy cut = remedy(Cure::shaft_cut);
        cut.from = *motor.shaft_length;
        cut.to = longest;
        return say.changes(Reason::to_be_cut, {cut});
    }
    if (!motor.shaft_cuttable) return say.ask(Reason::part_does_not_say, {"motors.shaft_cuttable"});
    if (room_measured) return say.fails(Reason::too_long);
    return say.ask(Reason::may_be_too_long, {"measured.shaft_room"});
}

Finding judge(const Question& q, const Part& part) {
    if (!part.motor) return not_concerned(id);
    const auto needed = q.job.measured.shaft_needed.said();
    const auto old = q.job.plate.shaft_length.said();
    const auto room = q.job.measured.shaft_room.said();
    const auto length = part.motor->shaft_length;
    const Reading<Length>& reading = needed ? q.job.measured.shaft_needed : q.job.plate.shaft_length;
    Answer say(id, "common-practice", wanted(reading), offered(length));
    if (specified_assembly(q.job, part)) return say.from("inducer").fits(Reason::specified_assembly);
    // What is needed clears, so a plate longer than the room is of a shaft that was cut.
    auto least = needed ? needed : old;
    if (!needed && old && room) least = std::min(*old, *room);
    if (!least && !room) return say.not_stated("measured.shaft_needed");
    if (!length) return say.ask(Reason::part_does_not_say, {"motors.shaft_length_in"});
    const Length grain = inch(rounding);
    if (needed && room && *room + grain < *needed) {
        return say.ask(Reason::readings_disagree, {"measured.shaft_needed", "measured.shaft_room"});
    }
    if (least && *length + grain < *least) {
        if (needed) return say.fails(Reason::too_short);
        return say.ask(Reason::shorter_than_the_old, {"measured.shaft_needed"});
    }
    const Length slack = q.limits.value(limit::shaft_length_slack);
    // Without a measured room the old shaft shows what cleared, and a little more is let pass.
    const Length longest = room ? *room : std::max(*least, old.value_or(*least)) + slack;
    say.limit(q.limits, limit::shaft_length_slack, longest);
    if (*length > longest + grain) {
        const Length cut_to = room ? *room : longest - slack;
        return judge_excess(*part.motor, cut_to, room.has_value(), say);
    }
    return say.fits(Reason::long_enough);
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
