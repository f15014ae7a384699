#include "engine/index/kernel.hpp"

#include "engine/index/block_scan.hpp"

// The same loops are compiled once for every x86-64 processor and once for each kind of longer registers; which of
// them this one has is asked when the program runs.
#if defined(__x86_64__)
#define ENDBELL_AVX2 __attribute__((target("avx2,popcnt")))
#define ENDBELL_AVX512 \
    __attribute__((target("avx2,popcnt,avx512f,avx512bw,avx512vl,avx512dq,avx512vpopcntdq")))
#endif
// A function that was compiled by itself would have the registers of every processor.
#define ENDBELL_IN_EACH_KERNEL [[gnu::always_inline]] inline

namespace endbell::inline index {

namespace {

ENDBELL_IN_EACH_KERNEL Word64 bits_in(Word64 word) {
    return static_cast<Word64>(__builtin_popcountll(word));
}

ENDBELL_IN_EACH_KERNEL void put(const SetInBlock& set, const Word64* const* partial,
                                const Word64* __restrict all, std::size_t size, Word64* __restrict out) {
    for (std::size_t i = 0; i < size; ++i) out[i] = set.whole ? all[i] : 0;
    for (std::size_t p = set.first; p < set.first + set.partial; ++p) {
        const Word64* __restrict turned = partial[p];
        for (std::size_t i = 0; i < size; ++i) out[i] ^= turned[i] & all[i];
    }
}

/// Adds one to the counts of the parts in `set`.
ENDBELL_IN_EACH_KERNEL void count_up(BitSlices& slices, std::size_t size, const Word64* __restrict set) {
    BlockBits carry;
    for (std::size_t i = 0; i < size; ++i) carry[i] = set[i];
    for (BlockBits& slice : slices) {
        Word64* __restrict s = slice.data();
        for (std::size_t i = 0; i < size; ++i) {
            const Word64 both = s[i] & carry[i];
            s[i] ^= carry[i];
            carry[i] = both;
        }
    }
}

ENDBELL_IN_EACH_KERNEL void add(Word64* __restrict to, const Word64* __restrict set, std::size_t size) {
    for (std::size_t i = 0; i < size; ++i) to[i] |= set[i];
}

ENDBELL_IN_EACH_KERNEL void count_fails(const Word64* __restrict set, const BlockBits& twice,
                                        const BlockBits& open, std::size_t size, FailCount& count) {
    Word64 parts = 0, only = 0, would_fit = 0;
    for (std::size_t i = 0; i < size; ++i) {
        const Word64 alone = set[i] & ~twice[i];
        parts += bits_in(set[i]);
        only += bits_in(alone);
        would_fit += bits_in(alone & ~open[i]);
    }
    count.parts += static_cast<std::int64_t>(parts);
    count.only += static_cast<std::int64_t>(only);
    count.would_fit += static_cast<std::int64_t>(would_fit);
}

/// Of each key, the open parts that any of its finding sets holds.
ENDBELL_IN_EACH_KERNEL void count_keys(BlockScan& b) {
    const Word64* __restrict open = b.out.open.data() + b.block.first;
    const Word64* __restrict changing = b.out.open_changing.data() + b.block.first;
    for (std::size_t k = 0; k < b.keys->size(); ++k) {
        BlockBits asked;
        bool any = false;
        for (const std::size_t s : (*b.keys)[k]) {
            if (b.bits_of[s] == nullptr) continue;
            if (!any)
                for (std::size_t i = 0; i < b.block.size; ++i) asked[i] = b.bits_of[s][i];
            else
                add(asked.data(), b.bits_of[s], b.block.size);
            any = true;
        }
        if (!any) continue;
        Word64 parts = 0;
        for (std::size_t i = 0; i < b.block.size; ++i) parts += bits_in(asked[i] & (open[i] | changing[i]));
        b.out.asked[k] += static_cast<std::int64_t>(parts);
    }
}

ENDBELL_IN_EACH_KERNEL bool some_live(const Word64* __restrict failed, const Word64* __restrict all,
                                      std::size_t size) {
    Word64 lives = 0;
    for (std::size_t i = 0; i < size; ++i) lives |= all[i] & ~failed[i];
    return lives != 0;
}

/// The parts that some finding, or more than one, ends; and those of which some is open, or asks for changes.
struct Marks {
    BlockBits once{}, twice{}, open{}, changing{};
};

/// Makes the bits of one finding set, where they are kept or in the one place for all.
ENDBELL_IN_EACH_KERNEL Word64* bits_at(BlockScan& b, std::size_t h) {
    Word64* bits = b.bits[b.keys != nullptr ? h : 0].data();
    put(b.here[h].set, b.partial.data(), b.block.all, b.block.size, bits);
    return bits;
}

ENDBELL_IN_EACH_KERNEL void mark_failures(BlockScan& b, Marks& marks) {
    for (std::size_t h = 0; h < b.here.size(); ++h) {
        if (b.here[h].verdict != Verdict::does_not_fit) continue;
        const Word64* bits = bits_at(b, h);
        for (std::size_t i = 0; i < b.block.size; ++i) {
            marks.twice[i] |= marks.once[i] & bits[i];
            marks.once[i] |= bits[i];
        }
    }
}

ENDBELL_IN_EACH_KERNEL void mark_open_and_changing(BlockScan& b, Marks& marks) {
    const bool counted = b.keys != nullptr;
    for (std::size_t h = 0; h < b.here.size(); ++h) {
        if (b.here[h].verdict == Verdict::does_not_fit) continue;
        const bool open = b.here[h].verdict == Verdict::not_shown;
        const Word64* bits = bits_at(b, h);
        add(open ? marks.open.data() : marks.changing.data(), bits, b.block.size);
        if (counted) count_up(open ? b.open_count : b.change_count, b.block.size, bits);
    }
}

ENDBELL_IN_EACH_KERNEL void write_results(BlockScan& b, const Marks& marks) {
    for (std::size_t i = 0; i < b.block.size; ++i) {
        const Word64 lives = b.block.all[i] & ~marks.once[i];
        b.out.open[b.block.first + i] = lives & marks.open[i] & ~marks.changing[i];
        b.out.open_changing[b.block.first + i] = lives & marks.open[i] & marks.changing[i];
        b.out.changing[b.block.first + i] = lives & ~marks.open[i] & marks.changing[i];
        b.out.fitting[b.block.first + i] = lives & ~marks.open[i] & ~marks.changing[i];
        b.fails_once[i] = marks.once[i] & ~marks.twice[i];
    }
}

ENDBELL_IN_EACH_KERNEL void scan_block(BlockScan& b) {
    Marks marks;
    const bool counted = b.keys != nullptr;
    if (counted) {
        for (BlockBits& slice : b.open_count) slice.fill(0);
        for (BlockBits& slice : b.change_count) slice.fill(0);
    }
    mark_failures(b, marks);
    b.occupied = some_live(marks.once.data(), b.block.all, b.block.size);
    if (!counted && !b.occupied) return;
    mark_open_and_changing(b, marks);
    write_results(b, marks);
    if (!counted) return;
    for (std::size_t h = 0; h < b.here.size(); ++h) {
        if (b.here[h].verdict == Verdict::does_not_fit)
            count_fails(b.bits[h].data(), marks.twice, marks.open, b.block.size,
                        b.out.fails[b.here[h].index]);
    }
    count_keys(b);
}

void run_portable(BlockScan& b) {
    scan_block(b);
}
#if defined(__x86_64__)
ENDBELL_AVX2 void run_avx2(BlockScan& b) {
    scan_block(b);
}
ENDBELL_AVX512 void run_avx512(BlockScan& b) {
    scan_block(b);
}
#endif

}  // namespace

const std::vector<Kernel>& kernels() {
    static const std::vector<Kernel> able = [] {
        std::vector<Kernel> found;
#if defined(__x86_64__)
        if (__builtin_cpu_supports("avx512vpopcntdq") != 0 && __builtin_cpu_supports("avx512bw") != 0 &&
            __builtin_cpu_supports("avx512vl") != 0 && __builtin_cpu_supports("avx512dq") != 0)
            found.push_back({"avx512", run_avx512});
        if (__builtin_cpu_supports("avx2") != 0 && __builtin_cpu_supports("popcnt") != 0)
            found.push_back({"avx2", run_avx2});
#endif
        found.push_back({"any", run_portable});
        return found;
    }();
    return able;
}

}  // namespace endbell::inline index
