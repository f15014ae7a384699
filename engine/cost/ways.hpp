// The ways out of a failed motor, and what each gives up.
#pragma once
#include <string>
#include <string_view>
#include <vector>

#include "engine/cost/ledger.hpp"

namespace endbell {

/// "module"; "same motor" (the old number's own part, or one of equal family and rating that a cross
/// reference calls its equal or its successor); "universal" (of the same family, with several power ratings
/// or with families that its sheet says it replaces); "motor" (any other of the same family); "retrofit"
/// (another family).
std::string_view way_of(const FailedUnit& job, const Candidate& candidate);
/// As far as the kind and the family tell it: "module", "retrofit", or "motor" for any other. The swap is the same.
std::string_view way_by_family(const FailedUnit& job, PartKind kind, std::optional<Family> family);

/// The motor stays and what failed is put right: "keep and cure", "capacitor" or "control repair".
bool is_repair(std::string_view way);

/// The labour task of taking the old part out and putting this one in.
std::string swap_task(const FailedUnit& job, std::string_view way);

/// What the old unit had and this part does not give, in a fixed order of stable words: "constant airflow",
/// "humidity control", "communicating control", "efficiency", "speeds", "ball bearing", "closed enclosure",
/// "warranty", "new motor half".
std::vector<std::string_view> losses(const FailedUnit& job, const Part& part);

/// The labour task that cures a killer; empty where no shop task is known for it.
std::string_view cure_task(Cause cause);

/// The tasks that cure these killers, each once: one duct repair cures all that a duct does.
std::vector<std::string> cure_tasks(const std::vector<KillerCause>& causes);

/// The killers that this way leaves: no line of its work cures them. A fitting motor is itself the cure of a
/// wrong one, and a motor without a capacitor that of a failed one.
std::vector<Cause> causes_left(const CostOption& option, const std::vector<KillerCause>& causes);

}  // namespace endbell
