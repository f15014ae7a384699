#include <string>

#include "engine/diagnosis/tests.hpp"

namespace endbell::inline diagnosis {

namespace {

struct Meaning {
    Symptom symptom;
    Verdict verdict;
    TestReason reason;
    std::string_view source;
};

constexpr Meaning meanings[] = {
    {Symptom::no_run, Verdict::does_not_fit, TestReason::does_not_start, "common-practice"},
    {Symptom::hums, Verdict::does_not_fit, TestReason::does_not_start, "common-practice"},
    {Symptom::rocks_never_starts, Verdict::does_not_fit, TestReason::does_not_start, "rocking"},
    {Symptom::rocks_then_starts, Verdict::fits, TestReason::normal, "rocking"},
    // A tap may hold on for its delay after the call: not stuck until the delay has passed.
    {Symptom::runs_on_after_call, Verdict::fits, TestReason::normal, "off-delay"},
    {Symptom::runs_slow, Verdict::does_not_fit, TestReason::runs_badly, "common-practice"},
    {Symptom::trips_hot, Verdict::does_not_fit, TestReason::runs_badly, "common-practice"},
    {Symptom::noisy, Verdict::does_not_fit, TestReason::runs_badly, "common-practice"},
    {Symptom::runs_backwards, Verdict::does_not_fit, TestReason::runs_badly, "dead-capacitor"},
    {Symptom::weak_air, Verdict::does_not_fit, TestReason::runs_badly, "common-practice"},
    {Symptom::wrong_speed, Verdict::does_not_fit, TestReason::runs_badly, "common-practice"},
    {Symptom::wet, Verdict::does_not_fit, TestReason::runs_badly, "common-practice"},
};

}  // namespace

void test_symptoms(const FailedUnit& job, EvidenceRows& rows) {
    const auto& stated = job.measured.symptoms;
    if (!stated || stated->empty()) {
        rows.push_back(open_row(Test::symptom, "measured.symptoms", "common-practice"));
        return;
    }
    for (const Meaning& meaning : meanings) {
        for (Symptom symptom : *stated) {
            if (symptom != meaning.symptom) continue;
            Evidence row = open_row(Test::symptom, "measured.symptoms", std::string(meaning.source));
            row.verdict = meaning.verdict;
            row.reason = meaning.reason;
            row.measured = {std::string(word(symptom)), Origin::measured};
            rows.push_back(std::move(row));
            break;
        }
    }
}

}  // namespace endbell::inline diagnosis
