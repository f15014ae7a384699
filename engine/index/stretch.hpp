// A stretch of all sets at once, short enough for what is held of it to stay in the nearest caches.
#pragma once
#include <array>
#include <cstddef>
#include <vector>

#include "engine/index/bits.hpp"

namespace endbell {

inline constexpr std::size_t stretch_words = 512;  // a page of each set

using Stretch = std::array<Word64, stretch_words>;

/// How many findings of one verdict each part of a stretch has, in binary: plane p holds the parts whose count has bit p.
using Planes = std::vector<Stretch>;

}  // namespace endbell
