#include "engine/index/scan.hpp"

#include "engine/index/block_scan.hpp"

namespace endbell::inline index {

ScanResult scan(const std::vector<FindingSet>& list, const Count* count, const Word64* all, std::size_t words,
                const Kernel& kernel) {
    ScanResult out;
    for (BitSet* set : {&out.fitting, &out.changing, &out.open, &out.open_changing}) set->resize(words);
    out.occupied.resize(blocks_for(words * 64));
    if (count != nullptr) {
        out.fails.resize(list.size());
        out.asked.resize(count->keys.size());
    }
    BlockScan at(list, count, out);
    std::vector<FailSet> failing;
    for (std::size_t first = 0; first < words; first += block_words) {
        at.prepare(part_block(first, all, words));
        if (at.skipped) continue;
        kernel.run(at);
        out.occupied[at.block.number()] = at.occupied;
        if (count == nullptr || count->misses == nullptr) continue;
        failing.clear();
        for (std::size_t h = 0; h < at.here.size(); ++h) {
            if (at.here[h].verdict == Verdict::does_not_fit)
                failing.push_back({list[at.here[h].index].rule, at.bits[h].data()});
        }
        count->misses->offer(first, at.block.size, at.fails_once, at.open_count, at.change_count, failing);
    }
    return out;
}

}  // namespace endbell::inline index
