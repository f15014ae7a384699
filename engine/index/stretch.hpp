// A stretch of all sets at once, short enough for what is held of it to stay in the nearest caches.
#pragma once
#include <array>
#include <cstddef>
#include <vector>

#include "engine/index/bits.hpp"

namespace endbell {

inline constexpr std::size_t stretch_words = 128;
inline constexpr std::size_t stretch_parts = stretch_words * 64;

constexpr std::size_t stretches_for(std::size_t parts) {
    return (parts + stretch_parts - 1) / stretch_parts;
}

using Stretch = std::array<Word64, stretch_words>;

/// How many findings of one verdict each part of a stretch has, in binary: plane p holds the parts whose count has
/// bit p.
using Planes = std::vector<Stretch>;

}  // namespace endbell
