#include "engine/rules/registry.hpp"

namespace endbell::inline rules::rule {

namespace {

constexpr std::string_view claim = "full-load amps do not exceed the fan amps of the equipment plate";
constexpr std::string_view id = rule_id::full_load_current;

// The equipment plate's fan amps bind (NEC 430.6(A)(1) exception); without it the old motor's is the measure,
// and it is said.
Finding judge(const Query& q, const Part& part) {
    if (!part.motor) return not_concerned(id);
    const auto now = amps_in_use(q, part);
    const auto allowed = q.job.equipment.fan_amps.said();
    const auto was = q.job.plate.current.said();
    FindingDraft say(id, "nec-430.6-ex", wanted(allowed ? q.job.equipment.fan_amps : q.job.plate.current),
                     offered(now));
    if (allowed) {
        if (!now) return say.ask(Reason::part_does_not_say, {"motor_ratings.amps"});
        const Current most = *allowed * q.limits.value(limit::current_over_plate);
        say.limit(q.limits, limit::current_over_plate, most);
        if (now->in(ampere) > most.in(ampere) + rounding) return say.fails(Reason::over_the_equipment_plate);
        return say.fits(Reason::within_the_equipment_plate);
    }
    if (!was || !now) return say.not_stated("equipment.fan_amps");
    if (now->in(ampere) > was->in(ampere) + rounding) return say.caution(Reason::more_than_the_old_motor);
    return say.caution(Reason::no_more_than_the_old_motor);
}

bool decides(const FailedUnit& job) {
    return job.equipment.fan_amps.said().has_value();
}

}  // namespace

Rule full_load_current() {
    return {id,
            claim,
            Weight::hard,
            {Reason::not_concerned, Reason::part_does_not_say, Reason::over_the_equipment_plate,
             Reason::within_the_equipment_plate, Reason::not_stated, Reason::more_than_the_old_motor,
             Reason::no_more_than_the_old_motor},
            {"nec-430.6-ex"},
            {limit::current_over_plate},
            {"equipment.fan_amps", "plate.current"},
            {"motor_ratings.amps"},
            {{"motor_ratings.amps"}},
            judge,
            decides};
}

}  // namespace endbell::inline rules::rule
