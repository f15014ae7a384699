// What all rules find of all parts for one job: finding sets, each the parts of which one rule finds the same. A scan goes
// through them.
#pragma once
#include <list>
#include <memory>
#include <utility>
#include <vector>

#include "engine/index/class_findings.hpp"
#include "engine/index/class_runs.hpp"

namespace endbell::inline index {

/// Parts that fit are in none of the rule's sets, and no part is in two of them.
struct FindingSet {
    std::size_t rule = 0;  // by registry order
    const ClassFinding* finding =
        nullptr;  // null where only the verdict is known: no reasons are counted then
    Verdict verdict = Verdict::fits;
    ClassRuns runs;
};

class FindingSets {
  public:
    /// The sets of the next rule in registry order.
    void add(const IndexColumn& column, std::shared_ptr<const RuleFindings> findings);
    /// The same of its verdicts alone: all findings with the same one are one set.
    void add_verdicts(const IndexColumn& column, std::shared_ptr<const RuleFindings> findings);
    /// Moves one part out of its class: it was asked by itself what the last rule finds. `all`: all parts. After `add`.
    void set_apart(std::size_t position, ClassFinding own, const BitSet& all);
    /// Failures alone, where only those are of interest.
    void keep_failures();

    const std::vector<FindingSet>& list() const { return list_; }  // in registry order
    /// What was added, by registry order. The list points into it: it may not outlive what is taken.
    std::vector<std::shared_ptr<const RuleFindings>> take_findings() { return std::move(by_rule_); }

  private:
    std::vector<FindingSet> list_;
    std::vector<std::shared_ptr<const RuleFindings>> by_rule_;
    std::list<ClassFinding> alone_;  // of single parts; a list: they stay where they are
    std::list<BitSet> singles_;      // sets of single parts
};

}  // namespace endbell::inline index
