#include "engine/rules/registry.hpp"

namespace endbell::inline rules::rule {

namespace {

constexpr std::string_view claim = "full-load amps do not exceed the fan amps of the equipment plate";
constexpr std::string_view id = rule_id::full_load_current;

/// By breaker, wire and relay, where somebody read them: each carries 1.25 of it (NEC 430.22).
Finding judge_circuit(const Query& q, Current now, Current carries, FindingDraft say) {
    const Current needed = now * q.limits.value(limit::current_circuit);
    say.computed(needed).limit(q.limits, limit::current_circuit, carries);
    if (needed.in(ampere) > carries.in(ampere) + rounding) return say.fails(Reason::circuit_too_small);
    return say.fits(Reason::within_the_circuit);
}

// The equipment plate's fan amps bind (NEC 430.6(A)(1) exception); without it the old motor's is the measure, and it is said;
// far over it, nothing shows that breaker, wire and relay carry it.
Finding judge(const Query& q, const Part& part) {
    if (!part.motor) return not_concerned(id);
    const auto now = amps_in_use(q, part);
    const auto allowed = q.job.equipment.fan_amps.said();
    const auto circuit = q.job.equipment.circuit_amps.said();
    const auto was = q.job.plate.current.said();
    FindingDraft say(id, "nec-430.6-ex", wanted(allowed ? q.job.equipment.fan_amps : q.job.plate.current),
                     offered(now));
    if (!now && (allowed || circuit || was))
        return say.ask(Reason::part_does_not_say, {"motor_ratings.amps"});
    if (allowed) {
        const Current most = *allowed * q.limits.value(limit::current_over_plate);
        say.limit(q.limits, limit::current_over_plate, most);
        if (now->in(ampere) > most.in(ampere) + rounding) return say.fails(Reason::over_the_equipment_plate);
        if (!circuit) return say.fits(Reason::within_the_equipment_plate);
    }
    if (circuit) return judge_circuit(q, *now, *circuit, say);
    if (!was) return say.not_stated("equipment.fan_amps");
    const Current unread = *was * q.limits.value(limit::current_over_old);
    say.limit(q.limits, limit::current_over_old, unread);
    if (now->in(ampere) > unread.in(ampere) + rounding)
        return say.ask(Reason::much_more_than_the_old_motor,
                       {"equipment.fan_amps", "equipment.circuit_amps"});
    if (now->in(ampere) > was->in(ampere) + rounding) return say.caution(Reason::more_than_the_old_motor);
    return say.caution(Reason::no_more_than_the_old_motor);
}

bool decides(const FailedUnit& job) {
    return job.equipment.fan_amps.said() || job.equipment.circuit_amps.said() || job.plate.current.said();
}

}  // namespace

Rule full_load_current() {
    return {id,
            claim,
            Weight::hard,
            {Reason::not_concerned, Reason::part_does_not_say, Reason::over_the_equipment_plate,
             Reason::within_the_equipment_plate, Reason::not_stated, Reason::more_than_the_old_motor,
             Reason::no_more_than_the_old_motor, Reason::much_more_than_the_old_motor,
             Reason::within_the_circuit, Reason::circuit_too_small},
            {"nec-430.6-ex", "common-practice", "plate-ampacity"},
            {limit::current_over_plate, limit::current_over_old, limit::current_circuit},
            {"equipment.fan_amps", "equipment.circuit_amps", "plate.current"},
            {"motor_ratings.amps"},
            {{"motor_ratings.amps"}},
            judge,
            decides};
}

}  // namespace endbell::inline rules::rule
