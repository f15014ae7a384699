// engine/explain: each command's answer as a document. English lives here and in the tables beside it.
#pragma once
#include <string>
#include <vector>

#include "engine/explain/document.hpp"
#include "engine/model/failed_unit.hpp"
#include "engine/select/select.hpp"

namespace endbell::inline explain {

Document match_document(const FailedUnit& job, const Selection& selection, const std::vector<OpenField>& open,
                        int top);
Document why_document(const Candidate& candidate, const Diagnosis& diagnosis, const std::string& stamp);
Document ask_document(const Selection& selection, const std::vector<OpenField>& open);
Document diagnosis_document(const Diagnosis& diagnosis, const std::vector<OpenField>& open,
                            const std::string& stamp);
Document wiring_document(const FailedUnit& job, const Selection& selection, const Option& option);
Document start_up_document(const FailedUnit& job, const Selection& selection, const Option& option);
Document cost_document(const Selection& selection);
Document rules_document(const Limits& limits, const std::string& only_rule);

enum class SheetKind { counter, technician, estimate };
constexpr auto words_of(SheetKind) {
    return std::array{Word<SheetKind>{SheetKind::counter, "counter"},
                      Word<SheetKind>{SheetKind::technician, "technician"},
                      Word<SheetKind>{SheetKind::estimate, "estimate"}};
}
/// `option` may be null: then the sheet says why there is no part to take.
Document sheet_document(const FailedUnit& job, const Selection& selection, const Option* option,
                        SheetKind kind, const std::vector<OpenField>& open);

}  // namespace endbell::inline explain
