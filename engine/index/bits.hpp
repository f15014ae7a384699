// Sets of parts as words of 64 bits: bit p of a set is the part at position p.
#pragma once
#include <bit>
#include <cstddef>
#include <cstdint>
#include <vector>

namespace endbell::inline index {

using Word64 = std::uint64_t;
using BitSet = std::vector<Word64>;

constexpr std::size_t words_for(std::size_t parts) {
    return (parts + 63) / 64;
}

inline void add_bit(Word64* set, std::size_t position) {
    set[position / 64] |= Word64{1} << (position % 64);
}

inline void remove_bit(Word64* set, std::size_t position) {
    set[position / 64] &= ~(Word64{1} << (position % 64));
}

std::int64_t count_bits(const Word64* set, std::size_t words);

/// Calls visit(position) for the set bits of one word, lowest first.
template <class Visit>
void each_bit(Word64 word, std::size_t word_number, Visit visit) {
    for (; word != 0; word &= word - 1)
        visit(word_number * 64 + static_cast<std::size_t>(std::countr_zero(word)));
}

}  // namespace endbell::inline index
