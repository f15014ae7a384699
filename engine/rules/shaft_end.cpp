#include "engine/rules/shaft_end.hpp"

#include <algorithm>
#include <array>
#include <cmath>

#include "engine/model/limit.hpp"

namespace endbell::inline rules {

namespace {

// Bores of hubs and shafts of motors as they are sold: inch sizes (common practice), and IEC shafts (from memory).
constexpr std::array standard_sizes{inch(1.0 / 4),  inch(5.0 / 16), inch(3.0 / 8),   inch(7.0 / 16),
                                    inch(1.0 / 2),  inch(5.0 / 8),  inch(3.0 / 4),   inch(7.0 / 8),
                                    inch(1.0),      inch(9.0 / 8),  millimetre(9.0), millimetre(11.0),
                                    millimetre(14), millimetre(19), millimetre(24)};

// The largest standard size that a reading may have meant; none where it is a standard size itself: 19 mm lies just
// under 3/4 in.
std::optional<Length> just_short_of(Length reading, Length within) {
    std::optional<Length> size;
    for (const Length standard : standard_sizes) {
        const double off = (standard - reading).in(inch);
        if (std::abs(off) <= rounding) return std::nullopt;
        if (off > 0 && off < within.in(inch)-rounding && (!size || standard > *size)) size = standard;
    }
    return size;
}

// A shaft longer than what clears is cut back, where its maker lets it be cut.
Finding judge_excess(const ShaftEnd& end, Length longest, bool room_measured, FindingDraft say) {
    if (end.cuttable == true) {
        Remedy cut = remedy(Cure::shaft_cut);
        cut.from = *end.length;
        cut.to = longest;
        return say.changes(Reason::to_be_cut, {cut});
    }
    if (!end.cuttable) return say.ask(Reason::part_does_not_say, {"motors.shaft_cuttable"});
    if (room_measured) return say.fails(Reason::too_long);
    return say.ask(Reason::may_be_too_long, {std::string(end.room_key)});
}

}  // namespace

ShaftEnd shaft_end(const FailedUnit& job, const Motor& motor) {
    return {job.measured.bore,          job.plate.shaft_diameter, job.measured.shaft_needed,
            job.plate.shaft_length,     job.measured.shaft_room,  motor.shaft_diameter,
            motor.shaft_length,         motor.shaft_cuttable,     "measured.bore",
            "plate.shaft_diameter",     "measured.shaft_needed",  "measured.shaft_room",
            "motors.shaft_diameter_in", "motors.shaft_length_in"};
}

// Sizes are compared as they are: no clearance lets a shaft into a smaller bore. But a caliper in a bore reads low, and
// shafts are made a little under their size: just under a standard size nobody knows which it is.
Finding judge_diameter(const ShaftEnd& end, const Limits& limits, FindingDraft say) {
    const auto bore = end.bore_or_shaft().said();
    const auto shaft = end.diameter;
    if (!bore) {
        return say.ask(Reason::bore_not_stated,
                       {std::string(end.bore_key), std::string(end.old_diameter_key)});
    }
    if (!shaft) return say.ask(Reason::part_does_not_say, {std::string(end.diameter_column)});
    const Length grain = inch(rounding);
    const Length short_by = limits.value(limit::bore_standard_short);
    if (const auto meant = just_short_of(*bore, short_by); meant && *shaft <= *meant + grain) {
        return say.computed(*meant)
            .limit(limits, limit::bore_standard_short, *meant - short_by)
            .ask(Reason::bore_just_short, {std::string(end.bore_key)});
    }
    if (*shaft > *bore + grain) return say.fails(Reason::too_thick);
    const Length clearance = limits.value(limit::bore_clearance);
    say.limit(limits, limit::bore_clearance, *bore - clearance);
    if (*shaft + clearance + grain >= *bore) return say.fits(Reason::slip_fit);
    Remedy bushing = remedy(Cure::shaft_bushing);
    bushing.from = *shaft;
    bushing.to = *bore;
    return say.changes(Reason::bushing, {bushing});
}

Finding judge_length(const ShaftEnd& end, const Limits& limits, FindingDraft say) {
    const auto needed = end.needed.said();
    const auto old = end.old_length.said();
    const auto room = end.room.said();
    const auto length = end.length;
    // What is needed clears, so a plate longer than the room is of a shaft that was cut.
    auto least = needed ? needed : old;
    if (!needed && old && room) least = std::min(*old, *room);
    if (!least && !room) return say.not_stated(std::string(end.needed_key));
    if (!length) return say.ask(Reason::part_does_not_say, {std::string(end.length_column)});
    const Length grain = inch(rounding);
    if (needed && room && *room + grain < *needed) {
        return say.ask(Reason::readings_disagree, {std::string(end.needed_key), std::string(end.room_key)});
    }
    if (least && *length + grain < *least) {
        if (needed) return say.fails(Reason::too_short);
        return say.ask(Reason::shorter_than_the_old, {std::string(end.needed_key)});
    }
    const Length slack = limits.value(limit::shaft_length_slack);
    // Without a measured room the old shaft shows what cleared, and a little more is let pass.
    const Length longest = room ? *room : std::max(*least, old.value_or(*least)) + slack;
    say.limit(limits, limit::shaft_length_slack, longest);
    if (*length > longest + grain) {
        const Length cut_to = room ? *room : longest - slack;
        return judge_excess(end, cut_to, room.has_value(), say);
    }
    return say.fits(Reason::long_enough);
}

}  // namespace endbell::inline rules
