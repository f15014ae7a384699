// The payloads of all column blocks, block by block, each brought to memory in the way that is quickest for it.
#pragma once
#include <atomic>
#include <cstddef>
#include <memory>
#include <span>
#include <vector>

#include "engine/index/column_block.hpp"
#include "engine/index/side_file.hpp"

namespace endbell::inline index {

/// A range of words, counted from the first one of the section of payloads.
struct PayloadWords {
    std::size_t begin = 0;
    std::size_t end = 0;
};

/// Words that are about to be written: a vector would set them to zero before.
struct PayloadBuffer {
    std::unique_ptr<Word64[]> words;
    std::size_t size = 0;
};

class Payloads {
  public:
    /// `directory`: by block, those of all `columns`. Throws OurBug when the blocks do not follow each other.
    Payloads(const SideFile& file, std::size_t section, std::span<const DirectoryEntry> directory,
             std::size_t columns);

    /// How many words the section has.
    std::size_t words() const { return words_.size(); }
    /// The first word of a block in the section.
    std::size_t first(std::size_t block) const;
    /// Those of one block, mapped: where few of them are looked at.
    std::span<const Word64> of(std::size_t block) const;
    /// `load` was not called for it.
    bool never_loaded(std::size_t block) const { return loads_[block].load(std::memory_order_relaxed) == 0; }
    /// As `of`, where much of them is looked at. A program that answers once loads a block once, and would pay for each
    /// page that it touches first: so the first time only the `wanted` words are copied to their places in `buffer`,
    /// which serves for one block after the other. Any other word there means nothing. Whoever loads a block again has
    /// many jobs: from then on all of it is mapped. Puts `wanted` in order.
    std::span<const Word64> load(std::size_t block, std::vector<PayloadWords>& wanted,
                                 PayloadBuffer& buffer) const;

  private:
    bool copy(std::size_t block, const std::vector<PayloadWords>& wanted, Word64* to) const;

    SideFile file_;
    std::size_t section_;
    std::span<const DirectoryEntry> directory_;
    std::size_t columns_;
    std::span<const Word64> words_;
    std::size_t longest_ = 0;                      // of a block
    mutable std::vector<std::atomic<int>> loads_;  // of each block: 0, `once` or `paged_in`
};

}  // namespace endbell::inline index
