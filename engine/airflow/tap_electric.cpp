#include <algorithm>

#include "engine/airflow/assumptions.hpp"
#include "engine/airflow/electric.hpp"
#include "engine/airflow/prediction.hpp"
#include "engine/airflow/spread.hpp"
#include "engine/model/limit.hpp"

namespace endbell {

namespace {

void note(std::vector<std::string>& assumed, std::string_view what) {
    if (std::find(assumed.begin(), assumed.end(), what) == assumed.end()) assumed.emplace_back(what);
}

void judge_load(TapAir& tap, const Machine& machine, const Limits& limits) {
    const std::optional<Power> full = machine.full_load();
    if (!full || *full <= watt(0)) return;
    tap.load = estimate(tap.shaft_power.value / full->in(horsepower), relative(tap.shaft_power),
                        tap.shaft_power.assumed);
    if (tap.load.value > limits.value(limit::load_full) * (1 + 1e-9)) {
        tap.caution = LoadCaution::overload;
    } else if (tap.load.value > limits.value(limit::load_warn)) {
        tap.caution = LoadCaution::near_full_load;
    }
}

std::optional<double> efficiency_of(const TapAir& tap, const Machine& machine) {
    if (is_electronic(*machine.family)) {
        const double load = machine.rated ? tap.shaft_power.value / machine.rated->in(horsepower) : 0.5;
        return electronic_efficiency(load, machine.efficiency);
    }
    if (!machine.synchronous) return std::nullopt;
    return induction_efficiency(*machine.family, rpm(tap.speed.value), *machine.synchronous,
                                machine.efficiency, machine.rated_speed);
}

}  // namespace

void add_electric(TapAir& tap, const Machine& machine, const Limits& limits,
                  std::vector<std::string>& assumed) {
    tap.shaft_power = tap.input_power = tap.line_current = unknown_estimate();
    if (!tap.torque.known || !tap.speed.known || tap.speed.value <= 0) return;
    const Power shaft = shaft_power(pound_foot(tap.torque.value), rpm(tap.speed.value));
    tap.shaft_power = estimate(shaft.in(horsepower), root_sum({relative(tap.torque), relative(tap.speed)}),
                               tap.torque.assumed || tap.speed.assumed);
    judge_load(tap, machine, limits);
    const std::optional<double> efficiency = machine.family ? efficiency_of(tap, machine) : std::nullopt;
    if (!efficiency || *efficiency <= 0) return;
    if (!machine.efficiency) note(assumed, "motors.efficiency");
    const double by_efficiency = machine.efficiency ? assumed::known_efficiency : assumed::efficiency;
    const Power input = shaft / *efficiency;
    tap.input_power = estimate(input.in(watt), root_sum({relative(tap.shaft_power), by_efficiency}), true);
    if (!machine.volts || *machine.volts <= volt(0)) return;
    if (!machine.power_factor) note(assumed, word(Assumption::power_factor));
    const double factor = machine.power_factor.value_or(power_factor(*machine.family));
    const double amps = line_current(input, *machine.volts, factor, machine.phases).in(ampere);
    tap.line_current = estimate(amps, root_sum({relative(tap.input_power), assumed::power_factor}), true);
}

}  // namespace endbell
