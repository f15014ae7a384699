#include "engine/airflow/blower_fit.hpp"

#include <algorithm>
#include <array>
#include <cmath>

namespace endbell::inline airflow {

namespace {

using Three = std::array<double, 3>;

struct Sample {
    Three x{};  // n^2, nQ, Q^2
    double y = 0;
};

/// Least squares of y on three columns: the normal equations, columns scaled to one size, elimination with
/// pivots. None where the columns do not tell the three coefficients apart.
std::optional<Three> least_squares(const std::vector<Sample>& samples) {
    Three scale{};
    for (const Sample& s : samples) {
        for (std::size_t i = 0; i < 3; ++i) scale[i] += s.x[i] * s.x[i];
    }
    for (double& one : scale) one = std::sqrt(one);
    std::array<std::array<double, 4>, 3> m{};
    for (const Sample& s : samples) {
        for (std::size_t i = 0; i < 3; ++i) {
            for (std::size_t j = 0; j < 3; ++j) m[i][j] += s.x[i] / scale[i] * (s.x[j] / scale[j]);
            m[i][3] += s.x[i] / scale[i] * s.y;
        }
    }
    for (std::size_t i = 0; i < 3; ++i) {
        std::size_t pivot = i;
        for (std::size_t r = i + 1; r < 3; ++r) {
            if (std::abs(m[r][i]) > std::abs(m[pivot][i])) pivot = r;
        }
        if (!(std::abs(m[pivot][i]) > 1e-9)) return std::nullopt;
        std::swap(m[i], m[pivot]);
        for (std::size_t r = 0; r < 3; ++r) {
            if (r == i) continue;
            const double factor = m[r][i] / m[i][i];
            for (std::size_t c = i; c < 4; ++c) m[r][c] -= factor * m[i][c];
        }
    }
    Three solution{};
    for (std::size_t i = 0; i < 3; ++i) solution[i] = m[i][3] / m[i][i] / scale[i];
    return solution;
}

Residual<double> residual_of(const std::vector<Sample>& samples, const Three& k, bool as_share) {
    double mean = 0, left = 0, spread = 0;
    Residual<double> residual;
    for (const Sample& s : samples) mean += s.y / static_cast<double>(samples.size());
    for (const Sample& s : samples) {
        const double off = s.y - (k[0] * s.x[0] + k[1] * s.x[1] + k[2] * s.x[2]);
        left += off * off;
        spread += (s.y - mean) * (s.y - mean);
        residual.greatest = std::max(residual.greatest, std::abs(as_share ? off / s.y : off));
    }
    residual.r_squared = spread > 0 ? 1 - left / spread : 0;
    return residual;
}

/// Torque and flow may not fall as the wheel speeds up, anywhere in the table: bisection rests on it.
bool rises(const BlowerCurve& curve, const std::vector<BlowerRow>& rows) {
    if (curve.static_nn <= 0) return false;
    return std::all_of(rows.begin(), rows.end(), [&](const BlowerRow& row) {
        const double n = row.speed.in(rpm), q = row.airflow.in(cfm);
        return 2 * curve.static_nn * n + curve.static_nq * q > 0 &&
               2 * curve.torque_nn * n + curve.torque_nq * q > 0 &&
               curve.torque_nq * n + 2 * curve.torque_qq * q > 0;
    });
}

constexpr std::size_t fewest_rows = 6;      // three coefficients, twice over; common practice
constexpr double loosest_r_squared = 0.98;  // common practice; the table read for this model gives 0.9994

}  // namespace

BlowerFit fit_blower(const std::vector<BlowerRow>& rows) {
    BlowerFit fit;
    std::vector<Sample> pressures, torques;
    for (const BlowerRow& row : rows) {
        const double n = row.speed.in(rpm) / 1000, q = row.airflow.in(cfm) / 1000;
        if (!(n > 0) || !(q > 0) || !(row.shaft.in(watt) > 0)) continue;
        const Three x{n * n, n * q, q * q};
        pressures.push_back({x, row.static_total.in(inch_water)});
        torques.push_back({x, torque_of(row.shaft, row.speed).in(pound_foot)});
    }
    fit.refusal = TableRefusal::too_few_rows;
    if (pressures.size() < fewest_rows) return fit;
    fit.refusal = TableRefusal::rows_do_not_decide;
    const std::optional<Three> pressure = least_squares(pressures), torque = least_squares(torques);
    if (!pressure || !torque) return fit;
    const Residual<double> in_inches = residual_of(pressures, *pressure, false);
    fit.pressure = {in_inches.r_squared, inch_water(in_inches.greatest)};
    fit.torque = residual_of(torques, *torque, true);
    fit.refusal = TableRefusal::fit_too_loose;
    if (!(fit.pressure.r_squared >= loosest_r_squared && fit.torque.r_squared >= loosest_r_squared))
        return fit;
    const BlowerCurve curve{(*pressure)[0], (*pressure)[1], -(*pressure)[2],
                            (*torque)[0],   (*torque)[1],   (*torque)[2]};
    fit.refusal = TableRefusal::not_a_blower;
    if (!rises(curve, rows)) return fit;
    fit.refusal.reset();
    fit.curve = curve;
    return fit;
}

}  // namespace endbell::inline airflow
