// START HERE. One failed unit, one catalog, one answer, through every stage from left to right:
// FailedUnit -> Diagnosis -> MatchReport -> KitChoice -> AirPlan -> WiringPlan -> Ledger -> (Sheet).
#pragma once
#include <optional>
#include <string>
#include <vector>

#include "engine/airflow/air_plan.hpp"
#include "engine/cost/ledger.hpp"
#include "engine/diagnosis/diagnosis.hpp"
#include "engine/kit/kit.hpp"
#include "engine/match/match.hpp"
#include "engine/wiring/wiring.hpp"

namespace endbell {

/// What the whole answer comes to; also the exit code of the commands.
enum class Outcome { something_fits = 0, nothing_fits = 10, undecided = 11, do_not_replace = 12 };
template <>
struct Words<Outcome> {
    static constexpr std::array table{Word<Outcome>{Outcome::something_fits, "something fits"},
                                      Word<Outcome>{Outcome::nothing_fits, "nothing fits"},
                                      Word<Outcome>{Outcome::undecided, "readings are missing"},
                                      Word<Outcome>{Outcome::do_not_replace, "do not replace it"}};
};

/// One candidate carried through every stage.
struct Option {
    Candidate candidate;
    KitChoice kit;
    Verdict standing = Verdict::does_not_fit;  // after the kit: an uncured remedy does not fit
    std::optional<Offer> offer;
    AirPlan air;
    WiringPlan wiring;
};

struct Selection {
    Diagnosis diagnosis;
    MatchReport report;
    std::vector<Option> options;   // ranked: standing, installed total, lead time, added parts, id
    std::optional<int> pick;       // index of the option to take: never one that is only not shown to fit
    Ledger ledger;
    Outcome outcome = Outcome::undecided;
    std::vector<std::string> questions;  // job keys to answer first, most telling first
    std::string stamp;                   // program, rules, catalog generation, job digest
};

Selection select(const FailedUnit& job, const Catalog& catalog, const Policy& policy);

}  // namespace endbell
