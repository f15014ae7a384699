#include "engine/match/relax.hpp"

#include <algorithm>
#include <map>
#include <tuple>

#include "engine/match/askable.hpp"

namespace endbell {

namespace {

using Ways = std::map<std::tuple<std::string_view, std::string, std::string>, Relaxation>;

const Rule& rule_that_ended(const Candidate& miss) {
    const auto end = std::find_if(miss.findings.begin(), miss.findings.end(),
                                  [](const Finding& f) { return f.verdict == Verdict::does_not_fit; });
    return rules()[static_cast<std::size_t>(end -
                                            miss.findings.begin())];  // findings stand in registry order
}

void try_answers(const Question& q, const Candidate& miss, const Rule& rule, const Askable& how, Ways& ways) {
    for (const PossibleAnswer& answer : how.answers({&miss.part})) {
        Trial trial{q.job, q.diagnosis};
        answer.give(trial);
        const Verdict then = examine(Question{trial.job, trial.diagnosis, q.limits}, miss.part).verdict;
        if (then == Verdict::does_not_fit) continue;
        Relaxation& way = ways[{rule.id, std::string(how.key), answer.label}];
        way.rule = rule.id;
        way.job_key = how.key;
        way.answer = answer.label;
        way.unread = how.blank(q.job);
        way.verdict = way.parts.empty() ? then : std::min(way.verdict, then);
        way.parts.push_back(miss.part.id);
    }
}

}  // namespace

std::vector<Relaxation> relaxations(const Question& q, const MatchReport& report) {
    Ways ways;
    for (const Candidate& miss : report.near_misses) {
        const Rule& rule = rule_that_ended(miss);
        for (const std::string_view key : rule.job_keys) {
            if (const Askable* how = askable(key)) try_answers(q, miss, rule, *how, ways);
        }
    }
    std::vector<Relaxation> list;
    for (auto& entry : ways) {
        std::sort(entry.second.parts.begin(), entry.second.parts.end());
        list.push_back(std::move(entry.second));
    }
    std::stable_sort(list.begin(), list.end(), [](const Relaxation& a, const Relaxation& b) {
        return std::tuple(!a.unread, a.verdict, -static_cast<int>(a.parts.size())) <
               std::tuple(!b.unread, b.verdict, -static_cast<int>(b.parts.size()));
    });
    return list;
}

}  // namespace endbell
