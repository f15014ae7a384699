#include "engine/index/payloads.hpp"

#include <algorithm>

#include "engine/base/ensure.hpp"
#include "engine/base/pages.hpp"

namespace endbell::inline index {

Payloads::Payloads(const SideFile& file, std::size_t section, std::span<const DirectoryEntry> directory,
                   std::size_t columns)
    : file_(file),
      section_(section),
      directory_(directory),
      columns_(columns),
      words_(file.numbers<Word64>(section)),
      loads_(columns > 0 ? directory.size() / columns : 0) {
    for (std::size_t b = 0; b < loads_.size(); ++b) {
        ensure(first(b) <= first(b + 1) && first(b + 1) <= words_.size(), "blocks follow each other");
        longest_ = std::max(longest_, first(b + 1) - first(b));
    }
}

std::size_t Payloads::first(std::size_t block) const {
    const std::size_t entry = block * columns_;
    return entry < directory_.size() ? directory_[entry].payload : words_.size();
}

std::span<const Word64> Payloads::of(std::size_t block) const {
    return words_.subspan(first(block), first(block + 1) - first(block));
}

std::span<const Word64> Payloads::load(std::size_t block, std::vector<PayloadWords>& wanted,
                                       PayloadBuffer& buffer) const {
    const std::span<const Word64> mapped = of(block);
    std::atomic<int>& loads = loads_[block];
    constexpr int once = 1, paged_in = 2;
    if (loads.load(std::memory_order_relaxed) == paged_in) return mapped;
    if (loads.fetch_add(1, std::memory_order_relaxed) + 1 == once) {
        if (buffer.size < mapped.size())
            buffer = {std::make_unique_for_overwrite<Word64[]>(longest_), longest_};
        std::sort(wanted.begin(), wanted.end(),
                  [](const PayloadWords& a, const PayloadWords& b) { return a.begin < b.begin; });
        if (copy(block, wanted, buffer.words.get())) return {buffer.words.get(), mapped.size()};
    }
    loads.store(paged_in, std::memory_order_relaxed);
    bring_in(mapped.data(), mapped.size_bytes());
    return mapped;
}

/// `wanted` in ascending order. What lies between two that are near each other is copied with them: less work than
/// to ask twice.
bool Payloads::copy(std::size_t block, const std::vector<PayloadWords>& wanted, Word64* to) const {
    constexpr std::size_t near = 8 * 1024 / sizeof(Word64);
    const std::size_t start = first(block);
    const std::size_t past = first(block + 1);
    for (auto next = wanted.begin(); next != wanted.end();) {
        const std::size_t begin = next->begin;
        std::size_t end = next->end;
        for (++next; next != wanted.end() && next->begin <= end + near; ++next)
            end = std::max(end, next->end);
        ensure(start <= begin && begin <= end && end <= past, "a payload is in its block");
        const std::span<Word64> there(to + (begin - start), end - begin);
        if (!file_.copy(section_, begin * sizeof(Word64), std::as_writable_bytes(there))) return false;
    }
    return true;
}

}  // namespace endbell::inline index
