#include "engine/index/near_misses.hpp"

#include <algorithm>

#include "engine/index/best.hpp"

namespace endbell {

namespace {

bool any(const BitSet& set) {
    return std::any_of(set.begin(), set.end(), [](Word64 w) { return w != 0; });
}

/// Leaves the parts of `set` whose count, in binary planes, is the least.
void keep_least(BitSet& set, const std::vector<BitSet>& planes) {
    BitSet without(set.size());
    for (auto plane = planes.rbegin(); plane != planes.rend(); ++plane) {
        Word64 some = 0;
        for (std::size_t w = 0; w < set.size(); ++w) some |= without[w] = set[w] & ~(*plane)[w];
        if (some != 0) set.swap(without);
    }
}

/// The parts of `set` with the lowest ranks, ascending.
std::vector<std::uint32_t> lowest(const BitSet& set, std::size_t most, std::span<const std::uint32_t> ranks) {
    Best best(most, [&](std::uint32_t a, std::uint32_t b) { return ranks[a] < ranks[b]; });
    for (std::size_t w = 0; w < set.size(); ++w)
        each_bit(set[w], w, [&](std::size_t position) { best.offer(static_cast<std::uint32_t>(position)); });
    return best.take();
}

}  // namespace

std::vector<std::uint32_t> nearest_misses(const std::vector<Said>& list, Swept&& swept, std::size_t most,
                                          std::span<const std::uint32_t> ranks) {
    std::vector<std::uint32_t> nearest;
    BitSet& left = swept.single;
    while (nearest.size() < most && any(left)) {
        BitSet equal = left;
        keep_least(equal, swept.open_count);
        keep_least(equal, swept.change_count);
        // The list is in registry order: a later rule is nearer.
        for (std::size_t end = list.size(); end > 0 && nearest.size() < most;) {
            std::size_t begin = end - 1;
            while (begin > 0 && list[begin - 1].rule == list[end - 1].rule) --begin;
            BitSet ended(equal.size());
            for (std::size_t s = begin; s < end; ++s) {
                if (list[s].verdict() != Verdict::does_not_fit) continue;
                for (std::size_t w = 0; w < equal.size(); ++w) {
                    if (equal[w] != 0) ended[w] |= equal[w] & list[s].word(w);
                }
            }
            for (const std::uint32_t p : lowest(ended, most - nearest.size(), ranks)) nearest.push_back(p);
            end = begin;
        }
        for (std::size_t w = 0; w < left.size(); ++w) left[w] &= ~equal[w];
    }
    return nearest;
}

}  // namespace endbell
