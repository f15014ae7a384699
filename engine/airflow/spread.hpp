// Carrying what an input may be off by into an answer. Independent shares add as the root of their squares.
#pragma once
#include <cmath>
#include <initializer_list>

#include "engine/airflow/air_plan.hpp"

namespace endbell {

inline double root_sum(std::initializer_list<double> parts) {
    double squares = 0;
    for (double part : parts) squares += part * part;
    return std::sqrt(squares);
}

/// plus_minus as a share of the value. REQUIRES: a known value other than 0.
inline double relative(const Estimate& estimate) {
    return estimate.plus_minus / std::abs(estimate.value);
}

inline Estimate estimate(double value, double share, bool assumed = false) {
    return {value, std::abs(value) * share, assumed, true};
}

}  // namespace endbell
