// The parts that one finding ends, nearest first: fewest open findings, then fewest changes, then the failure that
// a person would check last, then id.
#pragma once
#include <cstdint>
#include <functional>
#include <span>
#include <vector>

#include "engine/index/best.hpp"
#include "engine/index/stretch.hpp"

namespace endbell::inline index {

/// The parts of one stretch that some way of failing ends.
struct Ended {
    std::size_t rule = 0;  // by registry order
    const Word64* set = nullptr;
};

/// Kept while the stretches go by.
class NearMisses {
  public:
    /// `ranks`: of each position, its place in the order of the ids.
    NearMisses(std::size_t most, std::span<const std::uint32_t> ranks)
        : most_(most), ranks_(ranks), nearest_(most) {}

    /// `single`: the parts that one finding ends; `open` and `changes` count their other findings.
    void look(std::size_t first_word, std::size_t words, const Stretch& single, const Planes& open,
              const Planes& changes, const std::vector<Ended>& ended);

    /// Positions, the nearest first.
    std::vector<std::uint32_t> take();

  private:
    struct Miss {
        std::uint64_t distance = 0;  // see farness(): less is nearer
        std::uint32_t position = 0;
        friend bool operator<(const Miss& a, const Miss& b) { return a.distance < b.distance; }
    };
    bool too_far(std::uint64_t distance) const {
        return nearest_.full() && distance > nearest_.worst().distance;
    }

    std::size_t most_;
    std::span<const std::uint32_t> ranks_;
    Best<Miss, std::less<>> nearest_;
};

}  // namespace endbell::inline index
