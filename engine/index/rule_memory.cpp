#include "engine/index/rule_memory.hpp"

#include <algorithm>

#include "engine/base/text.hpp"
#include "engine/match/answer.hpp"
#include "engine/match/job_fields.hpp"

namespace endbell {

namespace {

// Memory stays bounded however many jobs are answered: a rule that knows as many forgets them all.
constexpr std::size_t jobs_remembered = 256;

/// A number that no part of the class bears: it stands for any other than the job's.
std::string other_than(const Reading<std::string>& number) {
    return said(number).value_or("") + "X";
}

Sayings ask(const Rule& rule, const Column& column, const Question& q) {
    Sayings made;
    std::vector<Saying>& list = made.list;
    std::size_t before = 0;  // the saying of the class before, 1 and up; 0: fits
    const auto fails = [&](std::size_t s) { return s > 0 && list[s - 1].verdict == Verdict::does_not_fit; };
    for (std::size_t c = 0; c < column.classes(); ++c) {
        Part part;
        column.put(c, part);
        if (part.motor && part.motor->assembly) part.motor->assembly = other_than(q.job.unit.assembly_number);
        Saying saying = saying_of(rule.check(q, part));
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
            if (fails(before) != fails(now)) made.fail_edges.push_back(edge);
        }
        before = now;
    }
    const auto last = static_cast<std::uint32_t>(column.classes() - 1);
    if (before > 0) list[before - 1].edges.push_back(last);
    if (fails(before)) made.fail_edges.push_back(last);
    return made;
}

}  // namespace

Saying saying_of(const Finding& f) {
    Saying saying{f.verdict, {}, {}, {}};
    if (f.verdict == Verdict::does_not_fit) saying.reason = f.reason;
    if (f.verdict == Verdict::not_shown) saying.asks = f.asks;
    return saying;
}

JobBytes::JobBytes(const Question& question) {
    for (const JobField& field : job_fields()) {
        field.take(question, all_);
        ends_.push_back(all_.size());
    }
    limits_ = fingerprint(limits_in_force(question.limits));
}

std::string JobBytes::of(const std::vector<int>& fields) const {
    std::string bytes = limits_;
    for (const int f : fields) {
        const auto i = static_cast<std::size_t>(f);
        const std::size_t begin = i == 0 ? 0 : ends_[i - 1];
        bytes.append(all_, begin, ends_[i] - begin);
    }
    return bytes;
}

RuleMemory::RuleMemory() {
    for (const Rule& rule : rules()) rules_.push_back({job_fields_of(rule), {}});
}

std::shared_ptr<const Sayings> RuleMemory::sayings(std::size_t r, const Column& column, const Question& q,
                                                   const JobBytes& job) {
    std::string key = job.of(rules_[r].job_fields);
    {
        const std::lock_guard lock(mutex_);
        if (const auto known = rules_[r].known.find(key); known != rules_[r].known.end())
            return known->second;
    }
    auto made = std::make_shared<const Sayings>(ask(rules()[r], column, q));
    const std::lock_guard lock(mutex_);
    if (rules_[r].known.size() >= jobs_remembered) rules_[r].known.clear();
    rules_[r].known.emplace(std::move(key), made);
    return made;
}

void RuleMemory::forget() {
    const std::lock_guard lock(mutex_);
    for (OfRule& rule : rules_) rule.known.clear();
}

}  // namespace endbell
