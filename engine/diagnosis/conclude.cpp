#include "engine/diagnosis/conclude.hpp"

#include <algorithm>

namespace endbell::inline diagnosis {

namespace {

struct Case {
    const FailedUnit& job;
    const Facts& facts;
    const EvidenceRows& rows;
    Behaviour behaviour;

    bool fails(Test test) const { return failed(rows, test); }
    bool passes(Test test) const { return passed(rows, test); }
    bool is(Family family) const { return facts.family.is(family); }
    bool two_piece() const { return facts.family && is_two_piece(*facts.family); }
    bool induction() const { return facts.family && is_induction(*facts.family); }
    bool runs_badly() const { return behaviour == Behaviour::runs_badly; }
};

constexpr Test winding_tests[] = {Test::winding_to_shell, Test::winding_open, Test::winding_most,
                                  Test::winding_balance, Test::winding_spread};

// A winding or its insulation has failed. The short may have taken a separate module with it: both go.
std::optional<Conclusion> dead_winding(const Case& c) {
    Conclusion found;
    for (Test test : winding_tests) {
        if (c.fails(test)) found.stands_on.push_back(test);
    }
    if (found.stands_on.empty()) return std::nullopt;
    found.fault = c.two_piece() ? Fault::motor_and_module : Fault::motor;
    return found;
}

std::optional<Conclusion> stuck_shaft(const Case& c) {
    Conclusion found{Fault::wheel_or_bearing, {}};
    for (Test test : {Test::spins_free, Test::shaft_play}) {
        if (c.fails(test)) found.stands_on.push_back(test);
    }
    if (found.stands_on.empty()) return std::nullopt;
    return found;
}

// An induction motor's line is switched by the call: with no call, no line. The call is then the root.
std::optional<Conclusion> no_call(const Case& c) {
    if (!c.induction() || !c.fails(Test::line_volts) || !c.fails(Test::control_volts)) return std::nullopt;
    return Conclusion{Fault::control_signal, {Test::control_volts, Test::line_volts}};
}

std::optional<Conclusion> bad_supply(const Case& c) {
    if (!c.fails(Test::line_volts)) return std::nullopt;
    return Conclusion{Fault::supply, {Test::line_volts}};
}

std::optional<Conclusion> dead_signal(const Case& c) {
    // With good volts at an induction motor its call has arrived, whatever the thermostat wire reads.
    if (c.induction() && c.passes(Test::line_volts)) return std::nullopt;
    Conclusion found{Fault::control_signal, {}};
    for (Test test : {Test::control_volts, Test::live_taps}) {
        if (c.fails(test)) found.stands_on.push_back(test);
    }
    if (found.stands_on.empty()) return std::nullopt;
    return found;
}

std::optional<Conclusion> bad_capacitor(const Case& c) {
    if (!c.fails(Test::capacitor)) return std::nullopt;
    return Conclusion{Fault::capacitor, {Test::capacitor}};
}

// A duct fault explains a motor that runs badly, never one that does not start. It also stands where nobody
// said what the motor does: the duct is wrong in any case and nothing shows the motor to be.
std::optional<Conclusion> duct_first(const Case& c) {
    if (c.behaviour == Behaviour::does_not_start) return std::nullopt;
    Conclusion found{Fault::airflow, {}, c.fails(Test::static_total) ? "static-0.8" : "common-practice"};
    for (Test test : {Test::static_total, Test::filter_drop}) {
        if (c.fails(test)) found.stands_on.push_back(test);
    }
    if (found.stands_on.empty()) return std::nullopt;
    return found;
}

std::optional<Conclusion> normal_behaviour(const Case& c) {
    if (c.behaviour != Behaviour::normal) return std::nullopt;
    const bool rocks = has_symptom(c.job, Symptom::rocks_then_starts);
    return Conclusion{Fault::none, {Test::symptom}, rocks ? "rocking" : "off-delay"};
}

// Any two lines exchanged turn a three-phase motor round: the supply's order of phases, not the motor.
std::optional<Conclusion> phases_exchanged(const Case& c) {
    if (!c.is(Family::three_phase) || !has_symptom(c.job, Symptom::runs_backwards)) return std::nullopt;
    return Conclusion{Fault::supply, {Test::symptom}};
}

/// REQUIRES: the family is known, for it decides what is needed. `apart` is one test that need not pass.
bool all_needed_pass(const Case& c, std::optional<Test> apart = {}) {
    const auto needed = needed_tests(c.job, c.facts);
    return c.facts.family &&
           std::all_of(needed.begin(), needed.end(), [&](Test t) { return t == apart || c.passes(t); });
}

// Everything that could keep it from its work tests good, and it does not do its work: the rest is at fault.
std::optional<Conclusion> nothing_else_left(const Case& c) {
    const bool works_not = c.behaviour == Behaviour::does_not_start ||
                           (c.runs_badly() && has_symptom(c.job, Symptom::runs_slow));
    if (!works_not || !all_needed_pass(c)) return std::nullopt;
    Conclusion found{c.two_piece() ? Fault::module : Fault::motor, needed_tests(c.job, c.facts)};
    found.stands_on.push_back(Test::symptom);
    if (c.induction()) found.source = "common-practice";
    return found;
}

// It trips on more than its plate's amps with nothing outside it to blame.
std::optional<Conclusion> overloads_itself(const Case& c) {
    if (!c.runs_badly() || !has_symptom(c.job, Symptom::trips_hot) || !c.fails(Test::amps))
        return std::nullopt;
    if (!all_needed_pass(c, Test::amps)) return std::nullopt;
    return Conclusion{Fault::motor, {Test::amps, Test::symptom}};
}

// The motor's own tests pass and the air is still wrong: wheel, coil or speed setting.
std::optional<Conclusion> air_still_wrong(const Case& c) {
    if (!c.runs_badly() || !all_needed_pass(c)) return std::nullopt;
    Conclusion found{Fault::airflow, {}};
    for (Test test : {Test::rise, Test::airflow}) {
        if (c.fails(test)) found.stands_on.push_back(test);
    }
    if (found.stands_on.empty()) return std::nullopt;
    return found;
}

// Nothing tested is at fault. A motor that only turns the wrong way is set wrong, by plug, leads or wheel.
std::optional<Conclusion> nothing_wrong(const Case& c) {
    if (!c.runs_badly() || !all_needed_pass(c)) return std::nullopt;
    Conclusion found{Fault::none, needed_tests(c.job, c.facts)};
    found.stands_on.push_back(Test::symptom);
    return found;
}

struct Step {
    std::optional<Conclusion> (*holds)(const Case&);
    std::string_view source;  // of the reasoning, where the step itself names none
};

// What is proven dead stands before what feeds it: a shorted winding also opens the breaker.
constexpr Step steps[] = {
    {dead_winding, "winding-ground"},
    {stuck_shaft, "free-shaft"},
    {no_call, "common-practice"},
    {bad_supply, "line-always"},
    {dead_signal, "ecm-sequence"},
    {bad_capacitor, "capacitor-practice"},
    {duct_first, "static-0.8"},
    {normal_behaviour, "rocking"},
    {phases_exchanged, "common-practice"},
    {nothing_else_left, "ecm-sequence"},
    {overloads_itself, "common-practice"},
    {air_still_wrong, "common-practice"},
    {nothing_wrong, "common-practice"},
};

}  // namespace

Conclusion conclude(const FailedUnit& job, const Facts& facts, const EvidenceRows& rows) {
    const Case c{job, facts, rows, behaviour_of(job)};
    for (const Step& step : steps) {
        if (auto found = step.holds(c)) {
            if (found->source.empty()) found->source = step.source;
            return *found;
        }
    }
    return {};
}

Behaviour behaviour_of(const FailedUnit& job) {
    if (!job.measured.symptoms || job.measured.symptoms->empty()) return Behaviour::not_stated;
    for (Symptom s : {Symptom::no_run, Symptom::hums, Symptom::rocks_never_starts}) {
        if (has_symptom(job, s)) return Behaviour::does_not_start;
    }
    for (Symptom s : {Symptom::runs_slow, Symptom::trips_hot, Symptom::noisy, Symptom::runs_backwards,
                      Symptom::weak_air, Symptom::wrong_speed, Symptom::wet}) {
        if (has_symptom(job, s)) return Behaviour::runs_badly;
    }
    return Behaviour::normal;
}

bool failed(const EvidenceRows& rows, Test test) {
    return std::any_of(rows.begin(), rows.end(), [&](const Evidence& row) {
        return row.test == test && row.verdict == Verdict::does_not_fit;
    });
}

bool passed(const EvidenceRows& rows, Test test) {
    const bool any = std::any_of(rows.begin(), rows.end(), [&](const Evidence& row) {
        return row.test == test && row.verdict <= Verdict::fits_with_changes;
    });
    return any && !failed(rows, test);
}

bool motor_half_good(const Facts& facts, const EvidenceRows& rows) {
    if (!facts.family || !is_two_piece(*facts.family)) return false;
    for (Test test : winding_tests) {
        if (!passed(rows, test)) return false;
    }
    return passed(rows, Test::spins_free) && !failed(rows, Test::shaft_play);
}

}  // namespace endbell::inline diagnosis
