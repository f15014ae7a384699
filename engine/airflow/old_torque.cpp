#include "engine/airflow/old_torque.hpp"

#include <algorithm>
#include <cmath>

#include "engine/airflow/assumptions.hpp"
#include "engine/airflow/electric.hpp"
#include "engine/airflow/spread.hpp"

namespace endbell::inline airflow {

namespace {

/// What every method reads.
struct Sight {
    const FailedUnit& job;
    const Facts& facts;
    const DuctPoint& point;
    const BlowerCurve* blower;
    double density_ratio;
    std::optional<SlipLine> line;
};

/// Measured rpm, else the plate's: close for induction motors, loose for electronic ones.
Estimate<Speed> running_speed(const Sight& sight) {
    if (sight.point.speed.known()) return sight.point.speed;
    const Facts& facts = sight.facts;
    if (!facts.speed || *facts.speed <= rpm(0)) return {};
    const bool loose = !facts.family || is_electronic(*facts.family);
    return estimate(*facts.speed, loose ? assumed::plate_speed_electronic : assumed::plate_speed, true);
}

TorqueEstimate torque_estimate(const Estimate<Torque>& torque, const Estimate<Speed>& speed,
                               TorqueSource from, std::vector<std::string> assumed) {
    if (speed.assumed()) assumed.push_back("measured.speed");
    return {torque, speed, from, std::nullopt, std::move(assumed)};
}

std::optional<TorqueEstimate> by_table(const Sight& sight) {
    const DuctPoint& point = sight.point;
    if (!sight.blower || !point.airflow.known() || !point.speed.known()) return std::nullopt;
    const Torque torque =
        torque_of(*sight.blower, point.speed.value(), point.airflow.value(), sight.density_ratio);
    if (torque <= pound_foot(0)) return std::nullopt;
    const double share = root_sum({assumed::torque_by_table, point.airflow.relative()});
    return torque_estimate(estimate(torque, share), point.speed, TorqueSource::blower_table, {});
}

/// Shaft torque of an electrical input, by the old family's usual efficiency.
std::optional<TorqueEstimate> by_input(const Sight& sight, Power input, double share, bool guess,
                                       TorqueSource from, std::string assumed_key) {
    const DerivedFact<Family>& family = sight.facts.family;
    const Estimate<Speed> running = running_speed(sight);
    if (!family || input <= watt(0) || !running.known()) return std::nullopt;
    const Speed speed = running.value();
    double efficiency =
        electronic_efficiency(0.5);  // a blower's tap seldom asks for more than half the rating
    if (!is_electronic(*family)) {
        const Speed synchronous = sight.line ? sight.line->synchronous : speed * 1.1;
        efficiency = induction_efficiency(*family, std::min(speed, synchronous), synchronous);
    }
    const Torque torque = torque_of(input * efficiency, speed);
    return torque_estimate(estimate(torque, root_sum({share, running.relative()}), guess), running, from,
                           {std::move(assumed_key)});
}

std::optional<TorqueEstimate> by_watts(const Sight& sight) {
    const Reading<Power>& watts = sight.job.measured.watts;
    if (!watts) return std::nullopt;
    return by_input(sight, *watts, root_sum({assumed::torque_by_watts, assumed::watts_reading}), false,
                    TorqueSource::watts, "plate.efficiency");
}

std::optional<TorqueEstimate> by_slip(const Sight& sight) {
    const Estimate<Speed>& speed = sight.point.speed;
    if (!sight.line || !speed.known()) return std::nullopt;
    const Torque torque = sight.line->at(speed.value());
    // Far below rated speed it was a low tap, or a sick motor: the high tap's line says nothing then.
    if (torque <= pound_foot(0) || torque > sight.line->full_load * assumed::slip_line_end)
        return std::nullopt;
    const Speed slip = sight.line->synchronous - speed.value();
    const double share = root_sum({assumed::torque_by_slip, speed.plus_minus() / slip});
    // Assumed: that the speed was read on the high tap.
    return torque_estimate(estimate(torque, share), speed, TorqueSource::slip_line, {"measured.live_taps"});
}

std::optional<TorqueEstimate> by_amps(const Sight& sight) {
    const FailedUnit& job = sight.job;
    const std::optional<Voltage> volts = sight.facts.supply.at_work();
    if (!job.measured.amps || !volts || !sight.facts.family) return std::nullopt;
    const double root = sight.facts.phase.is(3) ? std::sqrt(3.0) : 1.0;
    const double apparent = job.measured.amps->highest().in(ampere)*volts->in(volt)*root;
    return by_input(sight, watt(apparent * power_factor(*sight.facts.family)), assumed::torque_by_amps, true,
                    TorqueSource::amps, "measured.watts");
}

/// A mean of two that know nothing of each other: each counts by the inverse square of what it may be off by. Two that lie
/// further apart than their spreads are no mean: the slip was that of a lower tap, and the first stands alone.
TorqueEstimate mean_of(const TorqueEstimate& first, const TorqueEstimate& second) {
    const double one = first.torque.relative(), two = second.torque.relative();
    const Torque apart = first.torque.value() - second.torque.value();
    const double allowed =
        root_sum({first.torque.plus_minus().in(pound_foot), second.torque.plus_minus().in(pound_foot)});
    if (std::abs(apart.in(pound_foot)) > allowed) return first;
    const double weight = (1 / (one * one)) / (1 / (one * one) + 1 / (two * two));
    const Torque middle = first.torque.value() * weight + second.torque.value() * (1 - weight);
    TorqueEstimate mean = first;
    mean.torque = estimate(middle, 1 / std::sqrt(1 / (one * one) + 1 / (two * two)), first.torque.assumed());
    mean.with = second.from;
    for (const std::string& key : second.assumed) {
        if (std::find(mean.assumed.begin(), mean.assumed.end(), key) == mean.assumed.end())
            mean.assumed.push_back(key);
    }
    return mean;
}

/// What the leads say with what the shaft says; the better of the two is named first.
std::optional<TorqueEstimate> by_readings(const Sight& sight) {
    std::optional<TorqueEstimate> leads = by_watts(sight);
    if (!leads) leads = by_amps(sight);
    const std::optional<TorqueEstimate> slip = by_slip(sight);
    if (!leads || !slip) return leads ? leads : slip;
    const bool leads_first = leads->from == TorqueSource::watts;
    return leads_first ? mean_of(*leads, *slip) : mean_of(*slip, *leads);
}

std::optional<TorqueEstimate> by_plate(const Sight& sight) {
    const DerivedFact<Torque>& full = sight.facts.torque;
    if (!full || *full <= pound_foot(0)) return std::nullopt;
    return torque_estimate(estimate(*full * assumed::plate_share, assumed::torque_by_plate, true),
                           running_speed(sight), TorqueSource::plate_power, {"measured.watts"});
}

}  // namespace

std::optional<SlipLine> old_slip_line(const Facts& facts) {
    if (!facts.torque || !facts.family || is_electronic(*facts.family)) return std::nullopt;
    if (!facts.poles || *facts.poles <= 0 || *facts.torque <= pound_foot(0)) return std::nullopt;
    const Speed ns = synchronous(*facts.poles, facts.frequency.value.value_or(hertz(60)));
    if (ns <= *facts.speed) return std::nullopt;
    return SlipLine{ns, *facts.speed, *facts.torque};
}

std::optional<TorqueEstimate> old_torque(const FailedUnit& job, const Facts& facts, const DuctPoint& point,
                                         const BlowerCurve* blower, double density_ratio) {
    const Sight sight{job, facts, point, blower, density_ratio, old_slip_line(facts)};
    for (auto method : {by_table, by_readings, by_plate}) {
        if (std::optional<TorqueEstimate> found = method(sight)) return found;
    }
    return std::nullopt;
}

}  // namespace endbell::inline airflow
