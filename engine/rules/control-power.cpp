#include "engine/facts/control_power.hpp"
#include "engine/facts/rating.hpp"
#include "engine/rules/registry.hpp"

namespace endbell::inline rules::rule {

namespace {

constexpr std::string_view claim =
    "24 V taps have the common of their signals and a transformer that carries them";
constexpr std::string_view id = rule_id::control_power;

// A tap draws at most 20 mA, so a retrofit adds under half a volt-ampere: only a full transformer minds.
Finding judge_transformer(const Query& q, FindingDraft say) {
    const auto rated = q.job.controls.transformer.said();
    const auto load = q.job.controls.transformer_load.said();
    if (!rated || !load) return say.fits(Reason::common_present);
    const ApparentPower total = *load + tap_load(q.limits);
    const double share = total / *rated;
    const double plan = q.limits.value(limit::transformer_plan);
    say.computed(total).limit(q.limits, limit::transformer_plan, *rated * plan);
    if (share > 1 + rounding)
        return say.changes(Reason::transformer_overloaded,
                           {transformer_for(total, q.facts.supply, q.limits)});
    if (share > plan + rounding) return say.caution(Reason::transformer_nearly_full);
    return say.fits(Reason::common_present);
}

// The common comes first: without it no signal closes its circuit, whatever the transformer could carry.
Finding judge(const Query& q, const Part& part) {
    if (!part.motor || part.motor->signal != SignalClass::control_24v) return not_concerned(id);
    if (includes_module(*part.motor).is(false)) return not_concerned(id);  // the calls end at its module
    FindingDraft say(id, "va-budget", wanted(q.job.controls.common_present),
                     {std::string(word(SignalClass::control_24v)), Origin::catalog});
    const auto common = q.job.controls.common_present.said();
    // The signals return to the transformer that sends them: a second one has no common with them.
    if (common == false) return FindingDraft(say).from("retrofit-wiring").fails(Reason::no_common);
    if (q.facts.signal.value == SignalClass::control_24v) return say.fits(Reason::already_24v);
    if (!common) return say.ask(Reason::common_not_stated, {"controls.common_present"});
    return judge_transformer(q, say);
}

}  // namespace

Rule control_power() {
    return {id,
            claim,
            Weight::curable,
            {Reason::common_present, Reason::transformer_overloaded, Reason::transformer_nearly_full,
             Reason::not_concerned, Reason::no_common, Reason::already_24v, Reason::common_not_stated},
            {"va-budget", "tap-current", "retrofit-wiring"},
            {limit::tap_current, limit::tap_volts, limit::transformer_plan},
            {"controls.common_present", "controls.transformer", "controls.transformer_load", "plate.signal",
             "plate.family", "controls.source"},
            {"motors.family", "motors.signal", "motors.includes_module"},
            {},
            judge};
}

}  // namespace endbell::inline rules::rule
