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
    if (!machine.rated || *machine.rated <= watt(0)) return;
    const Power full = *machine.rated * machine.altitude_share;  // a blower never spends the service factor
    tap.load = estimated_number(tap.shaft_power.in(horsepower).value / full.in(horsepower),
                                tap.shaft_power.relative(), tap.shaft_power.assumed());
    if (tap.load.value > limits.value(limit::load_full) * (1 + 1e-9)) {
        tap.caution = LoadCaution::overload;
    } else if (tap.load.value > limits.value(limit::load_warn)) {
        tap.caution = LoadCaution::near_full_load;
    }
}

struct MotorEfficiency {
    double value;
    EfficiencySource from;
};

std::optional<MotorEfficiency> efficiency_of(const TapAir& tap, const Machine& machine) {
    if (is_electronic(*machine.family)) {
        const double load =
            machine.rated ? tap.shaft_power.in(horsepower).value / machine.rated->in(horsepower) : 0.5;
        return MotorEfficiency{
            electronic_efficiency(load, machine.efficiency),
            machine.efficiency ? EfficiencySource::printed_electronic : EfficiencySource::usual_electronic};
    }
    if (!machine.synchronous) return std::nullopt;
    const bool printed = machine.efficiency && machine.rated_speed;
    return MotorEfficiency{induction_efficiency(*machine.family, tap.speed.value(), *machine.synchronous,
                                                machine.efficiency, machine.rated_speed),
                           printed ? EfficiencySource::printed_slip : EfficiencySource::usual_slip};
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
    const std::optional<MotorEfficiency> efficiency =
        machine.family ? efficiency_of(tap, machine) : std::nullopt;
    if (!efficiency || efficiency->value <= 0) return;
    if (!machine.efficiency) note(assumed, "motors.efficiency");
    const double by_efficiency = machine.efficiency ? assumed::known_efficiency : assumed::efficiency;
    tap.efficiency = estimated_number(efficiency->value, by_efficiency, !machine.efficiency);
    tap.efficiency_from = efficiency->from;
    const Power input = shaft / efficiency->value;
    tap.input_power = estimate(input, root_sum({tap.shaft_power.relative(), by_efficiency}), true);
    if (!machine.volts || *machine.volts <= volt(0)) return;
    if (!machine.power_factor) note(assumed, word(Assumption::power_factor));
    const double factor = machine.power_factor.value_or(power_factor(*machine.family));
    tap.line_current = estimate(line_current(input, *machine.volts, factor, machine.phases),
                                root_sum({tap.input_power.relative(), assumed::power_factor}), true);
}

}  // namespace endbell::inline airflow
