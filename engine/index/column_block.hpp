// A column block: what the index holds of one column in one block. Which classes have parts there, how many, and which.
// Written by ColumnBlockBuilder, read in place.
//
// In words of 64 bits. The header: how many classes are present and at which spacing sets are kept (32 bits each); the
// classes, ascending, of 32 bits; and of each class how many parts come before it, of 16 bits. The payload: where sets are
// not kept at every class, the parts sorted by class, of 16 bits; and the sets, cumulative, each as long as the block.
// The last set would hold all parts and is not kept.
//
// A block in which the column has one class has no header and no payload: its directory entry says everything.
#pragma once
#include <cstdint>
#include <deque>
#include <span>
#include <vector>

#include "engine/index/block.hpp"

namespace endbell::inline index {

/// Where there are more classes, only every few keep a set, and parts between two sets are sorted by class: a column of
/// many small classes would otherwise take more room than all others.
inline constexpr std::size_t sets_at_most = 128;

/// Room for sets that no column block keeps. A set stays where it is until `clear`; its room is then given again.
class Scratch {
  public:
    BlockBits& next() {
        if (used_ == sets_.size()) sets_.emplace_back();
        return sets_[used_++];
    }
    void clear() { used_ = 0; }

  private:
    std::deque<BlockBits> sets_;
    std::size_t used_ = 0;
};

/// The directory has one of these for each column block, the columns of a block side by side. Where `first_class` and
/// `last_class` are the same, all parts of the block are of it, and header and payload are empty: they begin where those
/// of the next entry do.
struct DirectoryEntry {
    std::uint32_t header = 0;       // its first word in the section of headers
    std::uint32_t payload = 0;      // its first word in the section of payloads
    std::uint32_t first_class = 0;  // of those present
    std::uint32_t last_class = 0;
};

class ColumnBlock {
  public:
    /// `headers` and `payloads`: the rest of each section, from its first word; `words`: the block's. Throws OurBug when
    /// it ends beyond them. REQUIRES: more than one class is present.
    ColumnBlock(std::span<const Word64> headers, std::span<const Word64> payloads, std::size_t words);

    /// How many parts are of the classes 0 to `c`, which must be as for `up_to`.
    std::size_t count_up_to(std::uint32_t c) const { return starts_[place_of(c) + 1]; }

    /// The parts of the classes 0 to `c`. REQUIRES: first class <= c < last class. Classes that are not present may be
    /// asked for.
    const Word64* up_to(std::uint32_t c, Scratch& scratch) const;

    /// The class of the part at this place in the block.
    std::uint32_t class_of(std::size_t part) const;

  private:
    std::size_t place_of(std::uint32_t c) const;
    const Word64* kept_set(std::size_t n) const { return sets_ + n * words_; }
    void add_parts(std::size_t first, std::size_t last, BlockBits& to) const;

    std::size_t count_ = 0;    // classes that are present; a place is an index of one of them
    std::size_t spacing_ = 1;  // a set is kept after each `spacing_` of them
    std::size_t words_ = 0;
    const std::uint32_t* classes_ = nullptr;  // ascending
    const std::uint16_t* starts_ = nullptr;   // of each class in `parts_`; the last class ends with the block
    const std::uint16_t* parts_ = nullptr;    // by class; none where `spacing_` is 1
    const Word64* sets_ = nullptr;
};

/// Makes the column block of some parts from their classes.
class ColumnBlockBuilder {
  public:
    /// `classes`: how many the column has.
    explicit ColumnBlockBuilder(std::size_t classes) : place_(classes, absent) {}
    /// `of_part`: of each part of the block, in their order. REQUIRES: there are parts, no more than a block holds.
    void make(std::span<const std::uint32_t> of_part);

    // Of what was made last. Header and payload are empty where one class is present.
    const std::vector<std::uint32_t>& classes() const { return present_; }  // ascending
    const std::vector<Word64>& header() const { return header_; }
    const std::vector<Word64>& payload() const { return payload_; }

  private:
    /// The place of a class that has no part in the block; greater than any place.
    static constexpr std::uint32_t absent = 0xFFFFFFFF;
    void write(std::span<const std::uint32_t> of_part);

    std::vector<std::uint32_t> present_;
    std::vector<std::uint32_t>
        place_;  // of each class of the column among those present; all absent between two blocks
    std::vector<Word64> header_, payload_;
};

}  // namespace endbell::inline index
