// A blower's curves out of its published table, by least squares.
#pragma once
#include <optional>
#include <vector>

#include "engine/airflow/blower.hpp"
#include "engine/model/failed_unit.hpp"

namespace endbell {

/// How well a curve passes through its table.
struct Residual {
    double r_squared = 0;
    double rms = 0;       // in. w.c. or lb-ft
    double greatest = 0;  // in. w.c. for static; a share of the torque for torque
};

struct BlowerFit {
    std::optional<BlowerCurve> curve;  // absent when refused
    std::optional<TableRefusal> refusal;
    Residual pressure;
    Residual torque;
};

/// Refused below six rows, below R^2 0.98 on either curve, or where a curve would not rise with speed.
/// Torque of a row is 5252.113 hp / rpm. Rows are taken to be standard air, as tables print.
BlowerFit fit_blower(const std::vector<BlowerRow>& rows);

}  // namespace endbell
