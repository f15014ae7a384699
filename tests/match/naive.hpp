// A second opinion on every rule, written from the trade's facts alone: it shares no code with engine/match
// and reads no limit rows. Slow, plain and literal on purpose.
#pragma once
#include <map>
#include <string>

#include "engine/diagnosis/diagnosis.hpp"
#include "engine/model/failed_unit.hpp"
#include "engine/model/finding.hpp"
#include "engine/model/part.hpp"

namespace endbell::naive {

/// By rule id.
using Opinion = std::map<std::string, Verdict>;

Opinion judge(const FailedUnit& job, const Diagnosis& diagnosis, const Part& part);

}  // namespace endbell::naive
