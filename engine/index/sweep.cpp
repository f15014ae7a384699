#include "engine/index/sweep.hpp"

#include <algorithm>
#include <array>
#include <bit>

namespace endbell {

namespace {

// What a pass holds at once stays in the nearest cache.
constexpr std::size_t block = 256;

void xor_edges(const std::vector<const Word64*>& edges, std::size_t first, std::size_t size,
               const Word64* all, Word64* out) {
    const Word64* edge = edges.front() + first;
    std::copy(edge, edge + size, out);
    for (std::size_t e = 1; e < edges.size(); ++e) {
        edge = edges[e] + first;
        for (std::size_t i = 0; i < size; ++i) out[i] ^= edge[i];
    }
    for (std::size_t i = 0; i < size; ++i) out[i] &= all[first + i];
}

std::size_t planes_for(const std::vector<Said>& list, Verdict verdict) {
    const auto most =
        std::count_if(list.begin(), list.end(), [&](const Said& s) { return s.verdict() == verdict; });
    return static_cast<std::size_t>(std::bit_width(static_cast<std::size_t>(most)));
}

/// Adds one to the counts of the parts in `set`.
void count_up(std::vector<BitSet>& planes, std::size_t first, std::size_t size, const Word64* set) {
    std::array<Word64, block> carry;
    std::copy(set, set + size, carry.begin());
    for (BitSet& plane : planes) {
        Word64* p = plane.data() + first;
        for (std::size_t i = 0; i < size; ++i) {
            const Word64 both = p[i] & carry[i];
            p[i] ^= carry[i];
            carry[i] = both;
        }
    }
}

}  // namespace

Swept sweep(const std::vector<Said>& list, const std::vector<std::vector<std::size_t>>& keys,
            const Word64* all, std::size_t words) {
    Swept out;
    for (BitSet* set : {&out.fitting, &out.changing, &out.open, &out.open_changing, &out.single})
        set->resize(words);
    out.open_count.assign(planes_for(list, Verdict::not_shown), BitSet(words));
    out.change_count.assign(planes_for(list, Verdict::fits_with_changes), BitSet(words));
    out.fails.resize(list.size());
    out.asked.resize(keys.size());

    std::vector<Word64> sets(list.size() * block);
    std::array<Word64, block> once, twice, open, changing, asked, only, shut;
    for (std::size_t first = 0; first < words; first += block) {
        const std::size_t size = std::min(block, words - first);
        for (auto* set : {&once, &twice, &open, &changing}) std::fill_n(set->begin(), size, Word64{0});
        for (std::size_t s = 0; s < list.size(); ++s) {
            Word64* set = sets.data() + s * block;
            xor_edges(list[s].edges, first, size, all, set);
            if (list[s].verdict() == Verdict::does_not_fit) {
                for (std::size_t i = 0; i < size; ++i) {
                    twice[i] |= once[i] & set[i];
                    once[i] |= set[i];
                }
            } else if (list[s].verdict() == Verdict::not_shown) {
                for (std::size_t i = 0; i < size; ++i) open[i] |= set[i];
                count_up(out.open_count, first, size, set);
            } else {
                for (std::size_t i = 0; i < size; ++i) changing[i] |= set[i];
                count_up(out.change_count, first, size, set);
            }
        }
        for (std::size_t i = 0; i < size; ++i) {
            const Word64 lives = all[first + i] & ~once[i];
            out.open[first + i] = lives & open[i];
            out.open_changing[first + i] = lives & open[i] & changing[i];
            out.changing[first + i] = lives & ~open[i] & changing[i];
            out.fitting[first + i] = lives & ~open[i] & ~changing[i];
            out.single[first + i] = once[i] & ~twice[i];
        }
        for (std::size_t s = 0; s < list.size(); ++s) {
            if (list[s].verdict() != Verdict::does_not_fit) continue;
            const Word64* set = sets.data() + s * block;
            FailCount& count = out.fails[s];
            for (std::size_t i = 0; i < size; ++i) {
                only[i] = set[i] & ~twice[i];
                shut[i] = ~open[i];
            }
            count.parts += count_bits(set, size);
            count.only += count_bits(only.data(), size);
            count.would_fit += count_both(only.data(), shut.data(), size);
        }
        for (std::size_t k = 0; k < keys.size(); ++k) {
            std::fill_n(asked.begin(), size, Word64{0});
            for (const std::size_t s : keys[k]) {
                const Word64* set = sets.data() + s * block;
                for (std::size_t i = 0; i < size; ++i) asked[i] |= set[i];
            }
            out.asked[k] += count_both(asked.data(), out.open.data() + first, size);
        }
    }
    return out;
}

BitSet living(const std::vector<std::vector<const Word64*>>& fails, const Word64* all, std::size_t words) {
    BitSet lives(all, all + words);
    std::array<Word64, block> set;
    for (std::size_t first = 0; first < words; first += block) {
        const std::size_t size = std::min(block, words - first);
        Word64* out = lives.data() + first;
        for (const std::vector<const Word64*>& edges : fails) {
            xor_edges(edges, first, size, all, set.data());
            for (std::size_t i = 0; i < size; ++i) out[i] &= ~set[i];
        }
    }
    return lives;
}

}  // namespace endbell
