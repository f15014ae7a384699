// Near misses: the parts that one finding ends, nearest first. Nearest is what has fewest open findings, then fewest changes,
// then the failure that a person would check last, then the least id.
#pragma once
#include <compare>
#include <cstdint>
#include <functional>
#include <span>
#include <vector>

#include "engine/index/block.hpp"
#include "engine/index/top_k.hpp"

namespace endbell::inline index {

/// The parts of one block that some way of failing ends.
struct FailSet {
    std::size_t rule = 0;  // by registry order
    const Word64* set = nullptr;
};

/// The nearest of all, kept while the blocks go by.
class NearMisses {
  public:
    /// `ranks`: of each position, its place in the order of the ids.
    NearMisses(std::size_t most, std::span<const std::uint32_t> ranks)
        : most_(most), ranks_(ranks), nearest_(most) {}

    /// `fails_once`: the parts that one finding ends; `open` and `changes` count their other findings.
    void offer(std::size_t first_word, std::size_t words, const BlockBits& fails_once, const BitSlices& open,
               const BitSlices& changes, const std::vector<FailSet>& failing);

    /// Positions, the nearest first.
    std::vector<std::uint32_t> take();

  private:
    /// Ordered as its members stand, 0 the nearest: with 0 for what is not known yet, no part is nearer than that.
    struct Distance {
        std::uint32_t open = 0;
        std::uint32_t changes = 0;
        std::uint32_t earliness = 0;  // of the failure: see earliness_of()
        std::uint32_t id_rank = 0;
        friend auto operator<=>(const Distance&, const Distance&) = default;
    };
    struct Miss {
        Distance distance;
        std::uint32_t position = 0;
        friend bool operator<(const Miss& a, const Miss& b) { return a.distance < b.distance; }
    };
    bool too_far(const Distance& at_least) const {
        return nearest_.full() && at_least > nearest_.worst().distance;
    }

    std::size_t most_;
    std::span<const std::uint32_t> ranks_;
    TopK<Miss, std::less<>> nearest_;
};

}  // namespace endbell::inline index
