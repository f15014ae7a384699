// A job key as the question a person can answer.
#pragma once
#include <string>
#include <string_view>
#include <vector>

namespace endbell::inline explain {

/// "plate.rotation" -> "Which way does the shaft turn, and seen from which end?". A key without a
/// question of its own gives "What is KEY?".
std::string question_for(std::string_view job_key);

/// The keys that have a question: for the test that every key the stages ask for is among them.
std::vector<std::string> keys_with_questions();

}  // namespace endbell::inline explain
