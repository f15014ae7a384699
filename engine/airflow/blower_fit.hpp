// A blower's curves out of its published table, by least squares.
#pragma once
#include <optional>
#include <vector>

#include "engine/airflow/blower.hpp"
#include "engine/model/failed_unit.hpp"

namespace endbell::inline airflow {

/// How well a curve passes through its table. Q: double for a share of each row's own value.
template <class Q>
struct Residual {
    double r_squared = 0;
    Q greatest{};
};

struct BlowerFit {
    std::optional<BlowerCurve> curve;  // absent when refused
    std::optional<TableRefusal> refusal;
    Residual<Pressure> pressure;
    Residual<double> torque;
};

/// Refused below six rows, below R^2 0.98 on either curve, or where a curve would not rise with speed.
/// Torque of a row is 5252.113 hp / rpm. Rows are taken to be standard air, as tables print.
BlowerFit fit_blower(const std::vector<BlowerRow>& rows);

}  // namespace endbell::inline airflow
