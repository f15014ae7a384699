// engine/rules: what a fitting part makes true, rule by rule. A rule is one claim about an old motor and a catalog part.
// One rule: one .cpp in rules/, one test in tests/rules/, one page in docs/rules/, one line in registry.cpp.
// tests/house fails when one is missing.
#pragma once
#include <optional>
#include <string_view>
#include <vector>

#include "engine/diagnosis/diagnosis.hpp"
#include "engine/facts/facts.hpp"
#include "engine/model/catalog.hpp"
#include "engine/model/failed_unit.hpp"
#include "engine/model/finding.hpp"
#include "engine/model/limits.hpp"
#include "engine/model/rule_ids.hpp"

namespace endbell::inline rules {

/// Everything a rule may look at besides the part.
struct Query {
    const FailedUnit& job;
    Facts facts;  // of the job
    const Diagnosis& diagnosis;
    const Limits& limits;
};

/// How a mismatch counts. Only for reading: the finding's verdict says what it came to.
enum class Weight { hard, curable, preference };
constexpr auto words_of(Weight) {
    return std::array{Word<Weight>{Weight::hard, "hard"}, Word<Weight>{Weight::curable, "curable"},
                      Word<Weight>{Weight::preference, "preference"}};
}

/// Which motors a rule asks for a column: of others it is not missing.
enum class Concerns {
    everyone,
    induction,  // families with poles
    capacitor_run,
    constant_torque,
    constant_airflow,
    two_piece,           // families whose module comes off
    made_for_belts_too,  // families made for a belt and for their own shaft
    plugged,             // electronic families, which hang on a plug
    inducers,
    outdoor_fans,
    held_by_frame,  // by feet or rings
    bolted,         // held by studs or by the face
    nobody          // the rule looks at it, and an empty cell blocks nothing
};

/// A column of which a rule must know the value: a part without it can never be shown to fit as far as the rule goes.
struct NeededColumn {
    std::string_view column;  // "motors.rotation"
    Concerns of = Concerns::everyone;
};

struct Rule {
    std::string_view id;     // "shaft-diameter"; also the names of its file, test and page
    std::string_view claim;  // one sentence that a fitting part makes true
    Weight weight;
    std::vector<Reason> reasons;             // all that it can say
    std::vector<std::string_view> sources;   // ids
    std::vector<LimitId> limits;             // rows it reads: {limit::power_low, limit::power_step_up}
    std::vector<std::string_view> job_keys;  // "plate.rotation": what it asks of the job
    /// What its verdict depends on of the part, beside the kind: columns of part_fields(). Of a draft inducer
    /// that the job names by its assembly, every rule may look at more.
    std::vector<std::string_view> part_columns;
    std::vector<NeededColumn> needs;
    /// Always answers, also for parts of a kind it does not concern (then: fits, reason "not concerned").
    Finding (*judge)(const Query&, const Part&);
    /// False: the job says nothing by which this rule could do other than let every part pass. Empty: ask it.
    bool (*decides)(const FailedUnit&) = nullptr;
};

/// All rules in the order in which a person would check them.
const std::vector<Rule>& all_rules();

}  // namespace endbell::inline rules
