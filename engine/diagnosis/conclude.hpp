// From tested rows to one conclusion: what failed, what it stands on, what is still to be measured.
#pragma once
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "engine/airflow/contrary.hpp"
#include "engine/diagnosis/tests.hpp"

namespace endbell::inline diagnosis {

/// What the symptoms say of the motor as a whole. Only what was stated: air readings of another day say
/// nothing.
enum class Behaviour { not_stated, does_not_start, runs_badly, normal };
Behaviour behaviour_of(const FailedUnit& job);
/// It does not start at all.
bool keeps_it_standing(Symptom symptom);

/// All rows of one test together: failed when one fails, passed when one passes and none fails.
bool failed(const EvidenceRows& rows, Test test);
bool passed(const EvidenceRows& rows, Test test);
/// One of its rows says just this.
bool says(const EvidenceRows& rows, Test test, TestReason reason);

struct Conclusion {
    Fault fault = Fault::not_shown;
    std::vector<Test> stands_on;
    std::string_view source = {};  // id of a Source
};

/// The first step that holds decides; none: not shown. REQUIRES: rows of every test of this job.
Conclusion conclude(const FailedUnit& job, const Facts& facts, const EvidenceRows& rows);

/// The tests that must pass before what is left over (the motor, or its module) is at fault.
std::vector<Test> needed_tests(const FailedUnit& job, const Facts& facts, const EvidenceRows& rows);

/// What the readings name outside the motor; none: they do not, or nothing there is at fault.
std::optional<Culprit> culprit_of(Fault fault, const FailedUnit& job, const Facts& facts,
                                  const EvidenceRows& rows, const Limits& limits);

/// Every reading that the conclusion still lacks, in the order in which to take them.
std::vector<MissingReading> missing_readings(const FailedUnit& job, const Facts& facts,
                                             const EvidenceRows& rows);

/// The reading of one key once more, because it contradicts another.
MissingReading read_again(const std::string& job_key);

/// Readings of the motor that cannot all be true, then those of the air.
std::vector<ContraryKeys> contradictions_in(const FailedUnit& job, const Facts& facts, const Limits& limits);

/// What the readings show to have killed the part, or to be about to kill the next.
std::vector<RootCause> causes_in(const FailedUnit& job, const Facts& facts, const EvidenceRows& rows,
                                 const Limits& limits);

/// Of a two-piece motor: three good windings, good insulation, a free shaft.
bool motor_half_good(const Facts& facts, const EvidenceRows& rows);

}  // namespace endbell::inline diagnosis
