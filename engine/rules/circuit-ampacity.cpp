#include <algorithm>

#include "engine/rules/registry.hpp"

namespace endbell::inline rules::rule {

namespace {

constexpr std::string_view claim = "the circuit that the equipment plate asks for still carries the new fan";
constexpr std::string_view id = rule_id::circuit_ampacity;

// Recomputes the equipment's minimum circuit ampacity with the new fan: 1.25 of the largest motor plus the
// other. Only where the plate gives both it and the compressor; heaters are not known here.
Finding judge(const Query& q, const Part& part) {
    if (!part.motor) return not_concerned(id);
    const auto plate = q.job.equipment.minimum_circuit_ampacity.said();
    const auto compressor = q.job.equipment.compressor_amps.said();
    if (!plate || !compressor) return not_concerned(id);
    const auto fan = amps_in_use(q, part);
    FindingDraft say(id, "plate-ampacity", wanted(q.job.equipment.minimum_circuit_ampacity), offered(fan));
    if (!fan) return say.ask(Reason::part_does_not_say, {"motor_ratings.amps"});
    const double factor = q.limits.value(limit::current_circuit);
    const Current needed = std::max(*fan, *compressor) * factor + std::min(*fan, *compressor);
    say.computed(needed);
    const Current most = *plate + q.limits.value(limit::current_plate_rounding);
    say.limit(q.limits, limit::current_circuit, *plate);
    if (needed.in(ampere) > most.in(ampere) + rounding) return say.fails(Reason::circuit_too_small);
    return say.fits(Reason::within_the_circuit);
}

bool decides(const FailedUnit& job) {
    return job.equipment.minimum_circuit_ampacity.said() && job.equipment.compressor_amps.said();
}

}  // namespace

Rule circuit_ampacity() {
    return {id,
            claim,
            Weight::hard,
            {Reason::not_concerned, Reason::part_does_not_say, Reason::circuit_too_small,
             Reason::within_the_circuit},
            {"plate-ampacity"},
            {limit::current_circuit, limit::current_plate_rounding},
            {"equipment.minimum_circuit_ampacity", "equipment.compressor_amps"},
            {"motor_ratings.amps"},
            {{"motor_ratings.amps", Concerns::nobody}},
            judge,
            decides};
}

}  // namespace endbell::inline rules::rule
