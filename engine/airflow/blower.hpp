// A blower, the duct it blows into, and the motors that may turn it: where they settle.
//
//   blower   static = s (A n^2 + B n Q - C Q^2)      torque = s (c n^2 + a n Q + b Q^2)
//   duct     static = fixed + s k Q^2
//
// n in 1,000 rpm, Q in 1,000 cfm, static in in. w.c., torque in lb-ft; s is the density over standard
// density. Every curve scales with n and n^2, so the fan laws hold exactly on a duct without a fixed part.
#pragma once
#include <functional>
#include <optional>

#include "engine/airflow/kinds.hpp"
#include "engine/units/units.hpp"

namespace endbell::inline airflow {

struct BlowerCurve {
    double static_nn = 0, static_nq = 0, static_qq = 0;  // A, B, C
    double torque_nn = 0, torque_nq = 0, torque_qq = 0;  // c, a, b
};

/// `resistance` is k in in. w.c. per (1,000 cfm)^2 of standard air. A duct of resistance 0 holds its static:
/// a column of a published blower table.
struct Duct {
    Pressure fixed;
    double resistance = 0;
};

Pressure static_of(const BlowerCurve& blower, Speed speed, Airflow airflow, double density_ratio = 1);
Torque torque_of(const BlowerCurve& blower, Speed speed, Airflow airflow, double density_ratio = 1);
/// The speed that gives `airflow` against `pressure`. REQUIRES: static_nn above 0.
Speed speed_for(const BlowerCurve& blower, Airflow airflow, Pressure pressure, double density_ratio = 1);
/// The airflow at `speed` against `pressure`, none where the wheel cannot hold that pressure.
std::optional<Airflow> airflow_for(const BlowerCurve& blower, Speed speed, Pressure pressure,
                                   double density_ratio = 1);

Pressure static_of(const Duct& duct, Airflow airflow, double density_ratio = 1);
/// The duct through one measured point. REQUIRES: airflow above 0.
Duct duct_through(Airflow airflow, Pressure pressure, double density_ratio = 1,
                  Pressure fixed = inch_water(0));

/// What a motor must not pass; absent: not stated, so not watched.
struct MotorLimits {
    std::optional<Speed> speed;
    std::optional<Power> shaft;
    std::optional<Torque> torque;
};

struct OperatingPoint {
    Airflow airflow;
    Pressure pressure;
    Speed speed;
    Torque torque;
    Power shaft;
    std::optional<MotorLimit> bound;
};

/// Shaft torque held at `tap` until a limit binds; then the airflow at which it does.
/// None where even no airflow breaks a limit, or where no airflow reaches the torque.
std::optional<OperatingPoint> run_constant_torque(const BlowerCurve& blower, const Duct& duct, Torque tap,
                                                  const MotorLimits& limits = {}, double density_ratio = 1);

/// Airflow held at `set` until a limit binds.
std::optional<OperatingPoint> run_constant_airflow(const BlowerCurve& blower, const Duct& duct, Airflow set,
                                                   const MotorLimits& limits = {}, double density_ratio = 1);

/// The torque an induction motor gives at a speed below `synchronous`.
struct InductionMotor {
    Speed synchronous;
    std::function<Torque(Speed)> torque;
};
/// The root of highest speed: the one a fan started from rest at full voltage and then throttled settles on.
std::optional<OperatingPoint> run_induction(const BlowerCurve& blower, const Duct& duct,
                                            const InductionMotor& motor, double density_ratio = 1);

}  // namespace endbell::inline airflow
