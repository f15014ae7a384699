#include "engine/index/near_misses.hpp"

#include <algorithm>

namespace endbell::inline index {

namespace {

/// Greater for a rule that stands earlier in the registry.
std::uint32_t earliness_of(std::size_t rule) {
    constexpr std::size_t beyond_any_rule = 255;
    return static_cast<std::uint32_t>(beyond_any_rule - rule);
}

/// Leaves the parts of `set` whose count is the least, and says what it is.
std::uint32_t keep_least(BlockBits& set, std::size_t words, const BitSlices& slices) {
    std::uint32_t least = 0;
    BlockBits without;
    for (std::size_t s = slices.size(); s-- > 0;) {
        Word64 some = 0;
        for (std::size_t w = 0; w < words; ++w) some |= without[w] = set[w] & ~slices[s][w];
        if (some != 0)
            std::copy_n(without.begin(), words, set.begin());
        else
            least |= std::uint32_t{1} << s;
    }
    return least;
}

bool any(const BlockBits& set, std::size_t words) {
    Word64 some = 0;
    for (std::size_t w = 0; w < words; ++w) some |= set[w];
    return some != 0;
}

}  // namespace

void NearMisses::offer(std::size_t first_word, std::size_t words, const BlockBits& fails_once,
                       const BitSlices& open, const BitSlices& changes, const std::vector<FailSet>& failing) {
    if (most_ == 0) return;
    BlockBits left;
    std::copy_n(fails_once.begin(), words, left.begin());
    while (any(left, words)) {
        BlockBits equal;
        std::copy_n(left.begin(), words, equal.begin());
        Distance distance{};
        distance.open = keep_least(equal, words, open);
        distance.changes = keep_least(equal, words, changes);
        if (too_far(distance)) return;
        for (const FailSet& by : failing) {
            distance.earliness = earliness_of(by.rule);
            distance.id_rank = 0;
            if (too_far(distance)) continue;
            for (std::size_t w = 0; w < words; ++w) {
                each_bit(equal[w] & by.set[w], first_word + w, [&](std::size_t position) {
                    distance.id_rank = ranks_[position];
                    nearest_.offer({distance, static_cast<std::uint32_t>(position)});
                });
            }
        }
        for (std::size_t w = 0; w < words; ++w) left[w] &= ~equal[w];
    }
}

std::vector<std::uint32_t> NearMisses::take() {
    std::vector<std::uint32_t> positions;
    for (const Miss& miss : nearest_.take()) positions.push_back(miss.position);
    return positions;
}

}  // namespace endbell::inline index
