#include <array>
#include <cmath>

#include "engine/rules/registry.hpp"

namespace endbell::inline rules::rule {

namespace {

constexpr std::string_view claim =
    "the shaft goes into the bore, alone or through a bushing, never by drilling";
constexpr std::string_view id = rule_id::shaft_diameter;

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

// The measured bore decides; else the old shaft stands for it. Sizes are compared as they are: no clearance lets a
// shaft into a smaller bore. But a caliper in a bore reads low, and shafts are made a little under their size: just
// under a standard size nobody knows which it is.
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
    const Length grain = inch(rounding);
    const Length short_by = q.limits.value(limit::bore_standard_short);
    if (const auto meant = just_short_of(*bore, short_by); meant && *shaft <= *meant + grain) {
        return say.computed(*meant)
            .limit(q.limits, limit::bore_standard_short, *meant - short_by)
            .ask(Reason::bore_just_short, {"measured.bore"});
    }
    if (*shaft > *bore + grain) return say.fails(Reason::too_thick);
    const Length clearance = q.limits.value(limit::bore_clearance);
    say.limit(q.limits, limit::bore_clearance, *bore - clearance);
    if (*shaft + clearance + grain >= *bore) return say.fits(Reason::slip_fit);
    Remedy bushing = remedy(Cure::shaft_bushing);
    bushing.from = *shaft;
    bushing.to = *bore;
    return say.changes(Reason::bushing, {bushing});
}

}  // namespace

Rule shaft_diameter() {
    return {id,
            claim,
            Weight::hard,
            {Reason::not_concerned, Reason::specified_assembly, Reason::bore_not_stated,
             Reason::part_does_not_say, Reason::bore_just_short, Reason::too_thick, Reason::slip_fit,
             Reason::bushing},
            {"common-practice", "inducer"},
            {limit::bore_clearance, limit::bore_standard_short},
            {"measured.bore", "plate.shaft_diameter"},
            {"motors.shaft_diameter_in"},
            {{"motors.shaft_diameter_in"}},
            judge};
}

}  // namespace endbell::inline rules::rule
