// What the eye and the nose find, and what stood in water.
#include <algorithm>

#include "engine/diagnosis/tests.hpp"

namespace endbell::inline diagnosis {

bool has_sign(const FailedUnit& job, Sign sign) {
    const auto& seen = job.measured.signs;
    return seen && std::count(seen->begin(), seen->end(), sign) > 0;
}

bool is_flooded(const FailedUnit& job) {
    return job.measured.under_water && *job.measured.under_water;
}

void test_signs(const FailedUnit& job, EvidenceRows& rows) {
    const auto& water = job.measured.under_water;
    if (water || has_symptom(job, Symptom::wet)) {
        Evidence row = open_row(Test::under_water, "measured.under_water", "common-practice");
        if (water) {
            row.verdict = *water ? Verdict::does_not_fit : Verdict::fits;
            row.reason = *water ? TestReason::flooded : TestReason::dry;
            row.measured = {*water, Origin::measured};
        }
        rows.push_back(std::move(row));
    }
    const auto add = [&](Sign sign, Verdict verdict, TestReason reason) {
        if (!has_sign(job, sign)) return;
        Evidence row = open_row(Test::signs, "measured.signs", "common-practice");
        row.verdict = verdict;
        row.reason = reason;
        row.measured = {std::string(word(sign)), Origin::measured};
        rows.push_back(std::move(row));
    };
    // What is burnt may be a wire, a board or a module, and what is wet may dry: the windings tell.
    add(Sign::burnt, Verdict::fits_with_changes, TestReason::burnt);
    add(Sign::wet, Verdict::fits_with_changes, TestReason::wet);
}

}  // namespace endbell::inline diagnosis
