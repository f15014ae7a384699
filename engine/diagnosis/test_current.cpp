#include <algorithm>
#include <optional>

#include "engine/diagnosis/tests.hpp"
#include "engine/model/limit.hpp"

namespace endbell::inline diagnosis {

namespace {

std::optional<Evidence> amps_row(const FailedUnit& job, const Limits& limits) {
    const auto& reading = job.measured.amps;
    // A motor that stands draws nothing: only one that trips is asked for its current.
    if (!reading && !has_symptom(job, Symptom::trips_hot)) return std::nullopt;
    Evidence row = open_row(Test::amps, "measured.amps", "nec-430.6-ex");
    if (!reading) return row;
    row.measured = {reading->highest(), Origin::measured};
    if (reading->lowest() < reading->highest() * limits.value(limit::current_lost_leg)) {
        row.verdict = Verdict::does_not_fit;
        row.reason = TestReason::lost_leg;
        row.measured = {reading->lowest(), Origin::measured};
        row.limit = {reading->highest() * limits.value(limit::current_lost_leg), Origin::assumed};
        row.limit_id = limit::current_lost_leg.text;
        row.source = "common-practice";
        return row;
    }
    if (!job.plate.current) {
        row.reason = TestReason::plate_amps_unknown;
        row.asks = "plate.current";
        return row;
    }
    row.limit = {*job.plate.current, Origin::plate};
    row.limit_id = limit::current_over_plate.text;
    const double most = job.plate.current->in(ampere)*limits.value(limit::current_over_plate);
    row.verdict = at_most(reading->highest().in(ampere), most) ? Verdict::fits : Verdict::does_not_fit;
    row.reason = row.verdict == Verdict::fits ? TestReason::within_plate : TestReason::over_plate;
    return row;
}

/// The motor's plate against the equipment's: a motor that was wrong before may have died of it.
std::optional<Evidence> plate_row(const FailedUnit& job, const Facts& facts, const Limits& limits) {
    const bool amps_known = job.plate.current && job.equipment.fan_amps;
    const bool volts_known = facts.volts && !facts.volts->empty() && facts.supply.stated;
    if (!amps_known && !volts_known) return std::nullopt;
    Evidence row = open_row(Test::plate_agrees, "plate.current", "nec-430.6-ex");
    row.verdict = Verdict::fits;
    row.reason = TestReason::agrees;
    const double band = limits.value(limit::voltage_band);
    if (volts_known) {
        const auto& ratings = *facts.volts;
        const std::vector<Voltage>& supplies = facts.supply.nominal;
        const bool served = std::any_of(ratings.begin(), ratings.end(), [&](const PlateVolts& v) {
            return std::any_of(supplies.begin(), supplies.end(), [&](Voltage supply) {
                return at_least(supply.in(volt), v.low.in(volt) * (1 - band)) &&
                       at_most(supply.in(volt), v.high.in(volt) * (1 + band));
            });
        });
        // What agrees is named: the volts, until amps are known too.
        row.job_key = row.asks = "plate.volts";
        row.measured = {ratings.front(), Origin::plate};
        row.limit = {supplies.front(), Origin::equipment};
        row.limit_id = limit::voltage_band.text;
        row.source = "mg1-12.44";
        if (!served) {
            row.verdict = Verdict::does_not_fit;
            row.reason = TestReason::volts_not_of_unit;
            return row;
        }
    }
    if (amps_known) {
        row.job_key = row.asks = "plate.current";
        row.source = "nec-430.6-ex";
        row.measured = {*job.plate.current, Origin::plate};
        row.limit = {*job.equipment.fan_amps, Origin::equipment};
        row.limit_id = limit::current_over_plate.text;
        const double most = job.equipment.fan_amps->in(ampere)*limits.value(limit::current_over_plate);
        if (!at_most(job.plate.current->in(ampere), most)) {
            row.verdict = Verdict::does_not_fit;
            row.reason = TestReason::amps_over_unit;
        }
    }
    return row;
}

}  // namespace

void test_current(const FailedUnit& job, const Facts& facts, const Limits& limits, EvidenceRows& rows) {
    if (auto row = amps_row(job, limits)) rows.push_back(std::move(*row));
    if (auto row = plate_row(job, facts, limits)) rows.push_back(std::move(*row));
}

}  // namespace endbell::inline diagnosis
