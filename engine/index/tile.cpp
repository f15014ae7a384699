#include "engine/index/tile.hpp"

#include <algorithm>
#include <numeric>

#include "engine/base/check.hpp"

namespace endbell::inline index {

namespace {

/// Where the pieces of a tile stand, in words from the beginning of its head and of its body.
struct Layout {
    std::size_t starts = 0;
    std::size_t head = 0;  // its end
    std::size_t sets = 0;
    std::size_t kept = 0;  // sets
    std::size_t body = 0;  // its end
};

constexpr std::size_t words_of(std::size_t bytes) {
    return (bytes + sizeof(Word64) - 1) / sizeof(Word64);
}

Layout layout_of(std::size_t count, std::size_t spacing, std::size_t words) {
    Layout l;
    l.starts = 1 + words_of(count * sizeof(std::uint32_t));
    l.head = l.starts + words_of(count * sizeof(std::uint16_t));
    l.sets = spacing > 1 ? words_of(words * 64 * sizeof(std::uint16_t)) : 0;
    l.kept = (count - 1) / spacing;
    l.body = l.sets + l.kept * words;
    return l;
}

}  // namespace

Tile::Tile(std::span<const Word64> heads, std::span<const Word64> bodies, std::size_t words) : words_(words) {
    check(!heads.empty(), "a tile begins within its section");
    count_ = static_cast<std::uint32_t>(heads[0]);
    spacing_ = static_cast<std::size_t>(heads[0] >> 32);
    check(count_ > 1 && count_ <= words * 64 && spacing_ > 0, "a tile has classes");
    const Layout l = layout_of(count_, spacing_, words);
    check(l.head <= heads.size() && l.body <= bodies.size(), "a tile ends within its section");
    classes_ = reinterpret_cast<const std::uint32_t*>(heads.data() + 1);
    starts_ = reinterpret_cast<const std::uint16_t*>(heads.data() + l.starts);
    parts_ = reinterpret_cast<const std::uint16_t*>(bodies.data());
    sets_ = bodies.data() + l.sets;
}

/// The last class that is present and no greater.
std::size_t Tile::place_of(std::uint32_t c) const {
    check(classes_[0] <= c && c < classes_[count_ - 1], "a set is of some parts, not of all");
    return static_cast<std::size_t>(std::upper_bound(classes_, classes_ + count_, c) - classes_) - 1;
}

const Word64* Tile::up_to(std::uint32_t c, Scratch& scratch) const {
    const std::size_t place = place_of(c);
    const std::size_t kept = (place + 1) / spacing_;  // sets up to there
    if ((place + 1) % spacing_ == 0) return kept_set(kept - 1);
    Stretch& set = scratch.next();
    if (kept > 0)
        std::copy_n(kept_set(kept - 1), words_, set.begin());
    else
        std::fill_n(set.begin(), words_, 0);
    add_parts(kept * spacing_, place, set);
    return set.data();
}

/// Parts of the classes at `first` to `last`, which is not the last one of all: behind its parts there may be room.
void Tile::add_parts(std::size_t first, std::size_t last, Stretch& to) const {
    const std::size_t parts = words_ * 64;
    for (std::size_t p = starts_[first]; p < starts_[last + 1]; ++p) {
        check(p < parts && parts_[p] < parts, "a tile's parts are in its stretch");
        add_bit(to.data(), parts_[p]);
    }
}

std::uint32_t Tile::class_of(std::size_t part) const {
    check(part < words_ * 64, "the part is in the stretch");
    const auto in_set = [&](std::size_t set) {
        return (sets_[set * words_ + part / 64] >> (part % 64) & 1) != 0;
    };
    std::size_t low = 0;  // the first kept set that holds it
    for (std::size_t high = (count_ - 1) / spacing_; low < high;) {
        const std::size_t middle = (low + high) / 2;
        if (in_set(middle))
            high = middle;
        else
            low = middle + 1;
    }
    std::size_t place = low * spacing_;
    if (spacing_ > 1) {
        const std::size_t last = std::min(place + spacing_, count_);
        const auto end = [&](std::size_t c) {
            return c + 1 < count_ ? std::size_t{starts_[c + 1]} : words_ * 64;
        };
        const auto has = [&](std::size_t c) {
            check(starts_[c] <= end(c) && end(c) <= words_ * 64, "classes follow each other");
            return std::binary_search(parts_ + starts_[c], parts_ + end(c), part);
        };
        while (place + 1 < last && !has(place)) ++place;
    }
    return classes_[place];
}

void TileMaker::make(std::span<const std::uint32_t> of_part) {
    present_.clear();
    for (const std::uint32_t c : of_part) {
        if (rank_[c] != none) continue;
        rank_[c] = 0;
        present_.push_back(c);
    }
    std::sort(present_.begin(), present_.end());
    for (std::uint32_t r = 0; r < present_.size(); ++r) rank_[present_[r]] = r;
    head_.clear();
    body_.clear();
    if (present_.size() > 1) write(of_part);
    for (const std::uint32_t c : present_) rank_[c] = none;
}

void TileMaker::write(std::span<const std::uint32_t> of_part) {
    const std::size_t words = words_for(of_part.size());
    const std::size_t spacing = (present_.size() + sets_at_most - 1) / sets_at_most;
    const Layout l = layout_of(present_.size(), spacing, words);
    head_.assign(l.head, 0);
    body_.assign(l.body, 0);
    head_[0] = present_.size() | Word64{spacing} << 32;
    std::copy(present_.begin(), present_.end(), reinterpret_cast<std::uint32_t*>(head_.data() + 1));

    std::vector<std::uint16_t> next(present_.size() + 1);
    for (const std::uint32_t c : of_part) ++next[rank_[c] + 1];
    std::partial_sum(next.begin(), next.end(), next.begin());
    std::copy(next.begin(), next.end() - 1, reinterpret_cast<std::uint16_t*>(head_.data() + l.starts));
    auto* parts = reinterpret_cast<std::uint16_t*>(body_.data());
    Word64* sets = body_.data() + l.sets;
    for (std::size_t p = 0; p < of_part.size(); ++p) {
        const std::uint32_t rank = rank_[of_part[p]];
        if (spacing > 1) parts[next[rank]++] = static_cast<std::uint16_t>(p);
        if (rank / spacing < l.kept) add_bit(sets + rank / spacing * words, p);
    }
    for (std::size_t w = words; w < l.kept * words; ++w) sets[w] |= sets[w - words];
}

}  // namespace endbell::inline index
