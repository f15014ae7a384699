#include "engine/index/sweep.hpp"

#include <algorithm>
#include <bit>

// The same loops are compiled once for every x86-64 processor and once for each kind of longer registers; which of
// them this one has is asked when the program runs.
#if defined(__x86_64__)
#define ENDBELL_WIDE __attribute__((target("avx2,popcnt")))
#define ENDBELL_WIDEST \
    __attribute__((target("avx2,popcnt,avx512f,avx512bw,avx512vl,avx512dq,avx512vpopcntdq")))
#endif
#define ENDBELL_INTO_EACH [[gnu::always_inline]] inline

namespace endbell {

/// A stretch, what it is worked out from, and where its results go.
struct SetsThere {
    const std::vector<Said>& list;
    const Count* count;
    const Word64* all;
    std::size_t first = 0;      // word
    std::size_t size = 0;       // words
    std::vector<Stretch> sets;  // of the list
    Planes open_count, change_count;
    Stretch single{};
    Swept& out;
};

namespace {

ENDBELL_INTO_EACH void xor_edges(const std::vector<const Word64*>& edges, std::size_t first, std::size_t size,
                                 const Word64* all, Word64* __restrict out) {
    const std::size_t count = edges.size();
    const Word64* const* from = edges.data();
    std::size_t e = 0;
    if (count % 2 == 1) {
        const Word64* one = from[e++] + first;
        for (std::size_t i = 0; i < size; ++i) out[i] = one[i] & all[first + i];
    } else {
        for (std::size_t i = 0; i < size; ++i) out[i] = 0;
    }
    for (; e < count; e += 2) {
        const Word64* one = from[e] + first;
        const Word64* other = from[e + 1] + first;
        for (std::size_t i = 0; i < size; ++i) out[i] ^= (one[i] ^ other[i]) & all[first + i];
    }
}

/// Adds one to the counts of the parts in `set`.
ENDBELL_INTO_EACH void count_up(Planes& planes, std::size_t size, const Word64* __restrict set) {
    Stretch carry;
    for (std::size_t i = 0; i < size; ++i) carry[i] = set[i];
    for (Stretch& plane : planes) {
        Word64* __restrict p = plane.data();
        for (std::size_t i = 0; i < size; ++i) {
            const Word64 both = p[i] & carry[i];
            p[i] ^= carry[i];
            carry[i] = both;
        }
    }
}

ENDBELL_INTO_EACH void add(Word64* __restrict to, const Word64* __restrict set, std::size_t size) {
    for (std::size_t i = 0; i < size; ++i) to[i] |= set[i];
}

ENDBELL_INTO_EACH void count_fails(const Word64* __restrict set, const Stretch& twice, const Stretch& open,
                                   std::size_t size, FailCount& count) {
    Word64 parts = 0, only = 0, would_fit = 0;
    for (std::size_t i = 0; i < size; ++i) {
        const Word64 alone = set[i] & ~twice[i];
        parts += static_cast<Word64>(__builtin_popcountll(set[i]));
        only += static_cast<Word64>(__builtin_popcountll(alone));
        would_fit += static_cast<Word64>(__builtin_popcountll(alone & ~open[i]));
    }
    count.parts += static_cast<std::int64_t>(parts);
    count.only += static_cast<std::int64_t>(only);
    count.would_fit += static_cast<std::int64_t>(would_fit);
}

ENDBELL_INTO_EACH void count_keys(SetsThere& b) {
    const Word64* open = b.out.open.data() + b.first;
    for (std::size_t k = 0; k < b.count->keys.size(); ++k) {
        Stretch asked{};
        for (const std::size_t s : b.count->keys[k]) add(asked.data(), b.sets[s].data(), b.size);
        Word64 parts = 0;
        for (std::size_t i = 0; i < b.size; ++i)
            parts += static_cast<Word64>(__builtin_popcountll(asked[i] & open[i]));
        b.out.asked[k] += static_cast<std::int64_t>(parts);
    }
}

ENDBELL_INTO_EACH void go_through(SetsThere& b) {
    Stretch once{}, twice{}, open{}, changing{};
    for (Stretch& plane : b.open_count) plane.fill(0);
    for (Stretch& plane : b.change_count) plane.fill(0);
    const bool counted = b.count != nullptr;
    for (std::size_t s = 0; s < b.list.size(); ++s) {
        Word64* set = b.sets[counted ? s : 0].data();
        xor_edges(b.list[s].edges, b.first, b.size, b.all, set);
        if (b.list[s].verdict == Verdict::does_not_fit) {
            for (std::size_t i = 0; i < b.size; ++i) {
                twice[i] |= once[i] & set[i];
                once[i] |= set[i];
            }
        } else if (b.list[s].verdict == Verdict::not_shown) {
            add(open.data(), set, b.size);
            if (counted) count_up(b.open_count, b.size, set);
        } else {
            add(changing.data(), set, b.size);
            if (counted) count_up(b.change_count, b.size, set);
        }
    }
    for (std::size_t i = 0; i < b.size; ++i) {
        const Word64 lives = b.all[b.first + i] & ~once[i];
        b.out.open[b.first + i] = lives & open[i];
        b.out.open_changing[b.first + i] = lives & open[i] & changing[i];
        b.out.changing[b.first + i] = lives & ~open[i] & changing[i];
        b.out.fitting[b.first + i] = lives & ~open[i] & ~changing[i];
        b.single[i] = once[i] & ~twice[i];
    }
    if (!counted) return;
    for (std::size_t s = 0; s < b.list.size(); ++s) {
        if (b.list[s].verdict == Verdict::does_not_fit)
            count_fails(b.sets[s].data(), twice, open, b.size, b.out.fails[s]);
    }
    count_keys(b);
}

ENDBELL_INTO_EACH void take_out(std::span<const std::vector<const Word64*>> fails, const Word64* all,
                                std::size_t first, std::size_t size, Word64* __restrict out) {
    Stretch set;
    for (const std::vector<const Word64*>& edges : fails) {
        xor_edges(edges, first, size, all, set.data());
        for (std::size_t i = 0; i < size; ++i) out[i] &= ~set[i];
    }
}

using Fails = std::span<const std::vector<const Word64*>>;

void sweep_plain(SetsThere& b) {
    go_through(b);
}
void living_plain(Fails f, const Word64* all, std::size_t first, std::size_t size, Word64* out) {
    take_out(f, all, first, size, out);
}
#if defined(__x86_64__)
ENDBELL_WIDE void sweep_wide(SetsThere& b) {
    go_through(b);
}
ENDBELL_WIDE void living_wide(Fails f, const Word64* all, std::size_t first, std::size_t size, Word64* out) {
    take_out(f, all, first, size, out);
}
ENDBELL_WIDEST void sweep_widest(SetsThere& b) {
    go_through(b);
}
ENDBELL_WIDEST void living_widest(Fails f, const Word64* all, std::size_t first, std::size_t size,
                                  Word64* out) {
    take_out(f, all, first, size, out);
}
#endif

std::size_t planes_for(const std::vector<Said>& list, Verdict verdict) {
    const auto most =
        std::count_if(list.begin(), list.end(), [&](const Said& s) { return s.verdict == verdict; });
    return static_cast<std::size_t>(std::bit_width(static_cast<std::size_t>(most)));
}

}  // namespace

const std::vector<Gait>& gaits() {
    static const std::vector<Gait> able = [] {
        std::vector<Gait> found;
#if defined(__x86_64__)
        if (__builtin_cpu_supports("avx512vpopcntdq") != 0 && __builtin_cpu_supports("avx512bw") != 0 &&
            __builtin_cpu_supports("avx512vl") != 0 && __builtin_cpu_supports("avx512dq") != 0)
            found.push_back({"widest", sweep_widest, living_widest});
        if (__builtin_cpu_supports("avx2") != 0 && __builtin_cpu_supports("popcnt") != 0)
            found.push_back({"wide", sweep_wide, living_wide});
#endif
        found.push_back({"plain", sweep_plain, living_plain});
        return found;
    }();
    return able;
}

Swept sweep(const std::vector<Said>& list, const Count* count, const Word64* all, std::size_t words,
            const Gait& gait) {
    Swept out;
    for (BitSet* set : {&out.fitting, &out.changing, &out.open, &out.open_changing}) set->resize(words);
    SetsThere there{list, count, all, 0, 0, {}, {}, {}, {}, out};
    there.sets.resize(count != nullptr ? list.size() : 1);
    std::vector<Ended> ended;
    if (count != nullptr) {
        there.open_count.resize(planes_for(list, Verdict::not_shown));
        there.change_count.resize(planes_for(list, Verdict::fits_with_changes));
        out.fails.resize(list.size());
        out.asked.resize(count->keys.size());
        for (std::size_t s = 0; s < list.size(); ++s) {
            if (list[s].verdict == Verdict::does_not_fit)
                ended.push_back({list[s].rule, there.sets[s].data()});
        }
    }
    for (there.first = 0; there.first < words; there.first += stretch_words) {
        there.size = std::min(stretch_words, words - there.first);
        gait.sweep(there);
        if (count != nullptr && count->misses != nullptr)
            count->misses->look(there.first, there.size, there.single, there.open_count, there.change_count,
                                ended);
    }
    return out;
}

BitSet living(const std::vector<std::vector<const Word64*>>& fails, const Word64* all, std::size_t words,
              const Gait& gait) {
    BitSet lives(all, all + words);
    for (std::size_t first = 0; first < words; first += stretch_words)
        gait.living(fails, all, first, std::min(stretch_words, words - first), lives.data() + first);
    return lives;
}

}  // namespace endbell
