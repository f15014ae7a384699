#include "engine/diagnosis/tests.hpp"

namespace endbell::inline diagnosis {

void test_shaft(const FailedUnit& job, EvidenceRows& rows) {
    Evidence spin = open_row(Test::spins_free, "measured.spins_free", "free-shaft");
    if (const auto& free = job.measured.spins_free) {
        spin.verdict = *free ? Verdict::fits : Verdict::does_not_fit;
        spin.reason = *free ? TestReason::free : TestReason::stuck;
        spin.measured = {*free, Origin::measured};
    }
    rows.push_back(std::move(spin));

    Evidence play = open_row(Test::shaft_play, "measured.shaft_play", "free-shaft");
    if (const auto& loose = job.measured.shaft_play) {
        play.verdict = *loose ? Verdict::does_not_fit : Verdict::fits;
        play.reason = *loose ? TestReason::play : TestReason::no_play;
        play.measured = {*loose, Origin::measured};
    }
    rows.push_back(std::move(play));
}

}  // namespace endbell::inline diagnosis
