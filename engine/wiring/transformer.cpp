#include "engine/wiring/transformer.hpp"

#include <algorithm>

#include "engine/facts/control_power.hpp"
#include "engine/model/limit.hpp"

namespace endbell::inline wiring {

namespace {

/// At once, in any state: one at least, since the plan is for a motor that runs.
int most_live_taps(const WiringPlan& plan) {
    std::size_t most = 1;
    for (const TruthRow& row : plan.truth) most = std::max(most, row.live_taps.size());
    return static_cast<int>(most);
}

}  // namespace

ControlPower control_power(const FailedUnit& job, const WiringPlan& plan, const Limits& limits) {
    ControlPower power;
    for (const Relay& r : plan.relays) {
        if (!r.line_coil) power.added = power.added + limits.value(limit::relay_coil) * r.bodies;
    }
    if (!plan.line_taps) {
        power.added = power.added + tap_load(limits) * most_live_taps(plan);
    }
    power.drop_50_ft =
        control_drop(secondary_current(power.added), foot(50), limits.value(limit::wire_control));
    if (job.controls.transformer) power.rating = *job.controls.transformer;
    if (job.controls.transformer_load) power.before = *job.controls.transformer_load;
    if (power.added <= ApparentPower()) return power;
    power.judgement = PowerJudgement::not_known;
    if (!power.rating) return power;
    power.rated = secondary_current(*power.rating);
    power.fuse = secondary_fuse(*power.rating, limits);
    power.class2 = *power.rating <= limits.value(limit::class2_power) &&
                   control_volts <= limits.value(limit::class2_volts);
    if (!power.before) return power;
    power.share = (*power.before + power.added) / *power.rating;
    power.judgement = *power.share > 1.0                                     ? PowerJudgement::over_rating
                      : *power.share > limits.value(limit::transformer_plan) ? PowerJudgement::over_plan
                                                                             : PowerJudgement::within_plan;
    return power;
}

bool is_over(const ControlPower& power) {
    return power.judgement == PowerJudgement::over_plan || power.judgement == PowerJudgement::over_rating;
}

void fit_transformer(ControlPower& power, ApparentPower rating, const Limits& limits) {
    power.fitted = FittedTransformer{rating, (*power.before + power.added) / rating,
                                     secondary_current(rating), secondary_fuse(rating, limits)};
}

Voltage control_drop(Current current, Length one_way, Resistance of_1000_ft) {
    const Resistance both_ways = of_1000_ft * (2.0 * (one_way / foot(1000)));
    return volt(current / ampere(1) * both_ways.in(ohm));
}

}  // namespace endbell::inline wiring
