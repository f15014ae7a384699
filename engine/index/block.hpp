// A block: 8,192 parts that stand together, and a bitmap of them. All sets are gone through block by block, because what is
// held of one block stays in the nearest caches.
#pragma once
#include <algorithm>
#include <array>
#include <cstddef>
#include <cstdint>
#include <vector>

#include "engine/index/bits.hpp"

namespace endbell::inline index {

inline constexpr std::size_t block_words = 128;
inline constexpr std::size_t block_parts = block_words * 64;

/// The last block may hold fewer parts.
constexpr std::size_t blocks_for(std::size_t parts) {
    return (parts + block_parts - 1) / block_parts;
}

/// A set of parts of one block. Of the last block only as many words mean something as the block has.
using BlockBits = std::array<Word64, block_words>;

/// Of each block, whether a set has parts in it. False only where it has none: the set's words there are all zero.
using OccupiedBlocks = std::vector<bool>;

/// Bits of a set, looked for only where it has any.
inline std::int64_t count_bits(const BitSet& set, const OccupiedBlocks& occupied) {
    std::int64_t bits = 0;
    for (std::size_t b = 0; b < occupied.size(); ++b) {
        const std::size_t first = b * block_words;
        if (occupied[b]) bits += count_bits(set.data() + first, std::min(block_words, set.size() - first));
    }
    return bits;
}

/// A small number for each part of a block, bit-sliced: slice s holds the parts whose number has bit s.
using BitSlices = std::vector<BlockBits>;

}  // namespace endbell::inline index
