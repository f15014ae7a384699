// A stretch of all sets at once, short enough for what is held of it to stay in the nearest caches.
#pragma once
#include <algorithm>
#include <array>
#include <cstddef>
#include <cstdint>
#include <vector>

#include "engine/index/bits.hpp"

namespace endbell::inline index {

inline constexpr std::size_t stretch_words = 128;
inline constexpr std::size_t stretch_parts = stretch_words * 64;

constexpr std::size_t stretches_for(std::size_t parts) {
    return (parts + stretch_parts - 1) / stretch_parts;
}

using Stretch = std::array<Word64, stretch_words>;

/// Whether a set has parts in each stretch; false only where it has none.
using Lives = std::vector<bool>;

/// Bits of a set, looked for only where it has any.
inline std::int64_t count_bits(const BitSet& set, const Lives& lives) {
    std::int64_t bits = 0;
    for (std::size_t s = 0; s < lives.size(); ++s) {
        const std::size_t first = s * stretch_words;
        if (lives[s]) bits += count_bits(set.data() + first, std::min(stretch_words, set.size() - first));
    }
    return bits;
}

/// How many findings of one verdict each part of a stretch has, in binary: plane p holds the parts whose count has
/// bit p.
using Planes = std::vector<Stretch>;

}  // namespace endbell::inline index
