// engine/match: every part against every rule: counts of all, names of the cheapest that live, and why the rest fall.
#pragma once
#include <algorithm>
#include <cstdint>
#include <functional>
#include <map>
#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "engine/model/task.hpp"
#include "engine/rules/rule.hpp"

namespace endbell::inline match {

/// One part with what every rule found; the verdict is the worst finding's.
struct Candidate {
    Part part;
    std::vector<Finding> findings;  // one a rule, in registry order
    Verdict verdict = Verdict::fits;
    std::vector<CrossReference>
        cross_references;  // those that name it for the old number: somebody's word, not proof
};

/// One cause of failing, a rule and its reason, merged over all parts that share it.
struct Tally {
    std::string_view rule;
    Reason reason = Reason::not_concerned;
    int parts = 0;       // failed by it
    int parts_only = 0;  // failed by it and by nothing else
    int would_fit = 0;   // of those, shown to fit, with or without changes, but for it
};

/// What is known of parts that are alike before the row of any of them is read.
struct Alike {
    PartKind kind = PartKind::motor;
    std::optional<Family> family;
    std::vector<Remedy> adapters;  // that they ask for: see is_adapter()
    std::vector<ShopTask> tasks;   // the work of all that they ask for, each task once, in rule order
};

/// A part that no rule ends, by name.
struct CandidateName {
    std::string part_id;
    Verdict verdict = Verdict::fits;
    std::optional<std::int64_t> least_price;  // cents or the like: see least_price()
    Verdict at_best = Verdict::fits;          // of one not shown to fit: if all that is open went its way
    std::shared_ptr<const Alike> alike;       // of one that fits, with or without changes
};

/// Names beyond those that a report holds, in the same order. Good while the question and the books are.
class MoreNames {
  public:
    virtual ~MoreNames() = default;
    /// The next `most`; fewer when there are no more.
    std::vector<CandidateName> next(std::size_t most) {
        return next(most, [](const Remedy&) { return true; });
    }
    /// The same without those that ask for an adapter that is none of these; `curable` says the same whenever it is
    /// asked of the same. An adapter without a size is of any.
    using Curable = std::function<bool(const Remedy&)>;
    static bool all_curable(const std::vector<Remedy>& adapters, const Curable& curable) {
        return std::all_of(adapters.begin(), adapters.end(), curable);
    }
    virtual std::vector<CandidateName> next(std::size_t most, const Curable& curable) = 0;
};

struct MatchReport {
    int parts_asked = 0;
    int fitting = 0;   // parts that fit as they are,
    int changing = 0;  // fit with changes,
    int open = 0;      // or are not shown to fit
    std::vector<CandidateName>
        matches;          // fit, with or without changes: as they are first, then cheapest, then id
    bool modules = true;  // false: no module is among them
    std::vector<CandidateName> not_shown;  // those first whose findings that are not open ask for no change
    std::vector<Candidate> near_misses;    // one finding ends each
    std::vector<Tally> tallies;            // most parts first, then rule and reason
    /// Job fields that keep at least one part from being shown to fit, with how many it concerns.
    std::map<std::string, int> open_keys;
};

/// How many names a report keeps; the counts are of all.
struct Keep {
    std::size_t matches = 800;
    std::size_t not_shown = 100;
    std::size_t near_misses = 10;
    bool reasons = true;  // false: no near misses, no tallies and no open fields
};

class Matcher;

/// What an answer is looked up in.
struct Books {
    const Catalog& catalog;
    const Limits& limits;              // in force: a shop's may be stricter than the catalog's
    const Matcher* matcher = nullptr;  // of this catalog; null: every part is asked
};

struct Matched {
    MatchReport report;
    std::unique_ptr<MoreNames> more;  // those after report.matches
};

/// Every rule is asked of every motor and module of the catalog; none is dropped at its first failure. A matcher answers
/// the same from its index.
Matched match_parts(const Query& query, const Books& books, const Keep& keep = {});

/// A part of the catalog with its findings and the cross references to it from the job's old numbers.
Candidate candidate(const Query& query, const Catalog& catalog, std::string_view part_id);

/// Stands for a catalog of any size: asks each rule once of all parts that are alike to it (engine/index).
class Matcher {
  public:
    virtual ~Matcher() = default;
    virtual Matched match(const Query& query, const Catalog& catalog, const Keep& keep) const = 0;
};

/// True of what only the catalog can tell ("motors.rotation"), false of a job's key.
bool is_part_column(std::string_view key);

/// What the findings ask for, equal remedies once, in the order of the rules.
std::vector<Remedy> remedies_of(const Candidate& candidate);
/// Between shaft, body, mount or plug and what holds them: alike parts ask for the same, to the size. Others may not,
/// a capacitor for one.
bool is_adapter(const Remedy& remedy);
/// Keeps each task once.
void add_task(std::vector<ShopTask>& to, ShopTask task);
Alike alike_of(const Candidate& candidate);
/// Adds one remedy of a part to those of its other findings. A band, or an adapter between two mounts and not two bolt
/// circles, is made for a body: the part's own.
void add_remedy(std::vector<Remedy>& to, Remedy remedy, const Part& part);

/// The findings for one part: what `endbell why` prints.
Candidate examine(const Query& query, Part part);

}  // namespace endbell::inline match
