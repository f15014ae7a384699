#include <algorithm>
#include <cmath>
#include <numeric>
#include <optional>

#include "engine/diagnosis/tests.hpp"
#include "engine/model/limit.hpp"

namespace endbell::inline diagnosis {

namespace {

using Ohms = std::vector<double>;

bool is_open_winding(const Ohms& ohms) {
    return std::any_of(ohms.begin(), ohms.end(), [](double r) { return std::isinf(r); });
}

double largest(const Ohms& ohms) {
    return *std::max_element(ohms.begin(), ohms.end());
}
double smallest(const Ohms& ohms) {
    return *std::min_element(ohms.begin(), ohms.end());
}

/// max |R - mean| / mean. The manuals say "within 10 %" without saying of what; this reading is the strictest
/// of the usual ones that three good readings still pass.
double imbalance(const Ohms& ohms) {
    const double mean = std::accumulate(ohms.begin(), ohms.end(), 0.0) / static_cast<double>(ohms.size());
    return std::max(largest(ohms) - mean, mean - smallest(ohms)) / mean;
}

Evidence shell_row(const FailedUnit& job, const Limits& limits) {
    Evidence row = open_row(Test::winding_to_shell, "measured.winding_to_shell", "winding-ground");
    const auto& reading = job.measured.winding_to_shell;
    if (!reading) return row;
    const double limit = limits.value(limit::winding_ground).in(ohm);
    row.measured = {*reading, Origin::measured};
    row.limit = {ohm(limit), Origin::assumed};
    row.limit_id = limit::winding_ground.text;
    // The manuals pass "above" and fail "below" 100 kilohm; exactly that is shown by neither: it does not
    // pass.
    const bool above = !at_most(reading->in(ohm), limit);
    row.verdict = above ? Verdict::fits : Verdict::does_not_fit;
    row.reason = above                               ? TestReason::insulated
                 : at_least(reading->in(ohm), limit) ? TestReason::at_the_limit
                                                     : TestReason::leaks;
    return row;
}

/// A protector inside the winding opens hot: as it is said, else where the motor trips.
bool may_be_hot(const FailedUnit& job) {
    const auto& hot = job.measured.windings_hot;
    return hot ? *hot : has_symptom(job, Symptom::trips_hot);
}

Evidence open_winding_row(const FailedUnit& job, const Ohms& ohms) {
    Evidence row = open_row(Test::winding_open, "measured.windings", "thermal-limit");
    row.measured = {ohm(largest(ohms)), Origin::measured};
    if (!is_open_winding(ohms)) {
        row.verdict = Verdict::fits;
        row.reason = TestReason::closed;
    } else if (may_be_hot(job)) {
        row.reason = TestReason::test_again_cold;
    } else {
        row.verdict = Verdict::does_not_fit;
        // Of three pairs a lead that is open takes two, and leaves one that reads.
        row.reason = std::count_if(ohms.begin(), ohms.end(), [](double r) { return std::isinf(r); }) == 2
                         ? TestReason::one_lead_open
                         : TestReason::open;
    }
    return row;
}

/// One of the three thresholds on the three readings: the manuals disagree, so all must hold.
template <class T>
Evidence judged(Test test, const Limits& limits, const LimitOf<T>& limit, T measured, bool holds) {
    Evidence row = open_row(test, "measured.windings", std::string(limits.row(limit).source));
    row.limit = {limits.value(limit), Origin::assumed};
    row.limit_id = limit.text;
    row.measured = {measured, Origin::measured};
    row.verdict = holds ? Verdict::fits : Verdict::does_not_fit;
    row.reason = holds ? TestReason::within : TestReason::beyond;
    return row;
}

Evidence balance_row(const Ohms& ohms, const Limits& limits) {
    const double share = imbalance(ohms);
    return judged(Test::winding_balance, limits, limit::winding_balance, share,
                  at_most(share, limits.value(limit::winding_balance)));
}

/// Three readings of an electronic motor's three-phase winding.
void judge_all_three(const Ohms& ohms, const Limits& limits, EvidenceRows& rows) {
    const double most = largest(ohms);
    const double spread = most - smallest(ohms);
    // "below 20 ohm": 20 itself does not pass.
    rows.push_back(judged(Test::winding_most, limits, limit::winding_most, ohm(most),
                          !at_least(most, limits.value(limit::winding_most).in(ohm))));
    rows.push_back(balance_row(ohms, limits));
    rows.push_back(judged(Test::winding_spread, limits, limit::winding_spread, ohm(spread),
                          at_most(spread, limits.value(limit::winding_spread).in(ohm))));
}

/// Why three readings cannot be used, and what to do about it; none when they can.
std::optional<Evidence> unusable_row(const FailedUnit& job, const Facts& facts, const Limits& limits,
                                     const Ohms& ohms) {
    Evidence row = open_row(Test::winding_balance, "measured.windings", "held-rotor");
    const bool generates = is_electronic(*facts.family);
    if (ohms.size() != 3) {
        row.reason = TestReason::three_readings_needed;
    } else if (smallest(ohms) <= 0) {
        // Zero is the meter's lead or a slip; below zero the rotor turns and the motor generates.
        row.reason = TestReason::swings_or_zero;
    } else if (smallest(ohms) < limits.value(limit::winding_least).in(ohm) &&
               largest(ohms) - smallest(ohms) <= limits.value(limit::winding_spread).in(ohm)) {
        // Equal and next to nothing: a short, or a meter whose leads were not nulled.
        row.reason = TestReason::near_short;
    } else if (generates && !job.measured.rotor_held) {
        row.reason = TestReason::rotor_not_stated_held;
        row.asks = "measured.rotor_held";
    } else if (generates && !*job.measured.rotor_held) {
        row.reason = TestReason::rotor_not_held;
    } else {
        return std::nullopt;
    }
    return row;
}

}  // namespace

void test_windings(const FailedUnit& job, const Facts& facts, const Limits& limits, EvidenceRows& rows) {
    rows.push_back(shell_row(job, limits));
    const auto& reading = job.measured.windings;
    const auto& family = facts.family;
    if (!reading || reading->empty()) {
        if (family && (is_electronic(*family) || *family == Family::three_phase)) {
            rows.push_back(open_row(Test::winding_balance, "measured.windings", "winding-10"));
        }
        return;
    }
    Ohms ohms;
    for (Resistance r : *reading) ohms.push_back(r.in(ohm));

    // An open line stays open whether or not the rotor turns. Start and run windings of a single-phase motor
    // differ by design: of those only an open one says something.
    const bool equal_by_design = family && (is_electronic(*family) || *family == Family::three_phase);
    if (equal_by_design && !is_open_winding(ohms)) {
        if (auto unusable = unusable_row(job, facts, limits, ohms)) {
            rows.push_back(std::move(*unusable));
            return;
        }
    }
    rows.push_back(open_winding_row(job, ohms));
    if (!equal_by_design || is_open_winding(ohms)) return;
    if (is_electronic(*family)) {
        judge_all_three(ohms, limits, rows);
    } else {
        rows.push_back(balance_row(ohms, limits));
    }
}

}  // namespace endbell::inline diagnosis
