#include "engine/explain/reasons.hpp"

#include <algorithm>

#include "engine/base/ensure.hpp"

namespace endbell::inline explain {

namespace {

const ReasonSentence* find(const std::vector<RuleSentences>& all, std::string_view rule, Reason reason) {
    const auto of_rule =
        std::find_if(all.begin(), all.end(), [&](const RuleSentences& r) { return r.rule == rule; });
    if (of_rule == all.end()) return nullptr;
    const auto found = std::find_if(of_rule->list.begin(), of_rule->list.end(),
                                    [&](const ReasonSentence& s) { return s.reason == reason; });
    return found != of_rule->list.end() ? &*found : nullptr;
}

}  // namespace

std::string_view sentence_for(std::string_view rule, Reason reason) {
    const ReasonSentence* found = find(sentences_of_kind_and_power(), rule, reason);
    if (found == nullptr) found = find(sentences_of_size_and_place(), rule, reason);
    ensure(found != nullptr, "every reason that a rule declares has its sentence");
    return found->text;
}

}  // namespace endbell::inline explain
