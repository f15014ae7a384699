// What all rules together come to, for all parts at once, in one pass over the sets.
#pragma once
#include <cstdint>
#include <vector>

#include "engine/index/bits.hpp"
#include "engine/index/rule_memory.hpp"

namespace endbell {

/// The parts to which one rule says the same: the exclusive or of `edges`, at least one.
struct Said {
    std::size_t rule = 0;  // by registry order
    const Saying* saying = nullptr;
    std::vector<const Word64*> edges;

    Verdict verdict() const { return saying->verdict; }
    Word64 word(std::size_t w) const {
        Word64 x = 0;
        for (const Word64* edge : edges) x ^= edge[w];
        return x;
    }
};

/// Parts that fail, by one way of failing.
struct FailCount {
    std::int64_t parts = 0;
    std::int64_t only = 0;       // and by nothing else
    std::int64_t would_fit = 0;  // of those, with nothing open
};

struct Swept {
    BitSet fitting, changing;    // shown to fit: as they are, or with changes
    BitSet open, open_changing;  // not shown; of those, some finding asks for changes
    BitSet single;               // one finding ends it
    std::vector<BitSet> open_count,
        change_count;  // of single ones, in binary: how many findings are open, or ask for changes
    std::vector<FailCount> fails;     // by index into the list, where it is a failure
    std::vector<std::int64_t> asked;  // open parts that ask for key k of `keys`
};

/// `all`: the parts to be judged. `keys`: job keys to count, each a list of indices into `list` that ask for it.
Swept sweep(const std::vector<Said>& list, const std::vector<std::vector<std::size_t>>& keys,
            const Word64* all, std::size_t words);

/// The parts of `all` that are in none of `fails`: each is the exclusive or of its edges.
BitSet living(const std::vector<std::vector<const Word64*>>& fails, const Word64* all, std::size_t words);

}  // namespace endbell
