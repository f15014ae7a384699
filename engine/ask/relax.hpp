// Relaxations, for when little or nothing fits: one reading that nobody has taken or that a tape can take again, each
// tried on every rule. What the plate or a person states is never bent: that would be a nudge to guess.
#pragma once
#include <string>
#include <string_view>
#include <vector>

#include "engine/match/match.hpp"

namespace endbell::inline ask {

struct Relaxation {
    std::string_view rule;                 // the one finding that ends these parts
    std::string job_key;                   // what would have to be otherwise
    std::string answer;                    // how, as an answer's label ("0.625 in")
    bool unread = false;                   // not stated, or in doubt; else a tape size that is stated
    Verdict verdict = Verdict::not_shown;  // the best that any of the parts then comes to
    std::vector<std::string> parts;        // ascending id
};

/// From the near misses. Readings not yet taken come first, then the best verdict, then most parts.
std::vector<Relaxation> relaxations(const Query& query, const MatchReport& report);

}  // namespace endbell::inline ask
