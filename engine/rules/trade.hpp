// What several rules ask of a job and a part together; what follows from one of them alone stands in facts/.
#pragma once
#include <optional>

#include "engine/facts/rating.hpp"
#include "engine/rules/finding_draft.hpp"

namespace endbell::inline rules {

/// The inducer assembly that the equipment specifies, by number: its mechanics come with it.
bool specified_assembly(const FailedUnit& job, const Part& part);

/// By feet or rings: the frame number fixes them, and the height of the shaft over them.
bool held_by_its_frame(Mount mount);

/// What the rating in use says, where it says it.
std::optional<Power> power_in_use(const Query& query, const Part& part);
std::optional<Current> amps_in_use(const Query& query, const Part& part);
std::optional<Speed> speed_in_use(const Query& query, const Part& part);

/// Shaft power grows with the cube of speed on one wheel or blade (fan laws).
double cube_law(Speed from, Speed to);

}  // namespace endbell::inline rules
