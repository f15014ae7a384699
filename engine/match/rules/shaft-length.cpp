#include <algorithm>

#include "engine/match/rules/rules.hpp"

namespace endbell::rule {

namespace of_shaft_length {

constexpr std::string_view id = "shaft-length";

// A shaft longer than what clears is cut back, where its maker lets it be cut.
Finding judge_excess(const Motor& motor, Length longest, bool room_measured, Answer say) {
    if (motor.shaft_cuttable == true) {
        Remedy cut = remedy(Cure::shaft_cut);
        cut.from = *motor.shaft_length;
        cut.to = longest;
        return say.changes("to be cut", {cut});
    }
    if (!motor.shaft_cuttable) return say.ask("part does not say", {"motors.shaft_cuttable"});
    if (room_measured) return say.fails("too long");
    return say.ask("may be too long", {"measured.shaft_room"});
}

Finding judge(const Question& q, const Part& part) {
    if (!part.motor) return not_concerned(id);
    const auto needed = said(q.job.measured.shaft_needed);
    const auto old = said(q.job.plate.shaft_length);
    const auto room = said(q.job.measured.shaft_room);
    const auto length = part.motor->shaft_length;
    const Reading<Length>& reading = needed ? q.job.measured.shaft_needed : q.job.plate.shaft_length;
    Answer say(id, "common-practice", wanted(reading), offered(length));
    if (specified_assembly(q.job, part)) return say.from("inducer").fits("specified assembly");
    // What is needed clears, so a plate longer than the room is of a shaft that was cut.
    auto least = needed ? needed : old;
    if (!needed && old && room) least = std::min(*old, *room);
    if (!least && !room) return say.not_stated("measured.shaft_needed");
    if (!length) return say.ask("part does not say", {"motors.shaft_length_in"});
    const Length grain = inch(rounding);
    if (needed && room && *room + grain < *needed) {
        return say.ask("readings disagree", {"measured.shaft_needed", "measured.shaft_room"});
    }
    if (least && *length + grain < *least) {
        if (needed) return say.fails("too short");
        return say.ask("shorter than the old", {"measured.shaft_needed"});
    }
    const Length slack = inch(q.limits.value("shaft.length_slack"));
    // Without a measured room the old shaft shows what cleared, and a little more is let pass.
    const Length longest = room ? *room : std::max(*least, old.value_or(*least)) + slack;
    say.limit(q.limits, "shaft.length_slack", longest);
    if (*length > longest + grain) {
        const Length cut_to = room ? *room : longest - slack;
        return judge_excess(*part.motor, cut_to, room.has_value(), say);
    }
    return say.fits("long enough");
}

}  // namespace of_shaft_length

Rule shaft_length() {
    using namespace of_shaft_length;
    return {id,
            "the shaft reaches through the hub, and what is too long can be cut",
            Weight::curable,
            {"common-practice", "inducer"},
            {"shaft.length_slack"},
            {"measured.shaft_needed", "plate.shaft_length", "measured.shaft_room"},
            {"motors.shaft_cuttable", "motors.shaft_length_in"},
            judge};
}

}  // namespace endbell::rule
