// What each rule said of each class of parts, kept for the next job that is alike to it: most jobs share their
// supply, their mount, and all that nobody has stated.
#pragma once
#include <cstdint>
#include <memory>
#include <mutex>
#include <string>
#include <unordered_map>
#include <vector>

#include "engine/index/columns.hpp"
#include "engine/model/task.hpp"
#include "engine/rules/job_fields.hpp"

namespace endbell::inline index {

/// What a rule says of some parts, other than that they fit; what fits is not told apart from what fits with a
/// caution.
struct Saying {
    Verdict verdict = Verdict::fits;
    Reason reason = Reason::not_concerned;  // of a failure
    std::vector<std::string> asks;          // of what is not shown
    /// Where runs of its classes begin or end: the exclusive or of the sets up to these classes is its set.
    std::vector<std::uint32_t> edges;

    bool same_as(const Saying& other) const {
        return verdict == other.verdict && reason == other.reason && asks == other.asks;
    }
};
Saying saying_of(const Finding& finding);

/// Of an assembly's number an index keeps only that there is one: gives the part a number that is not the job's.
void hide_assembly(const Question& question, Part& part);

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

/// Each saying of a rule once, and the edges of all that have one verdict taken together.
struct Sayings {
    std::vector<Saying> list;
    ClassChanges changes;
    std::vector<std::uint32_t> fail_edges, open_edges, change_edges;

    std::vector<std::uint32_t>& edges_of(Verdict verdict);
};

class RuleMemory {
  public:
    RuleMemory();

    /// Asks rule `r` of every class, or remembers what it said to a job alike.
    std::shared_ptr<const Sayings> sayings(std::size_t r, const IndexColumn& column, const Question& question,
                                           const JobBytes& job);
    void forget();

  private:
    using Known = std::unordered_map<std::string, std::shared_ptr<const Sayings>>;
    std::mutex mutex_;
    std::vector<Known> known_;  // of each rule
};

}  // namespace endbell::inline index
