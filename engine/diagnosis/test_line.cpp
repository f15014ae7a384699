#include <cmath>

#include "engine/diagnosis/tests.hpp"
#include "engine/model/limit.hpp"

namespace endbell::inline diagnosis {

namespace {

PlateVolts band_of(const PlateVolts& plate, const Limits& limits) {
    const double band = limits.value(limit::voltage_band);
    const double guard = limits.value(limit::voltage_guard).in(volt);
    return plate_volts(plate.low.in(volt) * (1 - band) - guard, plate.high.in(volt) * (1 + band) + guard);
}

bool holds(const PlateVolts& band, double volts) {
    return at_least(volts, band.low.in(volt)) && at_most(volts, band.high.in(volt));
}

double distance(const PlateVolts& band, double volts) {
    if (volts < band.low.in(volt)) return band.low.in(volt)-volts;
    return volts > band.high.in(volt) ? volts - band.high.in(volt) : 0;
}

/// The rating of a reconnectable motor that the reading belongs to: the nearest band.
PlateVolts nearest_rating(const std::vector<PlateVolts>& plate, double volts, const Limits& limits) {
    PlateVolts best = plate.front();
    for (const PlateVolts& rating : plate) {
        if (distance(band_of(rating, limits), volts) < distance(band_of(best, limits), volts)) best = rating;
    }
    return best;
}

bool on_208(const Supply& supply) {
    return supply.stated && supply.at_motor() == volt(208);
}

}  // namespace

void test_line(const Facts& facts, const Limits& limits, EvidenceRows& rows) {
    Evidence row = open_row(Test::line_volts, "measured.line_volts", "mg1-12.44");
    const std::optional<Voltage>& reading = facts.supply.reading;
    if (reading) {
        const double volts = reading->in(volt);
        row.measured = {*reading, Origin::measured};
        if (volts < limits.value(limit::voltage_absent).in(volt)) {
            row.verdict = Verdict::does_not_fit;
            row.reason = TestReason::no_voltage;
            row.limit = {limits.value(limit::voltage_absent), Origin::assumed};
            row.limit_id = limit::voltage_absent.text;
            row.source = "line-always";
        } else if (!facts.volts || facts.volts->empty()) {
            row.reason = TestReason::plate_volts_unknown;
            row.asks = "plate.volts";
        } else {
            const PlateVolts rating = nearest_rating(*facts.volts, volts, limits);
            const PlateVolts band = band_of(rating, limits);
            row.limit = {band, Origin::plate};
            row.limit_id = limit::voltage_band.text;
            const bool low = volts < band.low.in(volt);
            row.verdict = holds(band, volts) ? Verdict::fits : Verdict::does_not_fit;
            row.reason = row.verdict == Verdict::fits ? TestReason::in_band
                         : low                        ? TestReason::too_low
                                                      : TestReason::too_high;
            if (row.verdict == Verdict::fits && on_208(facts.supply)) {
                // 230 on a 208 V service has 1 V of headroom and 82 % of its torque at nominal (torque ~
                // V^2).
                const bool no_208 = rating.low.in(volt) > 208.5;
                const bool sags = volts < limits.value(limit::voltage_range_a_208).in(volt);
                if (no_208 || sags) row.verdict = Verdict::fits_with_changes;
                if (no_208) row.reason = TestReason::only_230_on_208;
                if (!no_208 && sags) row.reason = TestReason::below_range_a;
                if (!no_208 && sags) row.source = "c84.1";
            }
        }
    }
    rows.push_back(std::move(row));
}

}  // namespace endbell::inline diagnosis
