#include "engine/ask/relax.hpp"

#include <algorithm>
#include <map>
#include <tuple>

#include "engine/ask/askable.hpp"

namespace endbell::inline ask {

namespace {

// Rule, key, size and label of the answer.
using ByAnswer = std::map<std::tuple<std::string_view, std::string_view, double, std::string>, Relaxation>;

/// Findings stand in registry order.
std::size_t end_of(const Candidate& miss) {
    const auto end = std::find_if(miss.findings.begin(), miss.findings.end(),
                                  [](const Finding& f) { return f.verdict == Verdict::does_not_fit; });
    return static_cast<std::size_t>(end - miss.findings.begin());
}

bool may_be_otherwise(const Query& q, const Askable& how) {
    return how.tape_size || how.blank(q);
}

/// An answer counts when it settles the rule that ended the part: one that contradicts the job only opens it.
void try_answers(const Query& q, const Candidate& miss, std::size_t end, const Askable& how,
                 ByAnswer& found) {
    const std::string_view rule = all_rules()[end].id;
    for (const PossibleAnswer& answer : how.answers({&miss.part})) {
        Trial trial{q.job, q.diagnosis};
        answer.give(trial);
        const Candidate then = examine(trial.query(q.limits), miss.part);
        if (then.verdict == Verdict::does_not_fit) continue;
        if (then.findings[end].verdict == Verdict::not_shown) continue;
        Relaxation& relaxation = found[{rule, how.key, answer.size, answer.label}];
        relaxation.rule = rule;
        relaxation.job_key = how.key;
        relaxation.answer = answer.label;
        relaxation.unread = how.blank(q);
        relaxation.verdict =
            relaxation.parts.empty() ? then.verdict : std::min(relaxation.verdict, then.verdict);
        relaxation.parts.push_back(miss.part.id);
    }
}

}  // namespace

std::vector<Relaxation> relaxations(const Query& q, const MatchReport& report) {
    ByAnswer found;
    for (const Candidate& miss : report.near_misses) {
        const std::size_t end = end_of(miss);
        for (const std::string_view key : all_rules()[end].job_keys) {
            const Askable* how = askable(key);
            if (how && may_be_otherwise(q, *how)) try_answers(q, miss, end, *how, found);
        }
    }
    std::vector<Relaxation> list;
    for (auto& entry : found) {
        std::sort(entry.second.parts.begin(), entry.second.parts.end());
        list.push_back(std::move(entry.second));
    }
    // What nobody has read yet is cheaper than what must be doubted: it comes first.
    std::stable_sort(list.begin(), list.end(), [](const Relaxation& a, const Relaxation& b) {
        return std::tuple(!a.unread, a.verdict, -static_cast<int>(a.parts.size())) <
               std::tuple(!b.unread, b.verdict, -static_cast<int>(b.parts.size()));
    });
    return list;
}

}  // namespace endbell::inline ask
