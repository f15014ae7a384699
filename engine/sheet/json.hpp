// Everything that the text shows, as one versioned JSON document. docs/json/ holds its JSON Schema.
#pragma once
#include <string>
#include <string_view>
#include <vector>

#include "engine/base/problem.hpp"
#include "engine/explain/compose.hpp"
#include "engine/find/find.hpp"
#include "engine/select/select.hpp"

namespace endbell::inline sheet {

/// Bumped when a field changes its meaning or goes; new fields do not bump it.
inline constexpr int json_format = 1;

/// `top` limits the options written; the counts are of all.
/// `open`: what the job says and can be read in more than one way.
std::string json_selection(std::string_view command, const FailedUnit& job, const Selection& selection,
                           const std::vector<OpenField>& open, int top);
std::string json_candidate(std::string_view command, const Candidate& candidate, const Diagnosis& diagnosis,
                           const std::string& stamp);
std::string json_diagnosis(std::string_view command, const Diagnosis& diagnosis,
                           const std::vector<OpenField>& open, int exit_code, const std::string& stamp);
std::string json_option(std::string_view command, const FailedUnit& job, const Selection& selection,
                        const Option& option, int exit_code);
/// A sheet: the option it is about (null where there is none), what decided it, and the sheet's own blocks.
std::string json_sheet(const FailedUnit& job, const Selection& selection, const Option* option,
                       const std::vector<OpenField>& open, const Document& sheet);
std::string json_rules(std::string_view command, const Limits& limits, std::string_view only_rule);

/// A text each, with the parts that it found.
std::string json_find(const std::vector<FindAnswer>& answers, const std::string& stamp);

/// Any other answer: the document's own blocks.
std::string json_document(std::string_view command, const Document& document, int exit_code);

/// What went wrong, where there is no answer: one document too, so that a program always has one to read.
std::string json_problems(std::string_view command, const std::vector<Problem>& problems, int exit_code);

}  // namespace endbell::inline sheet
