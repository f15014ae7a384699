// Everything that the text shows, as one versioned JSON document. docs/json/ holds its JSON Schema.
#pragma once
#include <string>
#include <string_view>

#include "engine/explain/document.hpp"
#include "engine/select/select.hpp"

namespace endbell {

/// Bumped when a field changes its meaning or goes; new fields do not bump it.
inline constexpr int json_format = 1;

/// `top` limits the options written; the counts are of all.
std::string json_selection(std::string_view command, const Selection& selection, int top);
std::string json_candidate(std::string_view command, const Candidate& candidate, const std::string& stamp);
std::string json_diagnosis(std::string_view command, const Diagnosis& diagnosis, int exit_code,
                           const std::string& stamp);
std::string json_option(std::string_view command, const Selection& selection, const Option& option);
/// A sheet: the option it is about (null where there is none), the ledger, and the sheet's own blocks.
std::string json_sheet(const Selection& selection, const Option* option, const Document& sheet);
std::string json_rules(std::string_view command, const Limits& limits, std::string_view only_rule);

/// Any other answer: the document's own blocks.
std::string json_document(std::string_view command, const Document& document, int exit_code);

}  // namespace endbell
