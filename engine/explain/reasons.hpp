// A sentence for everything that a rule can find, keyed by rule and reason. A test fails when one is missing or one too
// many.
#pragma once
#include <string_view>
#include <vector>

#include "engine/model/finding.hpp"

namespace endbell::inline explain {

struct ReasonSentence {
    Reason reason;
    std::string_view text;
};

struct RuleSentences {
    std::string_view rule;
    std::vector<ReasonSentence> list;
};

/// Of what the part is, what it turns, and its electricity.
const std::vector<RuleSentences>& sentences_of_kind_and_power();
/// Of its shaft, body and mount, of where it sits, and of what the plan adds.
const std::vector<RuleSentences>& sentences_of_size_and_place();

/// Our bug where there is none.
std::string_view sentence_for(std::string_view rule, Reason reason);

}  // namespace endbell::inline explain
