// The sizes at which an answer may change: limits in force, what the job states, and what parts in question have.
#pragma once
#include <set>
#include <string>

#include "engine/fields/job_key.hpp"
#include "engine/fields/steps.hpp"
#include "engine/match/match.hpp"

namespace endbell::inline select {

struct StepsFound {
    StepSizes steps;
    std::set<std::string> asked;  // keys for which a part in question waits
    bool complete = true;         // false: more parts are in question than were looked at
};

/// The shop's own terms: nobody is asked for them.
bool is_of_shop(const JobKey& key);

StepsFound steps_of(const FailedUnit& job, const Diagnosis& diagnosis, const Books& books);

}  // namespace endbell::inline select
