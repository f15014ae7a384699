// A scan: one pass over the sets of all rules, block by block, that tells for every part what the rules together come to.
#pragma once
#include <cstdint>
#include <vector>

#include "engine/index/finding_sets.hpp"
#include "engine/index/kernel.hpp"
#include "engine/index/near_misses.hpp"

namespace endbell::inline index {

/// Parts that fail, by one way of failing.
struct FailCount {
    std::int64_t parts = 0;
    std::int64_t only = 0;       // and by nothing else
    std::int64_t would_fit = 0;  // of those, with nothing open
};

struct ScanResult {
    BitSet fitting, changing;         // shown to fit: as they are, or with changes
    BitSet open, open_changing;       // not shown: no finding asks for changes, or some does
    OccupiedBlocks occupied;          // where any of the four has parts
    std::vector<FailCount> fails;     // by index into the list, where it is a failure
    std::vector<std::int64_t> asked;  // open parts that ask for key k of `keys`
};

/// What is to be counted beside the four sets.
struct Count {
    std::vector<std::vector<std::size_t>>
        keys;                      // job keys, each a list of indices into `list` that ask for it
    NearMisses* misses = nullptr;  // offered every part that one finding ends
};

/// `all`: the parts to be judged. Without `count`: the four sets alone.
ScanResult scan(const std::vector<FindingSet>& list, const Count* count, const Word64* all, std::size_t words,
                const Kernel& kernel = kernels().front());

}  // namespace endbell::inline index
