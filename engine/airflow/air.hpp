// Density of air, and the heat that a cfm of it carries a degree.
#pragma once
#include "engine/units/units.hpp"

namespace endbell::inline airflow {

/// 0.075 lb/ft3: what the trade calls standard air. Dry air at 70 F and sea level is 0.15 % lighter.
inline constexpr Density standard_density = pound_per_cubic_foot(0.075);

/// Of dry air where the cfm is counted (the blower's inlet, so return air).
/// 1976 standard atmosphere and the ideal gas: 0.075 (1 - 6.8754e-6 z)^5.2559 (529.67 / absolute F).
Density air_density(Length altitude, Temperature temperature);

/// Density over standard density.
double density_ratio(Length altitude, Temperature temperature);

/// Btu/h carried by one cfm a degree F: 60 min/h x density x 0.24 Btu/lb F. 1.08 for standard air.
constexpr HeatFactor heat_factor(Density density) {
    return btu_per_hour_cfm_degree(60.0 * density.in(pound_per_cubic_foot)*0.24);
}

/// cfm = heat / (factor x rise), and its two inverses. REQUIRES: rise or airflow above 0.
Airflow airflow_for(HeatRate heat, TemperatureRise rise, HeatFactor factor);
TemperatureRise rise_for(HeatRate heat, Airflow airflow, HeatFactor factor);
HeatRate heat_for(Airflow airflow, TemperatureRise rise, HeatFactor factor);

/// Work a second put into the air: 117.557 W for 1,000 cfm against 1 in. w.c.
Power air_power(Airflow airflow, Pressure pressure);

}  // namespace endbell::inline airflow
