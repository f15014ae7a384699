// What cannot be true of a job, and what is doubtful: checks across fields that were each read without fault.
#pragma once
#include <vector>

#include "engine/base/problem.hpp"
#include "engine/model/failed_unit.hpp"

namespace endbell::inline job {

/// Values that contradict physics or each other: they are refused.
std::vector<Problem> impossible(const FailedUnit& job);

/// Opens readings that one of two slips would explain: the sign of a static, three phases beside a capacitor.
void doubt(FailedUnit& job);

}  // namespace endbell::inline job
