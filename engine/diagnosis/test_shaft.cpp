#include "engine/diagnosis/tests.hpp"

namespace endbell::inline diagnosis {

namespace {

void settle(Evidence& row, bool good, bool measured, TestReason passes, TestReason fails) {
    row.verdict = good ? Verdict::fits : Verdict::does_not_fit;
    row.reason = good ? passes : fails;
    row.measured = {measured, Origin::measured};
}

}  // namespace

void test_shaft(const FailedUnit& job, EvidenceRows& rows) {
    const MeasuredReadings& m = job.measured;
    Evidence spin = open_row(Test::spins_free, "measured.spins_free", "free-shaft");
    if (m.spins_free) settle(spin, *m.spins_free, *m.spins_free, TestReason::free, TestReason::stuck);
    rows.push_back(std::move(spin));

    // A shaft that drags with its wheel on it says nothing of the motor: the wheel may rub, or its own bearing bind.
    const bool drags = m.spins_free && !*m.spins_free;
    if (m.free_with_wheel_loose || drags) {
        Evidence loose = open_row(Test::wheel_loose, "measured.free_with_wheel_loose", "common-practice");
        if (const auto& free = m.free_with_wheel_loose)
            settle(loose, *free, *free, TestReason::free, TestReason::stuck);
        rows.push_back(std::move(loose));
    }

    Evidence play = open_row(Test::shaft_play, "measured.shaft_play", "free-shaft");
    if (m.shaft_play) settle(play, !*m.shaft_play, *m.shaft_play, TestReason::no_play, TestReason::play);
    rows.push_back(std::move(play));
}

}  // namespace endbell::inline diagnosis
