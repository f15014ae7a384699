#include "engine/airflow/air.hpp"

#include <cmath>

#include "engine/base/ensure.hpp"

namespace endbell::inline airflow {

Density air_density(Length altitude, Temperature temperature) {
    const double pressure_ratio = std::pow(1.0 - 6.8754e-6 * altitude.in(foot), 5.2559);
    return standard_density * pressure_ratio * 529.67 / (459.67 + temperature.in_fahrenheit());
}

double density_ratio(Length altitude, Temperature temperature) {
    return air_density(altitude, temperature) / standard_density;
}

Airflow airflow_for(HeatRate heat, TemperatureRise rise, HeatFactor factor) {
    ensure(rise > TemperatureRise() && factor > HeatFactor(), "a rise that carries heat is above zero");
    return cfm(heat.in(btu_per_hour) / (factor.in(btu_per_hour_cfm_degree)*rise.in(fahrenheit_degree)));
}

TemperatureRise rise_for(HeatRate heat, Airflow airflow, HeatFactor factor) {
    ensure(airflow > Airflow() && factor > HeatFactor(), "an airflow that carries heat is above zero");
    return fahrenheit_degree(heat.in(btu_per_hour) / (factor.in(btu_per_hour_cfm_degree)*airflow.in(cfm)));
}

HeatRate heat_for(Airflow airflow, TemperatureRise rise, HeatFactor factor) {
    return btu_per_hour(factor.in(btu_per_hour_cfm_degree)*airflow.in(cfm)*rise.in(fahrenheit_degree));
}

Power air_power(Airflow airflow, Pressure pressure) {
    return watt(airflow.in(litre_per_second) / 1000.0 * pressure.in(pascal));
}

}  // namespace endbell::inline airflow
