// What one rule finds of the classes of its column: each finding once, with the runs of classes that it holds for.
#pragma once
#include <cstdint>
#include <string>
#include <vector>

#include "engine/index/columns.hpp"
#include "engine/model/task.hpp"
#include "engine/rules/rule.hpp"

namespace endbell::inline index {

/// What a finding comes to for all parts of a class, other than that they fit; what fits is not told apart from what fits
/// with a caution. Values of the part are left out: they differ from class to class.
struct ClassFinding {
    Verdict verdict = Verdict::fits;
    Reason reason = Reason::not_concerned;  // of a failure
    std::vector<std::string> asks;          // of what is not shown
    std::vector<std::uint32_t> bounds;      // of the runs of its classes: see ClassRuns

    bool same_as(const ClassFinding& other) const {
        return verdict == other.verdict && reason == other.reason && asks == other.asks;
    }
};
/// Without classes.
ClassFinding class_finding_of(const Finding& finding);

/// The job names a draft inducer by its assembly. Of the parts of this assembly rules may look at everything, so that each is
/// asked by itself.
bool names_inducer(const Query& query);

/// Of an assembly's number an index keeps only that there is one: gives the part a number that is not the job's.
void hide_assembly(const Query& query, Part& part);

/// What a rule asks for where it is not yet known of which part: a size that is the part's own may be missing, unless
/// it is an adapter's.
struct AskedChange {
    std::vector<Remedy> adapters;
    std::vector<ShopTask> tasks;  // of all remedies: see add_task()

    friend bool operator==(const AskedChange&, const AskedChange&) = default;
};

/// What classes which fit with changes ask for.
struct ClassChanges {
    std::vector<std::uint32_t> classes;  // ascending
    std::vector<std::size_t> which;      // of each, index into `changes`
    std::vector<AskedChange> changes;

    void add(std::uint32_t c, const std::vector<Remedy>& remedies);
    /// Null where the class asks for none.
    const AskedChange* of(std::size_t c) const;
};

/// Each finding of a rule once, and the bounds of the runs of classes that have one verdict, whatever the reason.
struct RuleFindings {
    std::vector<ClassFinding> list;
    ClassChanges changes;
    std::vector<std::uint32_t> fail_bounds, open_bounds, change_bounds;

    std::vector<std::uint32_t>& bounds_of(Verdict verdict);
};

/// Asks the rule of one part of each class.
RuleFindings ask_rule(const Rule& rule, const IndexColumn& column, const Query& query);

}  // namespace endbell::inline index
