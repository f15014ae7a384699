#include "engine/index/column_block.hpp"

#include <algorithm>
#include <numeric>

#include "engine/base/ensure.hpp"

namespace endbell::inline index {

namespace {

/// Where the pieces of a column block stand, in words from the beginning of its header and of its payload.
struct Layout {
    std::size_t starts = 0;
    std::size_t header = 0;  // its end
    std::size_t sets = 0;
    std::size_t kept = 0;     // how many sets
    std::size_t payload = 0;  // its end
};

constexpr std::size_t words_of(std::size_t bytes) {
    return (bytes + sizeof(Word64) - 1) / sizeof(Word64);
}

Layout layout_of(std::size_t count, std::size_t spacing, std::size_t words) {
    Layout l;
    l.starts = 1 + words_of(count * sizeof(std::uint32_t));
    l.header = l.starts + words_of(count * sizeof(std::uint16_t));
    l.sets = spacing > 1 ? words_of(words * 64 * sizeof(std::uint16_t)) : 0;
    l.kept = (count - 1) / spacing;
    l.payload = l.sets + l.kept * words;
    return l;
}

}  // namespace

ColumnBlock::ColumnBlock(std::span<const Word64> headers, std::span<const Word64> payloads, std::size_t words)
    : words_(words) {
    ensure(!headers.empty(), "a column block begins within its section");
    count_ = static_cast<std::uint32_t>(headers[0]);
    spacing_ = static_cast<std::size_t>(headers[0] >> 32);
    ensure(count_ > 1 && count_ <= words * 64 && spacing_ > 0, "a column block has classes");
    const Layout l = layout_of(count_, spacing_, words);
    ensure(l.header <= headers.size() && l.payload <= payloads.size(),
           "a column block ends within its section");
    classes_ = reinterpret_cast<const std::uint32_t*>(headers.data() + 1);
    starts_ = reinterpret_cast<const std::uint16_t*>(headers.data() + l.starts);
    parts_ = reinterpret_cast<const std::uint16_t*>(payloads.data());
    sets_ = payloads.data() + l.sets;
}

/// The last class that is present and no greater.
std::size_t ColumnBlock::place_of(std::uint32_t c) const {
    ensure(classes_[0] <= c && c < classes_[count_ - 1], "a set is of some parts, not of all");
    return static_cast<std::size_t>(std::upper_bound(classes_, classes_ + count_, c) - classes_) - 1;
}

const Word64* ColumnBlock::up_to(std::uint32_t c, Scratch& scratch) const {
    const std::size_t place = place_of(c);
    const std::size_t kept = (place + 1) / spacing_;  // sets up to there
    if ((place + 1) % spacing_ == 0) return kept_set(kept - 1);
    BlockBits& set = scratch.next();
    if (kept > 0)
        std::copy_n(kept_set(kept - 1), words_, set.begin());
    else
        std::fill_n(set.begin(), words_, 0);
    add_parts(kept * spacing_, place, set);
    return set.data();
}

/// Parts of the classes at `first` to `last`, which is not the last one of all: behind its parts there may be room.
void ColumnBlock::add_parts(std::size_t first, std::size_t last, BlockBits& to) const {
    const std::size_t parts = words_ * 64;
    for (std::size_t p = starts_[first]; p < starts_[last + 1]; ++p) {
        ensure(p < parts && parts_[p] < parts, "a column block's parts are in its block");
        add_bit(to.data(), parts_[p]);
    }
}

std::uint32_t ColumnBlock::class_of(std::size_t part) const {
    ensure(part < words_ * 64, "the part is in the block");
    const auto in_set = [&](std::size_t set) { return (kept_set(set)[part / 64] >> (part % 64) & 1) != 0; };
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
            ensure(starts_[c] <= end(c) && end(c) <= words_ * 64, "classes follow each other");
            return std::binary_search(parts_ + starts_[c], parts_ + end(c), part);
        };
        while (place + 1 < last && !has(place)) ++place;
    }
    return classes_[place];
}

void ColumnBlockBuilder::make(std::span<const std::uint32_t> of_part) {
    present_.clear();
    for (const std::uint32_t c : of_part) {
        if (place_[c] != absent) continue;
        place_[c] = 0;
        present_.push_back(c);
    }
    std::sort(present_.begin(), present_.end());
    for (std::uint32_t p = 0; p < present_.size(); ++p) place_[present_[p]] = p;
    header_.clear();
    payload_.clear();
    if (present_.size() > 1) write(of_part);
    for (const std::uint32_t c : present_) place_[c] = absent;
}

void ColumnBlockBuilder::write(std::span<const std::uint32_t> of_part) {
    const std::size_t words = words_for(of_part.size());
    const std::size_t spacing = (present_.size() + sets_at_most - 1) / sets_at_most;
    const Layout l = layout_of(present_.size(), spacing, words);
    header_.assign(l.header, 0);
    payload_.assign(l.payload, 0);
    header_[0] = present_.size() | Word64{spacing} << 32;
    std::copy(present_.begin(), present_.end(), reinterpret_cast<std::uint32_t*>(header_.data() + 1));

    std::vector<std::uint16_t> next(present_.size() + 1);
    for (const std::uint32_t c : of_part) ++next[place_[c] + 1];
    std::partial_sum(next.begin(), next.end(), next.begin());
    std::copy(next.begin(), next.end() - 1, reinterpret_cast<std::uint16_t*>(header_.data() + l.starts));
    auto* parts = reinterpret_cast<std::uint16_t*>(payload_.data());
    Word64* sets = payload_.data() + l.sets;
    for (std::size_t p = 0; p < of_part.size(); ++p) {
        const std::uint32_t place = place_[of_part[p]];
        if (spacing > 1) parts[next[place]++] = static_cast<std::uint16_t>(p);
        if (place / spacing < l.kept) add_bit(sets + place / spacing * words, p);
    }
    for (std::size_t w = words; w < l.kept * words; ++w) sets[w] |= sets[w - words];
}

}  // namespace endbell::inline index
