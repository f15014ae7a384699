#include <algorithm>
#include <cmath>

#include "engine/rules/registry.hpp"

namespace endbell::inline rules::rule {

namespace {

constexpr std::string_view claim =
    "an induction motor's frequency is the supply's, alone and together with the voltage";
constexpr std::string_view id = rule_id::frequency;

// How far the live reading lies from the plate, as a fraction; a reading inside a span lies nowhere off.
double voltage_deviation(const Query& q, const Part& part) {
    const Supply& supply = q.facts.supply;
    const auto rating = rating_in_use(q.facts, part, q.limits);
    if (!supply.measured || !rating || !rating->volts) return 0;
    const Voltage v = *supply.measured;
    const Voltage nearest = std::clamp(v, rating->volts->low, rating->volts->high);
    return std::abs((v - nearest) / nearest);
}

Finding judge(const Query& q, const Part& part) {
    if (!part.motor) return not_concerned(id);
    FindingDraft say(id, "mg1-12.44", wanted(q.facts.frequency), offered(part.motor->frequency));
    if (part.motor->family && is_electronic(*part.motor->family))
        return say.from("physics").fits(Reason::rectified_supply);
    const auto needs = q.facts.frequency;
    if (!needs) return say.not_stated("plate.frequency");
    const auto has = part.motor->frequency;
    if (!has) return say.ask(Reason::part_does_not_say, {"motors.frequency_hz"});
    const double off = std::abs((*needs - *has) / *has);
    const double most = q.limits.value(limit::voltage_frequency);
    say.limit(q.limits, limit::voltage_frequency, *has * (*needs < *has ? 1 - most : 1 + most));
    if (off > most + rounding) return say.fails(Reason::other_frequency);
    const double both = off + voltage_deviation(q, part);
    if (off > 0 && both > q.limits.value(limit::voltage_combined) + rounding) {
        return say.limit(q.limits, limit::voltage_combined, q.limits.value(limit::voltage_combined))
            .computed(both)
            .fails(Reason::combined_deviation);
    }
    return say.fits(Reason::within_tolerance);
}

}  // namespace

Rule frequency() {
    return {id,
            claim,
            Weight::hard,
            {Reason::not_concerned, Reason::rectified_supply, Reason::not_stated, Reason::part_does_not_say,
             Reason::other_frequency, Reason::combined_deviation, Reason::within_tolerance},
            {"mg1-12.44", "physics"},
            {limit::voltage_frequency, limit::voltage_combined},
            {"plate.frequency", "measured.line_volts"},
            {"motors.family electronic", "motors.frequency_hz", "motor_ratings.volts"},
            {{"motors.frequency_hz"}},
            judge};
}

}  // namespace endbell::inline rules::rule
