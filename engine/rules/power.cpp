#include <algorithm>

#include "engine/airflow/duty.hpp"
#include "engine/airflow/machine.hpp"
#include "engine/model/power_sizes.hpp"
#include "engine/rules/registry.hpp"

namespace endbell::inline rules::rule {

namespace {

constexpr std::string_view claim =
    "the motor is as strong as the old one, at most one standard size stronger, never weaker";
constexpr std::string_view id = rule_id::power;

// Standard sizes above the old power, up to and with the new one; at least one when it is larger at all.
int steps_up(Power was, Power now, double low) {
    const auto steps = std::count_if(standard_powers.begin(), standard_powers.end(), [&](double hp) {
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

enum class Size { smaller, same, larger };

Size size_of(const Query& q, Power was, Power now) {
    const double low = q.limits.value(limit::power_low);
    if (now / was < low - rounding) return Size::smaller;
    return now / was > 1 / low + rounding ? Size::larger : Size::same;
}

Finding not_sure(FindingDraft say) {
    return say.ask(Reason::duty_not_sure, {"measured.airflow", "measured.watts", "measured.speed"});
}

/// What the old motor was measured to give, against the new one's rating and its strongest tap. Over its whole spread it fits
/// or it does not; what lies within the spread is measured better.
Finding judge_by_duty(const Query& q, const Duty& duty, Power now, Torque most, Size size, FindingDraft say) {
    const bool retrofit = q.facts.family.value != Family::constant_torque;
    const Torque torque = duty.torque.value(), spread = duty.torque.plus_minus();
    say.computed(torque);
    if (most < torque - spread) return say.fails(Reason::no_tap_strong_enough);
    if (most < torque * q.limits.value(limit::power_low)) return not_sure(say);
    if (size == Size::smaller) {
        if (!duty.shaft.known()) return not_sure(say);
        const Power full = now * (q.limits.value(limit::load_full) * motor_share(q.job, q.limits));
        if (duty.shaft.value() - duty.shaft.plus_minus() > full) return say.fails(Reason::too_small);
        if (duty.shaft.value() + duty.shaft.plus_minus() > full) return not_sure(say);
        if (retrofit) return say.caution(Reason::enough_for_the_duty);
        return say.changes(Reason::enough_for_the_duty, {remedy(Cure::airflow_setup)}, true);
    }
    // A retrofit itself brings the airflow setup.
    if (retrofit || size == Size::same) return say.fits(Reason::tap_for_the_measured_duty);
    return say.changes(Reason::tap_for_the_measured_duty, {remedy(Cure::airflow_setup)});
}

// Torque, not power, sets the airflow: a larger motor will do when a tap holds the old duty torque. What was measured comes
// before the plate, which says only what the old motor could have given.
Finding judge_torque(const Query& q, const Part& part, Power now, Size size, FindingDraft say) {
    const bool retrofit = q.facts.family.value != Family::constant_torque;
    if (size == Size::same && !retrofit) return say.fits(Reason::same_power);
    const std::optional<Duty> duty = measured_duty(q.job, q.facts, q.limits);
    const auto most = strongest_tap(*part.motor);
    if (size == Size::smaller && !duty) return say.fails(Reason::too_small);
    if (!duty && !q.facts.torque) return say.ask(Reason::duty_torque_not_known, {"plate.speed"});
    if (!most) return say.ask(Reason::part_does_not_say, {"taps.torque_ozft"});
    if (duty && duty->largest) return judge_by_duty(q, *duty, now, *most, size, say);
    // Read on a speed of which nobody knows whether it is the highest, the duty of another call may be greater: then
    // only what would do for all of the plate's power passes.
    if (size == Size::smaller || !q.facts.torque) return not_sure(say);
    say.computed(*q.facts.torque);
    if (*most < *q.facts.torque * q.limits.value(limit::power_low)) {
        if (duty) return not_sure(say);
        return say.fails(Reason::no_tap_strong_enough);
    }
    if (size == Size::same) return say.fits(Reason::same_power);
    if (retrofit) return say.fits(Reason::larger_with_a_tap_for_it);
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
    say.limit(q.limits, limit::power_low, *was * q.limits.value(limit::power_low));
    const Size size = size_of(q, *was, *now);
    if (part.motor && part.motor->family == Family::constant_torque)
        return judge_torque(q, part, *now, size, say);
    if (size == Size::smaller) return say.fails(Reason::too_small);
    if (size == Size::same) return say.fits(Reason::same_power);
    say.limit(q.limits, limit::power_step_up, q.limits.value(limit::power_step_up));
    if (q.job.unit.load.said() == Load::draft_inducer) return say.from("inducer").fails(Reason::too_large);
    return judge_larger(q, part, *was, *now, say);
}

}  // namespace

Rule power() {
    return {
        id,
        claim,
        Weight::curable,
        {Reason::same_power, Reason::duty_torque_not_known, Reason::part_does_not_say,
         Reason::no_tap_strong_enough, Reason::larger_with_a_tap_for_it, Reason::too_large,
         Reason::tap_for_the_measured_duty, Reason::enough_for_the_duty, Reason::duty_not_sure,
         Reason::one_step_up, Reason::not_concerned, Reason::specified_assembly, Reason::not_stated,
         Reason::power_not_stated, Reason::too_small},
        {"common-practice", "mg1-10.32", "inducer"},
        {limit::power_low, limit::power_step_up, limit::load_full, limit::motor_from, limit::altitude_motor},
        {"plate.power", "plate.speed", "plate.family", "unit.load", "measured.airflow", "measured.watts",
         "measured.speed", "measured.amps", "equipment.altitude"},
        {"motors.family", "motor_ratings.power_hp", "taps.torque_ozft"},
        {{"motor_ratings.power_hp"}, {"taps.torque_ozft", Concerns::constant_torque}},
        judge};
}

}  // namespace endbell::inline rules::rule
