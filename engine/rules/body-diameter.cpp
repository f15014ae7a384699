#include <cmath>

#include "engine/rules/registry.hpp"

namespace endbell::inline rules::rule {

namespace {

constexpr std::string_view claim = "the band or ring that stays takes the body";
constexpr std::string_view id = rule_id::body_diameter;

// Only a band or ring grips the body; studs, lugs, a base or a face hold it elsewhere. An unstated mount may
// be a band.
bool gripped(const FailedUnit& job) {
    const auto mount = job.plate.mount.said();
    return !mount || *mount == Mount::band || *mount == Mount::ring;
}

Finding judge(const Query& q, const Part& part) {
    if (!part.motor) return not_concerned(id);
    const bool band_read = q.job.measured.band_diameter.said().has_value();
    const Reading<Length>& reading = band_read ? q.job.measured.band_diameter : q.job.plate.body_diameter;
    const auto needs = reading.said();
    const auto has = part.motor->body_diameter;
    FindingDraft say(id, "common-practice", wanted(reading), offered(has));
    if (specified_assembly(q.job, part)) return say.from("inducer").fits(Reason::specified_assembly);
    const bool grip = gripped(q.job);
    if (!needs) {
        return grip ? say.ask(Reason::body_not_stated, {"plate.body_diameter", "measured.band_diameter"})
                    : say.not_stated("plate.body_diameter");
    }
    if (!has) return say.ask(Reason::part_does_not_say, {"motors.body_diameter_in"});
    const Length play = q.limits.value(limit::body_band) + inch(rounding);
    say.limit(q.limits, limit::body_band, *needs + q.limits.value(limit::body_band));
    if (*has > *needs + play)
        return grip ? say.fails(Reason::body_too_large) : say.caution(Reason::larger_body);
    if (*has + play >= *needs || !grip) return say.fits(Reason::body_goes_in);
    Remedy ring = remedy(Cure::body_ring);
    ring.from = *has;
    ring.to = *needs;
    return say.changes(Reason::body_too_small, {ring});
}

}  // namespace

Rule body_diameter() {
    return {id,
            claim,
            Weight::hard,
            {Reason::not_concerned, Reason::specified_assembly, Reason::body_not_stated, Reason::not_stated,
             Reason::part_does_not_say, Reason::body_too_large, Reason::larger_body, Reason::body_goes_in,
             Reason::body_too_small},
            {"common-practice", "inducer"},
            {limit::body_band},
            {"measured.band_diameter", "plate.body_diameter", "plate.mount"},
            {"motors.body_diameter_in"},
            {{"motors.body_diameter_in"}},
            judge};
}

}  // namespace endbell::inline rules::rule
