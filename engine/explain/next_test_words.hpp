// What a sheet says of the tests that come next: which reading decides, and what follows from it.
#pragma once
#include "engine/explain/diagnosis_words.hpp"

namespace endbell::inline explain {

struct NextTestWords {
    Test test;
    std::string_view decides;  // the reading that decides
    std::string_view follows;  // what follows from it
};

std::string say_decides(Test test);
std::string say_follows(Test test);
/// "power off, locked out", "live: keep clear".
std::string say(Danger danger);

/// A test as a step: "Does the shaft spin free by hand? [measured.spins_free] Power off, ...".
std::string next_test_sentence(const NextTest& next);

/// All of it, for the gate.
std::vector<NextTestWords> words_of_next_tests();
std::vector<English<Danger>> english_of_dangers();

}  // namespace endbell::inline explain
