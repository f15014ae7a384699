#include "engine/airflow/machine.hpp"

#include <algorithm>
#include <cmath>

#include "engine/model/limit.hpp"

namespace endbell::inline airflow {

namespace {

/// A motor of no power is one whose power nobody knows.
std::optional<Power> above_zero(const std::optional<Power>& power) {
    return power && *power > Power() ? power : std::nullopt;
}

/// Rated amps say what power factor the motor has at full load, where its efficiency is printed too.
std::optional<double> power_factor_of(const Rating& rating, std::optional<double> efficiency, int phases) {
    if (!rating.amps || !rating.power || !rating.volts || !efficiency || *efficiency <= 0)
        return std::nullopt;
    const double root = phases == 3 ? std::sqrt(3.0) : 1.0;
    const double apparent = rating.amps->in(ampere)*rating.volts->low.in(volt)*root;
    const double factor = apparent > 0 ? rating.power->in(watt) / *efficiency / apparent : 0;
    if (factor < 0.3 || factor > 1.0) return std::nullopt;  // the three printed numbers contradict each other
    return factor;
}

void take_rating(Machine& machine, const Rating& rating) {
    machine.rated = above_zero(rating.power);
    machine.rated_speed = rating.speed;
    machine.power_factor = power_factor_of(rating, machine.efficiency, machine.phases);
    if (!rating.volts) return;
    if (!machine.volts) machine.volts = rating.volts->low;
    const double share = *machine.volts / rating.volts->low;
    if (share < 1) machine.strength = share * share;
}

void take_taps(Machine& machine, const Motor& motor) {
    for (const Tap& tap : motor.taps) machine.taps.push_back({tap.number, tap.torque, tap.speed});
    std::sort(machine.taps.begin(), machine.taps.end(),
              [](const TapSetting& a, const TapSetting& b) { return a.number < b.number; });
    const bool induction = machine.family && !is_electronic(*machine.family);
    if (!induction) return;
    const bool one_speed = machine.taps.empty() && (!motor.speeds || *motor.speeds == 1);
    if (one_speed && machine.rated_speed) machine.taps.push_back({1, std::nullopt, machine.rated_speed});
}

void take_poles(Machine& machine, const Motor& motor) {
    if (!machine.family || is_electronic(*machine.family)) return;
    if (!machine.rated_speed) {  // tapped motors print the high speed, so the highest tap stands for it
        for (const TapSetting& tap : machine.taps) {
            if (tap.speed && (!machine.rated_speed || *tap.speed > *machine.rated_speed))
                machine.rated_speed = tap.speed;
        }
    }
    if (!machine.rated_speed) return;
    const Frequency line = motor.frequency.value_or(hertz(60));
    const DerivedFact<int> poles = poles_of(motor, *machine.rated_speed);
    if (poles && *poles > 0) machine.synchronous = synchronous(*poles, line);
}

Machine machine_of_module(const Facts& facts, const Module& module) {
    Machine machine;
    machine.family = Family::constant_airflow;  // only this kind has a separable module
    machine.rated = above_zero(module.power);
    if (!machine.rated) machine.rated = above_zero(facts.power.value);
    machine.volts = facts.supply.at_work();
    if (!machine.volts && module.volts) machine.volts = module.volts->low;
    return machine;
}

}  // namespace

MotorLimits Machine::limits() const {
    return {speed_limit, rated, std::nullopt};
}

std::optional<SlipLine> Machine::slip_line() const {
    if (!rated || !rated_speed || !synchronous || *synchronous <= *rated_speed || *rated_speed <= rpm(0)) {
        return std::nullopt;
    }
    return SlipLine{*synchronous, *rated_speed, torque_of(*rated, *rated_speed), strength};
}

double motor_share(const FailedUnit& job, const Limits& limits) {
    const Reading<Length>& altitude = job.equipment.altitude;
    if (!altitude || *altitude > foot(20000)) return 1;
    const double above = altitude->in(foot)-limits.value(limit::motor_from).in(foot);
    return above <= 0 ? 1 : std::max(0.1, 1 - limits.value(limit::altitude_motor) * above / 1000);
}

Machine machine_of(const Facts& facts, const Part& part, const Limits& limits) {
    if (part.module) return machine_of_module(facts, *part.module);
    Machine machine;
    if (!part.motor) return machine;
    const Motor& motor = *part.motor;
    machine.family = motor.family;
    machine.speed_limit = motor.speed_limit;
    machine.efficiency = motor.efficiency;
    machine.phases = phase_of(motor).value.value_or(1);
    machine.volts = facts.supply.at_work();
    const std::optional<Rating> rating = rating_in_use(facts, part, limits);
    // Of a rating for another supply nothing is worked out: the motor does not belong on this one.
    const bool fed = rating && (!rating->volts || facts.supply.nominal.empty() ||
                                suits(*rating->volts, facts.supply, limits));
    if (fed) take_rating(machine, *rating);
    take_taps(machine, motor);
    take_poles(machine, motor);
    return machine;
}

}  // namespace endbell::inline airflow
