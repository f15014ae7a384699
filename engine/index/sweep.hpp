// What all rules together come to, for all parts at once, in one pass over the sets.
#pragma once
#include <cstdint>
#include <span>
#include <string_view>
#include <vector>

#include "engine/index/columns.hpp"
#include "engine/index/near_misses.hpp"
#include "engine/index/rule_memory.hpp"

namespace endbell::inline index {

/// The exclusive or of some sets: of those at the edges of classes of one column, and of some for all stretches.
struct Edges {
    const IndexColumn* column = nullptr;
    std::span<const std::uint32_t> classes;  // each stands for the set of the classes up to it
    std::vector<const Word64*> others;
};

/// Whether the part at `position` is in it.
bool holds(const Edges& edges, std::size_t position, const Word64* all, std::size_t words);

/// The parts to which one rule says the same.
struct Said {
    std::size_t rule = 0;            // by registry order
    const Saying* saying = nullptr;  // null where only the verdict is known: nothing is counted then
    Verdict verdict = Verdict::fits;
    Edges edges;
};

/// Parts that fail, by one way of failing.
struct FailCount {
    std::int64_t parts = 0;
    std::int64_t only = 0;       // and by nothing else
    std::int64_t would_fit = 0;  // of those, with nothing open
};

struct Swept {
    BitSet fitting, changing;         // shown to fit: as they are, or with changes
    BitSet open, open_changing;       // not shown: no finding asks for changes, or some does
    Lives lives;                      // where any of the four has parts
    std::vector<FailCount> fails;     // by index into the list, where it is a failure
    std::vector<std::int64_t> asked;  // open parts that ask for key k of `keys`
};

/// What is to be counted beside the four sets.
struct Count {
    std::vector<std::vector<std::size_t>>
        keys;                      // job keys, each a list of indices into `list` that ask for it
    NearMisses* misses = nullptr;  // offered every part that one finding ends
};

/// One way to go through a stretch of the sets: they differ in the instructions that the processor must have.
struct Gait {
    std::string_view name;
    void (*sweep)(struct SetsThere& there);
};
/// Those that this processor can go, the fastest first. All come to the same.
const std::vector<Gait>& gaits();

/// `all`: the parts to be judged. Without `count`: the four sets alone.
Swept sweep(const std::vector<Said>& list, const Count* count, const Word64* all, std::size_t words,
            const Gait& gait = gaits().front());

}  // namespace endbell::inline index
