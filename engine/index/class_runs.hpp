// Runs of classes of one column, and the set of the parts that are of these classes: what a verdict over neighbouring values
// comes to. Told block by block, from the directory alone where that is enough.
#pragma once
#include <cstdint>
#include <span>
#include <vector>

#include "engine/index/columns.hpp"

namespace endbell::inline index {

/// A run of the classes a to b is the exclusive or of the cumulative sets a - 1 and b: its bounds. A run that begins with
/// class 0 has the one bound b, and of runs that touch each other the common bound is in neither.
struct ClassRuns {
    const IndexColumn* column = nullptr;    // null: no class, and no bounds
    std::span<const std::uint32_t> bounds;  // ascending; all of one column
    /// Sets of all parts that are to be turned over too: parts that were asked by themselves.
    std::vector<const Word64*> apart;
};

/// Where a block stands among all parts.
struct PartBlock {
    std::size_t first = 0;             // word
    std::size_t size = 0;              // words
    const Word64* all = nullptr;       // the parts to be judged, from `first` on
    std::span<const Word64> payloads;  // of its column blocks
    std::size_t number() const { return first / block_words; }
    std::size_t parts() const { return static_cast<std::size_t>(count_bits(all, size)); }
};
/// Block of the word `first`, of sets of `words` words. Has no payloads yet.
PartBlock part_block(std::size_t first, const Word64* all, std::size_t words);

/// What runs come to in one block: all of its parts where `whole`, turned over by each of some sets that hold a part of
/// them. Neither `whole` nor any such set: empty.
struct SetInBlock {
    bool whole = false;
    std::size_t first = 0;    // index of the first of these sets
    std::size_t partial = 0;  // how many they are
};

/// Appends to `partial` the sets that must be read.
SetInBlock set_in_block(const ClassRuns& runs, const PartBlock& block, std::vector<const Word64*>& partial,
                        Scratch& scratch);

/// Only the column block tells which parts of the block are in it.
bool needs_payload(const ClassRuns& runs, std::size_t block);

/// Every part of the block is in it.
bool covers(const ClassRuns& runs, const PartBlock& block);

/// How many of the block's parts are in it, by the header of the column block; the block has `all` parts. REQUIRES: no
/// parts stand apart.
std::size_t count_in(const ClassRuns& runs, const PartBlock& block, std::size_t all);

/// Whether the part at `position` is in it.
bool holds(const ClassRuns& runs, std::size_t position, const Word64* all, std::size_t words);

}  // namespace endbell::inline index
