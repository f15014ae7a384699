#include "engine/index/class_runs.hpp"

#include <algorithm>
#include <optional>

namespace endbell::inline index {

PartBlock part_block(std::size_t first, const Word64* all, std::size_t words) {
    const std::size_t size = std::min(block_words, words - first);
    return {first, size, all + first, {}};
}

SetInBlock set_in_block(const ClassRuns& runs, const PartBlock& block, std::vector<const Word64*>& partial,
                        Scratch& scratch) {
    SetInBlock set;
    set.first = partial.size();
    std::optional<ColumnBlock> column_block;
    for (const std::uint32_t c : runs.bounds) {
        const DirectoryEntry& entry = runs.column->entry(block.number());
        if (c < entry.first_class) continue;
        if (c >= entry.last_class) {
            set.whole = !set.whole;
            continue;
        }
        if (!column_block)
            column_block.emplace(runs.column->column_block(block.number(), block.size, block.payloads));
        partial.push_back(column_block->up_to(c, scratch));
    }
    for (const Word64* apart : runs.apart) partial.push_back(apart + block.first);
    set.partial = partial.size() - set.first;
    return set;
}

bool needs_payload(const ClassRuns& runs, std::size_t block) {
    if (runs.column == nullptr) return false;
    const DirectoryEntry& entry = runs.column->entry(block);
    return std::any_of(runs.bounds.begin(), runs.bounds.end(),
                       [&](std::uint32_t c) { return c >= entry.first_class && c < entry.last_class; });
}

bool covers(const ClassRuns& runs, const PartBlock& block) {
    if (!runs.apart.empty() || needs_payload(runs, block.number())) return false;
    bool whole = false;
    for (const std::uint32_t c : runs.bounds)
        whole = whole != (c >= runs.column->entry(block.number()).last_class);
    return whole;
}

std::size_t count_in(const ClassRuns& runs, const PartBlock& block, std::size_t all) {
    std::optional<ColumnBlock> column_block;
    std::size_t parts = 0;
    for (const std::uint32_t c : runs.bounds) {
        const DirectoryEntry& entry = runs.column->entry(block.number());
        if (c < entry.first_class) continue;
        std::size_t up_to = all;
        if (c < entry.last_class) {
            if (!column_block)
                column_block.emplace(runs.column->column_block(block.number(), block.size, block.payloads));
            up_to = column_block->count_up_to(c);
        }
        parts = up_to - parts;  // bounds ascend: each set holds the one before
    }
    return parts;
}

bool holds(const ClassRuns& runs, std::size_t position, const Word64* all, std::size_t words) {
    std::vector<const Word64*> partial;
    Scratch scratch;
    PartBlock block = part_block(position / block_parts * block_words, all, words);
    if (runs.column != nullptr) block.payloads = runs.column->payloads().of(block.number());
    const SetInBlock set = set_in_block(runs, block, partial, scratch);
    Word64 word = set.whole ? ~Word64{0} : 0;
    for (const Word64* bits : partial) word ^= bits[position / 64 - block.first];
    return (word >> (position % 64) & 1) != 0;
}

}  // namespace endbell::inline index
