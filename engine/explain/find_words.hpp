// What a number or a fragment of one found, in words.
#pragma once
#include <string>
#include <vector>

#include "engine/explain/document.hpp"
#include "engine/find/find.hpp"

namespace endbell::inline explain {

/// A heading for each text where several were asked.
Document find_document(const std::vector<FindAnswer>& answers, const std::string& stamp);

/// What to find out next; empty where all that was found is named.
std::string narrowing_question(const FindAnswer& answer);

}  // namespace endbell::inline explain
