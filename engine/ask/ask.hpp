// engine/ask: what to ask a person next: the reading that settles most for its effort, by the counts of the loaded
// catalog.
#pragma once
#include <string>
#include <string_view>
#include <vector>

#include "engine/match/match.hpp"

namespace endbell::inline ask {

/// What one answer would leave.
struct AnswerLeaves {
    std::string answer;  // "band", "0.5 in"; in the order of their size
    double share = 0;    // how likely, by the parts it suits
    int living = 0;      // candidates that would not be ended
    int matches = 0;     // of them, those shown to fit
};

struct AskedReading {
    std::string job_key;
    double score = 0;    // expected candidates settled, times `chance`, per second
    double settled = 0;  // expected candidates that the answer ends or shows to fit
    double chance = 0;   // that the person can answer now
    int seconds = 0;
    int concerns = 0;   // candidates that it keeps open
    int looked_at = 0;  // candidates in all
    bool more = false;  // as many as are ever looked at: the cheapest, and there may be more
    std::vector<AnswerLeaves> answers;
};

/// Why there is nothing to ask, or that there is.
enum class AskState {
    ask,            // a reading would change the decision
    one_left,       // one candidate, and it is shown to fit
    only_price,     // several, and all match: they differ in price, stock or finish
    cannot_change,  // what is open could not end better than what matches
    none_left,      // every candidate is ended: the near misses say by what
    no_answer       // something is open that only the catalog or nobody can tell
};

/// Most telling first. A key that another one of the list would answer as well is left out. Empty when the
/// state is not `ask`. Of many open candidates the cheapest 24 are looked at.
std::vector<AskedReading> what_to_ask(const Query& query, const MatchReport& report, const Catalog& catalog);
std::vector<AskedReading> what_to_ask(const Query& query, const Books& books);

AskState ask_state(const Query& query, const MatchReport& report, const Catalog& catalog);

/// After this many questions a counter promises a call-back and sends the photo list (common practice).
inline constexpr int questions_at_most = 5;

}  // namespace endbell::inline ask
