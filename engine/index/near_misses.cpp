#include "engine/index/near_misses.hpp"

#include <algorithm>

namespace endbell::inline index {

namespace {

constexpr std::size_t most_rules = 255;

/// One number that orders near misses: open findings, changes, how early the failure comes, rank of the id.
std::uint64_t farness(std::size_t open, std::size_t changes, std::size_t rule, std::uint32_t rank) {
    return std::uint64_t{open} << 48 | std::uint64_t{changes} << 40 | std::uint64_t{most_rules - rule} << 32 |
           rank;
}

/// Leaves the parts of `set` whose count is the least, and says what it is.
std::size_t keep_least(Stretch& set, std::size_t words, const Planes& planes) {
    std::size_t least = 0;
    Stretch without;
    for (std::size_t p = planes.size(); p-- > 0;) {
        Word64 some = 0;
        for (std::size_t w = 0; w < words; ++w) some |= without[w] = set[w] & ~planes[p][w];
        if (some != 0)
            std::copy_n(without.begin(), words, set.begin());
        else
            least |= std::size_t{1} << p;
    }
    return least;
}

bool any(const Stretch& set, std::size_t words) {
    Word64 some = 0;
    for (std::size_t w = 0; w < words; ++w) some |= set[w];
    return some != 0;
}

}  // namespace

void NearMisses::look(std::size_t first_word, std::size_t words, const Stretch& single, const Planes& open,
                      const Planes& changes, const std::vector<Ended>& ended) {
    if (most_ == 0) return;
    Stretch left;
    std::copy_n(single.begin(), words, left.begin());
    while (any(left, words)) {
        Stretch equal;
        std::copy_n(left.begin(), words, equal.begin());
        const std::size_t opens = keep_least(equal, words, open);
        const std::size_t changed = keep_least(equal, words, changes);
        if (too_far(farness(opens, changed, most_rules, 0))) return;
        for (const Ended& by : ended) {
            if (too_far(farness(opens, changed, by.rule, 0))) continue;
            for (std::size_t w = 0; w < words; ++w) {
                each_bit(equal[w] & by.set[w], first_word + w, [&](std::size_t position) {
                    nearest_.offer({farness(opens, changed, by.rule, ranks_[position]),
                                    static_cast<std::uint32_t>(position)});
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
