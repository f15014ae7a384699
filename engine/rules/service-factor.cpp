#include "engine/rules/registry.hpp"

namespace endbell::inline rules::rule {

namespace {

constexpr std::string_view claim = "the motor has the old one's reserve, or the loss of it is said";
constexpr std::string_view id = rule_id::service_factor;

// Air-over fan motors are 1.0 unless marked; the factor is a reserve that must not have been spent.
Finding judge(const Query& q, const Part& part) {
    if (!part.motor) return not_concerned(id);
    FindingDraft say(id, "common-practice", wanted(q.job.plate.service_factor),
                     offered(part.motor->service_factor));
    const auto was = q.job.plate.service_factor.said();
    if (!was) return say.fits(Reason::not_stated);
    const double now = part.motor->service_factor.value_or(1.0);
    if (now < *was - rounding) return say.caution(Reason::less_reserve);
    return say.fits(Reason::same_reserve);
}

}  // namespace

Rule service_factor() {
    return {id,
            claim,
            Weight::preference,
            {Reason::not_concerned, Reason::not_stated, Reason::less_reserve, Reason::same_reserve},
            {"common-practice"},
            {},
            {"plate.service_factor"},
            {},
            {{"motors.service_factor", Concerns::induction}},
            judge};
}

}  // namespace endbell::inline rules::rule
