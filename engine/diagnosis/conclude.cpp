#include "engine/diagnosis/conclude.hpp"

#include <algorithm>
#include <iterator>
#include <span>

namespace endbell::inline diagnosis {

namespace {

struct Case {
    const FailedUnit& job;
    const Facts& facts;
    const EvidenceRows& rows;
    Behaviour behaviour;

    bool fails(Test test) const { return failed(rows, test); }
    bool passes(Test test) const { return passed(rows, test); }
    bool says(Test test, TestReason reason) const { return diagnosis::says(rows, test, reason); }
    bool is(Family family) const { return facts.family.is(family); }
    bool two_piece() const { return facts.family && is_two_piece(*facts.family); }
    bool induction() const { return facts.family && is_induction(*facts.family); }
    bool runs_badly() const { return behaviour == Behaviour::runs_badly; }
};

constexpr Test winding_tests[] = {Test::winding_to_shell, Test::winding_open, Test::winding_most,
                                  Test::winding_balance, Test::winding_spread};

std::vector<Test> failing_of(const Case& c, std::span<const Test> tests) {
    std::vector<Test> failing;
    std::copy_if(tests.begin(), tests.end(), std::back_inserter(failing),
                 [&](Test test) { return c.fails(test); });
    return failing;
}

/// The conclusion that stands on those of `tests` that fail; none: none of them fails.
std::optional<Conclusion> by_failing(const Case& c, Fault fault, std::span<const Test> tests,
                                     std::string_view source = {}) {
    Conclusion found{fault, failing_of(c, tests), source};
    if (found.stands_on.empty()) return std::nullopt;
    return found;
}
std::optional<Conclusion> by_failing(const Case& c, Fault fault, std::initializer_list<Test> tests,
                                     std::string_view source = {}) {
    return by_failing(c, fault, std::span(tests.begin(), tests.size()), source);
}

std::optional<Conclusion> stood_in_water(const Case& c) {
    return by_failing(c, Fault::flooded, {Test::under_water});
}

// A winding or its insulation has failed. The short may have taken a separate module with it: both go.
std::optional<Conclusion> dead_winding(const Case& c) {
    return by_failing(c, c.two_piece() ? Fault::motor_and_module : Fault::motor, winding_tests);
}

// A shaft with play, or one that drags with nothing on it, has a bearing that is worn: the motor's own.
std::optional<Conclusion> worn_bearing(const Case& c) {
    return by_failing(c, Fault::motor, {Test::shaft_play, Test::wheel_loose});
}

// With its wheel on, a shaft that drags does not say whose bearing it is. Until that is known nothing else decides.
std::optional<Conclusion> stuck_shaft(const Case& c) {
    if (!c.fails(Test::spins_free)) return std::nullopt;
    if (!c.passes(Test::wheel_loose)) return Conclusion{};
    return Conclusion{Fault::wheel, {Test::spins_free, Test::wheel_loose}};
}

std::optional<Conclusion> bad_contact(const Case& c) {
    return by_failing(c, Fault::supply, {Test::fuse_drop, Test::contactor_drop});
}

constexpr Test before_the_motor[] = {Test::thermostat,   Test::float_switch, Test::door_switch,
                                     Test::control_fuse, Test::primary,      Test::transformer,
                                     Test::board_output};

// An induction motor's line is switched by the call: with no call, no line. The call is then the root.
std::optional<Conclusion> no_call(const Case& c) {
    if (!c.induction() || !c.fails(Test::line_volts)) return std::nullopt;
    Conclusion found{Fault::control_signal, failing_of(c, before_the_motor)};
    // Indoors the 24 V come from the same line; an outdoor fan has its call from elsewhere.
    const bool indoors = c.job.unit.load && *c.job.unit.load != Load::outdoor_fan;
    const Test* fed = nullptr;
    static constexpr Test feeds[] = {Test::transformer, Test::primary, Test::control_volts};
    for (const Test& test : feeds) {
        if (fed == nullptr && indoors && c.passes(test)) fed = &test;
    }
    const bool feed_dead = c.fails(Test::primary) && !c.fails(Test::door_switch);
    if (c.fails(Test::control_volts)) found.stands_on.push_back(Test::control_volts);
    // Volts at the transformer: the unit is fed, and what switches the lead is at fault.
    if (found.stands_on.empty() && fed != nullptr && c.says(Test::line_volts, TestReason::no_voltage))
        found.stands_on.push_back(*fed);
    if (found.stands_on.empty() || feed_dead) return std::nullopt;
    found.stands_on.push_back(Test::line_volts);
    return found;
}

std::optional<Conclusion> bad_supply(const Case& c) {
    if (auto found = by_failing(c, Fault::supply, {Test::line_volts, Test::legs})) return found;
    if (c.says(Test::amps, TestReason::lost_leg))
        return Conclusion{Fault::supply, {Test::amps}, "common-practice"};
    const bool door = c.fails(Test::door_switch) || c.passes(Test::line_volts);
    if (door || c.runs_badly()) return std::nullopt;
    return by_failing(c, Fault::supply, {Test::primary}, "common-practice");
}

// The call has ended and the motor is still told to run: no fault of the motor.
std::optional<Conclusion> call_stays(const Case& c) {
    if (!has_symptom(c.job, Symptom::runs_on_after_call) || !c.fails(Test::thermostat)) return std::nullopt;
    const bool tap = c.passes(Test::live_taps) || c.passes(Test::control_volts);
    if (!tap && !c.passes(Test::board_output)) return std::nullopt;
    const Test live = c.passes(Test::live_taps)       ? Test::live_taps
                      : c.passes(Test::control_volts) ? Test::control_volts
                                                      : Test::board_output;
    return Conclusion{Fault::control_signal, {live}, "common-practice"};
}

std::optional<Conclusion> dead_signal(const Case& c) {
    // With good volts at an induction motor its call has arrived, whatever the thermostat wire reads.
    if (c.induction() && c.passes(Test::line_volts)) return std::nullopt;
    if (auto found = by_failing(c, Fault::control_signal, {Test::control_volts, Test::live_taps}))
        return found;
    const bool arrives = c.passes(Test::control_volts) || c.passes(Test::live_taps);
    const bool runs = c.behaviour == Behaviour::runs_badly || c.behaviour == Behaviour::normal;
    std::vector<Test> failing = failing_of(c, before_the_motor);
    if (arrives || runs || failing.empty()) return std::nullopt;
    return Conclusion{Fault::control_signal, std::move(failing), "common-practice"};
}

std::optional<Conclusion> bad_capacitor(const Case& c) {
    if (!c.fails(Test::capacitor)) return std::nullopt;
    return Conclusion{Fault::capacitor, {Test::capacitor}};
}

// A duct fault explains a motor that runs badly, never one that does not start. It also stands where nobody
// said what the motor does: the duct is wrong in any case and nothing shows the motor to be.
std::optional<Conclusion> duct_first(const Case& c) {
    if (c.behaviour == Behaviour::does_not_start) return std::nullopt;
    const std::string_view source = c.fails(Test::static_total) ? "static-0.8" : "common-practice";
    if (auto found = by_failing(c, Fault::airflow, {Test::static_total, Test::filter_drop}, source))
        return found;
    if (!c.runs_badly()) return std::nullopt;
    if (auto found = by_failing(c, Fault::airflow, {Test::belt})) return found;
    const bool duct = moves_duct_air(c.job);
    if (auto found = by_failing(c, duct ? Fault::airflow : Fault::wheel, {Test::wheel}, source)) return found;
    return by_failing(c, Fault::airflow, {Test::coil_drop, Test::burner_input}, source);
}

std::optional<Conclusion> normal_behaviour(const Case& c) {
    if (c.behaviour != Behaviour::normal) return std::nullopt;
    const bool rocks = has_symptom(c.job, Symptom::rocks_then_starts);
    return Conclusion{Fault::none, {Test::symptom}, rocks ? "rocking" : "off-delay"};
}

/// REQUIRES: the family is known, for it decides what is needed. `apart` is one test that need not pass.
bool all_needed_pass(const Case& c, std::optional<Test> apart = {}) {
    const auto needed = needed_tests(c.job, c.facts, c.rows);
    return c.facts.family &&
           std::all_of(needed.begin(), needed.end(), [&](Test t) { return t == apart || c.passes(t); });
}

// Any two lines exchanged turn a three-phase motor round; of others plug, leads or program are set the wrong way.
std::optional<Conclusion> turns_the_wrong_way(const Case& c) {
    if (!has_symptom(c.job, Symptom::runs_backwards)) return std::nullopt;
    if (!c.is(Family::three_phase) && !all_needed_pass(c)) return std::nullopt;
    return Conclusion{Fault::rotation, {Test::symptom}};
}

// Everything that could keep it from its work tests good, and it does not do its work: the rest is at fault.
std::optional<Conclusion> nothing_else_left(const Case& c) {
    const bool works_not = c.behaviour == Behaviour::does_not_start ||
                           (c.runs_badly() && has_symptom(c.job, Symptom::runs_slow));
    if (!works_not || !all_needed_pass(c)) return std::nullopt;
    Conclusion found{c.two_piece() ? Fault::module : Fault::motor, needed_tests(c.job, c.facts, c.rows)};
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
    return by_failing(c, Fault::airflow, {Test::rise, Test::airflow});
}

// Nothing tested is at fault.
std::optional<Conclusion> nothing_wrong(const Case& c) {
    if (!c.runs_badly() || !all_needed_pass(c)) return std::nullopt;
    Conclusion found{Fault::none, needed_tests(c.job, c.facts, c.rows)};
    found.stands_on.push_back(Test::symptom);
    return found;
}

struct Step {
    std::optional<Conclusion> (*holds)(const Case&);
    std::string_view source;  // of the reasoning, where the step itself names none
};

// What is proven dead stands before what feeds it: a shorted winding also opens the breaker.
constexpr Step steps[] = {
    {stood_in_water, "common-practice"},
    {dead_winding, "winding-ground"},
    {worn_bearing, "free-shaft"},
    {stuck_shaft, "free-shaft"},
    {bad_contact, "common-practice"},
    {no_call, "common-practice"},
    {bad_supply, "line-always"},
    {call_stays, "common-practice"},
    {dead_signal, "ecm-sequence"},
    {bad_capacitor, "capacitor-practice"},
    {duct_first, "static-0.8"},
    {normal_behaviour, "rocking"},
    {turns_the_wrong_way, "common-practice"},
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
            if (found->source.empty() && found->fault != Fault::not_shown) found->source = step.source;
            return *found;
        }
    }
    return {};
}

bool keeps_it_standing(Symptom symptom) {
    return symptom == Symptom::no_run || symptom == Symptom::hums || symptom == Symptom::rocks_never_starts;
}

Behaviour behaviour_of(const FailedUnit& job) {
    if (!job.measured.symptoms || job.measured.symptoms->empty()) return Behaviour::not_stated;
    for (Symptom s : *job.measured.symptoms) {
        if (keeps_it_standing(s)) return Behaviour::does_not_start;
    }
    for (Symptom s : {Symptom::runs_slow, Symptom::trips_hot, Symptom::noisy, Symptom::runs_backwards,
                      Symptom::weak_air, Symptom::wrong_speed}) {
        if (has_symptom(job, s)) return Behaviour::runs_badly;
    }
    for (Symptom s : *job.measured.symptoms) {
        if (s != Symptom::wet) return Behaviour::normal;
    }
    return Behaviour::not_stated;  // that it got wet says not what it does
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

bool says(const EvidenceRows& rows, Test test, TestReason reason) {
    return std::any_of(rows.begin(), rows.end(),
                       [&](const Evidence& row) { return row.test == test && row.reason == reason; });
}

bool motor_half_good(const Facts& facts, const EvidenceRows& rows) {
    if (!facts.family || !is_two_piece(*facts.family)) return false;
    for (Test test : winding_tests) {
        if (!passed(rows, test)) return false;
    }
    return passed(rows, Test::spins_free) && !failed(rows, Test::shaft_play);
}

}  // namespace endbell::inline diagnosis
