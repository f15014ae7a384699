// The numbers this folder assumes where nobody measured. Each is common practice unless its line says
// otherwise, and each answer that rests on one names the job key or catalog column that would replace it
// (AirPlan::assumed).
#pragma once
#include "engine/units/units.hpp"

namespace endbell::inline airflow::assumed {

// Spread of a reading, as a share of it or as it is; about 95 %.
inline constexpr double airflow_reading = 0.07;               // flow grid or traverse, from memory
inline constexpr Pressure static_reading = inch_water(0.02);  // two taps, one manometer
inline constexpr double speed_reading = 0.01;
inline constexpr double watts_reading = 0.02;
inline constexpr TemperatureRise rise_reading = fahrenheit_degree(1.4);  // two thermometers of 1 F each
inline constexpr double heat_output = 0.03;     // plate efficiency stands for the steady-state one
inline constexpr double standard_place = 0.03;  // sea level and 70 F assumed; 1,000 ft is 3.6 %
inline constexpr double tap_torque = 0.05;      // what a motor holds against what its sheet prints
inline constexpr double tap_speed = 0.03;

// Spread of old shaft torque by the method that found it.
inline constexpr double torque_by_table = 0.05;  // residual of the read blower table: at most 5.1 %
inline constexpr double torque_by_watts = 0.12;  // the efficiency is the old family's usual one
inline constexpr double torque_by_slip = 0.15;   // real motors bend off the line
inline constexpr double slip_line_end = 1.25;    // of full load: beyond it the curve bends away from the line
inline constexpr double torque_by_amps = 0.20;   // power factors of 0.65 to 0.98 seen
inline constexpr double plate_share = 0.80;      // of full load: fans are seen at 0.6 to 1.0 of the plate
inline constexpr double torque_by_plate = 0.25;  // so 0.80 +- 0.20
inline constexpr double plate_speed = 0.05;      // plate rpm taken for running rpm, capacitor run
inline constexpr double plate_speed_electronic = 0.20;

// The square-root law where 0.10 of 0.50 in. is a fixed pressure: 0.8 %, 2.5 % and 7.9 % off at torque ratios
// of 0.75, 0.50 and 0.25 (calculated on the reference blower). 0.08 ((1 - ratio) / 0.75)^2 covers all three.
inline constexpr double fixed_part_at_quarter = 0.08;

inline constexpr double efficiency = 0.10;        // share of the assumed efficiency
inline constexpr double known_efficiency = 0.04;  // plate efficiency, used away from rated load
inline constexpr double power_factor = 0.15;

// What cannot be true.
inline constexpr double best_blower = 0.70;  // of input watts into air: wheel at most 0.80, motor 0.85
inline constexpr double taps_apart = 2.0;    // the fastest tap of one blower against its slowest
inline constexpr double table_apart = 1.30;  // more air than this over the blower's own sheet
inline constexpr double plate_figures_agree = 0.05;  // output against input times efficiency
inline constexpr double least_power_factor = 0.30;   // seen: 0.53 and more of electronic motors

// Equipment.
inline constexpr Temperature return_air = Temperature::fahrenheit(70);
inline constexpr double low_stage_cooling = 0.70;  // of full capacity
inline constexpr double low_stage_heating = 0.65;  // of full output
inline constexpr TemperatureRise electric_target_rise = fahrenheit_degree(40);
// Cooler air at the register is a draught.
inline constexpr TemperatureRise electric_least_rise = fahrenheit_degree(20);
inline constexpr double circulate_low = 0.40, circulate_target = 0.50;  // of the cooling target
// 80 to 85 % of the cooling air is the practice; a tap that lies a little beside it serves.
inline constexpr double dehumidify_low = 0.75, dehumidify_target = 0.825,
                        dehumidify_high = 0.90;  // of cooling

// Sound power of a fan rises by this many decibels for each tenfold of its speed (the fan sound law, from memory).
inline constexpr double decibels_of_speed = 50;

// A furnace of this efficiency or more condenses.
inline constexpr double condenses_from = 0.90;

// Cooling targets of each ton: a trade article gives 400, 350 in humid and 450 in dry places.
inline constexpr Airflow cooling_humid = cfm(350), cooling_normal = cfm(400), cooling_dry = cfm(450);

}  // namespace endbell::inline airflow::assumed
