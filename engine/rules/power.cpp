#include <algorithm>
#include <array>

#include "engine/rules/registry.hpp"

namespace endbell::inline rules::rule {

namespace {

constexpr std::string_view claim =
    "the motor is as strong as the old one, at most one standard size stronger, never weaker";
constexpr std::string_view id = rule_id::power;

// NEMA MG 1 10.32 ratings of small motors with the extra fan-motor ratings 1/15, 1/10 and 1/5 (from memory),
// then the usual integral ones. Odd plates (2/5, 1/7) lie between two of them.
constexpr std::array ladder{1.0 / 40, 1.0 / 20, 1.0 / 15, 1.0 / 12, 1.0 / 10, 1.0 / 8,
                            1.0 / 6,  1.0 / 5,  1.0 / 4,  1.0 / 3,  1.0 / 2,  3.0 / 4,
                            1.0,      1.5,      2.0,      3.0,      5.0};

// Standard sizes above the old power, up to and with the new one; at least one when it is larger at all.
int steps_up(Power was, Power now, double low) {
    const auto steps = std::count_if(ladder.begin(), ladder.end(), [&](double hp) {
        return hp > was.in(horsepower) / low && hp * low <= now.in(horsepower);
    });
    return std::max(1, static_cast<int>(steps));
}

std::optional<Torque> strongest_tap(const Motor& motor) {
    std::optional<Torque> most;
    for (const Tap& tap : motor.taps) {
        if (tap.torque && (!most || *tap.torque > *most)) most = tap.torque;
    }
    return most;
}

// Torque, not power, sets the airflow: a larger motor will do when a tap holds the old duty torque.
Finding judge_torque(const Query& q, const Part& part, FindingDraft say, bool larger) {
    const auto was = q.facts.family.value;
    const auto most = strongest_tap(*part.motor);
    const bool retrofit = was != Family::constant_torque;
    if (!larger && !retrofit) return say.fits(Reason::same_power);
    if (!q.facts.torque) return say.ask(Reason::duty_torque_not_known, {"plate.speed"});
    if (!most) return say.ask(Reason::part_does_not_say, {"taps.torque_ozft"});
    const Torque duty = *q.facts.torque;
    say.computed(duty);
    if (*most < duty * q.limits.value(limit::power_low)) return say.fails(Reason::no_tap_strong_enough);
    if (!larger) return say.fits(Reason::same_power);
    if (retrofit)
        return say.fits(Reason::larger_with_a_tap_for_it);  // the retrofit itself brings the airflow setup
    return say.changes(Reason::larger_with_a_tap_for_it, {remedy(Cure::airflow_setup)});
}

// An outdoor blade takes what it takes; a blower's taps are set anew for a stronger motor.
Finding judge_larger(const Query& q, const Part& part, Power was, Power now, FindingDraft say) {
    const int steps = steps_up(was, now, q.limits.value(limit::power_low));
    if (part.module || steps > q.limits.value(limit::power_step_up)) return say.fails(Reason::too_large);
    if (q.job.unit.load.said() == Load::outdoor_fan) return say.caution(Reason::one_step_up);
    return say.changes(Reason::one_step_up, {remedy(Cure::airflow_setup)}, true);
}

Finding judge(const Query& q, const Part& part) {
    if (!part.motor && !part.module) return not_concerned(id);
    const auto was = q.facts.power.value;
    const auto now = power_in_use(q, part);
    FindingDraft say(id, "common-practice", wanted(q.facts.power), offered(now));
    if (specified_assembly(q.job, part)) return say.from("inducer").fits(Reason::specified_assembly);
    // A module's program fixes its power: a blank on either side is said, not asked.
    if (part.module && (!was || !now)) return say.not_stated("plate.power");
    if (!was) return say.ask(Reason::power_not_stated, {"plate.power"});
    if (!now) return say.ask(Reason::part_does_not_say, {"motor_ratings.power_hp"});
    const double low = q.limits.value(limit::power_low);
    say.limit(q.limits, limit::power_low, *was * low);
    if (*now / *was < low - rounding) return say.fails(Reason::too_small);
    const bool larger = *now / *was > 1 / low + rounding;
    if (part.motor && part.motor->family == Family::constant_torque)
        return judge_torque(q, part, say, larger);
    if (!larger) return say.fits(Reason::same_power);
    say.limit(q.limits, limit::power_step_up, q.limits.value(limit::power_step_up));
    if (q.job.unit.load.said() == Load::draft_inducer) return say.from("inducer").fails(Reason::too_large);
    return judge_larger(q, part, *was, *now, say);
}

}  // namespace

Rule power() {
    return {id,
            claim,
            Weight::curable,
            {Reason::same_power, Reason::duty_torque_not_known, Reason::part_does_not_say,
             Reason::no_tap_strong_enough, Reason::larger_with_a_tap_for_it, Reason::too_large,
             Reason::one_step_up, Reason::not_concerned, Reason::specified_assembly, Reason::not_stated,
             Reason::power_not_stated, Reason::too_small},
            {"common-practice", "mg1-10.32", "inducer"},
            {limit::power_low, limit::power_step_up},
            {"plate.power", "plate.speed", "plate.family", "unit.load"},
            {"motors.family", "motor_ratings.power_hp", "taps.torque_ozft"},
            {{"motor_ratings.power_hp"}, {"taps.torque_ozft", Concerns::constant_torque}},
            judge};
}

}  // namespace endbell::inline rules::rule
