// What is at fault outside the motor, by the pattern of the readings. None where two things would read alike: then the tree
// has the tests that part them.
#include "engine/diagnosis/conclude.hpp"
#include "engine/diagnosis/tests.hpp"
#include "engine/model/limit.hpp"

namespace endbell::inline diagnosis {

namespace {

using Named = std::optional<Culprit>;

Named of_supply(const EvidenceRows& rows) {
    if (failed(rows, Test::fuse_drop)) return Culprit::line_fuse;
    if (failed(rows, Test::contactor_drop)) return Culprit::contactor;
    return Culprit::supply;
}

/// From the thermostat to the plug: the first that is open, then what is live before it and dead behind it.
Named of_signal(const FailedUnit& job, const EvidenceRows& rows) {
    const auto fails = [&](Test test) { return failed(rows, test); };
    const auto passes = [&](Test test) { return passed(rows, test); };
    const bool stays = has_symptom(job, Symptom::runs_on_after_call);
    if (stays)
        return passes(Test::board_output)  ? Named(Culprit::board_relay)
               : fails(Test::board_output) ? Named(Culprit::control_wiring)
                                           : std::nullopt;
    if (fails(Test::door_switch)) return Culprit::door_switch;
    if (fails(Test::float_switch)) return Culprit::float_switch;
    if (fails(Test::control_fuse)) return Culprit::control_fuse;
    if (fails(Test::transformer))
        return passes(Test::primary) && passes(Test::control_fuse) ? Named(Culprit::transformer)
                                                                   : std::nullopt;
    if (fails(Test::thermostat)) return Culprit::thermostat;
    if (fails(Test::board_output))
        return passes(Test::transformer) ? Named(Culprit::board_relay) : std::nullopt;
    if (passes(Test::board_output))
        return Culprit::control_wiring;  // the motor does not get what leaves the board
    return std::nullopt;
}

/// The filter stands on the return side, the coil on the supply side: where both sides were read, what stands on the worse
/// one must be in order; else both.
bool is_of_the_duct(const FailedUnit& job, const EvidenceRows& rows) {
    const MeasuredReadings& m = job.measured;
    const bool filter = passed(rows, Test::filter_drop), coil = passed(rows, Test::coil_drop);
    if (!m.static_supply || !m.static_return) return filter && coil;
    return *m.static_supply > *m.static_return * -1 ? coil : filter;
}

/// Filter, wheel and coil by themselves; then what the rise and the static say together.
Named of_air(const FailedUnit& job, const EvidenceRows& rows, const Limits& limits) {
    const auto fails = [&](Test test) { return failed(rows, test); };
    const auto passes = [&](Test test) { return passed(rows, test); };
    if (fails(Test::filter_drop)) return Culprit::filter;
    if (fails(Test::belt)) return Culprit::belt;
    if (fails(Test::wheel)) return Culprit::wheel;
    if (fails(Test::coil_drop)) return Culprit::coil;
    if (fails(Test::burner_input)) return Culprit::burner_input;
    const bool high_static =
        fails(Test::static_total) || says(rows, Test::static_total, TestReason::above_plate);
    if (high_static) {
        return is_of_the_duct(job, rows) ? Named(Culprit::duct) : std::nullopt;
    }
    if (says(rows, Test::rise, TestReason::too_much_air)) return Culprit::tap;
    const bool usual = passes(Test::static_total) && passes(Test::filter_drop);
    if (!usual) return std::nullopt;
    for (const Evidence& row : rows) {
        if (row.test != Test::static_total) continue;
        const auto* total = std::get_if<Pressure>(&row.measured.value);
        if (total != nullptr && *total < limits.value(limit::static_low)) return Culprit::wheel;
    }
    const bool hot = says(rows, Test::rise, TestReason::too_little_air);
    if (hot && !passes(Test::burner_input))
        return std::nullopt;  // a burner fired over its plate reads the same
    return hot || fails(Test::airflow) ? Named(Culprit::tap) : std::nullopt;
}

}  // namespace

std::optional<Culprit> culprit_of(Fault fault, const FailedUnit& job, const Facts& facts,
                                  const EvidenceRows& rows, const Limits& limits) {
    switch (fault) {
        case Fault::capacitor:
            return facts.family.is(Family::capacitor_start) ? Culprit::start_capacitor
                                                            : Culprit::run_capacitor;
        case Fault::supply:
            return of_supply(rows);
        case Fault::control_signal:
            return of_signal(job, rows);
        case Fault::airflow:
            return of_air(job, rows, limits);
        case Fault::wheel:
            return Culprit::wheel;
        case Fault::rotation:
            return facts.family.is(Family::three_phase) ? Culprit::phase_order : Culprit::rotation;
        case Fault::motor:
        case Fault::module:
        case Fault::motor_and_module:
        case Fault::flooded:
        case Fault::none:
        case Fault::not_shown:
            return std::nullopt;
    }
    return std::nullopt;
}

}  // namespace endbell::inline diagnosis
