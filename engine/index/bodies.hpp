// The bodies of all tiles, stretch by stretch, by the way in which they come to memory the soonest.
#pragma once
#include <atomic>
#include <cstddef>
#include <memory>
#include <span>
#include <vector>

#include "engine/index/side_file.hpp"
#include "engine/index/tile.hpp"

namespace endbell {

/// Words that are about to be written: a vector would set them to zero before.
struct BodyRoom {
    std::unique_ptr<Word64[]> words;
    std::size_t size = 0;
};

class Bodies {
  public:
    /// `starts`: of each stretch, those of all `columns`. Throws OurBug when they do not follow each other.
    Bodies(const SideFile& file, std::size_t section, std::span<const TileStart> starts, std::size_t columns);

    /// The first word of a stretch in the section.
    std::size_t first(std::size_t stretch) const;
    /// Those of one stretch, where few of them are looked at.
    std::span<const Word64> of(std::size_t stretch) const;
    /// As `of`, for one who goes through them all. A program that answers once goes through a stretch once: it is
    /// copied into `room`, which serves for one stretch after the other. From the second time on it is mapped.
    std::span<const Word64> all_of(std::size_t stretch, BodyRoom& room) const;

  private:
    SideFile file_;
    std::size_t section_;
    std::span<const TileStart> starts_;
    std::size_t columns_;
    std::span<const Word64> words_;
    std::size_t longest_ = 0;                      // of a stretch
    mutable std::vector<std::atomic<int>> times_;  // that a stretch was gone through
};

}  // namespace endbell
