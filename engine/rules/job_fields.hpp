// What a rule may look at of a job, field by field, as bytes: two jobs that agree in the fields of a rule get the
// same verdicts from it, part by part.
#pragma once
#include <cstddef>
#include <functional>
#include <string>
#include <string_view>
#include <vector>

#include "engine/rules/rule.hpp"

namespace endbell::inline rules {

struct JobField {
    std::string_view key;  // "plate.rotation": how a rule names it
    /// Appends what somebody said, or the fact that follows from it; hints count as nothing said.
    std::function<void(const Query&, std::string& bytes)> take;
};

const std::vector<JobField>& job_fields();

/// Index into job_fields(). Throws OurBug when there is none.
int job_field(std::string_view key);

/// The fields that a rule's verdicts depend on: indices into job_fields(). Those of a rule that looks at a motor's
/// ratings include what decides which rating is in use.
std::vector<int> job_fields_of(const Rule& rule);

/// All that the rules look at of one job, taken once.
class JobBytes {
  public:
    explicit JobBytes(const Query& query);

    /// What rule `r`, by registry order, looks at, and every limit: where these are the same, so are its verdicts.
    /// Of a draft inducer that the job names by its assembly, where `assembly()` is the same too.
    std::string of_rule(std::size_t r) const;
    std::string assembly() const;
    /// All of it: where these are the same, so is every verdict on every part.
    std::string all() const { return limits_ + all_; }
    /// Whether `of_rule` is the same of both.
    bool same_for_rule(std::size_t r, const JobBytes& other) const;

  private:
    std::string_view field(int f) const;
    std::string of(const std::vector<int>& fields) const;

    std::string all_;
    std::vector<std::size_t> ends_;  // of each field in all_
    std::string limits_;
};

}  // namespace endbell::inline rules
