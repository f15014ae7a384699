#include "engine/index/bodies.hpp"

#include <algorithm>

#include "engine/base/check.hpp"
#include "engine/base/pages.hpp"

namespace endbell::inline index {

Bodies::Bodies(const SideFile& file, std::size_t section, std::span<const TileStart> starts,
               std::size_t columns)
    : file_(file),
      section_(section),
      starts_(starts),
      columns_(columns),
      words_(file.numbers<Word64>(section)),
      times_(columns > 0 ? starts.size() / columns : 0) {
    for (std::size_t s = 0; s < times_.size(); ++s) {
        check(first(s) <= first(s + 1) && first(s + 1) <= words_.size(), "stretches follow each other");
        longest_ = std::max(longest_, first(s + 1) - first(s));
    }
}

std::size_t Bodies::first(std::size_t stretch) const {
    const std::size_t start = stretch * columns_;
    return start < starts_.size() ? starts_[start].body : words_.size();
}

std::span<const Word64> Bodies::of(std::size_t stretch) const {
    return words_.subspan(first(stretch), first(stretch + 1) - first(stretch));
}

std::span<const Word64> Bodies::much_of(std::size_t stretch, std::vector<BodyWords>& wanted,
                                        BodyRoom& room) const {
    const std::span<const Word64> mapped = of(stretch);
    std::atomic<int>& times = times_[stretch];
    constexpr int copied = 1, brought_in = 2;
    if (times.load(std::memory_order_relaxed) == brought_in) return mapped;
    if (times.fetch_add(1, std::memory_order_relaxed) + 1 == copied) {
        if (room.size < mapped.size()) room = {std::make_unique_for_overwrite<Word64[]>(longest_), longest_};
        std::sort(wanted.begin(), wanted.end(),
                  [](const BodyWords& a, const BodyWords& b) { return a.begin < b.begin; });
        if (copy(stretch, wanted, room.words.get())) return {room.words.get(), mapped.size()};
    }
    times.store(brought_in, std::memory_order_relaxed);
    bring_in(mapped.data(), mapped.size_bytes());
    return mapped;
}

/// `wanted` in ascending order. What lies between two that are near each other is copied with them: less work than
/// to ask twice.
bool Bodies::copy(std::size_t stretch, const std::vector<BodyWords>& wanted, Word64* to) const {
    constexpr std::size_t near = 8 * 1024 / sizeof(Word64);
    const std::size_t start = first(stretch);
    const std::size_t past = first(stretch + 1);
    for (auto next = wanted.begin(); next != wanted.end();) {
        const std::size_t begin = next->begin;
        std::size_t end = next->end;
        for (++next; next != wanted.end() && next->begin <= end + near; ++next)
            end = std::max(end, next->end);
        check(start <= begin && begin <= end && end <= past, "a tile's body is in its stretch");
        const std::span<Word64> there(to + (begin - start), end - begin);
        if (!file_.copy(section_, begin * sizeof(Word64), std::as_writable_bytes(there))) return false;
    }
    return true;
}

}  // namespace endbell::inline index
