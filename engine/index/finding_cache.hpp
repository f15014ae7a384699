// What each rule found of the classes, kept for the next job that is alike to it: most jobs share their supply, their mount,
// and all that nobody has stated. An answer never depends on it.
#pragma once
#include <cstdint>
#include <memory>
#include <mutex>
#include <string>
#include <unordered_map>
#include <vector>

#include "engine/index/class_findings.hpp"
#include "engine/rules/job_fields.hpp"

namespace endbell::inline index {

/// Bounded. Threads share it.
class FindingCache {
  public:
    FindingCache();

    /// Asks rule `r` of every class, or remembers what it found for a job alike.
    std::shared_ptr<const RuleFindings> findings(std::size_t r, const IndexColumn& column, const Query& query,
                                                 const JobBytes& job);
    void forget();

  private:
    using Known = std::unordered_map<std::string, std::shared_ptr<const RuleFindings>>;
    std::mutex mutex_;
    std::vector<Known> known_;  // of each rule, by what it looks at of a job
};

}  // namespace endbell::inline index
