#include "engine/index/finding_cache.hpp"

#include "engine/rules/rule.hpp"

namespace endbell::inline index {

namespace {

// Memory stays bounded however many jobs are answered: a rule that knows as many forgets them all.
constexpr std::size_t jobs_remembered = 1024;

}  // namespace

FindingCache::FindingCache() {
    known_.resize(all_rules().size());
}

std::shared_ptr<const RuleFindings> FindingCache::findings(std::size_t r, const IndexColumn& column,
                                                           const Query& q, const JobBytes& job) {
    static const auto nothing = std::make_shared<const RuleFindings>();
    if (all_rules()[r].decides && !all_rules()[r].decides(q.job)) return nothing;
    std::string key = job.of_rule(r);
    {
        const std::lock_guard lock(mutex_);
        if (const auto known = known_[r].find(key); known != known_[r].end()) return known->second;
    }
    auto made = std::make_shared<const RuleFindings>(ask_rule(all_rules()[r], column, q));
    const std::lock_guard lock(mutex_);
    if (known_[r].size() >= jobs_remembered) known_[r].clear();
    known_[r].emplace(std::move(key), made);
    return made;
}

void FindingCache::forget() {
    const std::lock_guard lock(mutex_);
    for (Known& of_rule : known_) of_rule.clear();
}

}  // namespace endbell::inline index
