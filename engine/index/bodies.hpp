// The bodies of all tiles, stretch by stretch, by the way in which they come to memory the soonest.
#pragma once
#include <atomic>
#include <cstddef>
#include <memory>
#include <span>
#include <vector>

#include "engine/index/side_file.hpp"
#include "engine/index/tile.hpp"

namespace endbell::inline index {

/// Some words of a stretch's bodies, counted from the first one of the section.
struct BodyWords {
    std::size_t begin = 0;
    std::size_t end = 0;
};

/// Words that are about to be written: a vector would set them to zero before.
struct BodyRoom {
    std::unique_ptr<Word64[]> words;
    std::size_t size = 0;
};

class Bodies {
  public:
    /// `starts`: of each stretch, those of all `columns`. Throws OurBug when they do not follow each other.
    Bodies(const SideFile& file, std::size_t section, std::span<const TileStart> starts, std::size_t columns);

    /// How many words the section has.
    std::size_t words() const { return words_.size(); }
    /// The first word of a stretch in the section.
    std::size_t first(std::size_t stretch) const;
    /// Those of one stretch, where few of them are looked at.
    std::span<const Word64> of(std::size_t stretch) const;
    /// Nobody went through this stretch before.
    bool is_new(std::size_t stretch) const { return times_[stretch].load(std::memory_order_relaxed) == 0; }
    /// As `of`, where much of them is looked at. A program that answers once goes through a stretch once: of a new one
    /// the `wanted` words, which are put in order, are copied to their places in `room`, which serves for one stretch
    /// after the other. From the second time on all of it is mapped.
    std::span<const Word64> much_of(std::size_t stretch, std::vector<BodyWords>& wanted,
                                    BodyRoom& room) const;

  private:
    bool copy(std::size_t stretch, const std::vector<BodyWords>& wanted, Word64* to) const;

    SideFile file_;
    std::size_t section_;
    std::span<const TileStart> starts_;
    std::size_t columns_;
    std::span<const Word64> words_;
    std::size_t longest_ = 0;                      // of a stretch
    mutable std::vector<std::atomic<int>> times_;  // that a stretch was gone through
};

}  // namespace endbell::inline index
