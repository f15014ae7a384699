// A draft inducer is chosen by the assembly that its equipment specifies, and by nothing else: until that is known, no figure
// of a plate lets a part in or keeps one out.
#pragma once
#include <string>
#include <vector>

#include "engine/model/catalog.hpp"
#include "engine/model/failed_unit.hpp"

namespace endbell::inline select {

/// An inducer whose assembly nobody has stated.
bool waits_for_assembly(const FailedUnit& job);

/// What is asked then, and nothing of its size: the assembly, and what finds it in the equipment's papers.
std::vector<std::string> assembly_questions(const FailedUnit& job);

/// What the catalog's cross references say of the equipment's model: somebody's word with its source, to be held against the
/// equipment's own parts list. It picks nothing.
std::vector<CrossReference> named_for_model(const FailedUnit& job, const Catalog& catalog);

}  // namespace endbell::inline select
