// One column in one stretch: which classes have parts there, how many, and which. Written by `build`, read in place.
//
// In words of 64 bits. The head: how many classes and at which spacing sets are kept (32 bits each); the classes,
// ascending, of 32 bits; and of each class how many parts come before it, of 16 bits. The body: where sets are not
// kept at every class, the parts sorted by class, of 16 bits; and the sets, cumulative, each as long as the stretch.
// A set that would hold all parts is not kept. Heads lie together: most stretches need no more.
#pragma once
#include <cstdint>
#include <deque>
#include <span>
#include <vector>

#include "engine/index/stretch.hpp"

namespace endbell::inline index {

/// No tile keeps more sets than this.
inline constexpr std::size_t sets_at_most = 128;

/// Room for sets that no tile keeps. A set stays where it is until `clear`; its room is then given again.
class Scratch {
  public:
    Stretch& next() {
        if (used_ == sets_.size()) sets_.emplace_back();
        return sets_[used_++];
    }
    void clear() { used_ = 0; }

  private:
    std::deque<Stretch> sets_;
    std::size_t used_ = 0;
};

/// Where a tile is, and what can be told without it. Of one class only there is no more to tell, and no tile.
struct TileStart {
    std::uint32_t head = 0;   // word in the section of the heads
    std::uint32_t body = 0;   // word in the section of the bodies
    std::uint32_t least = 0;  // class of any of its parts
    std::uint32_t greatest = 0;
};

class Tile {
  public:
    /// `heads` and `bodies`: the rest of each section, from the tile's first word; `words`: the stretch's. Throws
    /// OurBug when the tile ends beyond them.
    Tile(std::span<const Word64> heads, std::span<const Word64> bodies, std::size_t words);

    /// How many parts are of the classes 0 to `c`, which must be as for `up_to`.
    std::size_t count_up_to(std::uint32_t c) const { return starts_[place_of(c) + 1]; }

    /// The parts of the classes 0 to `c`, which must be at least the tile's least and less than its greatest.
    const Word64* up_to(std::uint32_t c, Scratch& scratch) const;

    /// The class of the part at this place in the stretch.
    std::uint32_t class_of(std::size_t part) const;

  private:
    const Word64* kept_set(std::size_t n) const { return sets_ + n * words_; }
    void add_parts(std::size_t first, std::size_t last, Stretch& to) const;
    std::size_t place_of(std::uint32_t c) const;

    std::size_t count_ = 0;
    std::size_t spacing_ = 1;
    std::size_t words_ = 0;
    const std::uint32_t* classes_ = nullptr;
    const std::uint16_t* starts_ =
        nullptr;  // of each class among the parts by class; the last ends with the stretch
    const std::uint16_t* parts_ = nullptr;  // by class
    const Word64* sets_ = nullptr;
};

/// Makes a tile of the classes of a stretch's parts, in their order.
class TileMaker {
  public:
    explicit TileMaker(std::size_t classes) : rank_(classes, none) {}
    void make(std::span<const std::uint32_t> of_part);

    // Of the tile made last.
    const std::vector<std::uint32_t>& classes() const { return present_; }  // ascending
    const std::vector<Word64>& head() const { return head_; }
    const std::vector<Word64>& body() const { return body_; }

  private:
    static constexpr std::uint32_t none = 0xFFFFFFFF;
    void write(std::span<const std::uint32_t> of_part);
    void sort_parts(std::span<const std::uint32_t> of_part, std::uint16_t* parts,
                    std::uint16_t* starts) const;

    std::vector<std::uint32_t> present_;
    std::vector<std::uint32_t> rank_;  // of each class among those present
    std::vector<Word64> head_, body_;
};

}  // namespace endbell::inline index
