// START HERE. engine/select: one failed unit, one catalog, one answer, through every stage from left to right:
// FailedUnit -> Diagnosis -> MatchReport -> AirPlan -> WiringPlan -> KitChoice -> Ledger -> (Document).
#pragma once
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "engine/airflow/air_plan.hpp"
#include "engine/ask/ask.hpp"
#include "engine/ask/relax.hpp"
#include "engine/cost/ledger.hpp"
#include "engine/diagnosis/diagnosis.hpp"
#include "engine/facts/facts.hpp"
#include "engine/kit/kit.hpp"
#include "engine/kit/repair.hpp"
#include "engine/match/match.hpp"
#include "engine/wiring/wiring.hpp"

namespace endbell::inline select {

/// What the whole answer comes to; also the exit code of the commands.
enum class Outcome { something_fits = 0, nothing_fits = 10, undecided = 11, do_not_replace = 12 };
constexpr auto words_of(Outcome) {
    return std::array{Word<Outcome>{Outcome::something_fits, "something fits"},
                      Word<Outcome>{Outcome::nothing_fits, "nothing fits"},
                      Word<Outcome>{Outcome::undecided, "readings are missing"},
                      Word<Outcome>{Outcome::do_not_replace, "do not replace it"}};
}

/// One candidate carried through every stage.
struct Option {
    Candidate candidate;
    AirPlan air;
    WiringPlan wiring;                          // annotated where it is to be read: see annotate()
    KitChoice kit;                              // with the wiring plan's relays
    Verdict standing = Verdict::does_not_fit;   // the candidate's verdict after wiring and kit
    std::optional<Part> module = std::nullopt;  // that the kit buys with a motor half: its pins are wired
    std::optional<Current> rated_amps = std::nullopt;  // of the rating that would be in use
    std::optional<Offer> offer;                        // the one a shop of this policy would take
    std::optional<Money> today;                        // all of it; absent while something is not known
    std::optional<Money> so_far;                       // what is known of it
};

/// Indices into Selection::options, among those that fit; empty where none can be told.
struct NamedPicks {
    std::optional<int> in_stock;           // the best ranked that the shop can hand over now, kit included
    std::optional<int> cheapest_per_year;  // by the ledger
    std::optional<int> closest;            // fewest findings that differ from the old part, then rank
};

/// What an answer has somebody do: two jobs with the same are served alike.
struct Upshot {
    Outcome outcome = Outcome::undecided;
    Fault fault = Fault::not_shown;
    std::optional<Culprit> culprit;  // only where nothing is replaced: what is put right instead
    std::string pick;                // part id; empty: none
    friend bool operator==(const Upshot&, const Upshot&) = default;
};

/// One answer, or two together, with which another decision stands.
struct DecisiveAnswer {
    struct Said {
        std::string job_key;
        std::string answer;  // as a person would write it
        std::string up_to;   // of a size: the greatest next to it that does the same; empty: it alone
    };
    std::vector<Said> said;
    Upshot then;
};

/// See still_open.hpp.
struct StillOpen {
    std::vector<DecisiveAnswer>
        answers;            // in the order of the keys; of each key the first of every other upshot
    int tried = 0;          // answers
    bool all_tried = true;  // false: there were too many; then nothing is claimed
    bool nothing_more() const { return answers.empty() && all_tried; }
};

struct Selection {
    Facts facts;  // of the job that the answer rests on
    std::optional<FailedUnit>
        settled;  // the job without readings that cannot all be true; none: as it was stated
    const FailedUnit& job(const FailedUnit& stated) const { return settled ? *settled : stated; }
    Diagnosis diagnosis;
    MatchReport report;
    std::vector<Option> options;  // ranked: standing, installed total, lead time, added parts, id
    int carried =
        0;  // of the parts that pass every rule: the rest cannot come to less than the options wanted
    std::optional<int>
        pick;  // index of the option to take; only where something fits and nothing speaks against replacing
    NamedPicks picks;
    /// What cures a fault outside the motor, where a part does: bought in its place.
    std::optional<Repair> repair;
    /// The first five of those that pass every rule and that no wiring or no kit of this catalog completes.
    std::vector<Option> stopped;
    int stopped_in_all = 0;
    std::vector<std::string> barred;  // part ids that pass every rule and that the shop's policy excludes
    Ledger ledger;
    Outcome outcome = Outcome::undecided;
    std::vector<std::string> questions;  // job keys to answer first, most telling first
    /// Of an inducer without its assembly: what cross references say of the equipment's model.
    std::vector<CrossReference> named_for_model;
    std::optional<StillOpen> still_open;  // where somebody asked for it
    std::vector<Relaxation> relaxations;  // one job value otherwise, each tried; where nothing is picked
    std::string stamp;                    // program, rules, catalog generation, job digest
};

/// The rule set's version: bumped whenever a rule, a limit or a source changes what an answer comes to.
inline constexpr std::string_view rule_set = "3";

std::string stamp_of(const FailedUnit& job, const Catalog& catalog);

/// How much of an answer is worked out.
struct SelectionScope {
    std::size_t options = 20;  // so many of the best are proven to be the best; more may be there
    bool reasons = true;       // why the rest fall, what to ask and what would help
    std::size_t stopped() const { return reasons ? 5 : 0; }
};

/// The shop's policy is the shelf's.
Selection select_part(const FailedUnit& job, const Books& books, const KitShelf& shelf,
                      const SelectionScope& scope = {});
Selection select_part(const FailedUnit& job, const Books& books, const Policy& policy,
                      const SelectionScope& scope = {});

/// One candidate carried through every later stage, whatever its verdict. Its wiring is laid and proven, and not
/// annotated: that is done for those that somebody reads.
Option carry(const Query& query, Candidate judged, const KitShelf& shelf, const Books& books);
/// A plan that its volts contradict is refused there, and the option with it.
void annotate(Option& option, const FailedUnit& job, const Facts& facts, const Limits& limits);
/// The same of one of the options; where it was the pick and is refused, nothing is picked.
void annotate(Selection& s, std::size_t option, const FailedUnit& job, const Limits& limits);

}  // namespace endbell::inline select
