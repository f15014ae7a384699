#include "engine/index/rule_memory.hpp"

#include <algorithm>

#include "engine/base/check.hpp"
#include "engine/match/match.hpp"
#include "engine/rules/answer.hpp"

namespace endbell::inline index {

namespace {

// Memory stays bounded however many jobs are answered: a rule that knows as many forgets them all.
constexpr std::size_t jobs_remembered = 1024;

Sayings ask(const Rule& rule, const IndexColumn& column, const Question& q) {
    Sayings made;
    std::vector<Saying>& list = made.list;
    std::size_t before = 0;  // the saying of the class before, 1 and up; 0: fits
    const auto verdict_of = [&](std::size_t s) { return s > 0 ? list[s - 1].verdict : Verdict::fits; };
    const auto put_edge = [&](Verdict verdict, std::uint32_t edge) {
        if (verdict != Verdict::fits) made.edges_of(verdict).push_back(edge);
    };
    for (std::size_t c = 0; c < column.classes(); ++c) {
        Part part;
        column.put(c, part);
        hide_assembly(q, part);
        Finding finding = rule.check(q, part);
        Saying saying = saying_of(finding);
        if (saying.verdict == Verdict::fits_with_changes)
            made.changes.add(static_cast<std::uint32_t>(c), finding.remedies);
        std::size_t now = 0;
        if (saying.verdict != Verdict::fits) {
            const auto known =
                std::find_if(list.begin(), list.end(), [&](const Saying& s) { return s.same_as(saying); });
            now = static_cast<std::size_t>(known - list.begin()) + 1;
            if (known == list.end()) list.push_back(std::move(saying));
        }
        if (now != before && c > 0) {
            const auto edge = static_cast<std::uint32_t>(c - 1);
            if (before > 0) list[before - 1].edges.push_back(edge);
            if (now > 0) list[now - 1].edges.push_back(edge);
            if (verdict_of(before) != verdict_of(now)) {
                put_edge(verdict_of(before), edge);
                put_edge(verdict_of(now), edge);
            }
        }
        before = now;
    }
    const auto last = static_cast<std::uint32_t>(column.classes() - 1);
    if (before > 0) list[before - 1].edges.push_back(last);
    put_edge(verdict_of(before), last);
    return made;
}

}  // namespace

void ClassChanges::add(std::uint32_t c, const std::vector<Remedy>& remedies) {
    AskedChange change;
    for (const Remedy& remedy : remedies) {
        add_task(change.tasks, task_of(remedy.cure));
        if (is_adapter(remedy)) change.adapters.push_back(remedy);
    }
    if (change == AskedChange{}) return;
    auto same = std::find(changes.begin(), changes.end(), change);
    if (same == changes.end()) same = changes.insert(same, std::move(change));
    classes.push_back(c);
    which.push_back(static_cast<std::size_t>(same - changes.begin()));
}

const AskedChange* ClassChanges::of(std::size_t c) const {
    const auto found = std::lower_bound(classes.begin(), classes.end(), c);
    if (found == classes.end() || *found != c) return nullptr;
    return &changes[which[static_cast<std::size_t>(found - classes.begin())]];
}

std::vector<std::uint32_t>& Sayings::edges_of(Verdict verdict) {
    check(verdict != Verdict::fits, "what fits is whatever is left");
    if (verdict == Verdict::does_not_fit) return fail_edges;
    return verdict == Verdict::not_shown ? open_edges : change_edges;
}

void hide_assembly(const Question& q, Part& part) {
    if (!part.motor || !part.motor->assembly) return;
    part.motor->assembly = q.job.unit.assembly_number.said().value_or("") + "X";
}

Saying saying_of(const Finding& f) {
    Saying saying{f.verdict, {}, {}, {}};
    if (f.verdict == Verdict::does_not_fit) saying.reason = f.reason;
    if (f.verdict == Verdict::not_shown) saying.asks = f.asks;
    return saying;
}

RuleMemory::RuleMemory() {
    known_.resize(all_rules().size());
}

std::shared_ptr<const Sayings> RuleMemory::sayings(std::size_t r, const IndexColumn& column,
                                                   const Question& q, const JobBytes& job) {
    static const auto nothing = std::make_shared<const Sayings>();
    if (all_rules()[r].decides && !all_rules()[r].decides(q.job)) return nothing;
    std::string key = job.of_rule(r);
    {
        const std::lock_guard lock(mutex_);
        if (const auto known = known_[r].find(key); known != known_[r].end()) return known->second;
    }
    auto made = std::make_shared<const Sayings>(ask(all_rules()[r], column, q));
    const std::lock_guard lock(mutex_);
    if (known_[r].size() >= jobs_remembered) known_[r].clear();
    known_[r].emplace(std::move(key), made);
    return made;
}

void RuleMemory::forget() {
    const std::lock_guard lock(mutex_);
    for (Known& of_rule : known_) of_rule.clear();
}

}  // namespace endbell::inline index
