// One question as it is put to a person who can answer it now.
#pragma once
#include <string>

#include "engine/ask/ask.hpp"
#include "engine/diagnosis/diagnosis.hpp"
#include "engine/explain/compose.hpp"

namespace endbell::inline explain {

/// Why a key is asked: the first of the four that is there; none: the wiring waits for it.
struct PutQuestion {
    int number = 1;
    std::string job_key;
    const OpenField* open = nullptr;          // what the job says now, and how it can be read
    const MissingReading* missing = nullptr;  // it shows what failed
    const AskedReading* asked = nullptr;      // it narrows what fits
    std::string meaning, unit, example;       // of the key, as job_keys() tells them
    std::string contrary = {};                // it cannot be true with others: their keys, joined
};

/// The question, why it is asked, and what each possible answer would leave.
Document question_document(const PutQuestion& question);

/// How answers are written, and the words that are no answers.
Document answering_document(const PutQuestion& question);

/// "12 parts can still fit; 3 are shown to fit."
std::string what_is_left(const MatchReport& report);

}  // namespace endbell::inline explain
