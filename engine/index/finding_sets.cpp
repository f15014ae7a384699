#include "engine/index/finding_sets.hpp"

namespace endbell::inline index {

void FindingSets::add(const IndexColumn& column, std::shared_ptr<const RuleFindings> findings) {
    for (const ClassFinding& finding : findings->list)
        list_.push_back({by_rule_.size(), &finding, finding.verdict, {&column, finding.bounds, {}}});
    by_rule_.push_back(std::move(findings));
}

void FindingSets::add_verdicts(const IndexColumn& column, std::shared_ptr<const RuleFindings> findings) {
    const auto put = [&](Verdict verdict, const std::vector<std::uint32_t>& bounds) {
        if (!bounds.empty()) list_.push_back({by_rule_.size(), nullptr, verdict, {&column, bounds, {}}});
    };
    put(Verdict::does_not_fit, findings->fail_bounds);
    put(Verdict::not_shown, findings->open_bounds);
    put(Verdict::fits_with_changes, findings->change_bounds);
    by_rule_.push_back(std::move(findings));
}

void FindingSets::set_apart(std::size_t position, ClassFinding own, const BitSet& all) {
    const std::size_t rule = by_rule_.size() - 1;
    BitSet& single = singles_.emplace_back(all.size());
    add_bit(single.data(), position);
    bool placed = own.verdict == Verdict::fits;
    for (FindingSet& set : list_) {
        if (set.rule != rule) continue;
        const bool is_in = holds(set.runs, position, all.data(), all.size());
        const bool belongs = set.finding->same_as(own);
        if (is_in != belongs) set.runs.apart.push_back(single.data());
        placed = placed || belongs;
    }
    if (placed) return;
    alone_.push_back(std::move(own));
    list_.push_back({rule, &alone_.back(), alone_.back().verdict, {nullptr, {}, {single.data()}}});
}

void FindingSets::keep_failures() {
    std::erase_if(list_, [](const FindingSet& set) { return set.verdict != Verdict::does_not_fit; });
}

}  // namespace endbell::inline index
