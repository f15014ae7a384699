// One motor on this job's blower and duct, with what the readings may be off by carried into every answer.
#pragma once
#include <functional>
#include <optional>

#include "engine/airflow/air_plan.hpp"
#include "engine/airflow/blower.hpp"
#include "engine/airflow/duct_point.hpp"
#include "engine/airflow/machine.hpp"

namespace endbell::inline airflow {

/// A blower and a duct that agree with a measured point. Without a table the blower has the reference shape
/// scaled through the point; on the same duct the shape does not matter, and the answer is the fan laws'.
struct Scene {
    BlowerCurve blower;
    Duct duct;
    double density_ratio = 1;
};

/// The reference blower's curves scaled through a point. Source of the shape: torque shares of a read blower
/// table at its design point, 17 % n^2, 67 % nQ, 16 % Q^2; static as the reference blower splits it.
BlowerCurve reference_shape(Airflow airflow, Pressure pressure, Speed speed, Torque torque,
                            double density_ratio = 1);

class Prediction {
  public:
    /// REQUIRES: point.airflow known, and point.torque known unless `table` is given with static known.
    /// Unknown static or speed: airflow still follows; the unknown stays unknown in every answer.
    Prediction(const DuctPoint& point, const BlowerCurve* table, double density_ratio);

    /// `limits` of speed and power are watched only where the point's speed is known.
    std::optional<TapAir> hold_torque(Torque tap, const MotorLimits& limits) const;
    std::optional<TapAir> hold_airflow(Airflow set, const MotorLimits& limits) const;
    std::optional<TapAir> spin(const SlipLine& line) const;
    /// The speed itself is taken as given: fan laws alone. REQUIRES: the point's speed known. Torque may be
    /// unknown.
    static TapAir turn_at(const DuctPoint& point, Speed speed);

  private:
    /// Multipliers of the inputs, 1 at the middle of each.
    struct Shift {
        double airflow = 1, pressure = 1, speed = 1, torque = 1, setting = 1;
    };
    using Solve = std::function<std::optional<OperatingPoint>(const Scene&, double setting)>;

    Scene scene(const Shift& shift) const;
    std::optional<TapAir> settle_with(const Solve& solve, double setting_share) const;
    MotorLimits watched(const MotorLimits& limits) const;

    DuctPoint point_;
    std::optional<BlowerCurve> table_;
    double density_ratio_ = 1;
};

/// Shaft power, load, watts and amps of a settled tap; `assumed` gains what the catalog did not print.
void add_electric(TapAir& tap, const Machine& machine, const Limits& limits,
                  std::vector<std::string>& assumed);

}  // namespace endbell::inline airflow
