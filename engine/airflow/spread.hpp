// Carrying what an input may be off by into an answer. Independent shares add as the root of their squares.
#pragma once
#include <cmath>
#include <initializer_list>

namespace endbell::inline airflow {

inline double root_sum(std::initializer_list<double> parts) {
    double squares = 0;
    for (double part : parts) squares += part * part;
    return std::sqrt(squares);
}

}  // namespace endbell::inline airflow
