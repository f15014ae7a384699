// Every part against every rule.
#pragma once
#include <map>
#include <string>
#include <vector>

#include "engine/match/rule.hpp"

namespace endbell {

/// One part with what every rule found; the verdict is the worst finding's.
struct Candidate {
    Part part;
    std::vector<Finding> findings;  // one a rule, in registry order
    Verdict verdict = Verdict::fits;
    std::vector<CrossReference>
        claims;  // cross references that name it for the old number: claims, not proof
};

/// One way of failing, merged over all parts that share it.
struct Tally {
    std::string_view rule;
    std::string_view reason;
    int parts = 0;       // failed by it
    int parts_only = 0;  // failed by it and by nothing else
    int would_fit = 0;   // of those, shown to fit, with or without changes, but for it
};

struct MatchReport {
    std::vector<Candidate> candidates;   // fits, fits with changes, not shown: worst verdict last, then id
    std::vector<Candidate> near_misses;  // one finding ends each
    std::vector<Tally> tallies;          // most parts first, then rule and reason
    int parts_asked = 0;
    /// Job fields that keep at least one part from being shown to fit, with how many it concerns.
    std::map<std::string, int> open_fields;
};

/// Asks every rule of every motor and module of the catalog. No part is dropped at its first failure.
MatchReport match(const Question& question, const Catalog& catalog);

/// The findings for one part: what `endbell why` prints.
Candidate examine(const Question& question, const Part& part);

}  // namespace endbell
