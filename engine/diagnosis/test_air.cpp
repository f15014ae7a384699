#include <optional>

#include "engine/airflow/air_needs.hpp"
#include "engine/airflow/duct_point.hpp"
#include "engine/diagnosis/tests.hpp"
#include "engine/model/limit.hpp"

namespace endbell::inline diagnosis {

namespace {

Evidence static_row(const FailedUnit& job, const Limits& limits) {
    Evidence row = open_row(Test::static_total, "measured.static_total", "static-0.8");
    const MeasuredReadings& m = job.measured;
    const std::optional<Pressure> total = total_static(m);
    const bool both = m.static_supply && m.static_return;
    if (!total && both) {
        row.reason = TestReason::wrong_signs;
        return row;
    }
    if (!total && (m.static_supply || m.static_return)) {
        row.reason = TestReason::one_side;
        row.asks = m.static_supply ? "measured.static_return" : "measured.static_supply";
        return row;
    }
    if (!total) return row;
    if (!m.static_total) row.job_key = "measured.static_supply and measured.static_return";
    row.measured = {*total, Origin::measured};
    if (total->in(inch_water) < 0) {
        row.reason = TestReason::wrong_signs;
        return row;
    }
    const auto& stated = job.equipment.static_limit;
    const double plate = allowed_static(job, limits).in(inch_water);
    const double repair_first = limits.value(limit::static_repair_first).in(inch_water);
    const bool first = !at_most(total->in(inch_water), repair_first);
    const bool over_plate = !at_most(total->in(inch_water), plate);
    row.verdict = first ? Verdict::does_not_fit : over_plate ? Verdict::fits_with_changes : Verdict::fits;
    row.reason = first        ? TestReason::repair_duct_first
                 : over_plate ? TestReason::above_plate
                              : TestReason::within_plate;
    const bool plate_decides = !first;
    row.limit = {inch_water(plate_decides ? plate : repair_first),
                 plate_decides && stated ? Origin::equipment : Origin::assumed};
    row.limit_id = first ? limit::static_repair_first.text : stated ? "" : limit::static_plate_default.text;
    if (!first) row.source = "static-plate";
    return row;
}

void settle_look(Evidence& row, Cleanness seen) {
    row.verdict = seen == Cleanness::clean ? Verdict::fits : Verdict::does_not_fit;
    row.reason = seen == Cleanness::clean ? TestReason::clean : TestReason::dirty;
    row.measured = {std::string(word(seen)), Origin::measured};
}

/// Its pressure drop tells; without one, a look at it.
Evidence filter_row(const FailedUnit& job, const Limits& limits) {
    Evidence row = open_row(Test::filter_drop, "measured.filter_drop", "common-practice");
    const auto& reading = job.measured.filter_drop;
    const auto& seen = job.measured.filter;
    if (seen && (!reading || *seen == Cleanness::dirty)) {
        row.job_key = "measured.filter";
        settle_look(row, *seen);
        return row;
    }
    if (!reading) return row;
    const double limit = limits.value(limit::filter_drop).in(inch_water);
    row.measured = {*reading, Origin::measured};
    row.limit = {inch_water(limit), Origin::assumed};
    row.limit_id = limit::filter_drop.text;
    row.verdict = at_most(reading->in(inch_water), limit) ? Verdict::fits : Verdict::does_not_fit;
    row.reason = row.verdict == Verdict::fits ? TestReason::clean_enough : TestReason::loaded;
    return row;
}

/// Only where it was measured. More than the wet coil's usual drop is dirt on it.
std::optional<Evidence> coil_row(const FailedUnit& job, const Limits& limits) {
    const auto& reading = job.measured.coil_drop;
    if (!reading) return std::nullopt;
    Evidence row = open_row(Test::coil_drop, "measured.coil_drop", "common-practice");
    row.measured = {*reading, Origin::measured};
    row.limit = {limits.value(limit::coil_drop), Origin::assumed};
    row.limit_id = limit::coil_drop.text;
    const bool good = at_most(reading->in(inch_water), limits.value(limit::coil_drop).in(inch_water));
    row.verdict = good ? Verdict::fits : Verdict::does_not_fit;
    row.reason = good ? TestReason::clean_enough : TestReason::loaded;
    return row;
}

/// The clocked meter against the plate: what is fired over it makes a high rise with the right air.
std::optional<Evidence> burner_row(const FailedUnit& job, const Facts& facts, const Limits& limits) {
    const auto& clocked = job.measured.burner_input;
    const auto& plate = facts.heat.fuel_input;
    if (!clocked || !plate) return std::nullopt;
    Evidence row = open_row(Test::burner_input, "measured.burner_input", "common-practice");
    const double over = *clocked / *plate - 1;
    row.measured = {over, Origin::measured};
    row.limit = {limits.value(limit::burner_over), Origin::assumed};
    row.limit_id = limit::burner_over.text;
    const bool good = at_most(over, limits.value(limit::burner_over));
    row.verdict = good ? Verdict::fits : Verdict::does_not_fit;
    row.reason = good ? TestReason::within : TestReason::over_fired;
    return row;
}

bool is_iced(const FailedUnit& job) {
    return job.measured.iced && *job.measured.iced;
}

/// Ice holds the air back and melts: what was read over it says nothing of filter, coil, wheel or duct.
void leave_to_the_thaw(EvidenceRows& rows, std::size_t from) {
    for (std::size_t i = from; i < rows.size(); ++i) {
        if (rows[i].test == Test::filter_drop && rows[i].reason == TestReason::dirty) continue;
        if (rows[i].test == Test::burner_input) continue;
        rows[i].verdict = Verdict::not_shown;
        rows[i].reason = TestReason::iced;
        rows[i].asks = "measured.iced";
    }
}

/// Only where it was measured: nobody takes it to find a dead motor.
std::optional<Evidence> rise_row(const FailedUnit& job, const Facts& facts) {
    const auto& reading = job.measured.rise;
    if (!reading) return std::nullopt;
    Evidence row = open_row(Test::rise, "measured.rise", "common-practice");
    const EquipmentReadings& plate = job.equipment;
    const double rise = reading->in(fahrenheit_degree);
    row.measured = {*reading, Origin::measured};
    if (rise_heat_open(job, facts.heat)) {
        row.reason = TestReason::rise_heat_unknown;
        row.asks = "measured.rise_heat";
    } else if (plate.rise_high && !at_most(rise, plate.rise_high->in(fahrenheit_degree))) {
        row.verdict = Verdict::does_not_fit;
        row.reason = TestReason::too_little_air;
        row.limit = {*plate.rise_high, Origin::equipment};
    } else if (plate.rise_low && !at_least(rise, plate.rise_low->in(fahrenheit_degree))) {
        row.verdict = Verdict::does_not_fit;
        row.reason = TestReason::too_much_air;
        row.limit = {*plate.rise_low, Origin::equipment};
    } else if (plate.rise_low && plate.rise_high) {
        row.verdict = Verdict::fits;
        row.reason = TestReason::in_plate_range;
    } else {
        row.reason = TestReason::plate_rise_unknown;
        row.asks = plate.rise_high ? "equipment.rise_low" : "equipment.rise_high";
    }
    return row;
}

/// Tons ask for a mass of air: high up the same cfm carry less.
std::optional<Evidence> airflow_row(const FailedUnit& job, const Facts& facts, const Limits& limits) {
    if (!job.measured.airflow || !job.equipment.cooling) return std::nullopt;
    Evidence row = open_row(Test::airflow, "measured.airflow", "common-practice");
    const double standard = job.measured.airflow->in(cfm)*air_needs(job, facts, limits).density_ratio;
    const double per_ton = standard / job.equipment.cooling->in(ton_cooling);
    row.measured = {per_ton, Origin::measured};
    row.limit = {limits.value(limit::cooling_least).in(cfm), Origin::assumed};
    row.limit_id = limit::cooling_least.text;
    row.verdict =
        at_least(per_ton, limits.value(limit::cooling_least).in(cfm)) ? Verdict::fits : Verdict::does_not_fit;
    row.reason = row.verdict == Verdict::fits ? TestReason::enough_air : TestReason::too_little_air;
    return row;
}

}  // namespace

void test_air(const FailedUnit& job, const Facts& facts, const Limits& limits, EvidenceRows& rows) {
    if (const auto& seen = job.measured.wheel) {
        Evidence row = open_row(Test::wheel, "measured.wheel", "common-practice");
        settle_look(row, *seen);
        rows.push_back(std::move(row));
    } else if (job.unit.load.said() == Load::draft_inducer) {
        rows.push_back(open_row(Test::wheel, "measured.wheel", "common-practice"));
    }
    if (const auto& seen = job.measured.belt) {
        Evidence row = open_row(Test::belt, "measured.belt", "common-practice");
        row.measured = {std::string(word(*seen)), Origin::measured};
        row.verdict = *seen == BeltState::sound ? Verdict::fits : Verdict::does_not_fit;
        row.reason = *seen == BeltState::sound ? TestReason::pulls : TestReason::slips;
        rows.push_back(std::move(row));
    } else if (facts.belt.is(true)) {
        rows.push_back(open_row(Test::belt, "measured.belt", "common-practice"));
    }
    if (!moves_duct_air(job)) return;
    const std::size_t first = rows.size();
    rows.push_back(static_row(job, limits));
    rows.push_back(filter_row(job, limits));
    if (auto row = rise_row(job, facts)) rows.push_back(std::move(*row));
    if (auto row = airflow_row(job, facts, limits)) rows.push_back(std::move(*row));
    if (auto row = coil_row(job, limits)) rows.push_back(std::move(*row));
    if (auto row = burner_row(job, facts, limits)) rows.push_back(std::move(*row));
    if (is_iced(job)) leave_to_the_thaw(rows, first);
}

}  // namespace endbell::inline diagnosis
