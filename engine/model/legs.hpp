// What a meter reads on a line: once, or on each of its three phases.
#pragma once
#include <algorithm>
#include <array>
#include <cmath>
#include <vector>

#include "engine/units/units.hpp"

namespace endbell::inline model {

/// One reading, or three as they were read: line to line of a three-phase supply, or the current of each conductor.
template <class T>
class Legs {
  public:
    /// A bare reading is one of one pair or conductor.
    Legs(T one) : each_{one, T(), T()}, count_(1) {}
    Legs(T first, T second, T third) : each_{first, second, third}, count_(3) {}

    std::vector<T> each() const { return {each_.begin(), each_.begin() + count_}; }
    bool three() const { return count_ == 3; }
    T lowest() const { return *std::min_element(each_.begin(), each_.begin() + count_); }
    T highest() const { return *std::max_element(each_.begin(), each_.begin() + count_); }
    /// The largest deviation from the mean, over the mean: 220, 216 and 213 V give 0.01695 (NEMA MG 1 14.36). 0 of one
    /// reading, and of three that read nothing.
    double unbalance() const {
        T sum = T();
        for (const T& one : each()) sum = sum + one;
        const T mean = sum / count_;
        if (mean <= T()) return 0;
        return std::max((highest() - mean) / mean, (mean - lowest()) / mean);
    }
    friend bool operator==(const Legs&, const Legs&) = default;

  private:
    std::array<T, 3> each_;
    int count_;
};

using LineVolts = Legs<Voltage>;
using LineAmps = Legs<Current>;

}  // namespace endbell::inline model
