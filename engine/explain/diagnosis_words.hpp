// What a sheet says of a diagnosis: of each test, each outcome of a test, each fault and each cause. JSON has the words
// of diagnosis/kinds.hpp instead. A gate in tests/explain fails where one of them lacks its English.
#pragma once
#include "engine/diagnosis/diagnosis.hpp"
#include "engine/diagnosis/test_outcomes.hpp"
#include "engine/explain/english.hpp"

namespace endbell::inline explain {

/// What is tested, as a table names it: "line volts".
std::string say(Test test);

/// What the test says, beside its reading and its limit: "too low". REQUIRES: one of test_outcomes.
std::string say(const TestOutcome& outcome);

/// "Fault: capacitor"
std::string fault_title(Fault fault);
/// "Fault: capacitor."
std::string fault_sentence(Fault fault);

/// Why nothing is replaced. REQUIRES: a diagnosis of this fault replaces nothing.
std::string keep_sentence(Fault fault);

/// What is at fault outside the motor, and what puts it right: "The filter holds the air back: change it, ...".
std::string culprit_sentence(Culprit culprit);

/// The cause and what to do: "Cause: loaded filter (measured.filter_drop). Change the filter and ...".
std::string cause_sentence(const RootCause& root);

/// The cause as a step of the work: "Cure the cause, loaded filter: Change the filter and ...".
std::string cure_step(Cause cause);

/// The cause as a warning: "What shortens the next one's life: loaded filter (measured.filter_drop). Cure it ...".
std::string next_life_sentence(const RootCause& root);

/// All of it, for the gate.
std::vector<English<Test>> english_of_tests();
std::vector<English<TestOutcome>> english_of_outcomes();
std::vector<English<Fault>> english_of_faults();
std::vector<English<Fault>> english_of_keeping();
std::vector<English<Culprit>> english_of_culprits();
std::vector<English<Cause>> english_of_causes();
std::vector<English<Cause>> english_of_cures();

}  // namespace endbell::inline explain
