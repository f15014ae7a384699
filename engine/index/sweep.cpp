#include "engine/index/sweep.hpp"

#include <algorithm>
#include <bit>

#include "engine/index/there.hpp"

// The same loops are compiled once for every x86-64 processor and once for each kind of longer registers; which of
// them this one has is asked when the program runs.
#if defined(__x86_64__)
#define ENDBELL_WIDE __attribute__((target("avx2,popcnt")))
#define ENDBELL_WIDEST \
    __attribute__((target("avx2,popcnt,avx512f,avx512bw,avx512vl,avx512dq,avx512vpopcntdq")))
#endif
#define ENDBELL_INTO_EACH [[gnu::always_inline]] inline

namespace endbell::inline index {

namespace {

ENDBELL_INTO_EACH Word64 bits_of(Word64 word) {
    return static_cast<Word64>(__builtin_popcountll(word));
}

ENDBELL_INTO_EACH void put(const Present& present, const Word64* const* mixed, const Word64* __restrict all,
                           std::size_t size, Word64* __restrict out) {
    for (std::size_t i = 0; i < size; ++i) out[i] = present.full ? all[i] : 0;
    for (std::size_t e = present.first; e < present.first + present.mixed; ++e) {
        const Word64* __restrict edge = mixed[e];
        for (std::size_t i = 0; i < size; ++i) out[i] ^= edge[i] & all[i];
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
        parts += bits_of(set[i]);
        only += bits_of(alone);
        would_fit += bits_of(alone & ~open[i]);
    }
    count.parts += static_cast<std::int64_t>(parts);
    count.only += static_cast<std::int64_t>(only);
    count.would_fit += static_cast<std::int64_t>(would_fit);
}

ENDBELL_INTO_EACH void count_keys(SetsThere& b) {
    const Word64* __restrict open = b.out.open.data() + b.at.first;
    const Word64* __restrict changing = b.out.open_changing.data() + b.at.first;
    for (std::size_t k = 0; k < b.keys->size(); ++k) {
        Stretch asked;
        bool any = false;
        for (const std::size_t s : (*b.keys)[k]) {
            if (b.place[s] == nullptr) continue;
            if (!any)
                for (std::size_t i = 0; i < b.at.size; ++i) asked[i] = b.place[s][i];
            else
                add(asked.data(), b.place[s], b.at.size);
            any = true;
        }
        if (!any) continue;
        Word64 parts = 0;
        for (std::size_t i = 0; i < b.at.size; ++i) parts += bits_of(asked[i] & (open[i] | changing[i]));
        b.out.asked[k] += static_cast<std::int64_t>(parts);
    }
}

ENDBELL_INTO_EACH bool some_live(const Word64* __restrict failed, const Word64* __restrict all,
                                 std::size_t size) {
    Word64 lives = 0;
    for (std::size_t i = 0; i < size; ++i) lives |= all[i] & ~failed[i];
    return lives != 0;
}

ENDBELL_INTO_EACH void go_through(SetsThere& b) {
    Stretch once{}, twice{}, open{}, changing{};
    const bool counted = b.keys != nullptr;
    if (counted) {
        for (Stretch& plane : b.open_count) plane.fill(0);
        for (Stretch& plane : b.change_count) plane.fill(0);
    }
    for (std::size_t p = 0; p < b.present.size(); ++p) {
        if (b.present[p].verdict != Verdict::does_not_fit) continue;
        Word64* set = b.sets[counted ? p : 0].data();
        put(b.present[p], b.mixed.data(), b.at.all, b.at.size, set);
        for (std::size_t i = 0; i < b.at.size; ++i) {
            twice[i] |= once[i] & set[i];
            once[i] |= set[i];
        }
    }
    b.lives = some_live(once.data(), b.at.all, b.at.size);
    if (!counted && !b.lives) return;
    for (std::size_t p = 0; p < b.present.size(); ++p) {
        if (b.present[p].verdict == Verdict::does_not_fit) continue;
        Word64* set = b.sets[counted ? p : 0].data();
        put(b.present[p], b.mixed.data(), b.at.all, b.at.size, set);
        if (b.present[p].verdict == Verdict::not_shown) {
            add(open.data(), set, b.at.size);
            if (counted) count_up(b.open_count, b.at.size, set);
        } else {
            add(changing.data(), set, b.at.size);
            if (counted) count_up(b.change_count, b.at.size, set);
        }
    }
    for (std::size_t i = 0; i < b.at.size; ++i) {
        const Word64 lives = b.at.all[i] & ~once[i];
        b.out.open[b.at.first + i] = lives & open[i] & ~changing[i];
        b.out.open_changing[b.at.first + i] = lives & open[i] & changing[i];
        b.out.changing[b.at.first + i] = lives & ~open[i] & changing[i];
        b.out.fitting[b.at.first + i] = lives & ~open[i] & ~changing[i];
        b.single[i] = once[i] & ~twice[i];
    }
    if (!counted) return;
    for (std::size_t p = 0; p < b.present.size(); ++p) {
        if (b.present[p].verdict == Verdict::does_not_fit)
            count_fails(b.sets[p].data(), twice, open, b.at.size, b.out.fails[b.present[p].said]);
    }
    count_keys(b);
}

void sweep_plain(SetsThere& b) {
    go_through(b);
}
#if defined(__x86_64__)
ENDBELL_WIDE void sweep_wide(SetsThere& b) {
    go_through(b);
}
ENDBELL_WIDEST void sweep_widest(SetsThere& b) {
    go_through(b);
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
            found.push_back({"widest", sweep_widest});
        if (__builtin_cpu_supports("avx2") != 0 && __builtin_cpu_supports("popcnt") != 0)
            found.push_back({"wide", sweep_wide});
#endif
        found.push_back({"plain", sweep_plain});
        return found;
    }();
    return able;
}

namespace {

StretchAt stretch_at(std::size_t first, const Word64* all, std::size_t words) {
    const std::size_t size = std::min(stretch_words, words - first);
    return {first, size, all + first, {}};
}

}  // namespace

bool holds(const Edges& edges, std::size_t position, const Word64* all, std::size_t words) {
    const std::size_t first = position / stretch_parts * stretch_words;
    std::vector<const Word64*> mixed;
    Scratch scratch;
    StretchAt at = stretch_at(first, all, words);
    if (edges.column != nullptr) at.bodies = edges.column->bodies().of(position / stretch_parts);
    const Present present = look(edges, at, mixed, scratch);
    Word64 word = present.full ? ~Word64{0} : 0;
    for (const Word64* set : mixed) word ^= set[position / 64 - first];
    return (word >> (position % 64) & 1) != 0;
}

Swept sweep(const std::vector<Said>& list, const Count* count, const Word64* all, std::size_t words,
            const Gait& gait) {
    Swept out;
    for (BitSet* set : {&out.fitting, &out.changing, &out.open, &out.open_changing}) set->resize(words);
    out.lives.resize((words + stretch_words - 1) / stretch_words);
    SetsThere there(out);
    there.sets.resize(count != nullptr ? list.size() : 1);
    if (count != nullptr) {
        there.keys = &count->keys;
        there.open_count.resize(planes_for(list, Verdict::not_shown));
        there.change_count.resize(planes_for(list, Verdict::fits_with_changes));
        out.fails.resize(list.size());
        out.asked.resize(count->keys.size());
    }
    std::vector<Ended> ended;
    for (std::size_t first = 0; first < words; first += stretch_words) {
        there.at = stretch_at(first, all, words);
        there.look_at(list);
        if (there.shut) continue;
        gait.sweep(there);
        out.lives[first / stretch_words] = there.lives;
        if (count == nullptr || count->misses == nullptr) continue;
        ended.clear();
        for (std::size_t p = 0; p < there.present.size(); ++p) {
            if (there.present[p].verdict == Verdict::does_not_fit)
                ended.push_back({list[there.present[p].said].rule, there.sets[p].data()});
        }
        count->misses->look(first, there.at.size, there.single, there.open_count, there.change_count, ended);
    }
    return out;
}

}  // namespace endbell::inline index
