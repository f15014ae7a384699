// The job fields that a rule may ask for: how long each takes, who can tell it now, and which answers the
// loaded catalog makes possible.
#pragma once
#include <functional>
#include <string>
#include <string_view>
#include <vector>

#include "engine/rules/rule.hpp"

namespace endbell::inline ask {

/// A job with one more answer in it, to be judged again.
struct Trial {
    FailedUnit job;
    Diagnosis diagnosis;
    /// Good while the trial and the limits are.
    Query query(const Limits& limits) const { return {job, facts_of(job, limits), diagnosis, limits}; }
};

/// One answer that a person may give. `votes`: how many of the parts it would suit; several answers may share
/// one.
struct PossibleAnswer {
    double size = 0;    // sorts sizes; 0 for words
    std::string label;  // as a person reads it: "0.625 in", "1/3 hp", "band"
    double votes = 0;
    std::function<void(Trial&)> give;
};

struct Askable {
    std::string key;         // "plate.mount"
    int seconds = 0;         // to answer at the counter or on site; common practice
    double chance = 0;       // that the person who is asked can answer now, 0 to 1; common practice
    bool tape_size = false;  // of what stays in the equipment: can be measured once more
    /// Neither stated nor settled by another key that is.
    std::function<bool(const Query&)> blank;
    /// Ascending by size, then label; empty when these parts leave nothing to choose from.
    std::function<std::vector<PossibleAnswer>(const std::vector<const Part*>&)> answers;
};

/// All of them, in the order in which an expert without a catalog would ask: what it turns, kind, supply,
/// poles, size, fit, position, rotation, control, proof.
const std::vector<Askable>& askables();
/// Null when no one has told how `key` is asked.
const Askable* askable(std::string_view key);

}  // namespace endbell::inline ask
