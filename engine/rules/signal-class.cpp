#include <algorithm>

#include "engine/facts/control_power.hpp"
#include "engine/facts/rating.hpp"
#include "engine/rules/registry.hpp"

namespace endbell::inline rules::rule {

namespace {

constexpr std::string_view claim = "the motor understands what the equipment sends, or a relay translates it";
constexpr std::string_view id = rule_id::signal_class;

bool has_run_signal(const Motor& motor) {
    return std::any_of(motor.terminals.begin(), motor.terminals.end(),
                       [](const PartTerminal& t) { return t.function == "run signal"; });
}

// The relay, and what else there is to do. What drives its coil is asked where it is not known: a line signal beside
// constant line power need not have the line's volts.
Finding by_line_relay(const Query& q, SignalClass given, Reason reason, std::vector<Remedy> also,
                      const FindingDraft& say) {
    Remedy relay = remedy(Cure::line_relay);
    if (given == SignalClass::control_24v) {
        relay.coil = control_volts;
    } else if (q.facts.output) {
        relay.coil = coil_class(*q.facts.output);
    } else {
        return FindingDraft(say).ask(Reason::output_volts_not_stated, {"controls.output_volts"});
    }
    also.insert(also.begin(), relay);
    return FindingDraft(say).changes(reason, std::move(also));
}

// Speed leads that carried line current give way to 24 V taps beside constant line power. In a furnace the
// board must keep deciding when the blower runs: through a line run signal, or through its own 24 V outputs.
Finding retrofit_to_taps(const Query& q, const Motor& motor, FindingDraft say) {
    const auto from = q.job.controls.source.said();
    if (!from) return say.ask(Reason::control_source_not_stated, {"controls.source"});
    if (*from == ControlSource::pulse_or_serial) return say.fails(Reason::board_speaks_serial);
    if (*from == ControlSource::board_24v)
        return say.changes(Reason::control_24v_from_board, {remedy(Cure::lead_parking)});
    const bool run_signal = has_run_signal(motor);
    if (*from == ControlSource::board_line) {
        if (run_signal) return say.changes(Reason::board_keeps_the_run_signal, {remedy(Cure::lead_parking)});
        return by_line_relay(q, SignalClass::switched_line, Reason::line_to_24v_by_relay,
                             {remedy(Cure::lead_parking)}, say);
    }
    if (!q.facts.heat.burner) return say.ask(Reason::heat_not_stated, {"controls.heat"});
    if (!*q.facts.heat.burner)
        return say.changes(Reason::control_24v_from_thermostat, {remedy(Cure::lead_parking)});
    const auto board = q.job.controls.run_signal_available.said();
    if (!board) return say.ask(Reason::interlock_not_stated, {"controls.run_signal_available"});
    if (!*board || !run_signal) return say.fails(Reason::furnace_loses_its_interlock);
    return say.changes(Reason::board_keeps_the_run_signal, {remedy(Cure::lead_parking)});
}

// Line voltage on a 24 V tap destroys the motor: a side that says nothing is asked, never taken to be the usual one.
Finding judge_motor(const Query& q, const Part& part) {
    const DerivedFact<SignalClass> offer = signal_of(*part.motor);
    const DerivedFact<SignalClass>& job = q.facts.signal;
    const auto needs = offer.value;
    const auto given = job.value;
    FindingDraft say(id, "common-practice", wanted(job), offered(needs));
    if (job.disagree) return say.ask(Reason::plate_disagrees_with_itself, {"plate.signal", "plate.family"});
    if (offer.disagree)
        return say.ask(Reason::part_disagrees_with_itself, {"motors.signal", "motors.family"});
    if (specified_assembly(q.job, part) && given && !needs) {
        return say.from("inducer").fits(Reason::specified_assembly);
    }
    if (!given) return say.ask(Reason::signal_not_stated, {"plate.signal"});
    if (!needs) return say.ask(Reason::part_does_not_say, {"motors.signal"});
    if (*given == *needs) return say.fits(Reason::same_signal);
    say.from("retrofit-wiring");
    if (*given == SignalClass::switched_line && *needs == SignalClass::control_24v) {
        return retrofit_to_taps(q, *part.motor, say);
    }
    if (*given == SignalClass::switched_line && *needs == SignalClass::line_signal) {
        return say.changes(Reason::line_signal_from_the_speed_leads, {remedy(Cure::lead_parking)});
    }
    const bool line_and_24v = (*given == SignalClass::line_signal && *needs == SignalClass::control_24v) ||
                              (*given == SignalClass::control_24v && *needs == SignalClass::line_signal);
    if (line_and_24v) return by_line_relay(q, *given, Reason::relay_between_line_and_24v, {}, say);
    return say.fails(Reason::other_signal);
}

// A module's signal belongs to its program: no relay translates it.
Finding judge_module(const Query& q, const Part& part) {
    const auto given = q.facts.signal.value;
    FindingDraft say(id, "program", wanted(q.facts.signal), offered(part.module->signal));
    if (!given) return say.ask(Reason::signal_not_stated, {"plate.signal"});
    if (!part.module->signal) return say.ask(Reason::part_does_not_say, {"modules.signal"});
    if (*given != *part.module->signal) return say.fails(Reason::other_signal);
    return say.fits(Reason::same_signal);
}

Finding judge(const Query& q, const Part& part) {
    // A motor half hears its module, and that one is judged by itself.
    if (part.motor && includes_module(*part.motor).is(false)) return not_concerned(id);
    if (part.motor) return judge_motor(q, part);
    if (part.module) return judge_module(q, part);
    return not_concerned(id);
}

}  // namespace

Rule signal_class() {
    return {id,
            claim,
            Weight::hard,
            {Reason::control_source_not_stated,
             Reason::output_volts_not_stated,
             Reason::board_speaks_serial,
             Reason::control_24v_from_board,
             Reason::board_keeps_the_run_signal,
             Reason::line_to_24v_by_relay,
             Reason::heat_not_stated,
             Reason::control_24v_from_thermostat,
             Reason::interlock_not_stated,
             Reason::furnace_loses_its_interlock,
             Reason::plate_disagrees_with_itself,
             Reason::part_disagrees_with_itself,
             Reason::specified_assembly,
             Reason::signal_not_stated,
             Reason::part_does_not_say,
             Reason::same_signal,
             Reason::line_signal_from_the_speed_leads,
             Reason::relay_between_line_and_24v,
             Reason::other_signal,
             Reason::not_concerned},
            {"common-practice", "retrofit-wiring", "program", "inducer"},
            {},
            {"plate.signal", "plate.family", "controls.source", "controls.heat",
             "controls.run_signal_available", "controls.output_volts"},
            {"motors.family", "motors.signal", "motors.includes_module", "terminals.function"},
            {{"motors.signal"}, {"modules.signal"}},
            judge};
}

}  // namespace endbell::inline rules::rule
