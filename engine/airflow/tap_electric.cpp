#include <algorithm>

#include "engine/airflow/assumptions.hpp"
#include "engine/airflow/electric.hpp"
#include "engine/airflow/prediction.hpp"
#include "engine/airflow/spread.hpp"
#include "engine/model/limit.hpp"

namespace endbell::inline airflow {

namespace {

void note(std::vector<std::string>& assumed, std::string_view what) {
    if (std::find(assumed.begin(), assumed.end(), what) == assumed.end()) assumed.emplace_back(what);
}

void judge_load(TapAir& tap, const Machine& machine, const Limits& limits) {
    const std::optional<Power>& full = machine.rated;  // a blower never spends the service factor
    if (!full || *full <= watt(0)) return;
    tap.load = estimated_number(tap.shaft_power.in(horsepower).value / full->in(horsepower),
                                tap.shaft_power.relative(), tap.shaft_power.assumed());
    if (tap.load.value > limits.value(limit::load_full) * (1 + 1e-9)) {
        tap.caution = LoadCaution::overload;
    } else if (tap.load.value > limits.value(limit::load_warn)) {
        tap.caution = LoadCaution::near_full_load;
    }
}

std::optional<double> efficiency_of(const TapAir& tap, const Machine& machine) {
    if (is_electronic(*machine.family)) {
        const double load =
            machine.rated ? tap.shaft_power.in(horsepower).value / machine.rated->in(horsepower) : 0.5;
        return electronic_efficiency(load, machine.efficiency);
    }
    if (!machine.synchronous) return std::nullopt;
    return induction_efficiency(*machine.family, tap.speed.value(), *machine.synchronous, machine.efficiency,
                                machine.rated_speed);
}

}  // namespace

void add_electric(TapAir& tap, const Machine& machine, const Limits& limits,
                  std::vector<std::string>& assumed) {
    if (!tap.torque.known() || !tap.speed.known() || tap.speed.value() <= Speed()) return;
    const Power shaft = shaft_power(tap.torque.value(), tap.speed.value());
    // In the unit of plates and sheets.
    tap.shaft_power = {horsepower, estimated_number(shaft.in(horsepower),
                                                    root_sum({tap.torque.relative(), tap.speed.relative()}),
                                                    tap.torque.assumed() || tap.speed.assumed())};
    judge_load(tap, machine, limits);
    const std::optional<double> efficiency = machine.family ? efficiency_of(tap, machine) : std::nullopt;
    if (!efficiency || *efficiency <= 0) return;
    if (!machine.efficiency) note(assumed, "motors.efficiency");
    const double by_efficiency = machine.efficiency ? assumed::known_efficiency : assumed::efficiency;
    const Power input = shaft / *efficiency;
    tap.input_power = estimate(input, root_sum({tap.shaft_power.relative(), by_efficiency}), true);
    if (!machine.volts || *machine.volts <= volt(0)) return;
    if (!machine.power_factor) note(assumed, word(Assumption::power_factor));
    const double factor = machine.power_factor.value_or(power_factor(*machine.family));
    tap.line_current = estimate(line_current(input, *machine.volts, factor, machine.phases),
                                root_sum({tap.input_power.relative(), assumed::power_factor}), true);
}

}  // namespace endbell::inline airflow
