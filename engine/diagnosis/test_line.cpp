#include <algorithm>
#include <cmath>

#include "engine/diagnosis/tests.hpp"
#include "engine/model/limit.hpp"

namespace endbell::inline diagnosis {

namespace {

PlateVolts band_of(const PlateVolts& nominal, const Limits& limits) {
    const double band = limits.value(limit::voltage_band);
    const double guard = limits.value(limit::voltage_guard).in(volt);
    return plate_volts(nominal.low.in(volt) * (1 - band) - guard, nominal.high.in(volt) * (1 + band) + guard);
}

/// The lowest of three judges what is too low, the highest what is too high.
struct LineReading {
    double lowest = 0, highest = 0;
    bool in(const PlateVolts& band) const {
        return at_least(lowest, band.low.in(volt)) && at_most(highest, band.high.in(volt));
    }
    double off(const PlateVolts& band) const {
        return std::max({band.low.in(volt)-lowest, highest - band.high.in(volt), 0.0});
    }
};

/// Of several the one that the reading belongs to: the nearest band. REQUIRES: there is one.
PlateVolts nearest(const std::vector<PlateVolts>& all, const LineReading& read, const Limits& limits) {
    return *std::min_element(all.begin(), all.end(), [&](const PlateVolts& a, const PlateVolts& b) {
        return read.off(band_of(a, limits)) < read.off(band_of(b, limits));
    });
}

std::vector<PlateVolts> as_plates(const std::vector<Voltage>& nominals) {
    std::vector<PlateVolts> all;
    for (const Voltage v : nominals) all.push_back({v, v});
    return all;
}

bool on_208(const Supply& supply) {
    return supply.stated && supply.at_motor() == volt(208);
}

void settle(Evidence& row, const LineReading& read, const PlateVolts& nominal, Origin origin,
            const Limits& limits) {
    const PlateVolts band = band_of(nominal, limits);
    row.limit = {band, origin};
    row.limit_id = limit::voltage_band.text;
    const bool low = !at_least(read.lowest, band.low.in(volt));
    row.verdict = read.in(band) ? Verdict::fits : Verdict::does_not_fit;
    row.reason = row.verdict == Verdict::fits ? TestReason::in_band
                 : low                        ? TestReason::too_low
                                              : TestReason::too_high;
}

/// By the building's own system, where it is said. Else by the plate; outside its band the reading may be another
/// system's usual one, on which nobody looks for a voltage drop: what feeds the equipment is asked.
void judge_by_supply(Evidence& row, const LineReading& read, const Facts& facts, const Limits& limits) {
    const Supply& supply = facts.supply;
    if (supply.stated && !supply.nominal.empty()) {
        settle(row, read, nearest(as_plates(supply.nominal), read, limits), Origin::equipment, limits);
        row.source = on_208(supply) ? "c84.1" : "mg1-12.44";
        if (row.verdict == Verdict::fits && on_208(supply) &&
            read.lowest < limits.value(limit::voltage_range_a_208).in(volt)) {
            row.verdict = Verdict::fits_with_changes;
            row.reason = TestReason::below_range_a;
        }
        return;
    }
    if (!facts.volts || facts.volts->empty()) {
        row.reason = TestReason::plate_volts_unknown;
        row.asks = "plate.volts";
        return;
    }
    settle(row, read, nearest(*facts.volts, read, limits), Origin::plate, limits);
    const Voltage other = nearest_class(volt(read.lowest)).nominal;
    if (row.verdict == Verdict::does_not_fit && read.in(band_of({other, other}, limits))) {
        row.verdict = Verdict::not_shown;
        row.reason = TestReason::supply_not_stated;
        row.asks = "equipment.supply";
    }
}

Evidence supply_row(const Facts& facts, const Limits& limits) {
    Evidence row = open_row(Test::line_volts, "measured.line_volts", "mg1-12.44");
    const Supply& supply = facts.supply;
    if (!supply.reading) return row;
    const LineReading read{supply.reading->in(volt), supply.highest->in(volt)};
    row.measured = {*supply.reading, Origin::measured};
    if (read.highest < limits.value(limit::voltage_absent).in(volt)) {
        row.verdict = Verdict::does_not_fit;
        row.reason = TestReason::no_voltage;
        row.limit = {limits.value(limit::voltage_absent), Origin::assumed};
        row.limit_id = limit::voltage_absent.text;
        row.source = "line-always";
    } else {
        judge_by_supply(row, read, facts, limits);
        const bool high = row.reason == TestReason::too_high;
        if (high) row.measured = {*supply.highest, Origin::measured};
    }
    return row;
}

/// A supply that is right may be another than the motor was made for: then the motor was wrong, and the part must take it.
void motor_row(const Facts& facts, const Evidence& line, const Limits& limits, EvidenceRows& rows) {
    const Supply& supply = facts.supply;
    if (line.verdict > Verdict::fits_with_changes || !supply.stated || !facts.volts || facts.volts->empty())
        return;
    const LineReading read{supply.reading->in(volt), supply.highest->in(volt)};
    const PlateVolts rating = nearest(*facts.volts, read, limits);
    Evidence row = open_row(Test::motor_volts, "plate.volts", "mg1-12.44");
    row.measured = line.measured;
    settle(row, read, rating, Origin::plate, limits);
    // 230 on a 208 V service has 1 V of headroom and 82 % of its torque at nominal (torque ~ V^2).
    if (row.verdict == Verdict::fits && on_208(supply) && rating.low.in(volt) > 208.5) {
        row.verdict = Verdict::fits_with_changes;
        row.reason = TestReason::only_230_on_208;
    }
    rows.push_back(std::move(row));
}

/// Three readings, or those still to be taken of a three-phase motor: one pair shows no lost leg.
void legs_row(const Facts& facts, const Limits& limits, EvidenceRows& rows) {
    const Supply& supply = facts.supply;
    const bool three = supply.legs && supply.legs->three();
    if (!three && !facts.family.is(Family::three_phase) && !facts.phase.is(3)) return;
    const bool dead = supply.highest && *supply.highest < limits.value(limit::voltage_absent);
    if (dead) return;
    Evidence row = open_row(Test::legs, "measured.line_volts", "mg1-14.36");
    if (!three) {
        if (supply.legs) row.reason = TestReason::three_readings_needed;
        rows.push_back(std::move(row));
        return;
    }
    const double share = supply.legs->unbalance();
    const double most = limits.value(limit::voltage_unbalance_most);
    const double derated = limits.value(limit::voltage_unbalance);
    row.measured = {share, Origin::measured};
    const bool beyond = supply.lost_leg || !at_most(share, most);
    const bool derate = !beyond && !at_most(share, derated);
    row.verdict = beyond ? Verdict::does_not_fit : derate ? Verdict::fits_with_changes : Verdict::fits;
    row.reason = supply.lost_leg ? TestReason::lost_leg
                 : beyond        ? TestReason::beyond
                 : derate        ? TestReason::derate
                                 : TestReason::within;
    row.limit = {beyond ? most : derated, Origin::assumed};
    row.limit_id = (beyond ? limit::voltage_unbalance_most : limit::voltage_unbalance).text;
    rows.push_back(std::move(row));
}

/// A closed contact drops about nothing under load; what it drops, the motor lacks.
void contact_row(Test test, std::string_view key, const Reading<Voltage>& drop, const Limits& limits,
                 EvidenceRows& rows) {
    if (!drop) return;
    Evidence row = open_row(test, std::string(key), "common-practice");
    row.measured = {*drop, Origin::measured};
    row.limit = {limits.value(limit::contact_drop), Origin::assumed};
    row.limit_id = limit::contact_drop.text;
    const bool good = at_most(drop->in(volt), limits.value(limit::contact_drop).in(volt));
    row.verdict = good ? Verdict::fits : Verdict::does_not_fit;
    row.reason = good ? TestReason::within : TestReason::beyond;
    rows.push_back(std::move(row));
}

}  // namespace

void test_line(const FailedUnit& job, const Facts& facts, const Limits& limits, EvidenceRows& rows) {
    const Evidence line = supply_row(facts, limits);
    rows.push_back(line);
    motor_row(facts, line, limits, rows);
    legs_row(facts, limits, rows);
    const MeasuredReadings& m = job.measured;
    contact_row(Test::fuse_drop, "measured.fuse_drop", m.fuse_drop, limits, rows);
    contact_row(Test::contactor_drop, "measured.contactor_drop", m.contactor_drop, limits, rows);
}

}  // namespace endbell::inline diagnosis
