// From shaft power to watts and line amps. Everything here that a plate did not say is assumed.
#pragma once
#include <optional>

#include "engine/model/kinds.hpp"
#include "engine/units/units.hpp"

namespace endbell::inline airflow {

/// Shaft over electrical input of an electronic motor at a load fraction, from the default curve; where the
/// part's efficiency at rated load is known, the curve is scaled through it.
double electronic_efficiency(double load, std::optional<double> at_rated_load = std::nullopt);

/// Of an induction motor: eta_s n / ns. eta_s (stator, core and friction) is 0.70 for capacitor run unless a
/// known efficiency at rated speed gives it. REQUIRES: speed and synchronous above 0.
double induction_efficiency(Family family, Speed speed, Speed synchronous,
                            std::optional<double> at_rated_load = std::nullopt,
                            std::optional<Speed> rated = std::nullopt);

/// Assumed power factor at the line: capacitor run 0.90, electronic without correction 0.60, shaded pole
/// 0.60, three phase 0.75.
double power_factor(Family family);

/// W / (V x PF), over sqrt(3) for three phase.
Current line_current(Power input, Voltage volts, double power_factor, int phases = 1);

}  // namespace endbell::inline airflow
