// What a rule may look at of a job, field by field, as bytes: two jobs that agree in the fields of a rule get the
// same verdicts from it, part by part.
#pragma once
#include <string>
#include <string_view>
#include <vector>

#include "engine/match/rule.hpp"

namespace endbell {

struct JobField {
    std::string_view key;  // "plate.rotation": how a rule names it
    /// Appends what somebody said; hints count as nothing said.
    void (*take)(const Question&, std::string& bytes);
};

const std::vector<JobField>& job_fields();

/// The fields that a rule's verdicts depend on: indices into job_fields(). Those of a rule that looks at a motor's
/// ratings include what decides which rating is in use.
std::vector<int> job_fields_of(const Rule& rule);

/// Every limit in force, as bytes.
std::string limits_in_force(const Limits& limits);

}  // namespace endbell
