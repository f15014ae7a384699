#include "engine/index/class_findings.hpp"

#include <algorithm>

#include "engine/base/ensure.hpp"
#include "engine/match/match.hpp"
#include "engine/rules/finding_draft.hpp"

namespace endbell::inline index {

namespace {

/// The runs of classes that have one finding, and of those that have one verdict, while classes come one after the other.
class RunBuilder {
  public:
    explicit RunBuilder(RuleFindings& to) : to_(to) {}

    /// The class `c`, the next one, has the finding `now`.
    void put(std::uint32_t c, std::size_t now) {
        if (now != before_ && c > 0) {
            bound(before_, c - 1);
            bound(now, c - 1);
            if (verdict(before_) != verdict(now)) {
                verdict_bound(before_, c - 1);
                verdict_bound(now, c - 1);
            }
        }
        before_ = now;
    }
    /// The last class was `c`.
    void end(std::uint32_t c) {
        bound(before_, c);
        verdict_bound(before_, c);
    }
    /// Its index in the list and one: 0 is a class that fits, which is in no list.
    std::size_t number_of(ClassFinding&& finding) {
        if (finding.verdict == Verdict::fits) return 0;
        const auto known = std::find_if(to_.list.begin(), to_.list.end(),
                                        [&](const ClassFinding& f) { return f.same_as(finding); });
        const auto number = static_cast<std::size_t>(known - to_.list.begin()) + 1;
        if (known == to_.list.end()) to_.list.push_back(std::move(finding));
        return number;
    }

  private:
    Verdict verdict(std::size_t number) const {
        return number > 0 ? to_.list[number - 1].verdict : Verdict::fits;
    }
    void bound(std::size_t number, std::uint32_t c) {
        if (number > 0) to_.list[number - 1].bounds.push_back(c);
    }
    void verdict_bound(std::size_t number, std::uint32_t c) {
        if (number > 0) to_.bounds_of(verdict(number)).push_back(c);
    }

    RuleFindings& to_;
    std::size_t before_ = 0;  // number of the finding of the class before
};

}  // namespace

RuleFindings ask_rule(const Rule& rule, const IndexColumn& column, const Query& q) {
    RuleFindings made;
    RunBuilder runs(made);
    const auto classes = static_cast<std::uint32_t>(column.classes());
    for (std::uint32_t c = 0; c < classes; ++c) {
        Part part;
        column.put(c, part);
        hide_assembly(q, part);
        const Finding finding = rule.judge(q, part);
        if (finding.verdict == Verdict::fits_with_changes) made.changes.add(c, finding.remedies);
        runs.put(c, runs.number_of(class_finding_of(finding)));
    }
    runs.end(classes - 1);
    return made;
}

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

std::vector<std::uint32_t>& RuleFindings::bounds_of(Verdict verdict) {
    ensure(verdict != Verdict::fits, "what fits is whatever is left");
    if (verdict == Verdict::does_not_fit) return fail_bounds;
    return verdict == Verdict::not_shown ? open_bounds : change_bounds;
}

bool names_inducer(const Query& q) {
    return q.job.unit.assembly_number && q.job.unit.load.said() == Load::draft_inducer;
}

void hide_assembly(const Query& q, Part& part) {
    if (!part.motor || !part.motor->assembly) return;
    part.motor->assembly = q.job.unit.assembly_number.said().value_or("") + "X";
}

ClassFinding class_finding_of(const Finding& f) {
    ClassFinding finding{f.verdict, {}, {}, {}};
    if (f.verdict == Verdict::does_not_fit) finding.reason = f.reason;
    if (f.verdict == Verdict::not_shown) finding.asks = f.asks;
    return finding;
}

}  // namespace endbell::inline index
