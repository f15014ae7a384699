// The ways out of a failed motor, and what each gives up.
#pragma once
#include <optional>
#include <vector>

#include "engine/cost/ledger.hpp"

namespace endbell::inline cost {

/// module; same_motor (the old number's own part, or one of equal family and rating that a cross reference calls its
/// equal or its successor); universal (of the same family, with several power ratings or with families that its sheet
/// says it replaces); motor (any other of the same family); retrofit (another family).
WayOut way_of(const FailedUnit& job, const Facts& facts, const Candidate& candidate);
/// As far as the kind and the family tell it: module, retrofit, or motor for any other. The swap is the same.
WayOut way_by_family(const Facts& facts, PartKind kind, std::optional<Family> family);

/// The motor stays and what failed is put right: keep_and_cure, capacitor or control_repair.
bool is_repair(WayOut way);

/// The work of taking the old part out and putting this one in.
ShopTask swap_task(const FailedUnit& job, WayOut way);

/// What the old unit had and this part does not give, in a fixed order.
std::vector<Loss> losses(const FailedUnit& job, const Facts& facts, const Part& part);

/// The work that cures a root cause; nothing where no shop task is known for it.
std::optional<ShopTask> cure_task(Cause cause);

/// The tasks that cure these root causes, each once: one duct repair cures all that a duct does.
std::vector<ShopTask> cure_tasks(const std::vector<RootCause>& causes);

/// The root causes that this way leaves: no line of its work cures them. A fitting motor is itself the cure of a
/// wrong one, and a motor without a capacitor that of a failed one.
std::vector<Cause> causes_left(const CostOption& option, const std::vector<RootCause>& causes);

}  // namespace endbell::inline cost
