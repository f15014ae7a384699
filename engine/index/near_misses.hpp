// The parts that one finding ends, nearest first: fewest open findings, then fewest changes, then the failure that
// a person would check last, then id.
#pragma once
#include <cstdint>
#include <span>
#include <vector>

#include "engine/index/sweep.hpp"

namespace endbell {

/// Positions. Takes the sets of `swept` that it needs apart.
std::vector<std::uint32_t> nearest_misses(const std::vector<Said>& list, Swept&& swept, std::size_t most,
                                          std::span<const std::uint32_t> ranks);

}  // namespace endbell
