// The old motor's shaft torque on this duct: every method that the job's readings allow, best first.
#pragma once
#include <optional>
#include <string>
#include <vector>

#include "engine/airflow/air_plan.hpp"
#include "engine/airflow/blower.hpp"
#include "engine/airflow/induction.hpp"
#include "engine/facts/facts.hpp"

namespace endbell::inline airflow {

struct TorqueEstimate {
    Estimate<Torque> torque;
    Estimate<Speed> speed;  // that it was worked out at: measured, or assumed from the plate
    TorqueSource from = TorqueSource::blower_table;
    std::optional<TorqueSource> with = {};  // a second method that agrees, taken into the mean
    std::vector<std::string> assumed;       // job keys
};

/// The old motor's plate as a slip line; none unless the plate names an induction motor's power, speed and
/// poles. Several powers on the plate: the high tap's, which is first.
std::optional<SlipLine> old_slip_line(const Facts& facts);

/// The first of: `blower` at the measured speed and airflow; watts times the family's usual efficiency; the
/// slip line at the measured speed, which must lie on its straight part; amps; the plate's power as an upper
/// bound (wide). What goes in at the leads and what the slip says know nothing of each other: where both were read and
/// agree, their mean, each weighed by its spread, is the answer. `point` has the airflow and the measured speed, as far as they are known. `blower` may be
/// null.
std::optional<TorqueEstimate> old_torque(const FailedUnit& job, const Facts& facts, const DuctPoint& point,
                                         const BlowerCurve* blower, double density_ratio);

}  // namespace endbell::inline airflow
